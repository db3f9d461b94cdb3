"""Moisture and its tests, patches, sun and dew: what is said of the slab."""

from __future__ import annotations

PHRASES = {
    "Calcium chloride (F1869) reads {#1}": "El cloruro de calcio (F1869) marca {#1}",
    "Calcium chloride (F1869) reads {#1} lb/(1,000 ft²·24 h)":
    "El cloruro de calcio (F1869) marca {#1} lb/(1,000 ft²·24 h)",
    "Calcium chloride (F1869) reads {#1} lb/(1,000 ft²·24 h) in {@2}":
    "El cloruro de calcio (F1869) marca {#1} lb/(1,000 ft²·24 h) en {@2}",
    "A probe (F2170) reads {#1}": "Una sonda (F2170) marca {#1}",
    "A probe (F2170) reads {#1} in {@2}": "Una sonda (F2170) marca {#1} en {@2}",
    "{1}, at most {#2}.": "{1}, a lo más {#2}.",
    "{1}, above what films bear ({#2}).": "{1}, más de lo que aguantan las películas ({#2}).",
    "{1}, above every usual limit.": "{1}, más que todo límite usual.",
    "The sheet (D4263) is wet below.": "La hoja (D4263) está mojada por abajo.",
    "The sheet (D4263) is wet below in {@1}.": "La hoja (D4263) está mojada por abajo en {@1}.",
    "The sheet (D4263) is damp below.": "La hoja (D4263) está húmeda por abajo.",
    "The sheet (D4263) is damp below in {@1}.": "La hoja (D4263) está húmeda por abajo en {@1}.",
    "The meter finds the slab wet.": "El medidor encuentra mojada la losa.",
    "The meter finds the slab wet in {@1}.": "El medidor encuentra mojada la losa en {@1}.",
    "The meter finds damp islands: much water lightens stain, a little darkens it.":
    "El medidor encuentra islas húmedas: mucha agua aclara el tinte, poca lo oscurece.",
    "The meter finds damp islands in {@1}: much water lightens stain, a little darkens it.":
    "El medidor encuentra islas húmedas en {@1}: mucha agua aclara el tinte, poca lo oscurece.",
    "in {@1}": "en {@1}",
    # Tests to do.
    "Hidden places only, away from sun: closets, under cabinets, behind the washer; nothing taped "
    "to the open floor, nothing ground or drilled there.":
    "Solo lugares escondidos, lejos del sol: clósets, bajo gabinetes, detrás de la lavadora; nada "
    "pegado al piso a la vista, nada esmerilado ni taladrado ahí.",
    "Dust is silica: vacuum and respirator.": "El polvo es sílice: aspiradora y respirador.",
    "18 × 18 in (457 mm) of 4 mil film, all edges taped, 16 h or more, both faces looked at.":
    "Plástico de 4 milésimas, 18 × 18 in (457 mm), con cinta en todas las orillas, 16 h o más, "
    "revise las dos caras.",
    "A dry sheet proves no dry slab.": "Una hoja seca no prueba una losa seca.",
    "House at 75 ± 10 °F (24 ± 6 °C) and 50 ± 10 % humidity for 48 h before and during; grind "
    "20 × 20 in (508 mm) lightly, 24 h open, 60 to 72 h covered; never over a patch.":
    "Casa a 75 ± 10 °F (24 ± 6 °C) y 50 ± 10 % de humedad desde 48 h antes y durante; esmerile "
    "ligero 20 × 20 in (508 mm), 24 h abierto, 60 a 72 h cubierto; nunca sobre un parche.",
    "Comparative only (F2659): a grid of 3 ft (0.9 m) in every room, damp islands on the plan.":
    "Solo comparativo (F2659): una cuadrícula de 3 ft (0.9 m) en cada cuarto, islas húmedas en el "
    "plano.",
    "pH of the floor right after the last rinse, before it drains: two for each 500 ft² or part "
    "of it, paper to half a unit; beside the pH of the rinse water itself.":
    "pH del piso justo después del último enjuague, antes de que escurra: dos por cada 500 ft² o "
    "fracción, papel de media unidad; además el pH de la misma agua de enjuague.",
    "First in {@1}.": "Primero en {@1}.",
    "Instead of F1869: holes to {#1} of the slab where it dries from the top only, {#2} from both; "
    "service conditions for 48 h; read after {#3} (72 h by the 2009 text, 24 h by later ones).":
    "En vez de F1869: perforaciones hasta {#1} de la losa donde seca solo por arriba, {#2} por los "
    "dos lados; condiciones de servicio 48 h; lea después de {#3} (72 h según el texto de 2009, "
    "24 h según los posteriores).",
    "Instead of F1869: holes to {#1} of the slab ({#4} in here) where it dries from the top only, "
    "{#2} from both; service conditions for 48 h; read after {#3} (72 h by the 2009 text, 24 h by "
    "later ones).":
    "En vez de F1869: perforaciones hasta {#1} de la losa (aquí {#4} in) donde seca solo por "
    "arriba, {#2} por los dos lados; condiciones de servicio 48 h; lea después de {#3} (72 h según "
    "el texto de 2009, 24 h según los posteriores).",
    # Patches decided.
    "stained along with the floor; shown on the wetted slab and signed.":
    "se tiñe junto con el piso; mostrado en la losa mojada y firmado.",
    "kept dry and masked; sampled, coloured another day with dye or brush, and signed for.":
    "se deja seco y cubierto; con muestra, se colorea otro día con colorante o brocha, y firmado.",
    "ground before all else (silica: shroud, vacuum, respirator); then drops again, and the new "
    "seconds told.":
    "se esmerila antes que todo (sílice: campana, aspiradora, respirador); luego gotas otra vez, y "
    "se anotan los nuevos segundos.",
    "stain it along and disclose it, leave it for another colour, or grind it first? Decide, and "
    "have it signed.":
    "¿teñirlo con el piso y declararlo, dejarlo para otro color o esmerilarlo primero? Decida, y "
    "que lo firmen.",
    "Patch {&1} in {@2}: {3}": "Parche {&1} en {@2}: {3}",
    "Trench {&1} in {@2}: {3}": "Zanja {&1} en {@2}: {3}",
    "Later pour {&1} in {@2}: {3}": "Colado posterior {&1} en {@2}: {3}",
    "Leveller {&1} in {@2}: {3}": "Nivelador {&1} en {@2}: {3}",
    "Or leave it for another colour (`decision`), drawn on the plan: it stays dry.":
    "O déjelo para otro color (`decision`), dibujado en el plano: se queda seco.",
    "The plan walks around {1}, left dry: leave a way past as wide as a person, or stain it along "
    "(`stain and disclose`).":
    "El plan rodea {1}, que se deja seco: deje un paso del ancho de una persona, o tíñalo con el "
    "piso (`stain and disclose`).",
    "patch {&1}": "parche {&1}", "trench {&1}": "zanja {&1}",
    "pour {&1}": "colado {&1}", "leveller {&1}": "nivelador {&1}",
    "Nobody gets past {1}: left dry from wall to wall, it shuts off floor of {@2}.":
    "Nadie pasa por {1}: seco de pared a pared, deja sin paso piso de {@2}.",
    "Stain it along with the floor and disclose it (`stain and disclose`).":
    "Tíñalo junto con el piso y declárelo (`stain and disclose`).",
    "Draw it with a way past it, as wide as a person.":
    "Dibújelo con un paso al lado, del ancho de una persona.",
    # Dew, sun.
    "Dew point {#1}, slab {#2}: {3}.": "Punto de rocío {#1}, losa {#2}: {3}.",
    "Dew point {#1}, slab {#2} at the first stroke: {3}.":
    "Punto de rocío {#1}, losa {#2} en la primera pasada: {3}.",
    "Dew point {#1}, slab {#2} {#4} after the first stroke: {3}.":
    "Punto de rocío {#1}, losa {#2} {#4} después de la primera pasada: {3}.",
    "Air {#1}, slab {#2} at the first stroke: the air deceives, the slab decides.":
    "Aire {#1}, losa {#2} en la primera pasada: el aire engaña, la losa decide.",
    "Air {#1}, slab {#2} {#3} after the first stroke: the air deceives, the slab decides.":
    "Aire {#1}, losa {#2} {#3} después de la primera pasada: el aire engaña, la losa decide.",
    "the slab sweats": "la losa suda",
    "the slab is only {#1} above it": "la losa está apenas {#1} arriba de él",
    "Nothing dries there, and no sealer goes on nearer to the dew point than {#1}, which the rule "
    "rounds to {#2}.":
    "Ahí no seca nada, y no se pone sellador más cerca del punto de rocío que {#1}, que la regla "
    "redondea a {#2}.",
    "Nothing dries there, and no sealer goes on nearer to the dew point than {#1}.":
    "Ahí no seca nada, y no se pone sellador más cerca del punto de rocío que {#1}.",
    "It dries slowly there, if at all, and no sealer goes on nearer to the dew point than {#1}, "
    "which the rule rounds to {#2}.":
    "Ahí seca despacio, si es que seca, y no se pone sellador más cerca del punto de rocío "
    "que {#1}, que la regla redondea a {#2}.",
    "It dries slowly there, if at all, and no sealer goes on nearer to the dew point than "
    "{#1}.":
    "Ahí seca despacio, si es que seca, y no se pone sellador más cerca del punto de rocío "
    "que {#1}.",
    "Sun through the windows warms slabs above what shade and readings tell: {1} (reckoned for a "
    "clear sky, the mean of the room; a guess).":
    "El sol por las ventanas calienta la losa más de lo que dicen la sombra y las lecturas: {1} "
    "(calculado con cielo despejado, promedio del cuarto; estimación).",
    "{@1} by up to {#2} ({#3}) at {#4}": "{@1} hasta {#2} ({#3}) a las {#4}",
    "Open time, the limits of stain and those of sealer are held there to the warmer slab, waits "
    "to the shaded one.":
    "Ahí el tiempo abierto y los límites del tinte y del sellador se rigen por la losa más "
    "caliente, las esperas por la que está a la sombra.",
    "Read the slab in the sun as well.": "Mida también la losa al sol.",
    "one for each {#1}": "una por cada {#1}",
    "So it is where the sun comes in; in the shade {#1}.":
    "Así es donde entra el sol; a la sombra {#1}.",
    "The sun on the floor cannot be reckoned yet.": "Aún no se puede calcular el sol en el piso.",
    "The floor has no window that is not covered.": "El piso no tiene ventana sin tapar.",
    "North is not told.": "No se dijo el norte.",
    "Where the house stands is not told.": "No se dijo dónde está la casa.",
    "No day is told.": "No se dijo el día.",
    "Put starts_at into the job, or say --day 2026-06-21.":
    "Ponga starts_at en el trabajo, o diga --day 2026-06-21.",
    "Give both, or a weather file with --weather.":
    "Dé los dos, o un archivo de clima con --weather.",
    # Since the morning's check, since the plan before.
    "The plan stayed as it was.": "El plan quedó como estaba.",
    "This morning the {1} leaks: tanks are filled, not swapped.":
    "Esta mañana {1} gotea: los tanques se llenan, no se cambian.",
    "This morning the tip gives {#1}, not {#2}.": "Esta mañana la boquilla da {#1}, no {#2}.",
    "This morning the slab's warmest spot is {#1}.":
    "Esta mañana el punto más caliente de la losa está a {#1}.",
    "The tip gives {#1}, enough for {#2} m2/min, but the job says {#3} m2/min.":
    "La boquilla da {#1}, alcanza para {#2} m2/min, pero el trabajo dice {#3} m2/min.",
    "The tip gave {#1} this morning: {#2} m2/min are sprayed, not {#3}.":
    "La boquilla dio {#1} esta mañana: se rocían {#2} m2/min, no {#3}.",
    "Measure both with water, one minute into a jug.":
    "Mida los dos con agua, un minuto en una jarra.",
    "The air is damper than the slab can take up: water condenses on it.":
    "El aire está más húmedo de lo que la losa puede tomar: se condensa agua en ella.",
    "These conditions cannot be reckoned with.": "Con estas condiciones no se puede calcular.",
    "Read the instrument again, and check the unit.":
    "Lea de nuevo el instrumento y revise la unidad.",
}  # fmt: skip
