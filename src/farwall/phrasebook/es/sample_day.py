"""Spanish of the sample day: its steps, what is asked, the paper."""

from __future__ import annotations

PHRASES = {
    "Clean it as the floor will be": "Límpielo como se limpiará el piso",
    "cleaned": "limpio",
    "Scrape, vacuum, scrub and rinse the squares as the floor will be cleaned, and let them dry "
    "overnight. No acid, no etching, no tape on the slab.":
    "Raspe, aspire, talle y enjuague los cuadros como se limpiará el piso, y déjelos secar una "
    "noche. Sin ácido, sin grabar, sin cinta sobre la losa.",
    "Drop test": "Prueba de gotas",
    "drop": "gota",
    "Five drops of water beside the squares: how many seconds until the middle one has gone in. A "
    "bead that stands for a minute: no stain here yet, find the film.":
    "Cinco gotas de agua junto a los cuadros: cuántos segundos hasta que entre la de en medio. "
    "Una gota que se queda un minuto: aquí aún no se tiñe, busque la película.",
    "The slab, by infrared": "La losa, por infrarrojo",
    "Point the infrared gun at the squares, not at the air. Below 50 °F (10 °C) or above 85 °F "
    "(29 °C) no sample tells of this floor.":
    "Apunte el termómetro infrarrojo a los cuadros, no al aire. Bajo 50 °F (10 °C) o sobre 85 °F "
    "(29 °C) ninguna muestra dice algo de este piso.",
    "The air": "El aire",
    "air": "aire",
    "Air and humidity beside the squares, an arm's length over the slab.":
    "Aire y humedad junto a los cuadros, a un brazo sobre la losa.",
    "Mix, weigh, lay": "Mezcle, pese, ponga",
    "lay": "poner",
    "Mix in the jug, pour all of it into the empty, rinsed sprayer and spray into the jug until "
    "it comes. Weigh the sprayer, in grams. Lay the square as the floor will be laid: same "
    "person, same tip, same motion. Tap when it is laid: the stopwatch runs.":
    "Mezcle en la jarra, vierta todo en el rociador vacío y enjuagado y rocíe en la jarra hasta "
    "que salga. Pese el rociador, en gramos. Ponga el cuadro como se pondrá el piso: la misma "
    "persona, la misma boquilla, el mismo movimiento. Toque cuando esté puesto: corre el "
    "cronómetro.",
    "Water first, then stain into the water, never the other way; never with bleach or ammonia. "
    "Goggles, face shield, gloves, sleeves; a fit-tested respirator with acid-gas and P100 "
    "cartridges. A window open, nobody alone, eyewash within 10 seconds.":
    "Primero el agua, luego el tinte en el agua, nunca al revés; nunca con cloro ni amoníaco. "
    "Gafas cerradas, careta, guantes, mangas; respirador probado a su cara con cartuchos de gas "
    "ácido y P100. Una ventana abierta, nadie a solas, lavaojos a 10 segundos.",
    "Weigh the sprayer again": "Pese el rociador de nuevo",
    "weigh": "pesar",
    "Weigh the same sprayer, closed and wiped: what is missing lies on the square. Then empty and "
    "rinse it for the next cut.":
    "Pese el mismo rociador, cerrado y seco por fuera: lo que falta está en el cuadro. Luego "
    "vacíelo y enjuáguelo para la próxima proporción.",
    "Wait for the gloss to go": "Espere a que se vaya el brillo",
    "sheen": "brillo",
    "Kneel and look low over the square against the light. Tap at the moment when the wet gloss "
    "is gone in its middle: that is how long an edge stays live.":
    "Arrodíllese y mire al ras del cuadro contra la luz. Toque en el momento en que se va el "
    "brillo mojado en el centro: tanto vive una orilla.",
    "Stay on the side that the air comes from.": "Quédese del lado de donde viene el aire.",
    "Wait until it is dry": "Espere a que seque",
    "Tap when the colour is even and light and no dark island is left. It looks ugly now; that "
    "means nothing.":
    "Toque cuando el color sea parejo y claro y no quede ninguna isla oscura. Ahora se ve feo; "
    "eso no dice nada.",
    "Scrub as hard as the floor": "Talle tan fuerte como el piso",
    "wash": "lavar",
    "After the floor's own dwell: vacuum the powder, wet it with neutraliser, scrub it as hard "
    "and as often as the floor will be scrubbed, take it up and rinse it with changed water. "
    "Strip and white rag; does the colour hold?":
    "Tras el reposo del propio piso: aspire el polvo, mójelo con neutralizador, tállelo tan "
    "fuerte y tantas veces como se tallará el piso, recójalo y enjuáguelo con agua cambiada. Tira "
    "y trapo blanco; ¿aguanta el color?",
    "The water is waste: never to a storm drain, soil or septic tank. Gloves and goggles stay on. "
    "Ammonia never into fresh acid.":
    "El agua es residuo: nunca a un drenaje pluvial, al suelo ni a la fosa séptica. Guantes y "
    "gafas siguen puestos. Amoníaco nunca en ácido fresco.",
    "Look at it clean and wet": "Mírelo limpio y mojado",
    "wet look": "aspecto mojado",
    "Mop it wet and take the photo: the square fills its middle, the target lies at its edge in "
    "the same light, no glare. Clean and wet is near the sealed colour.":
    "Mójelo y tome la foto: el cuadro llena el centro, la carta queda en su orilla con la misma "
    "luz, sin reflejos. Limpio y mojado se acerca al color sellado.",
    "Dry overnight, then seal": "Seque una noche, luego selle",
    "seal": "sellar",
    "Overnight and bone dry; then the floor's own sealer, as many coats as the floor will have, "
    "no other one.":
    "Una noche y bien seco; luego el sellador del propio piso, tantas manos como llevará el piso, "
    "ningún otro.",
    "By the sealer's label: slab warm enough, pilot lights off, air moving.":
    "Según la etiqueta del sellador: losa bastante tibia, pilotos apagados, aire en movimiento.",
    "Look at it sealed, by day": "Mírelo sellado, de día",
    "by day": "de día",
    "At the window, by day, with the target beside it: photo, and look at the middle half; edges "
    "feather.":
    "Junto a la ventana, de día, con la carta al lado: foto, y mire la mitad del centro; las "
    "orillas se desvanecen.",
    "Look at it sealed, by lamp": "Mírelo sellado, con lámpara",
    "by lamp": "con lámpara",
    "At night under the house's own lamps: photo with the target beside it.":
    "De noche bajo las lámparas de la casa: foto con la carta al lado.",
    "Judge it": "Júzguelo",
    "judge": "juzgar",
    "Sealed against what is wished, with the owner: too light, right, or too dark. A chart or a "
    "chip is no sample.":
    "Sellado contra lo que se desea, con el dueño: muy claro, bien o muy oscuro. Una carta o "
    "ficha no es muestra.",
    "Sign the standard": "Firme el patrón",
    "sign": "firmar",
    "The owner signs the card of the sample that is right: it is the standard of this floor, with "
    "its natural range. Write the name, photograph the card.":
    "El dueño firma la tarjeta de la muestra que está bien: es el patrón de este piso, con su "
    "variación natural. Escriba el nombre, fotografíe la tarjeta.",
    "Done": "Hecho",
    "done": "hecho",
    "Nothing more is to be done at this sample.": "En esta muestra no queda nada por hacer.",
    "Left out": "Omitida",
    "left out": "omitida",
    "The square beneath was washed before this coat was laid.":
    "El cuadro de abajo se lavó antes de poner esta mano.",
    "what was laid": "lo puesto",
    "slab, by infrared": "losa, por infrarrojo",
    "humidity": "humedad",
    "drop goes in": "la gota entra",
    "gloss gone after": "brillo ido tras",
    "dry after": "seco tras",
    "scrubs": "talladas",
    "pH after": "pH después",
    "white rag": "trapo blanco",
    "whether the colour holds": "si el color aguanta",
    "photo clean and wet": "foto limpio y mojado",
    "sealer": "sellador",
    "photo sealed, by day": "foto sellado, de día",
    "photo sealed, by lamp": "foto sellado, con lámpara",
    "the verdict": "el juicio",
    "It holds: go on.": "Aguanta: siga.",
    "Weak: a second coat, or open the surface evenly and make the sample anew.":
    "Débil: otra mano, o abra la superficie pareja y haga la muestra de nuevo.",
    "It washes off: the slab does not take it. Open the surface, or another floor.":
    "Se lava: la losa no lo toma. Abra la superficie, u otro piso.",
    "Sample day": "Día de muestras",
    "Three cuts side by side on this slab, every step as on the floor":
    "Tres proporciones lado a lado en esta losa, cada paso como en el piso",
    "Before the first cut": "Antes de la primera proporción",
    "Then, at every cut": "Luego, en cada proporción",
    "slab, °F": "losa, °F",
    "slab, °C": "losa, °C",
    "air, °F; humidity, %": "aire, °F; humedad, %",
    "air, °C; humidity, %": "aire, °C; humedad, %",
    "until the scrub": "hasta tallar",
    "until the sealer": "hasta el sellador",
    "in all": "en total",
    "water, then stain into it": "agua, luego el tinte en ella",
    "size": "tamaño",
    "sprayer before, g": "rociador antes, g",
    "laid at": "puesta a las",
    "sprayer after, g": "rociador después, g",
    "washed at": "lavada a las",
    "holds, weak, washes off": "aguanta, débil, se lava",
    "sealed at, with": "sellada a las, con",
    "light, right, dark": "clara, bien, oscura",
    "Place": "Lugar",
    "Over": "Sobre",
    "neat": "puro",
    "how sure": "qué tan seguro",
    "step": "paso", "how": "cómo", "low – likely – high": "bajo – probable – alto",
}  # fmt: skip
