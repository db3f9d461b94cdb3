"""What to do now on the live day: each line of the answer."""

from __future__ import annotations

PHRASES = {
    "what was agreed, invoiced and paid is entered by a lead or the office: ask one.":
    "lo acordado, lo facturado y lo pagado lo anota un encargado o la oficina: pida a uno.",
    "a house is set aside by a lead or the office: ask one.":
    "una casa la aparta un encargado o la oficina: pida a uno.",
    "the book has no job {&1}: add it, and offer this again.":
    "el libro no tiene el trabajo {&1}: agréguelo y ofrezca esto de nuevo.",
    "the book has another entry under this id: enter it anew.":
    "el libro tiene otra anotación con esta identificación: anótela de nuevo.",
    "NOW {#1}: STOP. {2}": "AHORA {#1}: PARE. {2}",
    "NOW {#1}: {2}": "AHORA {#1}: {2}",
    "NOW: nothing more by this plan.": "AHORA: nada más según este plan.",
    "The house is handed over; struck out in its log, it is open again.":
    "La casa está entregada; tachado en su bitácora, queda abierta otra vez.",
    "NOW: nothing by this plan.": "AHORA: nada según este plan.",
    "The house is set aside; brought back, it is open again.":
    "La casa está apartada; al traerla de vuelta, queda abierta otra vez.",
    "NOW: begin nothing by this plan.": "AHORA: no empiece nada según este plan.",
    "Its day is past with {#1} field of coat {&2} still to do: plan the rest for a new day.":
    "Su día ya pasó y falta {#1} tramo de la mano {&2}: planee el resto para otro día.",
    "Its day is past with {#1} fields of coat {&2} still to do: plan the rest for a new day.":
    "Su día ya pasó y faltan {#1} tramos de la mano {&2}: planee el resto para otro día.",
    "all that is planned is sprayed": "todo lo planeado está rociado",
    "nothing to begin": "nada que empezar",
    "mix {#1} before field {&2} in {@3}.": "mezcle {#1} antes del tramo {&2} en {@3}.",
    "wait with field {&1} in {@2}: {3}.": "espere con el tramo {&1} en {@2}: {3}.",
    "begin field {&1} in {@2}, band {&3}, if what is below holds.":
    "empiece el tramo {&1} en {@2}, franja {&3}, si se cumple lo de abajo.",
    "spray to the next line that hides a seam (a door, a frame, a saw cut) and stop there.":
    "rocíe hasta la próxima línea que esconde una marca (puerta, marco o corte) y pare ahí.",
    "the helper mixes {#1} at once; go on with band {&2}, then box it.":
    "el ayudante mezcla {#1} de inmediato; siga con la franja {&2} y luego júntelo.",
    "{1}. Look into the tub after band {&2}: with {#3} or more go on, with less enter it and mix "
    "what is told.":
    "{1}. Mire la tina después de la franja {&2}: con {#3} o más siga; con menos, anótelo y mezcle "
    "lo que se diga.",
    "Look into tub and tank after band {&1}: with {#2} or more go on to the next look, with less "
    "mix by what is left and box it.":
    "Mire tina y tanque después de la franja {&1}: con {#2} o más siga hasta la próxima mirada; "
    "con menos, mezcle según lo que queda y júntelo.",
    "look into tub and tank after band {&1}, and enter what is left":
    "mire tina y tanque después de la franja {&1} y anote lo que queda",
    "then look at tub and tank before {&1}, {#2} or more still in them; the helper has stain, "
    "water and jug set out":
    "luego mire tina y tanque antes de {&1}, con {#2} o más todavía en ellos; el ayudante tiene "
    "listos tinte, agua y jarra",
    "mix {#1} at once and box it, then go on with {&2}.":
    "mezcle {#1} de inmediato y júntelo, luego siga con {&2}.",
    "enter what was sprayed since: field {&1} stands open in the log.":
    "anote lo rociado desde entonces: el tramo {&1} sigue abierto en la bitácora.",
    "field {&1} is feathered out: plan the rest again, then go on with band {&2}.":
    "el tramo {&1} está difuminado: planee de nuevo el resto y luego siga con la franja {&2}.",
    "The edge of field {&1} was feathered out {#2}: a seam shows there.":
    "La orilla del tramo {&1} se difuminó a las {#2}: ahí se ve una marca.",
    "Plan the rest again before you go on.": "Planee de nuevo el resto antes de seguir.",
    "go on with band {&1} in field {&2}.": "siga con la franja {&1} en el tramo {&2}.",
    "go on with band {&1} in field {&2}, begun by {#3}.":
    "siga con la franja {&1} en el tramo {&2}, empezada antes de las {#3}.",
    "go on with band {&1} in field {&2}, begun by {#3}: {#4}.":
    "siga con la franja {&1} en el tramo {&2}, empezada antes de las {#3}: {#4}.",
    "NO ({1}): {2}": "NO ({1}): {2}",
    "MIX NOTHING NEW. {1}": "NO MEZCLE NADA NUEVO. {1}",
    "{1}: enough for all that is to come in coat {&2}.":
    "{1}: alcanza para todo lo que falta de la mano {&2}.",
    "In tub and tank: {#1}": "En tina y tanque: {#1}",
    "In tub and tank: {#1} by the plan's reckoning": "En tina y tanque: {#1} según el plan",
    "{1}; {2}": "{1}; {2}",
    "Mix and enter it: {#1} for coat {&2}, {3}": "Mezcle y anótelo: {#1} para la mano {&2}, {3}",
    "Mix and enter it: {#1} for coat {&2}, {3}; or {#4} now, the rest later.":
    "Mezcle y anótelo: {#1} para la mano {&2}, {3}; o {#4} ahora, el resto después.",
    "{#1} stain into {#2} water ({#3})": "{#1} de tinte en {#2} de agua ({#3})",
    "MIX {#1} before band {&2} at the latest, boxed with all that is left. {3}":
    "MEZCLE {#1} a más tardar antes de la franja {&2}, junto con todo lo que queda. {3}",
    "MIX {#1} before field {&2}, {3}. {4}": "MEZCLE {#1} antes del tramo {&2}, {3}. {4}",
    "Later mix {#1} before field {&2}, {3}. {4}":
    "Después mezcle {#1} antes del tramo {&2}, {3}. {4}",
    "behind its closed leaf": "detrás de su puerta cerrada",
    "boxed with the {#1} left then": "junto con los {#1} que queden entonces",
    "dry inside a field: {#1}.": "quedarse sin mezcla dentro de un tramo: {#1}.",
    "{#1} do for less than the rest of {&2} may take.":
    "{#1} alcanzan para menos de lo que puede tomar lo que falta de {&2}.",
    "The helper mixes while the sprayer sprays; same lots, same cut; all that is left is poured "
    "into it.":
    "El ayudante mezcla mientras el rociador rocía; mismos lotes, misma mezcla; se le echa todo lo "
    "que queda.",
    "{#1} are enough for the rest of {&2}.": "{#1} alcanzan para lo que falta de {&2}.",
    "{#1} are enough for all that is to come in coat {&2}.":
    "{#1} alcanzan para todo lo que falta de la mano {&2}.",
    "No: {1}": "No: {1}",
    "a fresh mix against the wet edge of another shows as a line.":
    "una mezcla nueva contra la orilla húmeda de otra se ve como una línea.",
    "a fresh mix against the wet edge of another shows as a line, and {#1} of mixing alone "
    "outlive the edge.":
    "una mezcla nueva contra la orilla húmeda de otra se ve como una línea, y solo {#1} de mezclar "
    "pasan de la vida de la orilla.",
    "a fresh mix against the wet edge of another shows as a line, and {#1} are gone before a new "
    "one is mixed and boxed.":
    "una mezcla nueva contra la orilla húmeda de otra se ve como una línea, y {#1} se acaban antes "
    "de mezclar y juntar una nueva.",
    "Spray with what there is to the next line that hides a seam, and begin the "
    "new mix behind it.":
    "Rocíe con lo que hay hasta la próxima línea que esconde una marca, y empiece "
    "la mezcla nueva detrás de ella.",
    "{#1} may not do for the rest of field {&2}.":
    "{#1} quizá no alcancen para el resto del tramo {&2}.",
    "Before field {&1}, at the stop line: about {#2} are left then.":
    "Antes del tramo {&1}, en la línea de parada: entonces quedan unos {#2}.",
    "Pour them into the new mix, same lots, same cut.":
    "Viértalos en la mezcla nueva, mismos lotes, misma proporción.",
    "It is seen beside {1}, so keep at least that much back.":
    "Se ve junto al {1}, así que guarde al menos eso.",
    "field {&1} is seen beside {2} with no leaf between, and nothing is left to box the new mix "
    "with: two shades would lie side by side.":
    "el tramo {&1} se ve junto al {2} sin hoja entre los dos, y no queda con qué juntar la mezcla "
    "nueva: quedarían dos tonos lado a lado.",
    "Leave it for another day, or try the new mix on a board beside the old first.":
    "Déjelo para otro día, o pruebe antes la mezcla nueva en una tabla junto a la vieja.",
    "Before field {&1}: a leaf closes between it and what is done, so a fresh mix may do; same "
    "lots, same cut.":
    "Antes del tramo {&1}: una hoja cierra entre él y lo que está hecho, así que puede servir una "
    "mezcla nueva; mismos lotes, misma proporción.",
    "Same lots, same cut; pour all that is left in tub and tank into the new mix and stir before "
    "going on.":
    "Mismos lotes, misma proporción; vierta en la mezcla nueva todo lo que queda en tina y tanque "
    "y revuelva antes de seguir.",
    "Coat {&1}: {#2} field done, {#3} left": "Mano {&1}: {#2} tramo hecho, faltan {#3}",
    "Coat {&1}: {#2} fields done, {#3} left": "Mano {&1}: {#2} tramos hechos, faltan {#3}",
    "{1}; what the slab drinks is not known yet: tell tank and tub.":
    "{1}; aún no se sabe cuánto bebe la losa: diga lo que hay en tanque y tina.",
    "{1}. The slab drank {2}: {#3}, planned {#4}.":
    "{1}. La losa bebió {2}: {#3}, planeado {#4}.",
    "{1}. The slab drank {2}, taken for {5} from here: {#3}, planned {#4}.":
    "{1}. La losa bebió {2}, desde aquí se cuenta {5}: {#3}, planeado {#4}.",
    "as planned": "como se planeó",
    "Begin {&1} ({@2}) only if:": "Empiece {&1} ({@2}) solo si:",
    "holds: {1}": "se cumple: {1}",
    "NOT YET: {1}": "TODAVÍA NO: {1}",
    "look: {1}": "revise: {1}",
    "or, with a helper: begin on {#1}, look at tub and tank before {&2}, {#3} still in them, and "
    "box the rest then":
    "o, con ayudante: empiece con {#1}, revise tina y tanque antes de {&2}, con {#3} aún en ellos, "
    "y junte entonces el resto",
    "Next {#1}: {2}.": "Sigue a las {#1}: {2}.",
    "not in sight": "sin fecha",
    "Coat {&1}, {2}: likely {#3} ({#4}), by the plan {#5}; {6}.":
    "Mano {&1}, {2}: probable {#3} ({#4}), según el plan {#5}; {6}.",
    "Coat {&1}, {2}: likely {3} ({#4} to not in sight), by the plan {5}; {6}.":
    "Mano {&1}, {2}: probable {3} ({#4} a sin fecha), según el plan {5}; {6}.",
    "Coat {&1}, {2}: likely {#3} ({#4}), by the plan not in sight; {5}.":
    "Mano {&1}, {2}: probable {#3} ({#4}), según el plan sin fecha; {5}.",
    "An edge lives {#1} to be safe ({#2} likely, by the plan {#3}); {4}.":
    "Una orilla vive {#1} con seguridad ({#2} probable, según el plan {#3}); {4}.",
    "What does not fit: {1} And {#2} more in the log.":
    "Lo que no cuadra: {1} Y {#2} más en la bitácora.",
    "What does not fit: {1}": "Lo que no cuadra: {1}",
    # What must hold before a field is begun.
    "at least {#1} in tub and tank; {#2} there": "por lo menos {#1} en tina y tanque; hay {#2}",
    "at least {#1} in tub and tank; {#2} by the plan, weigh them":
    "por lo menos {#1} en tina y tanque; {#2} según el plan, péselos",
    "slab from {#1}; {#2} measured": "losa de {#1}; {#2} medidos",
    "slab from {#1}; {#2} by the plan, measure it": "losa de {#1}; {#2} según el plan, mídala",
    "{@1} is free; somebody is in it": "{@1} libre; hay alguien adentro",
    "{@1} is free; somebody is in it until {#2}": "{@1} libre; hay alguien adentro hasta las {#2}",
    "{@1} free": "{@1} libre",
    "{&1} is done to its stop lines, about {#2}; no edge stays open behind you":
    "{&1} hecho hasta sus líneas de parada, hacia las {#2}; no queda ninguna orilla abierta detrás",
    "field {&1} is planned anew: as it stands, its page says NO":
    "el tramo {&1} se planea de nuevo: tal como está, su página dice NO",
    "coat {&1} is done and dry": "la mano {&1} está hecha y seca",
    "coat {&1} is dry, looked at; likely from {#2}":
    "la mano {&1} está seca, revisada; probable de {#2}",
    "{#1} of light and quiet": "{#1} de luz y calma",
    "{#1} of light and quiet; the sun sets {#2}": "{#1} de luz y calma; el sol se pone {#2}",
    "oldest edge {#1} of {#2}": "orilla más vieja {#1} de {#2}",
    # What must be looked at.
    "begin band {&1} by then, or the edge that {&2} meets is dead":
    "para entonces empiece la franja {&1}, o muere la orilla que toca {&2}",
    "the tank is empty in field {&1}: fill": "se vacía el tanque en el tramo {&1}: llénelo",
    "the tank of sprayer {#1} is empty in field {&2}: fill":
    "se vacía el tanque del rociador {#1} en el tramo {&2}: llénelo",
    "the tank of sprayer {#1} is empty in field {&2}, reckoned by the plan: fill, and enter "
    "whose it was":
    "se vacía el tanque del rociador {#1} en el tramo {&2}, contado por el plan: llénelo y anote "
    "de quién era",
    "the tank of sprayer {#1} may be empty in field {&2}, for nobody told whose was looked at: "
    "fill, and enter whose it was":
    "el tanque del rociador {#1} puede vaciarse en el tramo {&2}, pues nadie dijo cuál se miró: "
    "llénelo y anote de quién era",
    "the stop line of {&1}: look at tub and tank before {&2}":
    "la línea de parada de {&1}: revise tina y tanque antes de {&2}",
    "{@1} should be free: ask, then enter room-free":
    "{@1} ya debe estar libre: pregunte y anote room-free",
    "look whether coat {&1} is {2} already": "revise si la mano {&1} ya está {2}",
    "coat {&1} is likely {2}: look": "la mano {&1} probablemente está {2}: revise",
    "coat {&1} should be {2} by now: look": "la mano {&1} ya debe estar {2}: revise",
    "through its dwell": "con el reposo cumplido",
    "dry to seal": "seca para sellar",
    "ready for the next coat of sealer": "lista para la siguiente mano de sellador",
    "ready for shoes": "lista para pisar con zapatos",
    "Sealer is entered {#1}, {#2} after the last rinse; by the plan no floor is dry before {#3}, "
    "and none was entered dry.":
    "Se anotó sellador a las {#1}, {#2} después del último enjuague; según el plan ningún piso "
    "está seco antes de las {#3}, y nadie lo anotó seco.",
    "Sealer is entered {#1} over {@2}, and no rinse before it.":
    "Se anotó sellador a las {#1} sobre {@2}, y ningún enjuague antes.",
    "Sealer is entered {#1} over {@2}: {3}": "Se anotó sellador a las {#1} sobre {@2}: {3}",
    "No more sealer: over residue it peels.": "No más sellador: sobre residuo se despega.",
    "Rinsed again before it?": "¿Se enjuagó otra vez antes?", "Enter that.": "Anótelo.",
    "Read before it?": "¿Se leyó antes?", "Enter that, by its time.": "Anótelo, con su hora.",
    "Not read?": "¿No se leyó?",
    "No more sealer before pH and rag are.": "No más sellador hasta que pH y trapo se lean.",
    "A coat of sealer is entered {#1} after the one below; by its sheet that is not ready before "
    "{#2}.":
    "Se anotó una mano de sellador {#1} después de la de abajo; según su hoja esa no está lista "
    "antes de las {#2}.",
    "A coat of sealer is entered {#1} after the one below; by the plan that is not ready before "
    "{#2}.":
    "Se anotó una mano de sellador {#1} después de la de abajo; según el plan esa no está lista "
    "antes de las {#2}.",
    "No more sealer on it: solvent and water shut in turn it milky.":
    "No más sellador encima: el solvente y el agua encerrados lo vuelven lechoso.",
    "nothing more is stained": "ya no se tiñe más",
    "The colour was judged enough {#1}: coat {&2}, not entered as sprayed, is not begun any more.":
    "El color se dio por bueno a las {#1}: la mano {&2}, no anotada como rociada, ya no se "
    "empieza.",
    "The floor was neutralised {#1}: coat {&2}, not entered as sprayed, is not begun any more.":
    "El piso se neutralizó a las {#1}: la mano {&2}, no anotada como rociada, ya no se empieza.",
    "The floor was rinsed {#1}: coat {&2}, not entered as sprayed, is not begun any more.":
    "El piso se enjuagó a las {#1}: la mano {&2}, no anotada como rociada, ya no se empieza.",
    "Sealer was entered {#1}: coat {&2}, not entered as sprayed, is not begun any more.":
    "Se anotó sellador a las {#1}: la mano {&2}, no anotada como rociada, ya no se empieza.",
    "Sprayed?": "¿Se roció?", "Enter it.": "Anótelo.",
    "To be laid after all?": "¿Va a ponerse de todos modos?",
    "Enter a look with another as what comes next.":
    "Anote una mirada con otra como lo que sigue.",
    "No more sealer before plastic taped down overnight stays dry beneath.":
    "No más sellador hasta que un plástico pegado toda la noche quede seco por debajo.",
    "Coat {&1} is entered in {@2} {#3} after coat {&4} there, which is not dry before {#5}.":
    "La mano {&1} se anotó en {@2} {#3} después de la mano {&4}, que ahí no está seca antes de "
    "las {#5}.",
    "Spray nothing on a wet coat.": "No rocíe nada sobre una mano mojada.",
    "Undo it.": "Deshágalo.", "Looked at and dry?": "¿La miró y está seca?",
    "Enter that for coat {#1} there.": "Anótelo para la mano {#1} en ese lugar.",
    "A slip?": "¿Fue un error?", "Strike it.": "Táchelo.",
    # Planning anew.
    "The plan still holds: order, minutes and fillings are its own.":
    "El plan sigue en pie: orden, minutos y llenados son los suyos.",
    "Nothing of the plan is left to spray.": "No queda nada del plan por rociar.",
    "The rest is worth planning again: {1}.":
    "Conviene planear de nuevo el resto: {1}.",
    "{#1} late": "{#1} de retraso",
    "{#1} ahead": "{#1} de adelanto",
    "the slab drinks {#1} more": "la losa bebe {#1} más",
    "the slab drinks {#1} less": "la losa bebe {#1} menos",
    "{@1} is closed": "{@1} está cerrado",
    "spraying stopped at {#1}": "se dejó de rociar a las {#1}",
    "the edge was feathered out at {#1}": "la orilla se difuminó a las {#1}",
    "No entry moves the plan, but field {&1} in it says NO: plan that first.":
    "Ninguna anotación mueve el plan, pero su tramo {&1} dice NO: planéelo de nuevo primero.",
    "fields were sprayed in another order": "los tramos se rociaron en otro orden",
    # Rules of the day.
    "dead edge": "orilla muerta", "quiet log": "bitácora callada", "band time": "tiempo por franja",
    "sealer cold": "sellador frío", "dew point": "punto de rocío", "odd look": "lectura rara",
    "hurt": "herido", "drop": "gota", "wet-below": "mojado debajo", "sealed wet": "sellado mojado",
    "sealed unclean": "sellado sucio", "sealed soon": "sellado pronto",
    "sealed unread": "sellado sin leer",
    "feathered": "difuminado",
    "(common practice)": "(práctica común)", "(learned)": "(aprendido)",
    "Nothing is entered since band {&1} was due, {#2} ago.":
    "No se ha anotado nada desde que tocaba la franja {&1}, hace {#2}.",
    "Enter what was sprayed since.": "Anote lo rociado desde entonces.",
    "The edge that band {&1} meets is {#2} past its {#3}.":
    "La orilla que toca la franja {&1} pasó {#2} de sus {#3}.",
    "Stop and feather it out dry; a door, a frame or a saw cut near by hides the seam.":
    "Pare y difumínela en seco; una puerta, un marco o un corte cercano esconde la marca.",
    "Measure again before the next field.": "Mida de nuevo antes del próximo tramo.",
    "Measured {#1}.": "Medido a las {#1}.",
    "Band {&1} took {#2}, more than half of the {#3} that an edge lives.":
    "La franja {&1} tardó {#2}, más de la mitad de los {#3} que vive una orilla.",
    "Narrower bands, a second sprayer, or a cooler hour.":
    "Franjas más angostas, un segundo rociador, o una hora más fresca.",
    "By the last look {#1} times the planned mix was used.":
    "Según la última lectura se usó {#1} veces la mezcla planeada.",
    "Read tub and tank once more before mixing by it; strike what was wrong.":
    "Lea otra vez tina y tanque antes de mezclar por ella; tache lo que estaba mal.",
    "Sun reaches {@1} about {#2}, before {&3} is done ({#4}).":
    "El sol llega a {@1} hacia las {#2}, antes de terminar {&3} ({#4}).",
    "Film or blanket on the glass, or another field first.":
    "Plástico o cobija en el vidrio, o primero otro tramo.",
    "The slab is {#1}, below the sealer's {#2}.":
    "La losa está a {#1}, debajo de los {#2} del sellador.",
    "No sealer, whatever the air reads: warm the slab.":
    "Sin sellador, marque lo que marque el aire: caliente la losa.",
    "The slab is {#1} above the dew point ({#2}); a sealer wants {#3}, which the rule "
    "rounds to {#4}.":
    "La losa está {#1} sobre el punto de rocío ({#2}); un sellador pide {#3}, que la regla "
    "redondea a {#4}.",
    "The slab is {#1} above the dew point ({#2}); a sealer wants {#3}.":
    "La losa está {#1} sobre el punto de rocío ({#2}); un sellador pide {#3}.",
    "No sealer now, nor if it falls in the next 6 h.":
    "Sin sellador ahora, ni si baja en las próximas 6 h.",
    "Somebody was hurt {#1}: {*2}.": "Alguien se lastimó a las {#1}: {*2}.",
    "Eyes or skin: water for 15 minutes, now; then the sheet and a doctor.":
    "Ojos o piel: agua durante 15 minutos, ya; luego la hoja y un médico.",
    "Enter what was done.": "Anote lo que se hizo.",
    "liquids": "líquidos",
    # What does not fit in a log.
    "{&1} at {#2}: nothing is entered of what it waits for, so no clock can learn from it; tell "
    "after_min.":
    "{&1} a los {#2}: no se anotó qué espera, así que ningún reloj puede aprender de ello; diga "
    "after_min.",
    "The slab, {#1} at {#2}: beyond reason and passed over.":
    "La losa, {#1} a los {#2}: fuera de razón; se omite.",
    "The air, {#1} at {#2}: beyond reason and passed over.":
    "El aire, {#1} a los {#2}: fuera de razón; se omite.",
    "Humidity of the air, {#1} at {#2}: beyond reason and passed over.":
    "Humedad del aire, {#1} a los {#2}: fuera de razón; se omite.",
    "Air over the floor, {#1} at {#2}: beyond reason and passed over.":
    "Aire sobre el piso, {#1} a los {#2}: fuera de razón; se omite.",
    "Told too soon: {1} after {#2}, where the plan has {#3} at the earliest; passed over as a "
    "slip.":
    "Dicho demasiado pronto: {1} a los {#2}, y el plan tiene {#3} como mínimo; se pasa por alto, "
    "como un toque por error.",
    "Look again, and enter it then.": "Mire otra vez y anótelo entonces.",
    "Coat {&1}: {#2} are told to be left, and only {#3} were mixed; a batch is missing, or a "
    "figure is wrong.":
    "Mano {&1}: se dice que quedan {#2}, y solo se mezclaron {#3}; falta una tanda, o una cifra "
    "está mal.",
    "Coat {&1}: {#2} are told to be mixed, and it takes {#3} by the plan; is a figure or its unit "
    "wrong?":
    "Mano {&1}: se dice que se mezclaron {#2}, y según el plan toma {#3}; ¿está mal una cifra o su "
    "unidad?",
    "Coat {&1}: {#2} are told to be in a tank that takes {#3}; is a figure or its unit wrong?":
    "Mano {&1}: se dice que hay {#2} en un tanque que toma {#3}; ¿está mal una cifra o su unidad?",
    "Coat {&1}: more was filled than was mixed, by {#2}; a batch or a weighing is missing.":
    "Mano {&1}: se llenó más de lo que se mezcló, por {#2}; falta una tanda o un pesaje.",
    "Coat {&1}: a batch of {#2} came from two phones and counts once; if there were two, enter the "
    "other again.":
    "Mano {&1}: una tanda de {#2} llegó de dos teléfonos y cuenta una vez; si fueron dos, anote la "
    "otra de nuevo.",
    "Coat {&1}: two phones enter batches of {#2} and {#3} at nearly the same time, and both "
    "count; if it was one, strike the wrong one.":
    "Mano {&1}: dos teléfonos anotan tandas de {#2} y {#3} casi a la vez, y cuentan las dos; si "
    "fue una sola, tache la equivocada.",
    "A filled tank came from two phones and counts once; if two were filled, enter the other "
    "again.":
    "Un tanque lleno llegó de dos teléfonos y cuenta una vez; si se llenaron dos, anote el otro de "
    "nuevo.",
    "A rinse came from two phones and counts once; if there were two, enter the other again.":
    "Un enjuague llegó de dos teléfonos y cuenta una vez; si fueron dos, anote el otro de nuevo.",
    "What is entered as {&1} came from two phones and counts once; if there were two, enter the "
    "other again.":
    "Lo anotado como {&1} llegó de dos teléfonos y cuenta una vez; si fueron dos, anote el otro de "
    "nuevo.",
    "Undone on one phone, {&1} was entered on another too and counts as done; if it is not, "
    "strike that entry as well.":
    "Deshecho en un teléfono, {&1} se anotó también en otro y cuenta como hecho; si no lo está, "
    "tache también esa anotación.",
    "Field {&1} is told to be begun twice.": "Se dice que el tramo {&1} se empezó dos veces.",
    "Field {&1} is told to be begun after it was done.":
    "Se dice que el tramo {&1} se empezó después de hecho.",
    "Field {&1} stands open in the log, and {&2} was sprayed since.":
    "El tramo {&1} sigue abierto en la bitácora, y {&2} se roció después.",
    "Field {&1} stands open in the log, and {&2} was begun after it; if {&3} is sprayed, enter it "
    "as done.":
    "El tramo {&1} sigue abierto en la bitácora, y {&2} se empezó después; si {&3} está rociado, "
    "anótelo como hecho.",
    "Coat {&1} is begun, and field {&2} of coat {&3} is not entered as done; if it is, enter it.":
    "La mano {&1} está empezada, y el tramo {&2} de la mano {&3} no está anotado como hecho; si lo "
    "está, anótelo.",
    "Band {&1} is told to be done twice.": "Se dice que la franja {&1} se hizo dos veces.",
    "The plan has no band {&1}; it is passed over.": "El plan no tiene franja {&1}; se omite.",
    "The plan has no coat {&1}; it is passed over.": "El plan no tiene mano {&1}; se omite.",
    "The plan has no field {&1}; it is passed over.": "El plan no tiene tramo {&1}; se omite.",
    "Coat {&1} was sprayed while coat {&2} was last found damp.":
    "La mano {&1} se roció cuando la mano {&2} se había encontrado húmeda.",
    "Field {&1} was sprayed while {@2} was closed.":
    "El tramo {&1} se roció mientras {@2} estaba cerrado.",
    "{&1} at {#2} is before the day was begun.": "{&1} a los {#2} es antes de empezar el día.",
    "{&1} is {#2} before the start of the plan; is a clock wrong?":
    "{&1} es {#2} antes del inicio del plan; ¿está mal un reloj?",
    "Entry {&1} came with two contents; the first is taken.":
    "La anotación {&1} llegó con dos contenidos; se toma el primero.",
    "Entry {&1}, struck by {&2}, is not here (yet).":
    "La anotación {&1}, tachada por {&2}, (aún) no está aquí.",
    # Answers of the door.
    "There is no plan of this house yet.": "Todavía no hay plan de esta casa.",
    "The plan of {@1} is being made.": "Se está haciendo el plan de {@1}.",
    "Ask again in some seconds.": "Pregunte de nuevo en unos segundos.",
    "{@1} cannot be planned.": "{@1} no se puede planear.",
    "The rest of this day was not laid anew.": "El resto de este día no se planeó de nuevo.",
    "This was not entered:": "Esto no se anotó:",
    "when was it?": "¿cuándo fue?",
    "This cannot be done.": "Esto no se puede hacer.",
    "This form came from another site.": "Este formulario vino de otro sitio.",
    "It cannot be told where this form came from.":
    "No se sabe de dónde vino este formulario.",
    "The key comes first.": "Primero la clave.",
}  # fmt: skip
