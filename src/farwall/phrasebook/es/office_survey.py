"""Spanish of the survey: facts of the slab, rooms, photos."""

from __future__ import annotations

PHRASES = {
    "Survey": "Inspección",
    "What was found on the slab, room by room": "Qué se halló en la losa, cuarto por cuarto",
    "Age of the slab": "Edad de la losa", "Pours": "Colados",
    "Film on it": "Película encima", "What lies on it": "Qué tiene encima",
    "Washed with acid": "Lavada con ácido", "Burnished": "Bruñida",
    "Bare sand or stone": "Arena o piedra a la vista", "Salts come back": "Las sales vuelven",
    "pH of the wetted slab": "pH de la losa mojada",
    "Slab, coldest of five": "Losa, la más fría de cinco", "Air": "Aire",
    "Humidity": "Humedad", "Fly ash": "Ceniza volante", "Calcium chloride": "Cloruro de calcio",
    "Colour wished for": "Color que se desea", "Other trades": "Otros oficios",
    "Wash water goes to": "El agua de lavado va a",
    "no film on it": "sin película encima", "a film was taken off": "se quitó una película",
    "curing compound": "curador", "cure-and-seal": "curador-sellador",
    "bare concrete": "concreto desnudo", "glue on it": "con pegamento",
    "self-leveller on it": "con autonivelante", "overlay on it": "con recubrimiento",
    "nowhere on it": "en ninguna parte", "on a part of it": "en una parte",
    "on all of it": "en toda",
    "house closed to others": "casa cerrada a otros", "others by zones": "otros por zonas",
    "others overhead": "otros arriba",
    "sewer, in writing": "alcantarillado, por escrito", "a hauler": "un transportista",
    "septic tank": "fosa séptica", "storm drain only": "solo drenaje pluvial",
    "no way yet": "todavía ninguna salida",
    "a natural range": "una gama natural", "one even colour": "un color parejo",
    "there is": "sí hay", "none found": "no se encontró",
    "Seconds until a drop has gone in. Hatched: more than {#1}, tight. Cross-hatched: more than "
    "{#2}, no stain yet.":
    "Segundos hasta que la gota entró. Rayado: más de {#1}, cerrado. Cruzado: más de {#2}, "
    "todavía sin tinte.",
    "Drop map": "Mapa de gotas",
    "Seconds until a drop has gone in, by room.": "Segundos hasta que la gota entró, por cuarto.",
    "Rooms": "Cuartos", "drops, s": "gotas, s", "sun, draught": "sol, corriente",
    "draught": "corriente de aire", "pH": "pH", "patches, cracks": "parches, grietas",
    "room": "cuarto", "area": "área",
    "Five drops in each room and on each place that looks different, on a clean, dust-free spot: "
    "seconds until they are gone. Under 5 s open, to 20 s good, to 60 s tight, beyond no stain "
    "yet; a dome means a film. Common practice, no source.":
    "Cinco gotas en cada cuarto y en cada parte que se vea distinta, en un punto limpio y sin "
    "polvo: segundos hasta que se van. Menos de 5 s abierta, hasta 20 s buena, hasta 60 s cerrada, "
    "más allá todavía sin tinte; una gota en cúpula es una película. Práctica común, sin fuente.",
    "Photos": "Fotos",
    "Each room from two corners, dry.": "Cada cuarto desde dos esquinas, en seco.",
    "The same corners, floor wetted: ghosts, cures, patches show.":
    "Las mismas esquinas, piso mojado: se ven marcas, curadores, parches.",
    "Every patch, crack, tape line, stain of oil or mud.":
    "Cada parche, grieta, línea de cinta, mancha de aceite o pasta.",
    "Door sills, bottoms of jambs, edges of tubs.":
    "Umbrales, pies de marcos, orillas de tinas.",
    "Slab or ground outside each door; plants.":
    "Losa o suelo afuera de cada puerta; plantas.",
    "Meter and thermometer readings in the frame.":
    "Lecturas de medidor y termómetro en la foto.",
    "Panel, water, drain, parking, where drums may stand.":
    "Tablero, agua, drenaje, estacionamiento, dónde pueden ir los tambos.",
    "A card with date and room in every photo.": "Una tarjeta con fecha y cuarto en cada foto.",
    "surveyed by": "inspeccionado por",
}  # fmt: skip
