"""Palabras de la página en que se pregunta por un dibujo."""

from __future__ import annotations

WORDS = {
    "brought-title": "{name}: antes de ser una casa",
    "brought-told": "El dibujo se leyó. Algo en él solo lo puede decir usted; lo demás se corrige "
    "sobre el piso.",
    "brought-refused": "Todavía no se trajo:",
    "brought-storey": "¿Qué planta es este trabajo?",
    "brought-one": "Un trabajo es una planta. Las otras también se pueden traer desde esta página, "
    "una por una.",
    "brought-there": "ya está en el libro",
    "brought-room": "1 cuarto",
    "brought-rooms": "{n} cuartos",
    "brought-area": "{m2} m² ({ft2} ft²)",
    "brought-height": "piso a {m} m ({ft} pies)",
    "brought-scale": "¿Qué tan grande es?",
    "brought-scale-told": "El dibujo no dice cuánto mide su unidad. Escriba una medida que "
    "conozca, de pared a pared, o escoja la unidad; vale la medida.",
    "brought-measure": "Se midió",
    "brought-across": "todo el piso, de izquierda a derecha",
    "brought-up": "todo el piso, de abajo a arriba",
    "brought-across-of": "{room}, de izquierda a derecha",
    "brought-up-of": "{room}, de abajo a arriba",
    "brought-length": "Medida",
    "brought-length-like": "12.65 m",
    "brought-unit": "O su unidad",
    "brought-unit-none": "no se sabe",
    "brought-go": "Traerla",
    "brought-seen": "Lo que se leyó",
    "brought-picture": "Los cuartos de {name} como se leyeron, planta por planta",
    "brought-notes": "Lo que el lector pregunta y deja abierto",
    "brought-notes-told": "Se contesta sobre el piso, una cosa tras otra.",
    "brought-no-storey": "no se escogió planta. Escoja la que se va a teñir.",
    "brought-no-length": "“{text}” no es la medida de un piso. Escríbala como 41' 6\" o 12.65 m.",
    "brought-no-measure": "lo que se midió no está en la lista. Escójalo ahí.",
    "brought-no-scale": "sin medida ni unidad no se sabe el área. Escriba una o escoja la unidad.",
    "stated-size-text": "Medidas escritas en el dibujo: {agree} de {rooms} cuartos coinciden "
    "con el contorno; dice {stated}, dibujado {drawn}.",
    "stated-why-size-text": "Una medida escrita está redondeada y dice dos lados de un cuarto que "
    "puede tener más. Vale el contorno.",
    "stated-net": "Áreas netas del archivo: {agree} de {rooms} cuartos coinciden con el "
    "contorno; dice {stated}, dibujado {drawn}.",
    "stated-why-net": "Las netas pueden dejar fuera el repello, lo empotrado o lo de poca "
    "altura. Vale el contorno.",
    "stated-gross": "Áreas brutas del archivo: {agree} de {rooms} cuartos coinciden con el "
    "contorno; dice {stated}, dibujado {drawn}.",
    "stated-why-gross": "Las brutas pueden contar las paredes. Vale el contorno.",
    "stated-wall-centre": "Áreas a ejes de pared del archivo: {agree} de {rooms} cuartos "
    "coinciden con el contorno; dice {stated}, dibujado {drawn}.",
    "stated-why-wall-centre": "Llegan a la mitad de las paredes; el contorno es el piso entre "
    "ellas, y ese vale.",
    "brought-stated": "Medidas que dice el archivo",
}
