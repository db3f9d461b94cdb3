"""Ayuda junto a la cosa: una palabra del oficio en una a tres frases, con su rango."""

from __future__ import annotations

WORDS = {
    "help-what": "¿Qué es esto?",
    "help-drop-test": "Una gota de agua en piso limpio y sin polvo, hasta que entra; cinco gotas "
    "por cuarto, cuenta la más lenta. Menos de 5 s es abierta, hasta 20 s buena, hasta 60 s "
    "cerrada (lije primero), más de eso aún sin tinte (práctica común, sin fuente; el minuto es "
    "de ASTM F3191).",
    "help-slab-age": "Días desde el colado. Los textos dicen de 14 a 42 días; lo prudente es lo "
    "mayor entre la hoja del tinte y 28 días, y decide la muestra, nunca solo la fecha (hojas de "
    "tintes, práctica común).",
    "help-pours": "Cuántas veces se coló concreto. Un agregado o una zanja toman distinto el "
    "mismo tinte: cada uno es un tramo aparte con su propia muestra (prensa del oficio, hojas de "
    "tintes).",
    "help-film": "Película rociada o aplicada en concreto fresco. Una gota parada como cúpula la "
    "delata; el tinte no reacciona a través de ella: hay que quitarla (práctica común, prensa "
    "del oficio).",
    "help-covering": "Pegamento, mástique o loseta viejos dejan fantasmas. El mástique negro y "
    "la loseta vinílica pueden tener asbesto: nunca lije ni raspe antes de una prueba con "
    "licencia (notas de peligro de normas).",
    "help-acid": "Un lavado con ácido gasta la cal que el tinte necesita; esa losa queda pálida. "
    "Nunca ataque con ácido antes de teñir (hojas de tintes).",
    "help-burnished": "Alisada tanto que está oscura, brillante y cerrada: rechaza el tinte. No "
    "hay acuerdo en cómo abrirla; lo que elija, hágalo igual en cada pie cuadrado.",
    "help-sand": "Donde ya no hay pasta, la arena y la piedra quedan a la vista, y la piedra no "
    "se tiñe. Más de un décimo del piso es otro aspecto (práctica común, sin fuente).",
    "help-cracks": "Toda grieta se ve más oscura que el piso. Al dueño le gusta o debe saberlo, "
    "por escrito (contratos del oficio, práctica común).",
    "help-hidden": "Cables tensados, tubos de calefacción o conduit dentro de la losa. Una "
    "sierra o taladro que toca un cable puede matar: ningún corte ni perforación hasta que "
    "planos, sello en la cochera o un escaneo los descarten.",
    "help-thick": "De él depende solo la profundidad de una sonda de humedad: 40 % de una losa "
    "que seca solo por arriba (ASTM F2170).",
    "help-ash": "La ceniza y la escoria atrapan cal, y con la cal reacciona el tinte. Los textos "
    "admiten nada, menos de 10 % o hasta 15 % del aglutinante (hojas de tintes, hojas para "
    "constructores).",
    "help-ticket": "De la nota del premezclado. Unos cinco sacos, 470 lb/yd³ (280 kg/m³), o más "
    "reaccionan con más fuerza; el cloruro de calcio deja manchas oscuras (prensa del oficio).",
    "help-plant": "Su propio nombre para el lugar donde se mezcló: las losas de una planta toman "
    "color parecido y sus trabajos cerrados aprenden de eso.",
    "help-slab-warm": "Mida la losa misma, con termómetro infrarrojo en cinco puntos, uno al "
    "sol. De 55 a 80 °F (13 a 27 °C) está bien; bajo 50 °F (10 °C) o sobre 85 °F (29 °C) no se "
    "tiñe (hojas de tintes, práctica común).",
    "help-air-warm": "El aire de la casa a la altura de la rodilla, no el de afuera. Seca la "
    "orilla junto con la humedad y la corriente; pesa más la temperatura de la losa (hojas de "
    "tintes).",
    "help-damp-air": "Humedad relativa en la casa. El aire seco acorta la vida de una orilla; lo "
    "usual es de 30 a 70 % (práctica común, sin fuente).",
    "help-moving": "Aire sobre el piso mientras se rocía. Una corriente que se siente anda por "
    "50 pies/min (0.25 m/s, estimación) y seca la orilla: los ventiladores sacan aire por una "
    "ventana, lejos del piso.",
    "help-tile": "Una loseta mojada junto al piso, pesada dos veces con media hora entre medio: "
    "lo que perdió, por su área y el tiempo, dice cuánta sed tiene el aire. Cuenta donde una "
    "espera vigilada dijo también la suya.",
    "help-frost": "Aire caliente sobre suelo helado seca la cara de la losa y lo demás no "
    "(prensa del oficio).",
    "help-fans": "Los vapores ácidos deben salir: ventiladores hacia afuera por una ventana, "
    "entrada de aire lejos y lenta. En un cuarto cerrado basta poca parte del ácido para pasar "
    "el límite legal de 5 ppm (OSHA): ventilación y respirador no son opcionales.",
    "help-heater": "Un calentador de gas cuyos humos se quedan da agua, hollín y monóxido de "
    "carbono: aquí no va (prensa del oficio).",
    "help-patch": "El mortero de reparación, las zanjas y los colados posteriores nunca igualan "
    "al resto. Tíñalos también y declárelos, déjelos secos para otro color, o desbaste y pruebe "
    "gotas de nuevo; que se firme (hojas de tintes, prensa del oficio).",
    "help-salts": "El agua sube sales blancas. Si vuelven después de cepillar, hay humedad en "
    "camino: encuéntrela antes de sellar (práctica común).",
    "help-slab-ph": "La pasta fresca marca unos 12.5, una superficie vieja de 9 a 11 (de "
    "memoria). Bajo 9 queda poca cal arriba: espere color pálido y manchado (práctica común).",
    "help-moisture": "El medidor compara en una cuadrícula de 3 pies. Plástico, plato y sonda "
    "dejan marcas: solo en clósets. Un plástico seco no prueba una losa seca. El plato mide "
    "libras de vapor, 3 o 5 son límites usuales; la sonda, humedad adentro (ASTM D4263, F1869, "
    "F2170).",
    "help-north": "Dónde queda el norte en el plano: 0 es arriba, 90 a la derecha. Con él se "
    "calculan las manchas de sol, y ahí la orilla seca en cerca de la mitad del tiempo (práctica "
    "común).",
    "help-place": "Grados de la casa, como 41.6 y −93.6, y su zona horaria, como "
    "America/Chicago. Los da un mapa; un décimo de grado basta para el sol.",
    "help-window": "Antepecho y alto dan la mancha de sol en el piso; el espesor del muro le "
    "hace sombra. Por la ventana principal se juzga el piso: las paradas no van en su luz "
    "rasante.",
    "help-colour": "El tinte nunca es parejo: como piedra o cuero viejo. Quien quiera un color "
    "parejo, o el de la carta, debe oír antes de otro piso (prensa del oficio).",
    "help-trades": "Otros que trabajan arriba gotean, pisan y abren puertas. La casa se cierra "
    "de cuatro a cinco días, o los cuartos por zonas (práctica común).",
    "help-waste": "El agua de enjuague lleva ácido y metales. Al alcantarillado solo con permiso "
    "escrito de la empresa; nunca al pluvial, la calle, la tierra o una fosa séptica. Valen las "
    "reglas locales.",
    "help-sample": "Un rincón de clóset, 2 por 2 pies (0.6 m) o más, una por colado, acabado, "
    "color y proporción, con todos los pasos del trabajo. Tablas y muestrarios no dicen nada de "
    "esta losa (prensa del oficio).",
    "help-sheen-loss": "Minutos hasta que se va el brillo húmedo: eso vive aquí una orilla. Son "
    "cuatro minutos de trabajo y quitan la mayor estimación del plan. Rendimiento: piso entre lo "
    "que bebió.",
    "help-sample-weather": "Cómo estaba todo cuando la muestra perdió el brillo: con eso el "
    "tiempo se traslada al día del trabajo.",
    "help-scrub": "Talle la muestra tan fuerte como se tallará el piso. El color que se lava "
    "estaba solo encima: abra la losa y haga otra muestra (prensa del oficio, hojas de tintes).",
    "help-signed": "La muestra sellada en esta losa es la medida del trabajo. Vista de día y con "
    "lámpara, fotografiada, firmada (prensa del oficio).",
    "help-cut": "Partes de tinte por partes de agua, por volumen, primero el tinte: 1:2 es uno "
    "de tinte y dos de agua. Primero el agua en la tina, el tinte al agua, nunca al revés. "
    "Usual: 1:1, luego 1:2 (práctica común).",
    "help-coat-from": "Una mano que seguiría después del anochecer, o de la puesta del sol donde "
    "se sabe el lugar de la casa, espera a la mañana siguiente: los bordes se juzgan a ojo. Anote "
    "aquí una hora para esperar más; una hora sin luz se toma como está, así que tenga lámparas "
    "que alumbren a ras del piso (práctica común).",
    "help-added-acid": "El ácido muriático muerde una losa dura, y la hoja del fabricante ya no "
    "cubre la mezcla; suben vapores. Nunca con un tinte que nombre cromato u oxidante. Abrir la "
    "losa parejo es el camino honesto (práctica común).",
    "help-lot": "El llenado del fabricante, impreso en la botella. Los lotes difieren: todos los "
    "de una mano se juntan y se revuelven (práctica común).",
    "help-stain-sheet": "De las secciones 3 y 9 de la hoja de seguridad de esta botella. El "
    "cromato cambia todo: exposición, desechos, qué se puede mezclar (OSHA). Usual: menos de 10 "
    "a 20 % de ácido, densidad 1.3 (hojas de tintes).",
    "help-container": "Lo que vende la tienda y cuánto cuesta. Sin eso vale un precio inventado.",
    "help-currency": "Tres letras, como USD.",
    "help-day": "La primera pasada, con el reloj de la casa. Los cuartos adonde llega el sol se "
    "rocían antes o después de él.",
    "help-helper": "El ayudante llena y cambia tanques, cuida orilla y reloj, y está ahí si algo "
    "sale mal. Dos personas por lo menos es la regla del oficio (práctica común, sin fuente).",
    "help-second-adult": "Nadie trabaja solo con ácido, ni por un cuarto.",
    "help-tank": "Una carga de la rociadora, toda de plástico, sin metal en lanza ni válvula: lo "
    "usual es de 2 a 3.5 gal (7.6 a 13 L) (práctica común, sin fuente).",
    "help-tip": "La prueba de un minuto: agua en la rociadora, los bombazos de siempre, rocíe un "
    "minuto en una jarra medidora, lea la jarra. 0.2 gal/min dan 40 ft²/min a 200 "
    "ft²/gal; 0.75 L/min dan 3.7 m²/min a 4.9 m²/L (calculado).",
    "help-band": "La franja que se rocía de pared a pared antes de dar el paso atrás: de 3 a 4 "
    "pies (0.9 a 1.2 m) (práctica común, sin fuente).",
    "help-rate": "Piso que una persona rocía por minuto: de 20 a 45 ft² (1.9 a 4.2 m²) solo "
    "rociando, de 8 a 22 ft² (0.7 a 2 m²) tallando (práctica común, sin fuente). Marque 100 ft² "
    "(10 m²), rocíe agua, tome el tiempo.",
    "help-refill": "De la última pasada a la siguiente cuando quien rocía llena el tanque. La "
    "orilla que espera envejece todo ese tiempo (estimación hasta que lo cronometre).",
    "help-swap": "De la última pasada a la siguiente cuando un ayudante trae un tanque lleno "
    "(estimación hasta que lo cronometre).",
    "help-overlap": "La franja nueva entra de 4 a 12 pulg (10 a 30 cm) en la orilla húmeda de la "
    "anterior, para que se fundan (práctica común, sin fuente).",
    "help-reach": "Hasta dónde llega una pasada desde donde uno está: decide desde dónde se "
    "alcanza una esquina (estimación).",
    "help-walk": "Cargando un tanque lleno, sin rociar (estimación).",
    "help-spare": "Una segunda rociadora igual, llena: se cambia por la otra y salva el día "
    "cuando falla un sello.",
    "help-language": "Los papeles pueden hablar otro idioma que esta pantalla: el de quien los "
    "lleva a la losa.",
    "help-units": "Lo que se muestra y se escribe; lo guardado sigue igual. En los ajustes: las de "
    "casas nuevas y las de las páginas de la empresa, que siguen a la casa más nueva hasta "
    "guardarlo.",
    "help-sure": "De cien trabajos así, en cuántos ningún tramo debe quedarse sin mezcla. 99 es "
    "estimación nuestra; más pide más tinte en la obra.",
    "help-bands": "Las mejores franjas siguen la forma del cuarto y dejan las orillas más "
    "jóvenes; las sencillas son más fáciles de caminar.",
    "help-notes": "Lo que deba estar en el papel que va a la losa.",
    "help-rooms": "De pared interior a pared interior, dos medidas por cuarto. Si tiene otra "
    "forma: tome ahora el rectángulo más parecido y traiga luego un dibujo.",
    "help-leads": "La puerta por la que se sale del cuarto hacia la salida. Una puerta esconde "
    "una junta bajo su hoja, un vano con marco la muestra un poco, uno ancho no esconde nada "
    "(práctica común).",
}
