"""What a ladder of samples lacks and what speaks against it."""

from __future__ import annotations

PHRASES = {
    "No sample is told yet. Lay three cuts side by side, weaker, planned and stronger, in a hidden "
    "place of this slab: an hour more, and the only dose curve that this job will have.":
    "Aún no se ha dicho ninguna muestra. Ponga tres proporciones lado a lado, más débil, planeada "
    "y más fuerte, en un lugar escondido de esta losa: una hora más, y la única curva de dosis que "
    "tendrá este trabajo.",
    "No rung was looked at clean and wet: photograph each after the scrub, while it is wet, with "
    "the target beside it.":
    "Ningún peldaño se miró limpio y mojado: fotografíe cada uno después de tallar, mientras está "
    "mojado, con la carta al lado.",
    "No rung was looked at sealed: photograph each with the floor's own sealer, dry overnight "
    "before it.":
    "Ningún peldaño se miró sellado: fotografíe cada uno con el sellador del piso, seco una noche "
    "antes.",
    "{*1} was not looked at {2}.": "{*1} no se miró {2}.",
    "{*1} were not looked at {2}.": "{*1} no se miraron {2}.",
    "Tell the cut of {*1}: without it nobody knows its dose.":
    "Diga la proporción de {*1}: sin ella nadie sabe su dosis.",
    "Weigh the sprayer before and after, or measure out the mL, and tell the area: what {*1} drank "
    "is not known.":
    "Pese el rociador antes y después, o mida los mL, y diga el área: no se sabe cuánto bebió "
    "{*1}.",
    "First coats were tried at {*1} only: three cuts tell whether more stain still darkens this "
    "slab.":
    "Las primeras manos se probaron solo a {*1}: tres proporciones dicen si más tinte todavía "
    "oscurece esta losa.",
    "No second coat was tried over a first: each coat adds less than the one before, and only a "
    "square with both tells how much.":
    "No se probó una segunda mano sobre una primera: cada mano agrega menos que la anterior, y "
    "solo un cuadro con ambas dice cuánto.",
    "By weight {*1} covered {#2} to {#3} ({#4} to {#5}): the density on the sheet of its stain "
    "makes it one figure.":
    "Por peso {*1} cubrió de {#2} a {#3} ({#4} a {#5}): la densidad en la hoja de su tinte lo hace "
    "una sola cifra.",
    "Time on one sample how long its wet gloss lasts: some minutes' work, and the wet edge of the "
    "floor rests on it.":
    "Tome en una muestra el tiempo que dura su brillo mojado: unos minutos de trabajo, y la orilla "
    "mojada del piso depende de ello.",
    "Without a target in the photo a colour is a guess: photograph {*1} with it.":
    "Sin carta en la foto un color es una estimación: fotografíe {*1} con ella.",
    "No sample is signed as the standard of this floor.":
    "Ninguna muestra está firmada como patrón de este piso.",
    "Look at {*1} by day at the window too.": "Mire {*1} también de día junto a la ventana.",
    "Look at {*1} by the house's own lamps too.":
    "Mire {*1} también con las lámparas de la casa.",
    "What lies beneath {*1} is not told: it stands beside the ladder, and its dose is unknown.":
    "No se dice qué hay debajo de {*1}: queda fuera de la escalera, y su dosis no se sabe.",
    "{*1} is the standard, laid as {*2}; the floor is planned as {*3}. Change the coats, or sample "
    "as planned.":
    "{*1} es el patrón, puesto como {*2}; el piso está planeado como {*3}. Cambie las manos, o "
    "haga una muestra como está planeado.",
    "{*1}: signed and not looked at sealed. A standard is a sealed colour.":
    "{*1}: firmada y no mirada sellada. Un patrón es un color sellado.",
    "{*1} was laid stronger than {*2} and looks lighter {3}: look again before the ladder is used.":
    "{*1} se puso más fuerte que {*2} y se ve más clara {3}: mire de nuevo antes de usar la "
    "escalera.",
    "{*1}: washed after {#2}; the floor will be after about {#3} and comes out deeper.":
    "{*1}: lavada tras {#2}; el piso se lavará tras unas {#3} y sale más oscuro.",
    "Nobody says that {*1} was scrubbed as the floor will be: what washes off is still in its "
    "colour.":
    "Nadie dice que {*1} se haya tallado como se tallará el piso: lo que se lava aún está en su "
    "color.",
    "The white rag of {*1} came off coloured: rinse again before it is judged.":
    "El trapo blanco de {*1} salió con color: enjuague de nuevo antes de juzgarla.",
    "{*1} is sealed with another sealer than the floor will be: no swap.":
    "{*1} está sellada con otro sellador que el del piso: sin cambio.",
    "The slab was poured in {#1} goes, and samples were made in {#2} of its rooms: another pour "
    "drinks and colours in its own way. One sample for each.":
    "La losa se coló en {#1} veces, y se hicieron muestras en {#2} de sus cuartos: otro colado "
    "bebe y toma color a su manera. Una muestra para cada uno.",
    "{*1} has floor of a later pour, and no sample was made in it: another pour drinks and colours "
    "in its own way.":
    "{*1} tiene piso de un colado posterior, y ahí no se hizo muestra: otro colado bebe y toma "
    "color a su manera.",
    "The photo of {*1} is off by 4 or more (CIEDE2000): a tube's light, or a sheet half in shade. "
    "Take it again by day, by a bulb or by a white LED.":
    "La foto de {*1} yerra en 4 o más (CIEDE2000): luz de tubo, o una hoja a medias en la "
    "sombra. Tómela otra vez de día, con foco o con LED blanco.",
    "{*1} is finished by {2}: no sample was made on such a floor.":
    "{*1} tiene acabado de {2}: no se hizo muestra en un piso así.",
    "trowel": "llana", "hard trowel": "llana dura", "float": "flota", "broom": "escoba",
    "{*1}: smaller than 2 by 2 ft (0.6 m). Edges feather and reach into the middle.":
    "{*1}: menor de 2 por 2 ft (0.6 m). Las orillas se desvanecen y llegan al centro.",
}  # fmt: skip
