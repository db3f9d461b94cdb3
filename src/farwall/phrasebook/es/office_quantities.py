"""Spanish of the list of quantities: what its lines are called, their rules, what to mind."""

from __future__ import annotations

PHRASES = {
    # what a line is called
    "muriatic acid": "ácido muriático",
    "masking paper": "papel para cubrir", "Masking paper": "Papel para cubrir",
    "Masking film": "Plástico para cubrir",
    "rolls of cling film": "rollos de plástico adherente",
    "foam strip for doors": "tira de espuma para puertas",
    "plugs for drains": "tapones para desagües",
    "towels for dams at outside doors": "toallas para represas en puertas exteriores",
    "alkaline cleaner": "limpiador alcalino",
    "mop heads": "cabezas de trapeador",
    "sealer applicators": "aplicadores de sellador",
    "pairs of rubber boots": "pares de botas de hule",
    "new sprayers": "rociadoras nuevas",
    "spare tip": "boquilla de repuesto",
    "spare wand": "lanza de repuesto",
    "set of seals and O-rings": "juego de sellos y empaques",
    "spill kit": "equipo para derrames",
    "eyewash for 15 min": "lavaojos para 15 min",
    "suits": "trajes", "tape": "cinta", "drums": "tambos", "water": "agua", "sealer": "sellador",
    "rinses": "enjuagues", "scrubbing": "tallado", "to cut the stain": "para rebajar el tinte",
    "pail and spill": "cubeta y derrame", "log-normal": "log-normal",
    # heads of the list
    "To stain": "Para teñir", "To mask": "Para enmascarar",
    "To neutralise and wash": "Para neutralizar y lavar", "To seal": "Para sellar",
    "To wear": "Para ponerse", "Sprayers and tools": "Rociadores y herramienta",
    # stain
    "{1}: {#2} of mix at {#3} on {#4}, wet laps counted: {#5} of stain.":
    "{1}: {#2} de mezcla a {#3} en {#4}, contados los traslapes: {#5} de tinte.",
    "Ready so that it is enough {#1} times in 100.": "Lo que alcanza {#1} de cada 100 veces.",
    "Finishers take {#1} more than the need: {#2}.":
    "Los acabadores llevan {#1} más de lo que se necesita: {#2}.",
    "Its lots are boxed before any of it is cut.":
    "Sus lotes se juntan antes de rebajar nada.",
    "One lot; all of a field out of one boxed batch.":
    "Un solo lote; todo un tramo de una misma mezcla junta.",
    "Added to the mix of {*1}, as told.": "Se agrega a la mezcla de {*1}, como se dijo.",
    "The maker's sheet does not cover it: a sample with this very mix first.":
    "La hoja del fabricante no lo cubre: primero una muestra con esta misma mezcla.",
    # mask
    "foam strip": "tira de espuma", "drain plug": "tapón de desagüe", "eyewash": "lavaojos",
    "removable putty": "masilla removible", "doors and things": "puertas y otras cosas",
    "film in dams": "plástico en represas", "{#1} tall": "{#1} de alto",
    "A strip along the foot of {#1} of edge, on the wall and never on the slab; joins {#2}, the "
    "upper edge every {#3}, {#4} of gaps at doors.":
    "Una tira al pie de {#1} de orilla, en la pared y nunca en la losa; uniones {#2}, el borde de "
    "arriba cada {#3}, {#4} de rendijas de puertas.",
    "A strip along the foot of {#1} of edge, on the wall and never on the slab; joins {#2}, the "
    "upper edge every {#3}.":
    "Una tira al pie de {#1} de orilla, en la pared y nunca en la losa; uniones {#2}, el borde de "
    "arriba cada {#3}.",
    "A tenth of a roll is lost.": "Se pierde un décimo del rollo.",
    "{#1} of it, laps of {#2} at joins and a tenth lost; above {#3} a second strip.":
    "{#1} en total, traslapes de {#2} en las uniones y un décimo perdido; arriba de {#3}, una "
    "segunda tira.",
    "Dams {#1}.": "Represas {#1}.",
    "{#1} of edge that is masked no taller than {#2}.":
    "{#1} de orilla que se cubre a no más de {#2} de alto.",
    "{#1} rolls of cling film for each {#2} of floor; sides of frames {#3}, jambs and heads "
    "{#4}.":
    "{#1} rollos de plástico adherente por cada {#2} de piso; lados de marcos {#3}, jambas y "
    "cabezales {#4}.",
    "A rope of it around the foot of each of {#1} jambs: end grain drinks stain from below.":
    "Un cordón al pie de cada una de {#1} jambas: la testa de la madera chupa tinte desde abajo.",
    "Doors {#1}, gaps {#2}, both sides and the head: pressed in, as chosen, in place of tape.":
    "Puertas {#1}, rendijas {#2}, los dos lados y el cabezal: se mete a presión, como se eligió, "
    "en lugar de la cinta.",
    "Drains and floor boxes {#1}, as told: none may take stain or rinse water.":
    "Desagües y cajas de piso {#1}, como se dijo: ninguno puede recibir tinte ni agua de enjuague.",
    "Outside doors {#1}: the slab outside is wetted, film and {#2} towels lie in each.":
    "Puertas exteriores {#1}: se moja la losa de afuera; en cada una van plástico y {#2} toallas.",
    # wash
    "Floor {#1}, open pail {#2}, a tank of mix spilled {#3}.":
    "Piso {#1}, cubeta abierta {#2}, un tanque de mezcla derramado {#3}.",
    "Open pail {#1}, a tank of mix spilled {#2}.":
    "Cubeta abierta {#1}, un tanque de mezcla derramado {#2}.",
    "Finishers take {#1} along; the larger of both is ready.":
    "Los acabadores llevan {#1}; se tiene lo que sea más.",
    "A whole tub left over asks {#1}.": "Una tina entera que sobra pide {#1}.",
    "{#1} of neutraliser on {#2}.": "{#1} de neutralizador en {#2}.",
    "Half a cup in a gallon, 1 part in 32; {#1} passes of {#2}.":
    "Media taza en un galón, 1 parte en 32; {#1} pasadas de {#2}.",
    "31 mL in a litre, 1 part in 32; {#1} passes of {#2}.":
    "31 mL en un litro, 1 parte en 32; {#1} pasadas de {#2}.",
    "Its label wins.": "Manda su etiqueta.",
    "All rinses {#1}, scrubbing {#2}, to cut the stain {#3}, on {#4}.":
    "Todos los enjuagues {#1}, tallado {#2}, para rebajar el tinte {#3}, en {#4}.",
    "{#1} of rinse water, {#2} to a drum: {#3}, and {#4} spare.":
    "{#1} de agua de enjuague, {#2} por tambo: {#3}, y {#4} de repuesto.",
    "{#1} of rinse water, {#2} to a drum: {#3}, and {#4} spare; {#5} are there.":
    "{#1} de agua de enjuague, {#2} por tambo: {#3}, y {#4} de repuesto; ya hay {#5}.",
    "{#1}, usually {#2}, for each {#3} of floor.":
    "{#1}, por lo común {#2}, por cada {#3} de piso.",
    "20 and more for each {#1}, and never fewer than the readings after the last rinse, {#2}.":
    "20 o más por cada {#1}, y nunca menos que las lecturas tras el último enjuague, {#2}.",
    # seal
    "Coats {#1}, on {#2} at {#3}, laps of {#4} counted; ready so that it is enough {#5} times in "
    "100.":
    "Manos {#1}, en {#2} a {#3}, contados traslapes de {#4}; lo que alcanza {#5} de cada 100 "
    "veces.",
    "The seal day reckons it band by band.": "El día de sellar lo calcula franja por franja.",
    "{#1} thin coats on {#2} at {#3}, up to {#4}; ready at {#5}, and {#6} for the owner.":
    "{#1} manos delgadas en {#2} a {#3}, hasta {#4}; se tiene para {#5}, y {#6} para el dueño.",
    "One for each coat, {#1}, and a spare.":
    "Uno por cada mano, {#1}, y uno de repuesto.",
    # wear
    "{#1} pairs of chemical gloves for each: {2}.":
    "{#1} pares de guantes para químicos por cada uno: {2}.",
    "A suit or apron for each: {1}.": "Un traje o delantal por cada uno: {1}.",
    "{#1} person-days, as told": "{#1} días por persona, como se dijo",
    "{#1} with acid on {#2}, {#3} person-days, the wash day among them":
    "{#1} con ácido en {#2}, {#3} días por persona, con el día de lavar",
    "One for each of {#1} who work with acid; they are kept.":
    "Uno para cada uno de los {#1} que trabajan con ácido; se guardan.",
    "One for the one who works with acid; they are kept.":
    "Uno para quien trabaja con ácido; se guarda.",
    "By the maker's schedule as told, {#1} of spraying: {#2} new, and a spare pair.":
    "Por el plan de cambio del fabricante, como se dijo, {#1} de rociado: {#2} nuevos, y un par "
    "de repuesto.",
    "A pair, acid gas and P100, for each who breathes the vapour and day: {#1}.":
    "Un par, gas ácido y P100, por día y por cada uno que respira el vapor: {#1}.",
    "The maker's schedule wins, never the nose.":
    "Manda el plan de cambio del fabricante, nunca el olfato.",
    # tools
    "{#1} alike, one of them spare: one that fails in mid-field leaves a seam.":
    "{#1} iguales, una de repuesto: una que falla a medio tramo deja una marca.",
    "{#1} sound in the van.": "{#1} sanas en la camioneta.",
    "A cheap one lasts {#1} jobs, a good one, flushed daily with {#2} of water, {#3}.":
    "Una barata dura {#1} trabajos; una buena, enjuagada cada día con {#2} de agua, {#3}.",
    "How many are bought was told.": "Cuántas se compran ya se dijo.",
    "One more of the tip that was measured, the same number.":
    "Una más de la boquilla que se midió, del mismo número.",
    "All plastic, no metal in wand, spring or valve.":
    "Toda de plástico, sin metal en lanza, resorte ni válvula.",
    "Made for acid; greased with silicone.": "Hechos para ácido; engrasados con silicón.",
    "One on site, open beside the mixing tub; finishers count one for each {#1}.":
    "Uno en la obra, abierto junto a la tina de mezclar; los acabadores cuentan uno por cada {#1}.",
    "In reach within 10 s, running 15 min: {#1} and more, or a tempered hose.":
    "Al alcance en 10 s, que corra 15 min: {#1} o más, o una manguera de agua templada.",
    "Two squeeze bottles are not enough.": "Dos botellas de apretar no bastan.",
    # what to mind
    "Nobody told after how many minutes the maker's schedule has cartridges changed: a pair for "
    "each person and day is taken; the schedule wins.":
    "Nadie dijo a cuántos minutos manda cambiar cartuchos el plan del fabricante: se toma un par "
    "por persona y día; manda el plan.",
    "The sheet of the material in hand wins over every figure here.":
    "La hoja del material en mano manda sobre toda cifra de aquí.",
    "There is no line {*1} in the list: its switch or own figure does nothing.":
    "No hay renglón {*1} en la lista: su cifra o lo que se quitó no hace nada.",
    "{1} switched off: no acid is opened where none is there.":
    "{1}: se quitó; no se abre ácido donde no hay.",
    "{@1} switched off: so much must be there already.": "{@1}: se quitó; tanto debe haber ya.",
    "{1}: your own {#2} is less than the likely {#3}.":
    "{1}: su propia cifra {#2} es menos que lo probable {#3}.",
}  # fmt: skip
