"""What a plan says of itself: waits, what it rests on, proof, chances, what would change it."""

from __future__ import annotations

PHRASES = {
    # Waits.
    "open time": "tiempo abierto",
    "dry to recoat": "secado entre manos",
    "dry to neutralise": "secado para neutralizar",
    "dwell": "reposo del tinte",
    "dry-down before sealing": "secado antes de sellar",
    "next coat of sealer": "siguiente mano de sellador",
    "dry after cleaning, overnight": "secado tras limpiar, toda la noche",
    "finish dry": "acabado seco",
    "traffic in shoes": "paso con zapatos",
    "{1} {#2}": "{1} {#2}",
    "{1} {#2} to open end": "{1} {#2} hasta fin abierto",
    "{1} ({2})": "{1} ({2})",
    "{#1} sprayed": "{#1} rociado",
    # Ranks and sources.
    "published": "publicado",
    "measured here": "medido aquí",
    "learned": "aprendido",
    "common practice": "práctica común",
    "common practice, no source": "práctica común, sin fuente",
    "from memory": "de memoria",
    "guess": "estimación",
    "our guess": "estimación nuestra",
    "no source": "sin fuente",
    "stain sheets": "hojas de tintes",
    "trade press": "prensa del oficio",
    "the maker's sheet and the label win": "mandan la hoja del fabricante y la etiqueta",
    "the sealer's label wins": "manda la etiqueta del sellador",
    "the finish's label wins": "manda la etiqueta del acabado",
    "the label wins": "manda la etiqueta",
    "the sealer's label": "la etiqueta del sellador",
    "sample timed on this slab": "muestra cronometrada en esta losa",
    "sample {&1}": "muestra {&1}",
    "measured here, sample {&1}, {*2}": "medido aquí, muestra {&1}, {*2}",
    "learned from closed jobs": "aprendido de trabajos cerrados",
    "sampled here; its spread a guess": "de una muestra de aquí; su dispersión, una estimación",
    "told by the job; its spread a guess": "dicho en el trabajo; su dispersión, una estimación",
    "told with the coat, not sampled here": "dicho con la mano, sin muestra aquí",
    "reckoned from the weather": "calculado del tiempo",
    "taken like the slab": "tomado como la losa",
    "taken like the air; a slab lags it": "tomado como el aire; la losa va detrás",
    "no start was told; a stand-in": "no se dijo inicio; uno supuesto",
    "invented price": "precio inventado",
    "what the tip lets through": "lo que deja pasar la boquilla",
    "what the tip gave this morning": "lo que dio la boquilla esta mañana",
    "light colour": "color claro",
    "dark colour": "color oscuro",
    "{1}, learned from {&2}": "{1}, aprendido de {&2}",
    "{1}, watched {#2} on this floor": "{1}, visto {#2} en este piso",
    # Names of what it rests on.
    "tank": "tanque",
    "band width": "ancho de franja",
    "spray rate": "ritmo de rociado",
    "walking": "paso al caminar",
    "walking pace": "paso al caminar",
    "a refill": "un llenado",
    "swapping a tank": "cambiar un tanque",
    "tank pauses": "pausas por el tanque",
    "wet overlap": "traslape húmedo",
    "reach of the wand": "alcance de la lanza",
    "flow of the tip, a minute": "flujo de la boquilla, por minuto",
    "slab": "losa",
    "air": "aire",
    "humidity of the air": "humedad del aire",
    "draught": "corriente de aire",
    "a drop goes in after": "una gota entra en",
    "finish of the slab": "acabado de la losa",
    "hard trowel": "llana dura",
    "trowel": "llana",
    "float": "flota",
    "broom": "escoba",
    "certainty that the mix lasts": "certeza de que alcance la mezcla",
    "spread of what the slab drinks": "dispersión de lo que bebe la losa",
    "thirst": "sed de la losa",
    "start": "inicio",
    "coverage, coat {#1}": "rendimiento, mano {#1}",
    "{1} {2}": "{1} {2}",
    # Proof of stop lines and order.
    "stop lines: the best of {#1} fields tried.":
    "líneas de parada: las mejores de {#1} tramos probados.",
    "stop lines: of {#1} fields tried, at most {#2} could be spared.":
    "líneas de parada: de {#1} tramos probados, a lo más se podría ahorrar {#2}.",
    "Order as asked for; by first guesses {1}": "Orden como se pidió; según primeros cálculos {1}",
    "By first guesses {1}": "Según primeros cálculos {1}",
    "no order leaves the tightest field more to spare":
    "ningún orden le deja más margen al tramo más justo",
    "no order leaves the tightest field over {#1} of its budget more":
    "ningún orden le deja al tramo más justo más de {#1} adicional de su plazo",
    "another order might leave the tightest field up to {#1} of its budget more":
    "otro orden podría dejarle al tramo más justo hasta {#1} adicional de su plazo",
    # Chances.
    "{1}: it would {2} the range of what edges have to spare.":
    "{1}: {2} el rango de lo que les sobra a las orillas.",
    "{1}: it would {2} the range of what edges have to spare, and an edge would die on {3} of "
    "days, not {4}.":
    "{1}: {2} el rango de lo que les sobra a las orillas, y una orilla moriría en {3} de los "
    "días, no en {4}.",
    "{1}: it would hardly change anything here.": "{1}: aquí casi no cambiaría nada.",
    "take most off": "reduciría casi por completo",
    "halve": "reduciría a la mitad",
    "take a third off": "reduciría en un tercio",
    "take a quarter off": "reduciría en un cuarto",
    "take {#1} off": "reduciría en {#1}",
    "fewer than {#1} in {#2}": "menos de {#1} en {#2}",
    "Time the sheen loss on your sample": "Cronometre en su muestra cuánto tarda en irse el brillo",
    "Time yourself over a measured floor with water":
    "Cronométrese con agua sobre un piso medido",
    "Time a walk of known length with a full tank on":
    "Cronometre una caminata de largo conocido con el tanque lleno a la espalda",
    "Time three fillings at the tub": "Cronometre tres llenados en la tina",
    "Time three swaps of the tank": "Cronometre tres cambios de tanque",
    "Spray a square of known size on your sample from a measured cup":
    "Rocíe en su muestra un cuadro de tamaño conocido con una taza medida",
    "On {#1} drawn days an edge dies on {2}, the mix runs short inside a field on {3}.":
    "De {#1} días sorteados, una orilla muere en {2}; la mezcla falta dentro de un tramo en {3}.",
    "Replayed on the floor: nobody steps on wet stain, no edge outlives its time.":
    "Repetido sobre el piso: nadie pisa tinte mojado, ninguna orilla pasa de su tiempo.",
    # What would change it.
    "one more stop": "una parada más",
    "minutes and mix": "minutos y mezcla",
    "a sample board, before the day": "una tabla de muestra, antes del día",
    "film on the glass, before the day": "plástico en el vidrio, antes del día",
    "another hour of the day": "otra hora del día",
    "more mix, and a new sample": "más mezcla y una muestra nueva",
    "one more person": "una persona más",
    "one more person and sprayer": "una persona y una rociadora más",
    "before staining only": "solo antes de teñir",
    "Bands of {#1}.": "Franjas de {#1}.",
    "A helper who swaps full tanks.": "Un ayudante que cambia tanques llenos.",
    "A helper who swaps full tanks, and bands of {#1}.":
    "Un ayudante que cambia tanques llenos, y franjas de {#1}.",
    "Two sprayers side by side on each band, each with a full tank.":
    "Dos rociadores lado a lado en cada franja, cada uno con un tanque lleno.",
    "Two sprayers side by side on each band, each with a full tank, and bands of {#1}.":
    "Dos rociadores lado a lado en cada franja, cada uno con un tanque lleno, y franjas de {#1}.",
    "Stop at the doorway between {@1} and {@2}.": "Pare en la puerta entre {@1} y {@2}.",
    "Stop at the bare frame between {@1} and {@2}.":
    "Pare en el marco sin puerta entre {@1} y {@2}.",
    "Stop at the saw cut that is in {@1}: {2}.": "Pare en el corte de sierra que hay en {@1}: {2}.",
    "A saw cut straight across {@1}, {2}, made before cleaning.":
    "Un corte de sierra recto a través de {@1}, {2}, hecho antes de limpiar.",
    "{#1} long, {#2} from the wall at the {3} of the plan":
    "{#1} de largo, a {#2} de la pared {3} del plano",
    "left": "izquierda",
    "right": "derecha",
    "bottom": "de abajo",
    "top": "de arriba",
    "A heavier coat at a weaker cut: {#1} ({#2}) at {#3}, the same stain on the same floor in "
    "more water; the film stays wet longer.":
    "Una mano más cargada con proporción más débil: {#1} ({#2}) a {#3}, el mismo tinte en el mismo "
    "piso con más agua; la película queda mojada más tiempo.",
    # As plans of before that are kept in a book say it.
    "A heavier coat at a weaker cut: {#1} ({#2}) at {#3}, the same stain on each square metre in "
    "more water; the film stays wet longer.":
    "Una mano más cargada con proporción más débil: {#1} ({#2}) a {#3}, el mismo tinte por metro "
    "cuadrado en más agua; la película queda mojada más tiempo.",
    "More stain on the floor: darker, and blotches or puddles more likely.":
    "Más tinte en el piso: más oscuro, y más probables las manchas o charcos.",
    "More mix on the floor, and wet for longer: it may come darker, and blotches or puddles are "
    "more likely.":
    "Más mezcla en el piso y mojada más tiempo: puede salir más oscuro, y son más probables las "
    "manchas o charcos.",
    "Too dark is final: lay a new sample at this weight first.":
    "Lo demasiado oscuro no tiene remedio: haga primero una muestra nueva con esta carga.",
    "The sheet of the material in hand wins.": "Manda la hoja del material que tiene en la mano.",
    "All fields move with it: plan the job again from that start before trusting it.":
    "Todos los tramos se mueven con ella: planee de nuevo desde ese inicio antes de confiar.",
    "Film the glass only; windows and doors stay as open as the lungs need.":
    "Tape solo el vidrio; ventanas y puertas quedan tan abiertas como lo piden los pulmones.",
    "If the sample is shorter, the budget shrinks: the sample wins.":
    "Si la muestra dura menos, el plazo se acorta: manda la muestra.",
    "Time the sheen loss of a sample of {1} on this slab, 4 minutes' work: half of it is the "
    "budget.":
    "Cronometre en esta losa cuánto tarda en irse el brillo de una muestra de la {1}, 4 minutos de "
    "trabajo: la mitad es el plazo.",
    "At {#1} or more this field has a fifth of its time to spare.":
    "Con {#1} o más, a este tramo le sobra un quinto de su tiempo.",
    "At {#1} or more this field fits.": "Con {#1} o más, este tramo cabe.",
    "Likely are {#1}; the range then narrows from {#2} to {#3}.":
    "Lo probable son {#1}; el rango se estrecha de {#2} a {#3}.",
    "Film on the window of {@1}: no sun patch.":
    "Plástico en la ventana de {@1}: sin mancha de sol.",
    "Begin this field at {#1}: an edge then lives {#2}.":
    "Empiece este tramo a las {#1}: entonces una orilla vive {#2}.",
    "Begin this field at {#1}; it fits from {#2} until {#3}: an edge then lives {#4}.":
    "Empiece este tramo a las {#1}; cabe de las {#2} a las {#3}: entonces una orilla vive {#4}.",
    "A part of the field has no way out.": "Una parte del tramo no tiene salida.",
    # What to mind on the day.
    "One sprays and the other rests or fills tanks in {#1} of {#2} fields: two have no room "
    "there, or are no quicker and leave no younger edge.":
    "En {#1} de {#2} tramos uno rocía y el otro descansa o llena tanques: ahí dos no caben, o no "
    "van más rápido ni dejan una orilla más joven.",
    "Nothing can stop at the {1}: it does not run from wall to wall, or it ends in a doorway.":
    "No se puede parar en el {1}: no va de pared a pared, o termina en una puerta.",
    "saw cut {@1}": "corte de sierra {@1}",
    "saw cut without a name": "corte de sierra sin nombre",
    "Coat {#1} takes {#2} at a stretch, more than a day has light.":
    "La mano {#1} lleva {#2} de un tirón, más que la luz de un día.",
    "Coat {#1} takes {#2} at a stretch, more than a day has light: stop after field {#3} ({@4}) "
    "at {#5}, {#6} sprayed, and plan the rest anew in the morning, from field {#7} ({@8}) on, "
    "{#9}.":
    "La mano {#1} lleva {#2} de un tirón, más que la luz de un día: pare después del tramo {#3} "
    "({@4}), a las {#5}, con {#6} rociados, y planee de nuevo el resto por la mañana, desde el "
    "tramo {#7} ({@8}): {#9}.",
    "Field {#1} ({@2}) is then seen beside field {#3} ({@4}) with no leaf between: one lot for "
    "both days.":
    "El tramo {#1} ({@2}) se ve entonces junto al tramo {#3} ({@4}) sin hoja entre los dos: un "
    "solo lote para los dos días.",
    "Coat {#1} goes on to {#2}, past {1}.":
    "La mano {#1} sigue hasta las {#2}, después de {1}.",
    "Begin by {#1}, or see to lamps that shine across the floor.":
    "Empiece a más tardar a las {#1}, o tenga lámparas que alumbren a ras del piso.",
    "Coat {#1} waits until {#2} of day {#3}: dry below only at {#4}, {1}.":
    "La mano {#1} espera hasta las {#2} del día {#3}: con la de abajo seca apenas a las {#4}, {1}.",
    "Coat {#1} is not sure to be dry when coat {#2} begins, at {#3} of day {#4}: likely from {#5} "
    "of day {#6}, in this air with no late end. Look and touch in each room first.":
    "No es seguro que la mano {#1} esté seca cuando empieza la mano {#2}, a las {#3} del día {#4}: "
    "lo probable es desde las {#5} del día {#6}, con este aire sin límite. Antes mire y toque en "
    "cada cuarto.",
    "In this air coat {#1} is not dry within a day, and over it nothing goes.":
    "Con este aire la mano {#1} no seca en un día, y encima de ella no va nada.",
    "Warm the slab and dry the air, by heat that gives off no water, and read both again.":
    "Entibie la losa y seque el aire, con calor que no suelte agua, y vuelva a medir los dos.",
    "nobody is at work yet": "todavía no trabaja nadie",
    "The clocks are put back by {#1} min before this plan begins.":
    "Los relojes se atrasan {#1} min antes de que empiece este plan.",
    "The clocks are put back by {#1} min on day {#2} of this plan.":
    "Los relojes se atrasan {#1} min el día {#2} de este plan.",
    "All its times stand by the clock of the job's start: from then on the clock on the wall shows "
    "{#1} min less.":
    "Todas sus horas van por el reloj del comienzo del trabajo: desde entonces el reloj de pared "
    "marca {#1} min menos.",
    "The clocks are put forward by {#1} min before this plan begins.":
    "Los relojes se adelantan {#1} min antes de que empiece este plan.",
    "The clocks are put forward by {#1} min on day {#2} of this plan.":
    "Los relojes se adelantan {#1} min el día {#2} de este plan.",
    "All its times stand by the clock of the job's start: from then on the clock on the wall shows "
    "{#1} min more.":
    "Todas sus horas van por el reloj del comienzo del trabajo: desde entonces el reloj de pared "
    "marca {#1} min más.",
    "it would end after {1} (with lamps, tell its not_before)":
    "terminaría después de {1} (con lámparas, anote su not_before)",
    "sunset at {#1}": "la puesta del sol, a las {#1}",
    "{#1}, our guess of the last light": "las {#1}, que suponemos la última luz",
    "Begun by {#1}, both fit on one day.":
    "Si se empieza a más tardar a las {#1}, caben las dos en un día.",
    "Only with both sprayers at work.": "Solo con los dos rociando.",
    "Only with both sprayers at work: without, the oldest edge is {#1} old.":
    "Solo con los dos rociando: si no, la orilla más vieja tiene {#1}.",
    "Only with the helper who swaps tanks.": "Solo con el ayudante que cambia los tanques.",
    "Only with the helper who swaps tanks: without, the oldest edge is {#1} old.":
    "Solo con el ayudante que cambia los tanques: sin él, la orilla más vieja tiene {#1}.",
    "Nobody works alone: a second adult has to be within call.":
    "Nadie trabaja solo: debe haber otro adulto donde oiga si lo llaman.",
    "The job says that no second adult is on site. Nobody works alone with acid: this plan is "
    "for a day on which somebody is there.":
    "El trabajo dice que no hay otro adulto en la obra. Nadie trabaja solo con ácido: este plan es "
    "para un día en que haya alguien.",
    "their edge would be {#1} too old": "su orilla quedaría {#1} demasiado vieja",
    "nobody can walk them there": "ahí nadie puede caminarlas",
    "No way in to {@1}: no opening joins it to a way out.":
    "No hay entrada a {@1}: ninguna abertura lo une a una salida.",
    "Add the missing door to the plan, or leave the room out of the job.":
    "Ponga en el plano la puerta que falta, o deje el cuarto fuera del trabajo.",
    "No way out: none of the exits lies on a room's wall.":
    "No hay salida: ninguna de las salidas está en la pared de un cuarto.",
    "Name an outside opening in a room's wall as the way out.":
    "Diga qué abertura al exterior, en la pared de un cuarto, es la salida.",
    "The order {@1} shuts somebody in: a room named later has no way out but over wet floor.":
    "El orden {@1} encierra a alguien: un cuarto que va después solo sale sobre piso mojado.",
    "Leave the order of the rooms open to get one that works, and compare.":
    "Deje abierto el orden de los cuartos para ver uno que funcione, y compare.",
    "No order of the rooms works: {*1}.": "Ningún orden de los cuartos funciona: {*1}.",
    "Widen the doorway in the plan if it is drawn too narrow for a person (20 in, 0.5 m), or move "
    "the fixture that stands in it.":
    "Ensanche el vano en el plano si está dibujado muy angosto para una persona (20 in, 0.5 m), o "
    "mueva el mueble fijo que está en él.",
    "{@1}: a body does not get everywhere.": "{@1}: una persona no llega a todas partes.",
    "{@1}: nobody can walk here.": "{@1}: nadie puede caminar aquí.",
    "{@1}: the floor falls apart into separate places.":
    "{@1}: el piso queda en lugares separados.",
    "{@1}: the wand does not reach all of the floor.": "{@1}: la lanza no alcanza todo el piso.",
    "One band takes {#1} and a tank gives {#2} before its reserve.":
    "Una franja toma {#1} y un tanque da {#2} antes de su reserva.",
    "Narrower bands, or a larger tank.": "Franjas más angostas, o un tanque más grande.",
    "Field {&1} keeps the best bands, though plain ones are wished for: {2}.":
    "El tramo {&1} conserva las mejores franjas, aunque se pidieron sencillas: {2}.",
    "The job tells no start: the weather of 15 May, 8:00, was taken.":
    "El trabajo no dice el inicio: se tomó el tiempo del 15 de mayo, 8:00.",
    "Put starts_at into the job, such as 2026-05-15T08:00:00-06:00.":
    "Ponga starts_at en el trabajo, como 2026-05-15T08:00:00-06:00.",
    "The tip gave {#1} this morning: {#2} are sprayed, not {#3}.":
    "La boquilla dio {#1} esta mañana: se rocían {#2}, no {#3}.",
    "The weather is that of a station or a forecast, not of this floor: air and slab in the "
    "house are reckoned from it, and are a guess.":
    "El tiempo es de una estación o un pronóstico, no de este piso: de él se calculan el aire y la "
    "losa en la casa, y son una estimación.",
    "Read slab, air and humidity on the spot.": "Mida losa, aire y humedad en el lugar.",
    "Air {1}, slab {2}: the air deceives, the slab decides.":
    "Aire {1}, losa {2}: el aire engaña, la losa decide.",
    "Stain reacts and dries by the slab's warmth, and sealer laid over a cold slab clouds later.":
    "El tinte reacciona y seca según el calor de la losa, y el sellador puesto sobre losa fría se "
    "enturbia después.",
    "The slab follows the air and gets warmer through the day: an edge then lives shorter.":
    "La losa sigue al aire y se calienta durante el día: entonces una orilla vive menos.",
    "Read the slab again before each coat.": "Mida de nuevo la losa antes de cada mano.",
    "Warm the house for a day or two and read the slab again, not the air.":
    "Caliente la casa uno o dos días y mida de nuevo la losa, no el aire.",
    "The forecast does not say when it was issued: mind how old it is.":
    "El pronóstico no dice cuándo se emitió: fíjese qué tan viejo es.",
    "The forecast was issued {#1} before the first stroke.":
    "El pronóstico se emitió {#1} antes de la primera pasada.",
    # Patches.
    "Patch {&1}, {@2}.": "Parche {&1}, {@2}.",
    "Trench {&1}, {@2}.": "Zanja {&1}, {@2}.",
    "Pour {&1}, {@2}.": "Colado {&1}, {@2}.",
    "Leveller {&1}, {@2}.": "Nivelador {&1}, {@2}.",
    "Patch {&1} in {@2}": "El parche {&1} en {@2}",
    "Trench {&1} in {@2}": "La zanja {&1} en {@2}",
    "Later pour {&1} in {@2}": "El colado posterior {&1} en {@2}",
    "Leveller {&1} in {@2}": "El nivelador {&1} en {@2}",
    "{1} ({#2}) is of another make than the floor beside it.":
    "{1} ({#2}) es de otra hechura que el piso de al lado.",
    "{1} is of another make than the floor beside it.":
    "{1} es de otra hechura que el piso de al lado.",
    "It stays bare today and is coloured another day by other means.":
    "Hoy se queda sin color y otro día se colorea de otra manera.",
    "It takes the same stain and comes out unlike it.":
    "Lleva el mismo tinte y sale distinto.",
    "It will not match, and its edge stays visible.": "No igualará, y su orilla queda visible.",
    "Stained along with the floor.": "Se tiñe junto con el piso.",
    "Left dry for another colour: mask it to its edge before the first stroke.":
    "Se deja seco para otro color: cúbralo hasta su orilla antes de la primera pasada.",
    "It may be walked on with clean, dry soles; the plan walks around it.":
    "Se puede pisar con suelas limpias y secas; el plan lo rodea.",
    "Grind it first (dust is silica: shroud, vacuum and respirator by the silica rule).":
    "Esmerílelo primero (el polvo es sílice: campana, aspiradora y respirador según la regla de "
    "sílice).",
    "Then drops again: tell them, and plan again.":
    "Luego gotas otra vez: anótelas y planee de nuevo.",
    "Until then it counts as stained along.": "Mientras tanto cuenta como teñido con el piso.",
    "Nobody has said what becomes of it: decide before the first stroke.":
    "Nadie ha dicho qué se hace con él: decídalo antes de la primera pasada.",
    "Stained along so far.": "Por ahora se tiñe con el piso.",
    "Its joint is a stop line where it runs from wall to wall.":
    "Su junta es línea de parada donde va de pared a pared.",
    "Edges on it are held to its own drop, {#1}, where that is sooner.":
    "Sus orillas se rigen por su propia gota, {#1}, donde eso es antes.",
    # Things that stand on a floor.
    "island": "isla", "cabinet": "gabinete", "cabinets": "gabinetes", "tub": "tina",
    "shower": "regadera", "toilet": "inodoro", "counter": "cubierta", "column": "columna",
    "stair": "escalera", "stairs": "escaleras", "vanity": "tocador", "sink": "lavabo",
    "{1},": "{1},",
    "in the doorway  {#1}": "en la puerta  {#1}",
    "{1}, kept dry": "{1}, se deja seco",
    "last": "último",
    "walk": "camino",
    "of": "de",
    "Oldest edge {#1} of {#2}: {#3} to spare. Budget: {1}; likely {#4}, at most {#5}.":
    "Orilla más vieja {#1} de {#2}: sobran {#3}. Plazo: {1}; probable {#4}, a lo más {#5}.",
    "{1} at {#2},": "{1} a las {#2},",
    "Tightest edge, in {@4} at {#5}, {#1} of {#2}: {#3} to spare.":
    "Orilla más justa, en {@4} a las {#5}, {#1} de {#2}: sobran {#3}.",
    "Tightest edge, in {@4} at {#5}, {#1} of {#2}: {#3} too many.":
    "Orilla más justa, en {@4} a las {#5}, {#1} de {#2}: {#3} de más.",
    "{#1} in {@2}": "{#1} en {@2}",
    "{#1} in {@2}, {#3} from {#4}": "{#1} en {@2}, {#3} desde las {#4}",
    "{#1} from {#2}": "{#1} desde las {#2}",
    "{#1}, {#2} from {#3}": "{#1}, {#2} desde las {#3}",
    "part of {@1}": "parte de {@1}",
    "{#1} in part of {@2}": "{#1} en parte de {@2}",
    "{#1} in part of {@2}, {#3} from {#4}": "{#1} en parte de {@2}, {#3} desde las {#4}",
    "under {#1}": "menos de {#1}",
    "Then: {1}": "Después: {1}",
    "{1} instead: {2}.": "En cambio, {1}: {2}.",
    "edge {#1}": "orilla {#1}",
    "{#1} to spare": "sobran {#1}",
    "{#1} too many": "{#1} de más",
    "{#1} bands": "{#1} franjas",
    "{#1} less": "{#1} menos",
    "as long": "igual de largo",
    "for II, {1}": "para II, {1}",
    "field {#1} {#2}": "tramo {#1} {#2}",
    "field {#1}": "tramo {#1}",
    "Field {#1}: {@2}": "Tramo {#1}: {@2}",
    # The van.
    "Take {&1}; beside it {&2}.": "Lleve {&1}; al lado {&2}.",
    "Take {&1}; beside it NO sound spare.": "Lleve {&1}; al lado NINGÚN repuesto en buen estado.",
    "No sound sprayer.": "Ninguna rociadora en buen estado.",
    "{&1} gives {#2} where coat {&3} wants {#4}: walk faster ({#5} of the planned pace), or "
    "another tip.":
    "{&1} da {#2} donde la mano {&3} pide {#4}: camine más rápido ({#5} del paso planeado), u "
    "otra boquilla.",
    "{&1} gives {#2} where coat {&3} wants {#4}: walk slower ({#5} of the planned pace), or "
    "another tip.":
    "{&1} da {#2} donde la mano {&3} pide {#4}: camine más despacio ({#5} del paso planeado), u "
    "otra boquilla.",
    "{&1} holds {#2} and the plan fills {#3}: plan with its tank.":
    "A {&1} le caben {#2} y el plan llena {#3}: planee con su tanque.",
    "There is no sound spare: one that fails in mid-field leaves a seam. Buy one.":
    "No hay repuesto en buen estado: la que falla a medio tramo deja una marca. Compre una.",
    "No sprayer in the van is sound: buy two alike.":
    "Ninguna rociadora de la camioneta está en buen estado: compre dos iguales.",
    "{&1} and {&2} differ by {#3} in flow or tank: a change in mid-field may be seen; change at "
    "a stop line.":
    "{&1} y {&2} difieren {#3} en flujo o tanque: un cambio a medio tramo puede verse; cambie en "
    "una línea de parada.",
    "{&1} was good until {#2}: not counted": "{&1} servía hasta {#2}: no se cuenta",
    "{&1} is of lot {&2}, not the sample's": "{&1} es del lote {&2}, no del de la muestra",
    "lots {1}: box them before anything is cut": "lotes {1}: júntelos antes de diluir nada",
    "lot {&1} is not enough: buy of the same, or box old and new":
    "el lote {&1} no alcanza: compre del mismo, o junte el viejo y el nuevo",
    "tape": "cinta", "masking film": "plástico para cubrir", "suits": "trajes",
    "goggles and face shields": "gafas cerradas y caretas",
    "pairs of cartridges": "pares de cartuchos", "pads or brushes": "fibras o cepillos",
    "white rags": "trapos blancos", "pH strips": "tiras de pH", "bicarbonate": "bicarbonato",
    "contractor bags": "bolsas de obra", "pairs of gloves": "pares de guantes",
    "sealer": "sellador", "cleaner": "limpiador",
}  # fmt: skip
