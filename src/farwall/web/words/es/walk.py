"""Palabras de un piso recorrido con la cinta de medir."""

from __future__ import annotations

WORDS = {
    "walk-title": "Un piso medido con cinta",
    "walk-told": "¿Sin dibujo? Dé una vuelta a cada cuarto, pared por pared, y mida una diagonal. "
    "Lo leído se cierra por mínimos cuadrados; la pared que no puede ser se nombra.",
    "walk-sheet": "Hojas en blanco para imprimir",
    "new-walk-title": "Mídalo con cinta",
    "new-walk-told": "¿Sin dibujo? Cada cuarto pared por pared, comprobado con una diagonal.",
    "new-walk": "Medir con cinta",
    "walk-first": "El primer cuarto",
    "walk-next": "El cuarto siguiente",
    "walk-name": "Se llama",
    "help-walk-room": "Párese en una esquina. Mida la pared, gire donde termina, mida la "
    "siguiente, hasta volver. Con las paredes a su izquierda se gira a la derecha en casi todas "
    "las esquinas. Una medida se escribe o se dicta: 12' 6 1/2\", 12 pies 6 y media, 3.82 m. Un "
    "signo de interrogación vale por una pared a la que no se llega.",
    "walk-wall-of": "Largo de la pared {n}",
    "walk-turn-of": "Giro al final de la pared {n}",
    "walk-left": "izquierda",
    "walk-right": "derecha",
    "walk-more-walls": "Más paredes",
    "walk-ways": "Puertas y vanos, desde la esquina donde empieza su pared",
    "help-walk-ways": "Diga cada puerta en los dos cuartos que une, con los nombres de los "
    "cuartos: así se encuentran. Si da afuera, deje vacío adónde da.",
    "walk-way-kind": "Clase del vano {n}",
    "walk-kind-door": "puerta",
    "walk-kind-cased": "vano con marco",
    "walk-kind-wide": "vano ancho",
    "walk-in-wall": "en la pared",
    "walk-way-wall": "Pared del vano {n}",
    "walk-at": "desde la esquina",
    "walk-way-at": "Vano {n}: desde la esquina",
    "walk-wide": "ancho",
    "walk-way-wide": "Ancho del vano {n}",
    "walk-deep": "grueso de la pared",
    "walk-way-deep": "Grueso de la pared en el vano {n}",
    "walk-to": "da a",
    "walk-way-to": "El vano {n} da a",
    "walk-diagonal": "Diagonal de la esquina",
    "walk-diagonal-to": "a la esquina",
    "walk-diagonal-is": "mide",
    "walk-check-from": "Diagonal desde la esquina",
    "walk-check-to": "Diagonal hasta la esquina",
    "walk-check-long": "Largo de la diagonal",
    "help-walk-diagonal": "La esquina 1 es donde empezó, la 2 el final de la pared 1, y así. Sin "
    "diagonal un error se ve, pero no se distingue de uno en la pared de enfrente.",
    "walk-add": "Agregar este cuarto",
    "walk-so-far": "Lo medido hasta ahora",
    "walk-how": "También se puede dictar o escribir aquí, una línea para cada cosa; basta el "
    "micrófono del teclado del teléfono.",
    "help-walk-text": "cuarto Baño · 7', derecha, 5', derecha, 7', derecha, 5' · puerta en la "
    "pared 1 a los 4' ancho 2' 4\" fondo 4 1/2\" hacia Pasillo · diagonal 1 a 3 = 8' 7 1/4\" · "
    "través 1 a 3 = 5' · un giro que no se dice es a la derecha. Una línea se quita borrándola.",
    "walk-see": "Ver cómo cierra",
    "walk-make-again": "Hacer este piso, esa pared calculada con las demás",
    "walk-wrong": "Esto no se entendió:",
    "walk-again": "Mida otra vez antes de confiar en este piso",
    "walk-again-long": "{what}: se leyó {read}, sobran {by} para todo lo demás; cabría {rest} "
    "(probabilidad {chance} %).",
    "walk-again-short": "{what}: se leyó {read}, faltan {by} para todo lo demás; cabría {rest} "
    "(probabilidad {chance} %).",
    "walk-look-at": "{what}: está fuera por {by}.",
    "walk-again-other": "También puede ser {others}.",
    "walk-or": " o ",
    "walk-of-wall": "Pared {wall} de {room}",
    "walk-of-diagonal": "Diagonal {wall} a {other} de {room}",
    "walk-of-across": "El ancho entre las paredes {wall} y {other} de {room}",
    "walk-of-at": "{room}, vano que da a {to}: su lugar",
    "walk-of-width": "{room}, vano que da a {to}: su ancho",
    "walk-of-rest": "{room}, después del vano que da a {to}",
    "walk-of-depth": "{room}, el grueso de la pared en un vano",
    "walk-of-square": "La dirección de la pared {wall} de {room}",
    "walk-outside": "afuera",
    "walk-laid": "{area} en {rooms} cuartos",
    "walk-laid-one": "{area} en un cuarto",
    "walk-picture": "El piso ya cerrado, las paredes numeradas, una flecha donde termina cada "
    "vuelta",
    "walk-key": "A escala después de cerrar. Los aros son primeras esquinas; los números chicos, "
    "paredes.",
    "walk-key-arrows": "Una flecha va de donde empezó la vuelta de un cuarto a donde terminó, "
    "dibujada {times} veces más larga de lo que es, la más larga recortada.",
    "walk-closings": "Cómo cierra cada cuarto",
    "walk-closes": "Termina donde empezó.",
    "walk-closes-reckoned": "Una pared no se midió; se calculó con las demás.",
    "walk-misses": "Termina a {by} de donde empezó, 1 en {ratio}.",
    "walk-not-seen": "Medio pie de más no se vería en la pared {walls}.",
    "walk-not-apart": "Un error en la pared {walls} se vería, pero no se distingue de uno en la "
    "pared de enfrente.",
    "walk-measure-diagonal": "Mida la diagonal de la esquina {one} a la {two}.",
    "walk-measure-across": "Mida el ancho en medio, de la pared {one} a la pared {two}.",
    "walk-by-wall": "Pared por pared",
    "walk-col-wall": "Pared",
    "walk-col-read": "Leído",
    "walk-col-added": "Agregan los mínimos cuadrados",
    "walk-col-simple": "Solo según el largo",
    "walk-blank": "sin medir",
    "help-walk-closings": "Los mínimos cuadrados pesan a la vez todo lo medido: paredes, "
    "diagonales, puertas, esquinas a escuadra. Al lado, la regla sencilla de los topógrafos, que "
    "reparte lo que falta solo según el largo (Bowditch). Cuánto se apartan medidas y esquinas es "
    "estimación nuestra: 4 mm y 0.4 mm por metro, un cuarto de grado.",
    "walk-not-walked": "El vano de {room} da a {to}, que todavía no se ha medido.",
    "walk-one-side": "El vano de {room} a {to} no se encontró desde el otro lado. Dígalo en los "
    "dos cuartos, y termine la línea de cada una de dos puertas con marca A y marca B.",
    "walk-not-joined": "No todos los cuartos están unidos por puertas; los grupos se dibujan lado "
    "a lado, no donde están.",
    "walk-no-way-out": "Ningún vano da afuera: nadie debe quedar encerrado. Diga qué puerta sale "
    "de la casa.",
}
