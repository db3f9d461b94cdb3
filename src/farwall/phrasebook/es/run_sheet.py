"""The pages of the run sheet."""

from __future__ import annotations

PHRASES = {
    # The page before the day.
    "{1}, first stroke {#2}": "{1}, primera pasada {#2}",
    "The mix: water first, then stain into it":
    "La mezcla: primero el agua, luego el tinte al agua",
    "cut": "proporción",
    "water": "agua",
    "stain": "tinte",
    "added acid": "ácido agregado",
    "in all": "en total",
    "fields": "tramos",
    "none": "nada",
    "Notes.": "Notas.",
    "Mind: {1}": "Ojo: {1}",
    "Mind:": "Ojo:",
    "coat {#1}": "mano {#1}",
    "coat {#1}, {@2}": "mano {#1}, {@2}",
    "{#1} coats": "{#1} manos",
    "{#1} light colour": "{#1} color claro", "{#1} light colour at {#2}": "{#1} color claro a {#2}",
    "{#1} dark colour": "{#1} color oscuro",
    "{#1} dark colour at {#2}": "{#1} color oscuro a {#2}",
    "Buy {1}.": "Compre {1}.",
    "Buy {1}: {2}.": "Compre {1}: {2}.",
    "Buy {1}: {#2}.": "Compre {1}: {#2}.",
    "{#1} {@2} at {#3}": "{#1} {@2} a {#3}",
    "{#1} {@2}": "{#1} {@2}",
    "Box all lots of one stain before the first mix.":
    "Junte todos los lotes de un tinte antes de mezclar.",
    "The gate: begin a field only with at least the amount on its page in tanks and tub; "
    "if short, mix more at the stop line.":
    "La regla de inicio: empiece un tramo solo si en tanques y tina hay por lo menos la cantidad "
    "de su página; si falta, mezcle más en la línea de parada.",
    "So it runs dry inside a field in {#1} of 100 such jobs.":
    "Así se queda sin mezcla dentro de un tramo en {#1} de 100 trabajos como este.",
    "The later mix of a coat is made at the stop line before its first field and boxed "
    "with what is left.":
    "La mezcla posterior de una mano se hace en la línea de parada antes de su primer tramo y se "
    "junta con lo que queda.",
    "The last field is begun without a reserve and looked into: what the looks on the helper's "
    "page say is mixed while it is sprayed, and boxed.":
    "El último tramo se empieza sin reserva y se mira la tina: lo que diga la página del ayudante "
    "se mezcla al rociar y se junta.",
    "{1}, after band {#2}": "{1}, después de la franja {#2}",
    "The helper: looks into the tub": "El ayudante: mirar la tina",
    "Before the field is begun set out at the tub: stain opened, water in its pail, jug, stirrer. "
    "Same lot and same cut as what is in the tub.":
    "Antes de empezar el tramo tenga listo junto a la tina: tinte abierto, agua en su cubeta, "
    "jarra y palo. Mismo lote y misma proporción que lo de la tina.",
    "Read tub and tanks together as soon as the band is done. Enough to go on: say so, and look "
    "again after the next band. Less: mix what the table says, water first, while the sprayer "
    "sprays; pour all that is left in the tub into it, stir, and fill tanks from that.":
    "Lea tina y tanques juntos en cuanto acabe la franja. Si alcanza para seguir, dígalo y mire "
    "otra vez después de la próxima franja. Si es menos, mezcle lo que dice la tabla, primero el "
    "agua, mientras se rocía; échele todo lo que queda en la tina, revuelva y llene de ahí.",
    "the batch would come fresh against a wet edge. Spray to the next line that hides a "
    "seam, and begin the new mix behind it.":
    "la mezcla nueva llegaría contra una orilla mojada. Rocíe hasta la próxima "
    "línea que esconde una marca y empiece detrás la mezcla nueva.",
    "One table for a slab as thirsty as planned, one for a slab that drank more before this field: "
    "take the one nearest to what the field was begun on.":
    "Una tabla para una losa como se planeó y otra para una que bebió más antes de este tramo: use "
    "la más cercana a lo que había al empezar.",
    "Look into the tub after {1}, from {#2}: the helper's page.":
    "Mire la tina después de {1}, desde las {#2}: página del ayudante.",
    "bands {#1} to {#2}": "las franjas {#1} a {#2}",
    "band {#1}": "la franja {#1}",
    "Begun on {#1}": "Empezado con {#1}",
    "after band": "después de franja",
    "go on with": "siga con",
    "go on": "siga",
    "left in tub and tanks, and what to mix with it, in":
    "lo que queda en tina y tanques, y qué mezclar con ello, en",
    "{#1} left": "quedan {#1}",
    "late": "tarde",
    "The usual rule, one extra gallon on five or six (common practice, no source), would "
    "mix {1}.":
    "La regla usual, un galón extra por cada cinco o seis (práctica común, sin fuente), mezclaría "
    "{1}.",
    "{#1} for {1} and run dry in {#2} of 100":
    "{#1} para la {1} y se quedaría sin mezcla en {#2} de 100",
    "Floor of another make": "Piso de otra hechura",
    "Shown on the wetted slab and accepted, signed:":
    "Mostrado en la losa mojada y aceptado, firma:",
    # The day.
    "The day": "El día",
    "{1} · {#2} in {#3} fields · {4}": "{1} · {#2} en {#3} tramos · {4}",
    "field": "tramo",
    "clock": "hora",
    "starts": "empieza",
    "mix": "mezcla",
    "verdict": "veredicto",
    "to spare": "sobra",
    "edge dies": "orilla muere",
    "stop lines": "líneas de parada",
    "tightest edge": "orilla más justa",
    "oldest edge": "orilla más vieja",
    "{#1} of {#2}": "{#1} de {#2}",
    "{#1} over": "{#1} de más",
    "How sure it is": "Qué tan seguro es",
    "What it rests on": "En qué se basa",
    "{#1} drawn days": "{#1} días sorteados",
    "that an edge dies somewhere": "de que una orilla muera en algún lado",
    "that the mix runs short inside a field": "de que falte mezcla dentro de un tramo",
    "Most of it hangs on the {1} ({#2}).": "Casi todo depende de: {1} ({#2}).",
    "Most of it hangs on the {1} ({2}).": "Casi todo depende de: {1} ({2}).",
    "Most of it hangs on the {1}. {2}": "Casi todo depende de: {1}. {2}",
    "edge budget": "vida de la orilla",
    "edge budget, shortest in {@1}": "vida de la orilla, la más corta en {@1}",
    "fits": "cabe",
    "fits with a helper": "cabe con ayudante",
    "needs a helper": "necesita ayudante",
    "needs two sprayers": "necesita dos rociadores",
    "needs one more stop line": "necesita otra línea de parada",
    "NO": "NO",
    "door": "puerta",
    "doors": "puertas",
    "frame": "marco",
    "frames": "marcos",
    "sill": "umbral",
    "sills": "umbrales",
    "saw cut": "corte de sierra",
    "saw cuts": "cortes de sierra",
    "{#1} doors": "{#1} puertas",
    "{#1} frames": "{#1} marcos",
    "{#1} sills": "{#1} umbrales",
    "{#1} saw cuts": "{#1} cortes de sierra",
    "{#1} to open end": "{#1} hasta fin abierto",
    "{1} {#2}, likely {#3} ({4})": "{1} {#2}, probable {#3} ({4})",
    "{1} {#2}, usual {#3} ({4})": "{1} {#2}, usual {#3} ({4})",
    "{1} {#2} to open end, likely {#3} ({4})": "{1} {#2} hasta fin abierto, probable {#3} ({4})",
    "{1} {#2} to open end, usual {#3} ({4})": "{1} {#2} hasta fin abierto, usual {#3} ({4})",
    "{1} {#2}, likely {#3}": "{1} {#2}, probable {#3}",
    "{1} {#2}, usual {#3}": "{1} {#2}, usual {#3}",
    "{1} {#2} to open end, likely {#3}": "{1} {#2} hasta fin abierto, probable {#3}",
    "{1}: not in these conditions": "{1}: no en estas condiciones",
    "{1}: not in these conditions ({2})": "{1}: no en estas condiciones ({2})",
    "not in these conditions": "no en estas condiciones",
    "prescribed": "indicado",
    "{1}, prescribed": "{1}, indicado por la hoja",
    # A field.
    "Field {#1} of {#2} · {3}": "Tramo {#1} de {#2} · {3}",
    "{#1}, {#2}.": "{#1}, {#2}.",
    "Start only with at least {#1} in tanks and tub":
    "Empiece solo con por lo menos {#1} en tanques y tina",
    "Slab drank more than planned so far? Start with {1}.":
    "¿La losa ha bebido más de lo planeado? Empiece con {1}.",
    "{#1} at {#2}": "{#1} a {#2}",
    "band": "franja",
    "Ticks on the film.": "Marcas en el plástico.",
    "From each letter, the way its arrow points.":
    "Desde cada letra, hacia donde apunta su flecha.",
    "in the doorway": "en la puerta",
    "edge then": "orilla así",
    "more": "más",
    "price": "precio",
    "Little to spare: what would leave more": "Sobra poco: qué dejaría más",
    "What would make it possible": "Qué lo haría posible",
    "What was tried": "Qué se intentó",
    "the sample tells": "lo dice la muestra",
    "NOT AS IT STANDS": "ASÍ COMO ESTÁ, NO",
    "a helper who swaps full tanks": "un ayudante que cambia tanques llenos",
    "a second sprayer": "un segundo rociador",
    "one more stop line": "una línea de parada más",
    "another plan": "otro plan",
    "the edge would grow {#1} old, it lives {#2}": "la orilla llegaría a {#1}, vive {#2}",
    "the edge in {@3} would grow {#1} old, it lives {#2}":
    "la orilla en {@3} llegaría a {#1}, vive {#2}",
    "Only with {1}: as planned, {2}. Plan it again before the day.":
    "Solo con {1}: como está planeado, {2}. Planéelo de nuevo antes del día.",
    "This field cannot be sprayed in these conditions without a lap line: {1}.":
    "Este tramo no se puede rociar en estas condiciones sin marca de traslape: {1}.",
    "This field cannot be sprayed in these conditions without a lap line.":
    "Este tramo no se puede rociar en estas condiciones sin marca de traslape.",
    "This field cannot be sprayed in these conditions.":
    "Este tramo no se puede rociar en estas condiciones.",
    "For the office: the live front counts as {#1} long; no sweep of this floor, walks and "
    "refills left out, brings it under {#2}. On site the minutes count.":
    "Para la oficina: el frente vivo cuenta como de {#1} de largo; ningún barrido de este piso, "
    "sin contar caminatas ni llenados, lo baja de {#2}. En la obra cuentan los minutos.",
    "Straight to the nearest way out, over wet floor. Eyewash at:":
    "Derecho a la salida más cercana, sobre piso mojado. Lavaojos en:",
    "Straight to the way out, over wet floor. Eyewash at:":
    "Derecho a la salida, sobre piso mojado. Lavaojos en:",
    "Straight through {@1} to the way out, over wet floor. Eyewash at:":
    "Derecho por {@1} a la salida, sobre piso mojado. Lavaojos en:",
    "Edges live {1}.": "Las orillas viven {1}.",
    "Oldest edge {#1} of {#2}: {#3} to spare.": "Orilla más vieja {#1} de {#2}: sobran {#3}.",
    "Oldest edge {#1} of {#2}: {#3} too many.": "Orilla más vieja {#1} de {#2}: {#3} de más.",
    "Tightest edge, in {@4}, {#1} of {#2}: {#3} to spare.":
    "Orilla más justa, en {@4}, {#1} de {#2}: sobran {#3}.",
    "Tightest edge, in {@4}, {#1} of {#2}: {#3} too many.":
    "Orilla más justa, en {@4}, {#1} de {#2}: {#3} de más.",
    "Tightest edge, in {@4} {#1} of {#2}: {#3} to spare.":
    "Orilla más justa, en {@4} {#1} de {#2}: sobran {#3}.",
    "Tightest edge, in {@4} {#1} of {#2}: {#3} too many.":
    "Orilla más justa, en {@4} {#1} de {#2}: {#3} de más.",
    "Budget: {1}; likely {#2}, at most {#3}.": "Plazo: {1}; probable {#2}, a lo más {#3}.",
    "These are plain straight bands: none better were found.":
    "Son franjas rectas sencillas: no se encontraron mejores.",
    "The best bands": "Las mejores franjas",
    "Plain straight bands": "Franjas rectas sencillas",
    "Striped, II: second sprayer.": "Rayado, II: segundo rociador.",
    "Same time: begun together, 1 m (3 ft) apart.":
    "Misma hora: empiecen juntos, a 1 m (3 ft) uno del otro.",
    "One sprays here; the second rests or fills tanks outside.":
    "Aquí rocía uno; el segundo descansa o llena tanques afuera.",
    "The helper waits with the full spare tank on dry floor at the way out.":
    "El ayudante espera con el tanque de repuesto lleno, en piso seco, en la salida.",
    "No refill in this field: one tank lasts.": "En este tramo no se llena: alcanza un tanque.",
    "Stop at the dashed stop line on the map, nowhere else.":
    "Pare en la línea de parada punteada del mapa, en ningún otro lado.",
    "Stop at the {#1} dashed stop lines on the map, nowhere else.":
    "Pare en las {#1} líneas de parada punteadas del mapa, en ningún otro lado.",
    "It lies in sight of the main window.": "Queda a la vista de la ventana principal.",
    "One of them lies in sight of the main window.":
    "Una de ellas queda a la vista de la ventana principal.",
    "{#1} of them lie in sight of the main window.":
    "{#1} de ellas quedan a la vista de la ventana principal.",
    "{1} at {#2} after band {#3}: {4}, {5}.": "{1} a las {#2} después de la franja {#3}: {4}, {5}.",
    "Begin with {1}, {2}: {3}, {4}.": "Empiece con {1}, {2}: {3}, {4}.",
    "{#1}, {#2} more": "{#1}, {#2} más",
    "{#1} more": "{#1} más",
    "a full tank": "un tanque lleno",
    "two full tanks": "dos tanques llenos",
    "the helper brings it": "lo trae el ayudante",
    "the helper brings them": "los trae el ayudante",
    "fetch it {1}": "tráigalo {1}",
    "fetch them {1}": "tráigalos {1}",
    "outside the way out": "afuera de la salida",
    "where the can stands": "donde está el bidón",
    "Swap": "Cambio",
    "Refill": "Llenado",
    # Moments, sun, van, foot.
    "Six moments": "Seis momentos",
    "{1}, later coats alike at their own times": "{1}; las manos siguientes igual, a sus horas",
    "Sun on the floor": "Sol en el piso",
    "{1}, clear sky": "{1}, cielo despejado",
    "No edge of this plan is tight by the sun.":
    "Ninguna orilla de este plan queda justa por el sol.",
    "And {#1} more: sun.advice in plan.json tells them.":
    "Y {#1} más: están en sun.advice de plan.json.",
    "Eaves, trees and neighbours are not reckoned with: they only make it less.":
    "No se cuentan aleros, árboles ni vecinos: solo lo hacen menos.",
    "Concrete that the sun has warmed stays warm when it has gone: read the slab there before "
    "the first stroke.":
    "El concreto que calentó el sol sigue caliente cuando se va: mida ahí la losa antes de la "
    "primera pasada.",
    "Film the glass, not the air: windows and doors stay as open as the lungs need.":
    "Tape el vidrio, no el aire: ventanas y puertas quedan tan abiertas como lo piden los "
    "pulmones.",
    "Film or blanket {1} before {#2}, best the day before: without its sun the bands of "
    "{@3} ({&4}) leave their tightest edge {#5}, with it {#6}.":
    "Tape con plástico o cobija {1} antes de las {#2}, mejor la víspera: sin su sol las "
    "franjas de {@3} ({&4}) le dejan a su orilla más justa {#5}, con él {#6}.",
    "Film or blanket {1} before {#2}, best the day before: without its sun the bands of "
    "{@3} ({&4}) leave their tightest edge {#5}, with it {#6}; or begin {@7} by {#8}.":
    "Tape con plástico o cobija {1} antes de las {#2}, mejor la víspera: sin su sol las "
    "franjas de {@3} ({&4}) le dejan a su orilla más justa {#5}, con él {#6}; o empiece a más "
    "tardar a las {#8} en {@7}.",
    "Film or blanket {1} before {#2}, best the day before: without its sun the bands of "
    "{@3} ({&4}) leave their tightest edge {#5}, with it {#6}; or begin {@7} after {#8}.":
    "Tape con plástico o cobija {1} antes de las {#2}, mejor la víspera: sin su sol las "
    "franjas de {@3} ({&4}) le dejan a su orilla más justa {#5}, con él {#6}; o empiece "
    "después de las {#8} en {@7}.",
    "Film or blanket {1} before {#2}, best the day before: without its sun the bands of "
    "{@3} ({&4}) leave their tightest edge {#5}, with it {#6}; or begin {@7} by {#8} or after "
    "{#9}.":
    "Tape con plástico o cobija {1} antes de las {#2}, mejor la víspera: sin su sol las "
    "franjas de {@3} ({&4}) le dejan a su orilla más justa {#5}, con él {#6}; o empiece a más "
    "tardar a las {#8} o después de las {#9} en {@7}.",
    "Sun through windows leaves {#1} field little to spare: see the page on it.":
    "El sol por las ventanas le deja poco margen a {#1} tramo: vea su página.",
    "Sun through windows leaves {#1} fields little to spare: see the page on it.":
    "El sol por las ventanas les deja poco margen a {#1} tramos: vea su página.",
    "Sun through windows leaves {@1} little to spare: see the page on it.":
    "El sol por las ventanas le deja poco margen a {@1}: vea su página.",
    "the {1} window of {@2}": "la ventana {1} de {@2}",
    "the {1} windows of {@2}": "las ventanas {1} de {@2}",
    "north": "norte", "south": "sur", "east": "este", "west": "oeste",
    "northeast": "noreste", "northwest": "noroeste", "southeast": "sureste",
    "southwest": "suroeste", "north-east": "noreste", "north-west": "noroeste",
    "south-east": "sureste", "south-west": "suroeste",
    "Van": "Camioneta",
    "To buy": "Por comprar",
    "In the van: load it": "En la camioneta: cárguelo",
    "needed": "se necesita",
    "there": "hay",
    "buy": "comprar",
    "Stain: what the plan is to be ready for.": "Tinte: aquello para lo que el plan debe alcanzar.",
    "All else is common practice, no source, or a guess: a list of your own wins.":
    "Lo demás es práctica común, sin fuente, o estimación: manda una lista suya.",
    "Sheets for every bottle ride along; what the sheet of a material asks for wins.":
    "Las hojas de cada envase van en la camioneta; manda lo que pida la hoja del material.",
    "Page": "Página",
    "{1} · facts {#2} · inputs {&3}": "{1} · datos {#2} · entradas {&3}",
    "facts {#1} · inputs {&2}": "datos {#1} · entradas {&2}",
    "inputs {&1}": "entradas {&1}",
    "planned again at {#1}": "planeado de nuevo a las {#1}",
    "Run sheet,": "Hoja de trabajo,",
    "The floor with its fields in order": "El piso con sus tramos en orden",
    "The tape of time": "La cinta del tiempo",
    "Map of": "Mapa de",
}  # fmt: skip
