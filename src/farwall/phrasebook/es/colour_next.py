"""Spanish of the next coat: verdict, reasons, what it rests on, what is missing."""

from __future__ import annotations

PHRASES = {
    # colours in words
    "very light": "muy claro", "light": "claro", "medium": "medio", "dark": "oscuro",
    "very dark": "muy oscuro", "red": "rojo", "brown": "café", "ochre": "ocre", "green": "verde",
    "blue-green": "verde azulado", "blue": "azul", "violet": "violeta",
    # figures
    "under {#1}": "menos de {#1}",
    "over {#1}": "más de {#1}",
    "{#1} at {#2}": "{#1} a {#2}",
    "{#1} L* ({#2} to {#3})": "{#1} L* (de {#2} a {#3})",
    "nothing more": "nada más",
    # what now
    "Wait: lay nothing yet.": "Espere: no ponga nada todavía.",
    "It would then be {@1}, {2}.": "Después sería {@1}, {2}.",
    "Lay {@1}, {2}, in {@3}.": "Ponga {@1}, {2}, en {@3}.",
    "Stop: {1}.": "Alto: {1}.",
    "the floor has the sample's tone": "el piso tiene el tono de la muestra",
    "every coat may come out too dark": "cualquier mano puede salir demasiado oscura",
    "no safe coat is worth its day": "ninguna mano segura vale el día que cuesta",
    "the weakest coat that closes the gap": "la mano más débil que cierra la diferencia",
    "the strongest safe coat; another may follow": "la mano segura más fuerte; puede seguir otra",
    "It is {1}.": "Es {1}.",
    "This is about {@1}.": "Se trata de {@1}.",
    "It is darker than the sample: neutralise now, and lay no further coat.":
    "Está más oscuro que la muestra: neutralice ahora y no ponga otra mano.",
    "Mix {#1}: {#2} of water first, then {#3} of stain; {#4} will likely go on {#5}.":
    "Mezcle {#1}: primero {#2} de agua, luego {#3} de tinte; lo probable es que {#4} vayan en "
    "{#5}.",
    "Chance of too dark: {1}, of {#2} at most.":
    "Probabilidad de demasiado oscuro: {1}, de {#2} como máximo.",
    "Chance of too dark: {1}, of {#2} at most; judged in {@3}, where it comes darkest.":
    "Probabilidad de demasiado oscuro: {1}, de {#2} como máximo; juzgada en {@3}, donde sale más "
    "oscuro.",
    "Chance that it is too dark as it is: {1}.":
    "Probabilidad de que ya esté demasiado oscuro: {1}.",
    "Chance that it is too dark as it is: {1}; judged in {@2}, where it comes darkest.":
    "Probabilidad de que ya esté demasiado oscuro: {1}; juzgada en {@2}, donde sale más oscuro.",
    # why
    "The floor is about as light as sample {@1}: {2} above it.":
    "El piso está más o menos tan claro como la muestra {@1}: {2} por encima.",
    "The floor is {#1} L* ({#2} to {#3}) lighter than sample {@4}.":
    "El piso está {#1} L* (de {#2} a {#3}) más claro que la muestra {@4}.",
    "The floor is {#1} L* ({#2} to {#3}) darker than sample {@4}.":
    "El piso está {#1} L* (de {#2} a {#3}) más oscuro que la muestra {@4}.",
    "It closes {#1} L* of it; {2} stays.": "Cierra {#1} L*; quedan {2}.",
    "After it the floor will look {1}, L* {*2} clean and wet, {#3} CIEDE2000 from the sample.":
    "Después el piso se verá {1}, L* {*2} limpio y mojado, a {#3} CIEDE2000 de la muestra.",
    "Sealed it will likely look {1}, L* {*2}, lightness to within {#3}, by {#4} samples that were "
    "seen wet and then sealed.":
    "Sellado se verá probablemente {1}, L* {*2}, con la claridad a {#3} de más o de menos, según "
    "{#4} muestras que se vieron mojadas y luego selladas.",
    "Sealed it will likely look {1}, L* {*2}, lightness to within {#3}: no sample was seen wet "
    "and then sealed, so that this is a guess.":
    "Sellado se verá probablemente {1}, L* {*2}, con la claridad a {#3} de más o de menos: "
    "ninguna muestra se vio mojada y luego sellada, así que es una conjetura.",
    "As it is it lies {#1} CIEDE2000 from the sample.":
    "Como está queda a {#1} CIEDE2000 de la muestra.",
    # limits
    "Two full coats are on: a third is an accent, a light mist of a weak cut and no more.":
    "Ya hay dos manos completas: una tercera es un acento, una niebla ligera de mezcla débil, "
    "nada más.",
    "A drop stands a minute and longer in {@1}: no stain before it is opened.":
    "Una gota se queda un minuto o más en {@1}: nada de tinte antes de abrirlo.",
    "Before it is laid: a drop of water on the clean floor must go in within a minute, in every "
    "room.":
    "Antes de ponerla: una gota de agua en el piso limpio debe entrar en un minuto, en cada "
    "cuarto.",
    "The drop test: every room that was tested takes water in a minute.":
    "La prueba de la gota: cada cuarto probado toma agua en un minuto.",
    "The floor was looked at clean and wet with this coat on.":
    "El piso se miró limpio y mojado con esta mano puesta.",
    "Look at the floor clean and wet, at six spots, before another coat is decided.":
    "Mire el piso limpio y mojado, en seis lugares, antes de decidir otra mano.",
    "The dwell must be over before the floor is judged: {#1} at the least.":
    "El reposo debe terminar antes de juzgar el piso: {#1} por lo menos.",
    "The floor was looked at {#1} after its coat: colour still comes. Wait until {#2} have "
    "passed, and look again.":
    "El piso se miró {#1} después de su mano: el color aún sale. Espere a que pasen {#2} y mire "
    "otra vez.",
    "The floor was looked at {#1} after its coat; the sample had {#2}, so it may still come "
    "darker.":
    "El piso se miró {#1} después de su mano; la muestra tuvo {#2}, así que aún puede oscurecer.",
    "The floor was looked at {#1} after its coat.": "El piso se miró {#1} después de su mano.",
    "The floor was neutralised: what is left of the base eats the next coat.":
    "El piso se neutralizó: lo que queda de la base se come la siguiente mano.",
    "Rinse until the rag is clean, let it dry, and lay the coat on the sample first.":
    "Enjuague hasta que el trapo salga limpio, deje secar y ponga la mano primero en la muestra.",
    # what else
    "Two of water to one of stain, then look (common practice, no source): {1}, chance of too "
    "dark {2}, {3} stays.":
    "Dos de agua por una de tinte y luego mirar (práctica común, sin fuente): {1}, probabilidad "
    "de demasiado oscuro {2}, quedan {3}.",
    "One strong coat that closes the gap alone: {1}, chance of too dark {2}.":
    "Una sola mano fuerte que cierra la diferencia: {1}, probabilidad de demasiado oscuro {2}.",
    "Two light coats: first {1}, chance of too dark {2}, {3} stays; then look again and decide "
    "the second. Light rather than dark, always.":
    "Dos manos ligeras: primero {1}, probabilidad de demasiado oscuro {2}, quedan {3}; luego mire "
    "otra vez y decida la segunda. Más vale claro que oscuro, siempre.",
    "Stopping now: {1} stays, chance of too dark {2}.":
    "Parar ahora: quedan {1}, probabilidad de demasiado oscuro {2}.",
    "With {@1} instead: {2}, {#3} CIEDE2000 from the sample.":
    "Con {@1} en su lugar: {2}, a {#3} CIEDE2000 de la muestra.",
    # rooms
    "{@1}: {2}; by itself {3}; with the coat above chance of too dark {4}.":
    "{@1}: {2}; por sí solo {3}; con la mano de arriba, probabilidad de demasiado oscuro {4}.",
    "not looked at": "sin mirar",
    "stop": "alto",
    "seen {#1} L* from the sample": "visto a {#1} L* de la muestra",
    # what it rests on
    "Samples seen clean and wet: {#1}; looks at the floor: {#2}.":
    "Muestras vistas limpias y mojadas: {#1}; miradas al piso: {#2}.",
    "Held against sample {@1}, not signed: {2}, L* {*3}.":
    "Comparado con la muestra {@1}, sin firmar: {2}, L* {*3}.",
    "Held against sample {@1}, signed by {*2}: {3}, L* {*4}.":
    "Comparado con la muestra {@1}, firmada por {*2}: {3}, L* {*4}.",
    "Held against sample {@1}, signed by {*2} on {#3}: {4}, L* {*5}.":
    "Comparado con la muestra {@1}, firmada por {*2} el {#3}: {4}, L* {*5}.",
    "On the floor: coat {#1}, {@2} at {#3}, {#4} ({5}: {6}).":
    "En el piso: mano {#1}, {@2} a {#3}, {#4} ({5}: {6}).",
    "the log, litres of field {*1}": "la bitácora, litros del tramo {*1}",
    "the log, litres of coat {@1}": "la bitácora, litros de la mano {@1}",
    "as planned; the log does not tell what was laid":
    "según el plan; la bitácora no dice qué se puso",
    "Nothing is logged as laid on the floor: this is the first coat.":
    "La bitácora no tiene nada puesto en el piso: esta es la primera mano.",
    "How strong the stain is: learned from {#1} closed jobs, then from these samples.":
    "Qué tan fuerte es el tinte: aprendido de {#1} trabajos cerrados y luego de estas muestras.",
    "How strong the stain is: from these samples; before them a guess.":
    "Qué tan fuerte es el tinte: según estas muestras; antes de ellas, una conjetura.",
    "Rooms left out, they have other coats: {#1}.":
    "Cuartos que quedan fuera, tienen otras manos: {#1}.",
    "Too dark: {#1} L* below the sample on a twentieth of the floor; a guess.":
    "Demasiado oscuro: {#1} L* por debajo de la muestra en la vigésima parte del piso; una "
    "conjetura.",
    # what would change it
    "Approve a sample: the one that the floor is to look like, signed.":
    "Apruebe una muestra: aquella a la que el piso se ha de parecer, firmada.",
    "Look at sample {@1}, which the floor is held against, clean and wet, with a target in the "
    "photo.":
    "Mire la muestra {@1}, con la que se compara el piso, limpia y mojada, con la carta de color "
    "en la foto.",
    "Have sample {@1} signed: it was judged right and nobody approved it.":
    "Haga firmar la muestra {@1}: se juzgó buena y nadie la aprobó.",
    "Look at sample {@1} clean and wet: only its sealed look is known, and what sealing moved is "
    "reckoned back.":
    "Mire la muestra {@1} limpia y mojada: solo se conoce sellada, y lo que movió el sellado se "
    "descuenta.",
    "Sample {@1} lies over a sample that nobody told of: tell of it.":
    "La muestra {@1} está sobre una muestra que nadie anotó: anótela.",
    "Sample {@1}: tell its stain, its cut and what it drank, the sprayer weighed before and "
    "after, and how large it is.":
    "Muestra {@1}: anote su tinte, su mezcla y lo que bebió, con el rociador pesado antes y "
    "después, y de qué tamaño es.",
    "Look at sample {@1} clean and wet, with a target in the photo.":
    "Mire la muestra {@1} limpia y mojada, con la carta de color en la foto.",
    "Lay a sample of {@1} on this slab and look at it clean and wet: without one it is not "
    "weighed.":
    "Ponga una muestra de {@1} en esta losa y mírela limpia y mojada: sin ella no se considera.",
    "Look at six spots of the floor clean and wet, with a target in the photo.":
    "Mire seis lugares del piso limpios y mojados, con la carta de color en la foto.",
    "Look at six spots of the floor and not one: how patchy it is, they say.":
    "Mire seis lugares del piso y no uno: ellos dicen qué tan disparejo es.",
    "Put a target into every photo: a colour read without one is a guess.":
    "Ponga la carta de color en cada foto: un color leído sin ella es una conjetura.",
    # no answer
    "No next coat can be told: no sample of this slab is known by dose and wet look.":
    "No se puede decir la siguiente mano: de ninguna muestra de esta losa se conocen la dosis y "
    "el aspecto mojado.",
    "No next coat can be told: there is no sample that the floor is held against.":
    "No se puede decir la siguiente mano: no hay muestra con la que comparar el piso.",
    "No next coat can be told: no sample of its stain was seen on this slab.":
    "No se puede decir la siguiente mano: en esta losa no se vio ninguna muestra de su tinte.",
    "The samples say nothing yet: none is known by dose and wet look.":
    "Las muestras aún no dicen nada: de ninguna se conocen la dosis y el aspecto mojado.",
    # mind
    "Too dark is final: no water and no scrub brings a stained floor back.":
    "Demasiado oscuro es definitivo: ni el agua ni el cepillo devuelven un piso teñido.",
    "The sheet of the stain in hand, local codes and licensed practice win over all of this.":
    "La hoja del tinte en mano, los códigos locales y la práctica con licencia mandan sobre todo "
    "esto.",
    "Lay it in the closet first, on the sample, and look at it clean and wet before the floor.":
    "Póngala primero en el clóset, sobre la muestra, y mírela limpia y mojada antes que el piso.",
    "The chances rest on guesses that were tried on invented floors only.":
    "Las probabilidades se apoyan en conjeturas probadas solo en pisos inventados.",
    "A screen is no floor: hold the sample beside the wet floor, by day and by lamp.":
    "Una pantalla no es un piso: ponga la muestra junto al piso mojado, de día y con lámpara.",
}  # fmt: skip
