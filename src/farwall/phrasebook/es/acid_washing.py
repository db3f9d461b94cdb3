"""The wash day: what each room asks for after a rinse, the sheet, its steps."""

from __future__ import annotations

PHRASES = {
    "wash day": "día de lavado",
    # after a rinse
    "pH and rag pass.": "pH y trapo pasan.",
    "pH, rag and dry swipe pass.": "pH, trapo y pasada en seco pasan.",
    "Acid is left: a strip reads {#1}, below 6.5.":
    "Queda ácido: una tira marca {#1}, debajo de 6.5.",
    "The rag comes away coloured.": "El trapo sale con color.",
    "The rag still comes away grey.": "El trapo todavía sale gris.",
    "The rag comes away grey, as it does after the first rinses.":
    "El trapo sale gris, como suele salir tras los primeros enjuagues.",
    "Powder came off the dry floor: the pores gave salts back overnight.":
    "El piso seco soltó polvo: los poros devolvieron sales en la noche.",
    "pH {#1} is not yet back to {#2}.": "El pH {#1} aún no regresa a {#2}.",
    "pH {#1} is above {#2}: neutraliser or detergent is still on it.":
    "El pH {#1} está arriba de {#2}: aún le queda neutralizador o detergente.",
    "pH stays at {#1} while the rag is clean: that may be the slab's own lime.":
    "El pH se queda en {#1} con el trapo limpio: puede ser la cal de la misma losa.",
    "pH {#1} is that of the unstained patch: new concrete, no residue.":
    "El pH {#1} es el de la parte sin teñir: concreto nuevo, no residuo.",
    "pH and rag pass as far as they were read: {#1} of {#2} strips.":
    "pH y trapo pasan hasta donde se leyó: {#1} de {#2} tiras.",
    "pH alone does not tell of residue.": "El pH solo no dice nada del residuo.",
    "A clean rag does not tell of acid.": "Un trapo limpio no dice nada del ácido.",
    "Nothing was read after this rinse.": "No se leyó nada después de este enjuague.",
    "Not rinsed yet.": "Aún sin enjuagar.",
    "Next morning, dry: wipe it with a dry dark glove, no powder may come off.":
    "A la mañana siguiente, seco: pase un guante oscuro y seco; no debe soltar polvo.",
    "Let it dry down before sealer.": "Déjelo secar antes del sellador.",
    "Scrub again with neutraliser, not only a rinse.":
    "Talle otra vez con neutralizador, no solo enjuague.",
    "Scrub every spot again, not only a rinse.": "Talle otra vez cada parte, no solo enjuague.",
    "Rinse again with changed water, vacuum it up.":
    "Enjuague otra vez con agua cambiada y aspírela.",
    "Do not rinse on.": "No siga enjuagando.",
    "Rinse a patch that was never stained the same way, read a strip there and enter it.":
    "Enjuague igual una parte que nunca se tiñó, lea ahí una tira y anótela.",
    "Read the strips that are missing, before the floor drains.":
    "Lea las tiras que faltan, antes de que escurra el piso.",
    "Wipe a damp white rag firmly over several ft² (half a m²) and enter it.":
    "Pase firme un trapo blanco húmedo por varios ft² (medio m²) y anótelo.",
    "Read a strip right now, before the floor drains, and enter it.":
    "Lea una tira ahora mismo, antes de que escurra el piso, y anótela.",
    "Read a strip and wipe a white rag, and enter both.":
    "Lea una tira y pase un trapo blanco, y anote los dos.",
    "Neutralise, scrub and rinse.": "Neutralice, talle y enjuague.",
    "Do not rinse on: the sealer's sheet bears it.":
    "No siga enjuagando: la hoja del sellador lo admite.",
    "Do not rinse on: this sealer's sheet does not bear it.":
    "No siga enjuagando: la hoja de este sellador no lo admite.",
    "Ask its maker, wait, or take another sealer.":
    "Pregunte al fabricante, espere o use otro sellador.",
    "Do not rinse on: read on the sealer's sheet which pH it bears.":
    "No siga enjuagando: lea en la hoja del sellador qué pH admite.",
    "About 1 more rinse.": "Falta como 1 enjuague.",
    "About 1 rinse.": "Como 1 enjuague.", "About {#1} rinses.": "Como {#1} enjuagues.",
    "About 1 rinse, {#1} to {#2}.": "Como 1 enjuague, de {#1} a {#2}.",
    "About {#1} rinses, {#2} to {#3}.": "Como {#1} enjuagues, de {#2} a {#3}.",
    "About {#1} more rinses.": "Faltan como {#1} enjuagues.",
    "About 1 more rinse, {#1} to {#2}.": "Falta como 1 enjuague, de {#1} a {#2}.",
    "About {#1} more rinses, {#2} to {#3}.": "Faltan como {#1} enjuagues, de {#2} a {#3}.",
    # the sheet
    "Wash day": "Día de lavado",
    "Begin {#1}.": "Empezar {#1}.",
    "No hour is sure: the floor stays damp.": "Ninguna hora es segura: el piso sigue húmedo.",
    "Earliest {#1}; no sure end: dwell over and the floor dry all over.":
    "Lo más pronto {#1}; sin fin seguro: la reacción terminada y todo el piso seco.",
    "Before it: dwell over and the floor dry all over.":
    "Antes: la reacción terminada y todo el piso seco.",
    "Earliest {#1}, at the late end {#2}: dwell over and the floor dry all over.":
    "Lo más pronto {#1}, a más tardar {#2}: la reacción terminada y todo el piso seco.",
    "Hands": "Manos", "Water": "Agua", "Drums": "Tambos", "drums": "tambos",
    "{#1} of work, likely {#2}.": "{#1} de trabajo, lo probable {#2}.",
    "On the clock likely {#1} with 1 person.": "De reloj, lo probable {#1} con 1 persona.",
    "On the clock likely {#1} with {#2} people.": "De reloj, lo probable {#1} con {#2} personas.",
    "All rinses: likely {#1}.": "Todos los enjuagues: lo probable {#1}.",
    "All rinses: likely {#1}, {#2}.": "Todos los enjuagues: lo probable {#1}, de {#2}.",
    "Scrubbing beside it: likely {#1}.": "Aparte, para tallar: lo probable {#1}.",
    "Drawn at: {@1}.": "Se toma en: {@1}.",
    "{#1} full and {#2} spare; at the high end {#3} full.":
    "Llenos: {#1}; de reserva: {#2}; como máximo llenos: {#3}.",
    "Each {#1} when full: never moved by one person.":
    "Cada uno {#1} lleno: nunca lo mueve una sola persona.",
    "They stand: {@1}.": "Están en: {@1}.",
    "Each wants a square of {#1} to itself on that floor.":
    "Cada uno quiere un cuadro de {#1} para él solo en ese piso.",
    "The van carries {#1} full ones at once.": "La camioneta lleva {#1} llenos a la vez.",
    "Before the first pail": "Antes de la primera cubeta",
    "Every room, step by step": "Cada cuarto, paso a paso",
    "Room by room": "Cuarto por cuarto",
    "A rinsed floor reads pH {#1}, its rag is clean.":
    "El piso enjuagado marca pH {#1} y su trapo sale limpio.",
    "The tap reads {#1}.": "La llave marca {#1}.",
    "washed first": "primero", "back out this way": "salga por aquí",
    "each rinse": "enjuague", "rag": "trapo", "powder": "polvo", "no powder": "sin polvo",
    "next day, dry": "al otro día, seco",
    "pH right after the rinse, before it drains. Rag: clean, grey or coloured. Tick what is done.":
    "pH justo después del enjuague, antes de que escurra. Trapo: limpio, gris o con color. Marque "
    "lo hecho.",
    "A stretch is taken up before its thin spots dry.":
    "Cada paño se aspira antes de que sequen sus partes delgadas.",
    "1 strip each time": "1 tira cada vez", "{#1} strips each time": "{#1} tiras cada vez",
    "{#1} of work, back out by {@2}": "{#1} de trabajo, salga por {@2}",
    "{#1} of work, back out by the way out": "{#1} de trabajo, salga por la salida",
    "{#1} of work, no way out is drawn": "{#1} de trabajo, sin salida dibujada",
    "Wet it whole.": "Mójelo entero.",
    "Wet at most {#1} at once to scrub: {#2} stretches.":
    "Moje cuando más {#1} a la vez para tallar: {#2} paños.",
    "Take each up within {#1}.": "Aspire cada paño en {#1}.",
    "Each rinse {#1}.": "Cada enjuague {#1}.",
    "By hand, twice over all of it, the second time across.":
    "A mano, dos veces por todo, la segunda cruzada.",
    "First pass {1}, {2}; second across, {3}.":
    "Primera pasada {1}, {2}; la segunda cruzada, {3}.",
    "left to right": "de izquierda a derecha", "top to bottom": "de arriba abajo",
    "slantwise": "en diagonal", "1 lane": "1 carril", "{#1} lanes": "{#1} carriles",
    "Edge {#1} by hand, about {#2}.": "Orilla {#1} a mano, como {#2}.",
    # its steps
    "Dwell over and the floor dry all over: no dark spot. Wet spots smear and mark.":
    "Reacción terminada y piso seco en todo: sin mancha oscura. Lo mojado embarra y marca.",
    "Dry HEPA vacuum for the loose powder. No broom, no dry sanding.":
    "Aspiradora HEPA en seco para el polvo suelto. Sin escoba, sin lijar en seco.",
    "Dry vacuum for the loose powder. No broom, no dry sanding.":
    "Aspiradora en seco para el polvo suelto. Sin escoba, sin lijar en seco.",
    "Wet one stretch from the far end with {1}.": "Moje un paño desde el fondo con {1}.",
    "Wait 5 to 10 minutes, till the fizz stops.":
    "Espere de 5 a 10 minutos, hasta que deje de burbujear.",
    "bicarbonate water, 2 to 4 tablespoons to the gallon (7 to 15 g/L)":
    "agua con bicarbonato, de 2 a 4 cucharadas por galón (7 a 15 g/L)",
    "soda ash water, as its sheet says": "agua con carbonato de sodio, como diga su hoja",
    "ammonia water, as its sheet says, windows open":
    "agua con amoníaco, como diga su hoja, ventanas abiertas",
    "lime water, as its sheet says": "agua de cal, como diga su hoja",
    "Scrub every spot: two passes, the second across the first, the same everywhere.":
    "Talle cada parte: dos pasadas, la segunda cruzada, iguales en todas partes.",
    "Soft nylon, white or red pad; green and black cut colour.":
    "Nailon suave, disco blanco o rojo; el verde y el negro comen color.",
    "Edges and corners by hand, as often as the middle.":
    "Orillas y esquinas a mano, tantas veces como el centro.",
    "Take it up while it is dirty and wet.": "Aspírela mientras está sucia y mojada.",
    "It never dries on the floor: mist what dulls.":
    "Nunca se seca en el piso: rocíe con agua lo que se opaque.",
    "Next stretch, wet into the last by a foot (30 cm).":
    "El paño siguiente, un pie (30 cm) dentro del anterior.",
    "Then alkaline or neutral detergent the same way, and take it up.":
    "Luego detergente alcalino o neutro igual, y aspírelo.",
    "Rinse with changed water, take it up.": "Enjuague con agua cambiada y aspírela.",
    "Each rinse with fresh water in a clean pail.":
    "Cada enjuague con agua nueva en una cubeta limpia.",
    "Read a strip right away and wipe a damp white rag over several ft² (half a m²).":
    "Lea una tira enseguida y pase un trapo blanco húmedo por varios ft² (medio m²).",
    "Enter both.": "Anote los dos.",
    "Again until the day says enough.": "Otra vez hasta que el día diga basta.",
    "It is told by rag and pH, not by count.": "Lo dicen trapo y pH, no la cuenta.",
    # its cautions
    "Every machine, cord and pump on ground-fault protection; test the button before the first "
    "pass (29 CFR 1926.404(b)(1)).":
    "Toda máquina, extensión y bomba con protección de falla a tierra; pruebe el botón antes de la "
    "primera pasada (29 CFR 1926.404(b)(1)).",
    "Cords hang or run behind you, never through water.":
    "Las extensiones cuelgan o van detrás de usted, nunca por el agua.",
    "Respirator until the powder is vacuumed and wetted; gloves, goggles and boots to the last "
    "rinse.":
    "Respirador hasta que el polvo esté aspirado y mojado; guantes, gafas cerradas y botas "
    "hasta el último enjuague.",
    "Dirty water burns eyes: eyewash within 10 s.":
    "El agua sucia quema los ojos: lavaojos a 10 s.",
    "No ammonia where bleach was or chlorine smells; no vinegar: it is an acid.":
    "Nada de amoníaco donde hubo cloro o huele a cloro; nada de vinagre: es un ácido.",
    "Rinse water goes into the drums, never to the street, storm drain, soil or septic.":
    "El agua de enjuague va a los tambos, nunca a la calle, drenaje pluvial, suelo o fosa "
    "séptica.",
    "Lids vented while it still fizzes.": "Tapas con respiro mientras burbujee.",
    "A full drum is never moved by one person: fill it where it is picked up.":
    "Un tambo lleno nunca lo mueve una sola persona: llénelo donde lo van a recoger.",
    "Wet floor is slick.": "El piso mojado resbala.",
    "Steps are washed from the top down, nobody on them.":
    "Las escaleras se lavan de arriba abajo, sin nadie en ellas.",
    # what nobody told
    "The floor does not surely get dry: heat or air first, then dry all over.":
    "No es seguro que el piso seque: primero calor o aire, luego seco en todo.",
    "More than one day of work: stop after a room's last rinse, never between steps.":
    "Más de un día de trabajo: pare tras el último enjuague de un cuarto, nunca entre pasos.",
    "Nobody said whether the wet machines hang on ground-fault protection.":
    "Nadie dijo si las máquinas mojadas tienen protección de falla a tierra.",
    "No wet machine is switched on without ground-fault protection.":
    "Ninguna máquina mojada se enciende sin protección de falla a tierra.",
    "Read a strip in the tap water first: the floor is held against it.":
    "Lea primero una tira en el agua de la llave: con ella se compara el piso.",
    "Rinse a patch that was never stained and read a strip there: new concrete is alkaline by "
    "itself.":
    "Enjuague una parte que nunca se tiñó y lea ahí una tira: el concreto nuevo es alcalino de por "
    "sí.",
    "{#1} of {#2} drums are there.": "Hay {#1} de {#2} tambos.",
    "Say where the drums stand: where a truck can pick them up full.":
    "Diga dónde están los tambos: donde un camión pueda recogerlos llenos.",
    "Nobody said what the floor under the drums bears.":
    "Nadie dijo cuánto aguanta el piso bajo los tambos.",
    "On a slab on the ground they may stand; above a room ask the builder first.":
    "En una losa sobre el suelo pueden estar; sobre un cuarto, pregunte primero al constructor.",
    "A full drum is too heavy for that floor: pump the water down to the ground.":
    "Un tambo lleno pesa demasiado para ese piso: bombee el agua hasta el suelo.",
    "No way out is drawn from {@1}: say where one leaves it.":
    "No hay salida dibujada de {@1}: diga por dónde se sale.",
    "No way out of the house is told.": "Nadie dijo por dónde se sale de la casa.",
    # what it rests on
    "water of all rinses": "agua de todos los enjuagues",
    "water of scrubbing": "agua para tallar", "all the work": "todo el trabajo",
    "edges by hand": "orillas a mano", "scrubbing": "tallado", "vacuum": "aspirado",
    "first to dry": "lo primero que seca", "how many rinses": "cuántos enjuagues",
    "Cautions": "Precauciones", "ISSA cleaning times": "tiempos de limpieza de ISSA",
    "as told": "como se dijo", "told in the job": "dicho en el trabajo",
    "8, 12, 20 gal on 100 ft²": "8, 12, 20 gal por 100 ft²",
    "1.5, 2.5, 4 gal on 100 ft²": "1.5, 2.5, 4 gal por 100 ft²",
    "50, 90, 150 ft² an hour of one": "50, 90, 150 ft² por hora de una persona",
    "80 to 260 ft an hour of one": "80 a 260 ft por hora de una persona",
    "375 to 750 ft² an hour": "375 a 750 ft² por hora",
    "22 to 48 ft² a minute": "22 a 48 ft² por minuto",
    "3.3, 4.9, 8.1 L on 1 m²": "3.3, 4.9, 8.1 L por 1 m²",
    "0.6, 1.0, 1.6 L on 1 m²": "0.6, 1.0, 1.6 L por 1 m²",
    "4.6, 8.4, 14 m² an hour of one": "4.6, 8.4, 14 m² por hora de una persona",
    "24 to 79 m an hour of one": "24 a 79 m por hora de una persona",
    "35 to 70 m² an hour": "35 a 70 m² por hora",
    "2.0 to 4.5 m² a minute": "2.0 a 4.5 m² por minuto",
    "a film of 0.15 mm, evaporation at its quickest":
    "una capa de 0.15 mm, con la evaporación más rápida",
    "the room's own rag and strips": "el trapo y las tiras del mismo cuarto",
}  # fmt: skip
