"""Go or no-go: rules, what they come to, what is to be asked and tried."""

from __future__ import annotations

PHRASES = {
    "No.": "No.",
    "Go.": "Adelante.",
    "Go": "Adelante",
    "Not yet: questions are open that could make it a no.":
    "Todavía no: hay preguntas abiertas que podrían hacerlo un no.",
    "Go, with work and words first.": "Adelante, con trabajo y acuerdos antes.",
    "Go or no-go": "Adelante o no",
    "What says no": "Lo que dice que no",
    "To go with": "Para seguir adelante",
    "vapour (F1869)": "vapor (F1869)",
    "{@1} · go or no-go": "{@1} · adelante o no",
    "finisher": "aplicador",
    "owner or builder": "dueño o constructor",
    "date": "fecha",
    "The rules are common practice of the trade, no source, where none is named.":
    "Las reglas son práctica común del oficio, sin fuente, donde no se nombra ninguna.",
    "We have read this page.": "Hemos leído esta página.",
    "The floor varies in colour; cracks, patches and marks of what lay on it show.":
    "El piso varía de color; se ven grietas, parches y marcas de lo que tuvo encima.",
    "The signed, sealed sample is the standard.": "El patrón es la muestra sellada y firmada.",
    "Texts disagree; the strictest holds until you choose.":
    "Los textos no concuerdan; rige el más estricto hasta que usted elija.",
    "Go or no-go: not yet. Still to be asked: {1}.":
    "Adelante o no: todavía no. Falta preguntar: {1}.",
    "Go or no-go: not yet. Still to be asked: {1} and {#2} more.":
    "Adelante o no: todavía no. Falta preguntar: {1} y {#2} más.",
    "No-go: {1}": "No se hace: {1}",
    "No-go: {1} and {#2} more": "No se hace: {1} y {#2} más",
    "{1} and {#2} more.": "{1} y {#2} más.",
    "Go, with: {1}.": "Adelante, con: {1}.",
    "Go, with: {1} and {#2} more.": "Adelante, con: {1} y {#2} más.",
    "Go: every rule is in order.": "Adelante: todas las reglas están en orden.",
    "The sheet of the material in hand, local codes and licensed practice win over this list.":
    "La hoja del material que tiene en la mano, los códigos locales y la práctica con licencia "
    "mandan sobre esta lista.",
    "What says no:": "Lo que dice que no:",
    "To be asked first:": "Por preguntar primero:",
    "To go with:": "Para seguir adelante:",
    "Also to be asked:": "También por preguntar:",
    "In order:": "En orden:",
    "Still to be asked": "Falta preguntar",
    "Tests to do": "Pruebas por hacer",
    "Tests to do:": "Pruebas por hacer:",
    "Texts disagree: {1}.": "Los textos no concuerdan: {1}.",
    # Rules by name.
    "drop seconds": "segundos de la gota", "tight slab": "losa cerrada",
    "drop map": "mapa de gotas",
    "suction leaps": "saltos de absorción", "suction in one field": "absorción en un tramo",
    "in the slab": "dentro de la losa", "pours": "colados", "patches": "parches",
    "cracks": "grietas", "slab temperature": "temperatura de la losa",
    "frost below": "helada abajo", "other trades": "otros oficios",
    "colour wished for": "color que se desea", "waste route": "salida del residuo",
    "chromate": "cromato", "scrub": "tallado", "signed sample": "muestra firmada",
    "fly ash": "ceniza volante", "mix ticket": "boleta del concreto", "moisture": "humedad",
    "slab humidity (F2170)": "humedad de la losa (F2170)",
    "plastic sheet (D4263)": "hoja de plástico (D4263)", "salts": "sales",
    "slab pH": "pH de la losa",
    "slab age": "edad de la losa", "cure and sealer": "curador y sellador",
    "other finishes": "otros acabados", "past acid": "ácido anterior",
    "burnished slab": "losa bruñida", "bare sand": "arena a la vista", "water": "agua",
    "heat": "calefacción", "trades out": "oficios fuera", "eyewash": "lavaojos",
    "fan": "ventilador",
    "circuits": "circuitos", "drums": "tambos", "sprayer": "rociadora",
    "spare sprayer": "rociadora de repuesto", "tip flow": "flujo de la boquilla",
    "five spots": "cinco puntos", "sewer in writing": "alcantarillado por escrito",
    "fizz": "burbujeo", "wet look": "aspecto mojado", "enough to go on": "alcanza para seguir",
    "rinsed clean": "enjuague limpio", "poured": "vertido", "day before": "el día anterior",
    "on the floor": "en el piso", "drop test": "prueba de la gota", "meter": "medidor",
    "owner": "dueño", "sample": "muestra", "film": "película", "curing": "curado",
    "another stain": "otro tinte", "added": "agregado",
    # Drops.
    "A drop stands for more than a minute: {1}. No stain in that field.":
    "Una gota aguanta más de un minuto: {1}. Sin tinte en ese tramo.",
    "A drop stands for more than a minute: {@1}. No stain in that field.":
    "Una gota aguanta más de un minuto: {@1}. Sin tinte en ese tramo.",
    "Clean and try again; then strip, sand or grind, price it, and sample: another look.":
    "Limpie y pruebe de nuevo; luego decape, lije o esmerile, cotícelo y haga muestra: otro "
    "aspecto.",
    "Drops are slow: {@1}.": "Las gotas son lentas: {@1}.",
    "Sand or screen every square foot there alike, edges by hand; then drops again.":
    "Lije ahí parejo cada pie cuadrado, orillas a mano; luego gotas otra vez.",
    "Five drops in each room and on each patch that looks different; note the slowest.":
    "Cinco gotas en cada cuarto y en cada mancha que se vea distinta; anote la más lenta.",
    "Drop seconds differ more than {#1} times between {1}: the same stain comes out differently.":
    "Los segundos de la gota difieren más de {#1} veces entre {1}: el mismo tinte sale distinto.",
    "The plan parts its fields there by a stop line where one can lie; elsewhere sand the tight "
    "side and try drops again, or show it and have it signed.":
    "El plan separa ahí sus tramos con una línea de parada donde cabe; en otras partes lije el "
    "lado cerrado y pruebe gotas otra vez, o muéstrelo y que se lo firmen.",
    "Drop seconds differ more than {#1} times inside one field: {1}.":
    "Los segundos de la gota difieren más de {#1} veces dentro de un tramo: {1}.",
    "Sand the tight side and try drops again; or part it by a saw cut where one may be made; or "
    "disclose it and have it signed.":
    "Lije el lado cerrado y pruebe gotas otra vez; o sepárelo con un corte de sierra donde se "
    "permita; o declárelo y que se lo firmen.",
    "{@1} ({#2} to {#3} s, {#4} times)": "{@1} ({#2} a {#3} s, {#4} veces)",
    "too wide to hide a seam: a saw cut, or it shows":
    "demasiado ancho para esconder una marca: un corte de sierra, o se ve",
    "its leaf hides a stop": "su hoja esconde una parada",
    "a stop in its frame shows a little": "una parada en su marco se ve un poco",
    "its joint hides a stop": "su junta esconde una parada",
    "its edge shows": "su orilla se ve",
    "Drops go in within 20 s where they were tried and not refused.":
    "Las gotas entran en 20 s donde se probaron y no se rechazaron.",
    "Every room has its drop seconds.": "Cada cuarto tiene sus segundos de la gota.",
    "No drop was tried in {@1}.": "No se probó ninguna gota en {@1}.",
    "The house's {#1} stand in for it.": "Valen por ella los {#1} de la casa.",
    "No drop stood for more than a minute.": "Ninguna gota aguantó más de un minuto.",
    # Ground and slab.
    "Not before post-tension cables, heating tubes and conduit are ruled out: no cut and no hole "
    "until then.":
    "No antes de descartar cables de postensado, tubos de calefacción y tubería eléctrica: hasta "
    "entonces ningún corte ni perforación.",
    "stain and disclose": "teñir y declarar",
    "leave for another colour": "dejar para otro color",
    "grind first": "esmerilar primero",
    "post-tension cables": "cables de postensado",
    "heating tubes": "tubos de calefacción",
    "conduit": "tubería eléctrica",
    "Cables, tubes and conduit in the slab are ruled out.":
    "Se descartaron cables, tubos y tubería eléctrica en la losa.",
    "The floor is {#1} pours: the same stain comes out differently on each.":
    "El piso es de {#1} colados: el mismo tinte sale distinto en cada uno.",
    "Each a field of its own, stop line on the joint: the plan stops there when the later pour is "
    "drawn.":
    "Cada uno un tramo propio, línea de parada en la junta: el plan para ahí si se dibuja el "
    "colado posterior.",
    "A drop set and a sample on each; signed.": "Gotas y muestra en cada uno; firmado.",
    "Wait: {1} younger than {#2} days.": "Espere: {1} con menos de {#2} días.",
    "{1} in {@2}: repair mortar never matches.":
    "{1} en {@2}: el mortero de reparación nunca iguala.",
    "The owner has not accepted that every crack reads darker.":
    "El dueño no ha aceptado que cada grieta se ve más oscura.",
    "Show them on the wetted slab; in writing, or another floor.":
    "Muéstrelas en la losa mojada; por escrito, u otro piso.",
    "Heaving is an engineer's.": "Los levantamientos son asunto de un ingeniero.",
    "Is the floor one pour, or were parts added later?":
    "¿El piso es un solo colado, o se agregaron partes después?",
    "Are there patches, trenches, levelled spots? Mark each on the plan.":
    "¿Hay parches, zanjas, partes niveladas? Marque cada una en el plano.",
    "Does the owner accept that every crack reads darker?":
    "¿Acepta el dueño que cada grieta se vea más oscura?",
    "In the slab: {1}. No drilling, no cutting.": "Dentro de la losa: {1}. No taladrar, no cortar.",
    "Stop at doors and joints; moisture by meter and sheet.":
    "Pare en puertas y juntas; humedad con medidor y hoja.",
    "A scan and the engineer's word before any other thing.":
    "Un escaneo y la palabra del ingeniero antes que nada.",
    "Are {1} in the slab ruled out? No cut and no hole before.":
    "¿Se descartaron {1} en la losa? Antes, ningún corte ni perforación.",
    "The builder's drawings, the stamp at the garage door, a scan of the slab.":
    "Los planos del constructor, el sello en la puerta del garaje, un escaneo de la losa.",
    "The floor is one pour.": "El piso es un solo colado.",
    "There are patches, and none is on the plan.": "Hay parches y ninguno está en el plano.",
    "Room, kind, age and drop seconds of each, and its outline.":
    "Cuarto, tipo, edad y segundos de la gota de cada uno, y su contorno.",
    "The owner accepts that every crack reads darker.":
    "El dueño acepta que cada grieta se vea más oscura.",
    "There are no patches.": "No hay parches.",
    "The slab is {#1} ({#2})": "La losa está a {#1} ({#2})",
    "{1}, below {#2}: stain reacts and dries too slowly and unevenly there.":
    "{1}, debajo de {#2}: ahí el tinte reacciona y seca demasiado lento y disparejo.",
    "{1}, above {#2}: the edge dries before the next band reaches it.":
    "{1}, arriba de {#2}: la orilla seca antes de que la alcance la siguiente franja.",
    "The slab is {#1} ({#2}), above {#3}, the strictest advice.":
    "La losa está a {#1} ({#2}), arriba de {#3}, el consejo más estricto.",
    "The slab is {#1} ({#2}), above {#3}.": "La losa está a {#1} ({#2}), arriba de {#3}.",
    "{1}: slow, expect longer waits.": "{1}: lento, habrá esperas más largas.",
    "{1}: fast, best is below {#2}.": "{1}: rápido, lo mejor es menos de {#2}.",
    "A drop stands {#1}, more than a minute: this slab does not take stain yet.":
    "Una gota aguanta {#1}, más de un minuto: esta losa todavía no toma tinte.",
    "A drop takes {#1}: tight, sand first and try again.":
    "Una gota tarda {#1}: cerrada, lije primero y pruebe de nuevo.",
    "Warm the house for a day or two and measure the slab again, not the air.":
    "Caliente la casa uno o dos días y mida de nuevo la losa, no el aire.",
    "Make sure the ground below is not frozen.":
    "Asegúrese de que el suelo de abajo no esté helado.",
    "Spray at the coolest hour, and keep the sun off the slab from the day before.":
    "Rocíe a la hora más fresca y tape el sol a la losa desde el día anterior.",
    "Do not shut the air out to gain time: the fumes need it.":
    "No le cierre el paso al aire para ganar tiempo: los vapores lo necesitan.",
    "Clean, sand or strip, and try the drop again; then a full sample.":
    "Limpie, lije o decape y pruebe la gota de nuevo; luego una muestra completa.",
    # House.
    "The ground below is not frozen.": "El suelo de abajo no está helado.",
    "The house is closed to others.": "La casa está cerrada para otros.",
    "The owner wants a natural range, as the sample shows it.":
    "El dueño quiere un rango natural, como lo muestra la muestra.",
    "The house is on a septic tank": "La casa tiene fosa séptica",
    "There is only a storm drain": "Solo hay drenaje pluvial",
    "There is no way for the rinse water": "No hay salida para el agua de enjuague",
    "The sewer takes it, with the utility's written word.":
    "Va al alcantarillado, con permiso escrito de la empresa que lo opera.",
    "Keep the paper.": "Guarde el papel.",
    "No stain's sheet names chromate.": "Ninguna hoja de los tintes nombra cromato.",
    "How warm is the slab itself, at five spots?":
    "¿A qué temperatura está la losa misma, en cinco puntos?",
    "Is the ground below frozen?": "¿Está helado el suelo de abajo?",
    "Who else is in the house on these days?": "¿Quién más está en la casa esos días?",
    "Does the owner want a natural range, one even colour, or the chart's?":
    "¿El dueño quiere un rango natural, un color parejo o el de la carta?",
    "Where does the rinse water go? Sewer with written word, drums, septic?":
    "¿A dónde va el agua de enjuague? ¿Alcantarillado con permiso escrito, tambos, fosa séptica?",
    "Read the slab again on the day, at five spots.":
    "Mida de nuevo la losa ese día, en cinco puntos.",
    "An early hour, no sun on the floor.": "Una hora temprana, sin sol en el piso.",
    "The ground below is frozen: a warm top over a cold bed deceives.":
    "El suelo de abajo está helado: arriba tibio sobre abajo frío engaña.",
    "Wait until it has thawed, or heat the house for days and read the slab, not the air.":
    "Espere a que se deshiele, o caliente la casa varios días y mida la losa, no el aire.",
    "Painters, plumbers or others work overhead on the same days.":
    "Pintores, plomeros u otros trabajan encima esos mismos días.",
    "The house closed to others for 4 to 5 days, in writing, with the builder's dates.":
    "La casa cerrada para otros de 4 a 5 días, por escrito, con las fechas del constructor.",
    "Other trades work in the house by zones.": "Otros oficios trabajan en la casa por zonas.",
    "Rooms locked, signs on the doors, from cleaning to seal and a day.":
    "Cuartos con llave, letreros en las puertas, desde la limpieza hasta un día después de "
    "sellar.",
    "one even colour": "un color parejo",
    "the colour of a chart": "el color de una carta",
    "The owner wants {1}: acid stain gives neither.":
    "El dueño quiere {1}: el tinte ácido no da ni lo uno ni lo otro.",
    "The owner wants {1} over patches or two pours: acid stain gives neither.":
    "El dueño quiere {1} sobre parches o dos colados: el tinte ácido no da ni lo uno ni lo otro.",
    "A signed, sealed sample with its natural range as the standard; if the owner insists, "
    "recommend another floor.":
    "Una muestra sellada y firmada, con su rango natural, como patrón; si el dueño insiste, "
    "recomiende otro piso.",
    "{1}: rinse water holds acid and metals, and may not go there.":
    "{1}: el agua de enjuague lleva ácido y metales, y no puede ir ahí.",
    "Drums and a licensed hauler, or the sewer with the utility's written word.":
    "Tambos y un transportista con licencia, o el alcantarillado con permiso escrito de la "
    "empresa que lo opera.",
    "What the waste is and where it may go is for the state agency and the utility to say.":
    "Qué es el residuo y a dónde puede ir lo dicen la agencia del estado y la empresa.",
    "Rinse water is hauled.": "El agua de enjuague se la llevan.",
    "Drums, log and receipts; price them.": "Tambos, registro y recibos; cotícelos.",
    "Rinse water goes into drums.": "El agua de enjuague va a tambos.",
    "The agency says what it is.": "La agencia dice qué es.",
    "The sheet of {@1} names chromate: it changes the whole job.":
    "La hoja de {@1} nombra cromato: cambia todo el trabajo.",
    "Exposure, respirators and waste settled by a licensed hygienist first; no acid added; nobody "
    "sands this floor later without controls.":
    "Exposición, respiradores y residuos los define primero un higienista con licencia; no se "
    "agrega ácido; nadie lija después este piso sin controles.",
    "Nobody has read the sheet of {@1} for chromate.":
    "Nadie ha leído la hoja de {@1} por si tiene cromato.",
    "Read it: hexavalent chromium changes exposure, waste and what may be mixed.":
    "Léala: el cromo hexavalente cambia la exposición, los residuos y lo que se puede mezclar.",
    # Mix of the concrete, sample.
    "A full sample on this slab, scrubbed hard, decides: expect weak colour.":
    "Decide una muestra completa en esta losa, bien tallada: espere color débil.",
    "The mix has {#1} fly ash, more than {#2}.":
    "El concreto lleva {#1} de ceniza volante, más de {#2}.",
    "The mix has {#1} fly ash.": "El concreto lleva {#1} de ceniza volante.",
    "The mix has {#1} fly ash: little lime is left.":
    "El concreto lleva {#1} de ceniza volante: queda poca cal.",
    "The ready-mix ticket: {1}.": "La boleta del premezclado: {1}.",
    "A full sample on this slab; show the owner, and have it signed.":
    "Una muestra completa en esta losa; muéstrela al dueño y que la firme.",
    "The sample held its colour under a hard scrub.":
    "La muestra conservó su color con un tallado fuerte.",
    "No sealed sample on this slab is signed.":
    "No hay firmada ninguna muestra sellada en esta losa.",
    "Sealed, looked at by day and by lamp, photographed, signed, before the first coat.":
    "Sellada, vista de día y con lámpara, fotografiada, firmada, antes de la primera mano.",
    "Did a full sample on this slab hold its colour under a hard scrub?":
    "¿Una muestra completa en esta losa conservó su color con un tallado fuerte?",
    "Is a sealed sample on this slab signed by the owner?":
    "¿Firmó el dueño una muestra sellada en esta losa?",
    "How much fly ash is in the mix? The ready-mix ticket says.":
    "¿Cuánta ceniza volante lleva el concreto? Lo dice la boleta del premezclado.",
    "What does the ready-mix ticket say: slag, accelerator, cement?":
    "¿Qué dice la boleta del premezclado: escoria, acelerante, cemento?",
    "{#1} slag or pozzolan weakens colour": "{#1} de escoria o puzolana debilita el color",
    "calcium chloride in the mix gives dark blotches":
    "el cloruro de calcio en el concreto da manchas oscuras",
    "{#1} of cement a m³ (under five sacks) reacts weakly":
    "{#1} de cemento por m³ (menos de cinco sacos) reacciona débil",
    "The ready-mix ticket tells nothing that weakens colour.":
    "La boleta del premezclado no dice nada que debilite el color.",
    "The sample's colour washed off under a hard scrub: it sits on the surface.":
    "El color de la muestra se fue con un tallado fuerte: está en la superficie.",
    "Open the slab evenly and sample again; a second time, another floor.":
    "Abra la losa parejo y haga otra muestra; si falla de nuevo, otro piso.",
    "The sample came out weak.": "La muestra salió débil.",
    "A second coat, or open the slab; sample again.":
    "Una segunda mano, o abra la losa; haga otra muestra.",
    "A sealed sample on this slab is signed.": "Está firmada una muestra sellada en esta losa.",
    # Moisture.
    "Wait with moving air and read again; a breathable sealer, whose label wins.":
    "Espere con aire en movimiento y mida de nuevo; un sellador que respire, y manda su etiqueta.",
    "The sheets (D4263) stayed dry; a dry sheet proves no dry slab.":
    "Las hojas (D4263) quedaron secas; una hoja seca no prueba una losa seca.",
    "The meter reads even.": "El medidor lee parejo.",
    "No salts come back.": "No regresan sales.",
    "The bare slab reads pH {#1}.": "La losa desnuda marca pH {#1}.",
    "Is the slab dry and evenly so? The tests to do are listed.":
    "¿Está seca la losa, y pareja? Abajo están las pruebas por hacer.",
    "Do white salts come back after brushing?": "¿Regresan sales blancas después de cepillar?",
    "What pH does the bare, wetted slab read?": "¿Qué pH marca la losa desnuda y mojada?",
    "Wait, find where the water comes from, and lay it again.":
    "Espere, busque de dónde viene el agua y póngala de nuevo.",
    "Wait, fans; read again.": "Espere, ventiladores; mida de nuevo.",
    "Wait, fans; read the 3 ft grid again; a breathable sealer.":
    "Espere, ventiladores; mida de nuevo la cuadrícula de 3 ft; un sellador que respire.",
    "Moisture was tried.": "Se probó la humedad.",
    "White salts come back after brushing: water comes up through the slab.":
    "Regresan sales blancas después de cepillar: sube agua por la losa.",
    "Find the water first: drains, ground, a missing barrier. An engineer's question.":
    "Primero busque el agua: drenajes, suelo, una barrera que falta. Es asunto de un ingeniero.",
    "The bare slab reads pH {#1}: little lime is left in its skin.":
    "La losa desnuda marca pH {#1}: queda poca cal en su superficie.",
    "Expect pale, patchy colour; the sample decides.":
    "Espere color pálido y manchado; decide la muestra.",
    # Ready, the day before and that morning.
    "The tip gives {1} a minute": "La boquilla da {1} por minuto",
    "{#1} circuits of 20 A are free.": "Hay {#1} circuitos de 20 A libres.",
    "No drums may stand there.": "Ahí no puede haber tambos.",
    "Ask where; else the water has no way.": "Pregunte dónde; si no, el agua no tiene salida.",
    "The sprayer leaks.": "La rociadora gotea.",
    "New seals, or a spare that holds pressure.":
    "Sellos nuevos, o un repuesto que guarde presión.",
    "The spare sprayer leaks: tanks are filled, not swapped. The plan counts so.":
    "La rociadora de repuesto gotea: los tanques se llenan, no se cambian. Así cuenta el plan.",
    "New seals before the first stroke, or shorter fields.":
    "Sellos nuevos antes de la primera pasada, o tramos más cortos.",
    "{1}, as planned.": "{1}, como está planeado.",
    "The slab's coldest and warmest spots are within limits.":
    "El punto más frío y el más caliente de la losa están dentro de límites.",
    "Is there running water?": "¿Hay agua corriente?",
    "Water runs.": "Hay agua corriente.",
    "There is no running water.": "No hay agua corriente.",
    "Water on, or a tank of 200 gal brought.": "Que haya agua, o traiga un tanque de 200 gal.",
    "Can the house be kept at 60 to 90 °F (16 to 32 °C)?":
    "¿Se puede mantener la casa entre 60 y 90 °F (16 y 32 °C)?",
    "The house can be kept warm.": "La casa se puede mantener caliente.",
    "The house cannot be kept at 60 to 90 °F (16 to 32 °C).":
    "La casa no se puede mantener entre 60 y 90 °F (16 y 32 °C).",
    "Vented heat for days before, or a later date.":
    "Calefacción con escape días antes, o una fecha posterior.",
    "Are all other trades out, and stay out?": "¿Están fuera los demás oficios, y así se quedan?",
    "Trades are out.": "Los oficios están fuera.",
    "Other trades are still in.": "Todavía hay otros oficios adentro.",
    "Locked out until a day after the seal; else another date.":
    "Cerrado para ellos hasta un día después del sello; si no, otra fecha.",
    "Does the eyewash run, in reach of 10 s, for 15 min?":
    "¿Corre el lavaojos, a 10 s, durante 15 min?",
    "The eyewash runs.": "El lavaojos corre.",
    "There is no eyewash.": "No hay lavaojos.",
    "Nobody opens a jug before it runs.": "Nadie abre un envase antes de que corra.",
    "Does the fan blow out of the house?": "¿El ventilador saca el aire de la casa?",
    "The fan blows out.": "El ventilador saca el aire.",
    "No fan blows out.": "Ningún ventilador saca el aire.",
    "No stain without it: fumes need a way out.":
    "Sin él no se tiñe: los vapores necesitan salida.",
    "Are two 20 A circuits free for the finisher?":
    "¿Hay dos circuitos de 20 A libres para el aplicador?",
    "May drums of rinse water stand there?": "¿Puede haber ahí tambos de agua de enjuague?",
    "Does the sprayer hold pressure with water?": "¿La rociadora guarda presión con agua?",
    "Does the spare sprayer hold pressure?": "¿La rociadora de repuesto guarda presión?",
    "What does the tip give in one minute into a jug?":
    "¿Cuánto da la boquilla en un minuto en una jarra?",
    "How cold and how warm are five spots of the slab?":
    "¿Qué tan fríos y qué tan calientes están cinco puntos de la losa?",
    "{#1} circuit of 20 A for the finisher, not {#2}.":
    "{#1} circuito de 20 A para el aplicador, no {#2}.",
    "{#1} circuits of 20 A for the finisher, not {#2}.":
    "{#1} circuitos de 20 A para el aplicador, no {#2}.",
    "A second one on a breaker of its own, within 150 ft (45 m), or a generator outdoors.":
    "Un segundo con su propio interruptor, a menos de 150 ft (45 m), o un generador al aire libre.",
    "Drums may stand until they are hauled.": "Los tambos pueden quedarse hasta que se los lleven.",
    "All of it to the sewer, as written.": "Todo al alcantarillado, como está escrito.",
    "The sprayer holds pressure.": "La rociadora guarda presión.",
    "The sprayer leaks, the spare is tight: one sprayer, filled and not swapped.":
    "La rociadora gotea, el repuesto no: una rociadora, que se llena y no se cambia.",
    "Take the spare; new seals for the other before it comes near acid.":
    "Lleve el repuesto; sellos nuevos a la otra antes de que se acerque al ácido.",
    "The spare sprayer holds pressure.": "La rociadora de repuesto guarda presión.",
    "{1}, more than a tenth above its {2}: it is worn.":
    "{1}, más de un décimo sobre sus {2}: está gastada.",
    "A new tip of the same number; then measure again.":
    "Boquilla nueva del mismo número; luego mida de nuevo.",
    "{1}; the planned rate wants {2}. The plan is made again, slower.":
    "{1}; el ritmo planeado pide {2}. El plan se hace de nuevo, más lento.",
    "Clean the tip and its screen, pump to the same strokes, measure again.":
    "Limpie la boquilla y su malla, bombee las mismas veces, mida de nuevo.",
    "{1}; the planned rate wants {2}: at the planned pace it lays {#3} more, and darker.":
    "{1}; el ritmo planeado pide {2}: al paso planeado deja {#3} más, y más oscuro.",
    "A smaller tip or less pressure, till the jug shows the planned flow.":
    "Boquilla más chica o menos presión, hasta que la jarra muestre el flujo planeado.",
    "The plan is made again with it.": "El plan se hace de nuevo con ello.",
    # Slab's skin and age.
    "Dust is silica: shroud, vacuum and respirator by the silica rule.":
    "El polvo es sílice: campana, aspiradora y respirador según la regla de sílice.",
    "Sand every square foot with the same number of passes, edges by hand":
    "Lije cada pie cuadrado con el mismo número de pasadas, orillas a mano",
    "Open every square foot with the maker's opener":
    "Abra cada pie cuadrado con el abridor del fabricante",
    "Grind every square foot alike; sand shows and the look turns grainy":
    "Esmerile parejo cada pie cuadrado; se ve la arena y queda granuloso",
    "{1}; then drops and a full sample.": "{1}; luego gotas y una muestra completa.",
    "The slab is {#1} old.": "La losa tiene {#1}.",
    "The sample decides all the same.": "De todos modos decide la muestra.",
    "There is {1} on the slab: stain cannot reach it.":
    "Hay {1} sobre la losa: el tinte no la alcanza.",
    "Glue lies on the slab: its print shows after staining.":
    "Hay pegamento en la losa: su huella se ve después de teñir.",
    "Scrape, scrub, poultice; sample on the print, and have the ghost accepted in writing.":
    "Raspe, talle, ponga cataplasma; muestra sobre la huella, y que acepten la sombra por "
    "escrito.",
    "No acid has been on the slab.": "No ha habido ácido en la losa.",
    "Choose a way to open it, on a sample first": "Elija cómo abrirla, primero en una muestra",
    "The slab is burnished: it rejects stain until opened.":
    "La losa está bruñida: rechaza el tinte hasta que se abra.",
    "A part of the slab is burnished: it rejects stain until opened.":
    "Una parte de la losa está bruñida: rechaza el tinte hasta que se abra.",
    "No sand lies bare.": "No hay arena a la vista.",
    "How many days old is the slab, and what age does the stain's sheet ask for?":
    "¿Cuántos días tiene la losa, y qué edad pide la hoja del tinte?",
    "Is there a curing compound, cure-and-seal, sealer or paint on it? Ask for the bottles.":
    "¿Tiene curador, curador-sellador, sellador o pintura? Pida los envases.",
    "What lies on the slab now, or lay there last: glue, mastic, tile, paint, leveller?":
    "¿Qué hay sobre la losa, o qué hubo al último: pegamento, mástique, loseta, pintura, "
    "nivelador?",
    "Was the slab, or a part, ever washed or etched with acid?":
    "¿Alguna vez se lavó o atacó con ácido la losa, o una parte?",
    "Is any of it trowelled dark and glossy?": "¿Hay alguna parte allanada oscura y brillosa?",
    "On how much of the floor does sand or stone lie bare?":
    "¿En cuánto del piso hay arena o piedra a la vista?",
    "The slab is {#1} old; the stain's sheet asks for {#2}.":
    "La losa tiene {#1}; la hoja del tinte pide {#2}.",
    "Wait {#1}; the sheet wins.": "Espere {#1}; manda la hoja.",
    "The slab is {#1} old, younger than {#2}: it stains unevenly.":
    "La losa tiene {#1}, menos de {#2}: se tiñe disparejo.",
    "Wait {#1}, then let a sealed sample on this slab decide.":
    "Espere {#1}; luego que decida una muestra sellada en esta losa.",
    "Dilute the first coat.": "Diluya la primera mano.",
    "The slab is {#1} old, younger than {#2}.": "La losa tiene {#1}, menos de {#2}.",
    "The slab is {#1} old, younger than {#2} (the strictest advice).":
    "La losa tiene {#1}, menos de {#2} (el consejo más estricto).",
    "Let the sample decide, never the date alone; read the stain's sheet.":
    "Que decida la muestra, nunca la fecha sola; lea la hoja del tinte.",
    "No cure, sealer or paint lies on the slab.":
    "No hay curador, sellador ni pintura sobre la losa.",
    "A film was taken off the slab.": "A la losa se le quitó una película.",
    "Drops and a full sample where it lay; what is left of it keeps stain out.":
    "Gotas y muestra completa donde estaba; lo que quede de ella no deja entrar el tinte.",
    "Try a solvent rag in a closet for what it is; strip or grind it off, drops again, then a "
    "full sample.":
    "Pruebe con un trapo con solvente en un clóset para saber qué es; decape o esmerile, gotas "
    "otra vez, luego muestra completa.",
    "Else another floor.": "Si no, otro piso.",
    "The slab is bare.": "La losa está desnuda.",
    "black mastic": "mástique negro",
    "vinyl tile": "loseta vinílica",
    "old paint": "pintura vieja",
    "a curing compound": "un curador",
    "a cure-and-seal": "un curador-sellador",
    "a sealer": "un sellador",
    "paint": "pintura",
    "There is {1} on the slab: it may hold asbestos.":
    "Hay {1} sobre la losa: puede tener asbesto.",
    "Nobody sands or scrapes it.": "Que nadie lije ni raspe.",
    "A licensed inspector tests it first; licensed people take it off.":
    "Primero lo prueba un inspector con licencia; lo quita gente con licencia.",
    "There is old paint on the slab: it keeps stain out, and in an old house may be lead.":
    "Hay pintura vieja sobre la losa: no deja entrar el tinte, y en una casa vieja puede tener "
    "plomo.",
    "A licensed test for lead before anybody sands; then strip, drops, a full sample.":
    "Prueba de plomo con licencia antes de que alguien lije; luego decapar, gotas, muestra "
    "completa.",
    "The floor is a {1}: it takes stain unlike the slab, if at all.":
    "El piso es {1}: toma el tinte distinto que la losa, si es que lo toma.",
    "Its maker's word, a field of its own, and a full sample on it.":
    "La palabra de su fabricante, un tramo propio y una muestra completa encima.",
    "The whole slab was washed or etched with acid: the lime that colour needs is gone.":
    "Toda la losa se lavó o atacó con ácido: ya no está la cal que necesita el color.",
    "An overlay, a dye, or another floor.": "Un recubrimiento, un colorante, u otro piso.",
    "A part of the slab was washed with acid: it stays pale.":
    "Una parte de la losa se lavó con ácido: se queda pálida.",
    "Sample there; a field of its own, signed.": "Muestra ahí; un tramo propio, firmado.",
    "No part of the slab is burnished.": "Ninguna parte de la losa está bruñida.",
    "The whole slab is burnished: dark, glossy, closed.":
    "Toda la losa está bruñida: oscura, brillosa, cerrada.",
    "Sand or stone lies bare on {#1} of the floor: stone does not stain.":
    "Hay arena o piedra a la vista en {#1} del piso: la piedra no se tiñe.",
    "Another floor, or an owner who signs a sample of the worst place.":
    "Otro piso, o un dueño que firme una muestra del peor lugar.",
    "Sand lies bare on {#1} of the floor.": "Hay arena a la vista en {#1} del piso.",
    "Show it; sign for it.": "Muéstrelo; que lo firmen.",
    # While it is sprayed.
    "No fizz after two minutes in the first closet: a film, or a dead slab.":
    "Sin burbujeo a los dos minutos en el primer clóset: una película, o losa muerta.",
    "Stop, wash it off, find the film. Nothing more is sprayed.":
    "Pare, lávelo, busque la película. No se rocía más.",
    "The wet look is lighter than the sample.": "Mojado se ve más claro que la muestra.",
    "Another coat when the dwell is over and a drop still goes in within a minute.":
    "Otra mano cuando termine el reposo y una gota aún entre en un minuto.",
    "{1}: enough to go on.": "{1}: alcanza para seguir.",
    "pH and rag pass.": "pH y trapo pasan.",
    "Acid is added to the mix: the maker's sheet does not cover it, fumes rise.":
    "A la mezcla se le agrega ácido: la hoja del fabricante no lo cubre, suben vapores.",
    "A sample made with it first; record how much.":
    "Primero una muestra hecha con él; anote cuánto.",
    "Opening the slab is the honest way.": "Abrir la losa es el camino honesto.",
    "It fizzes: the slab reacts.": "Burbujea: la losa reacciona.",
    "The wet look is darker than the sample: too dark is final.":
    "Mojado se ve más oscuro que la muestra: lo demasiado oscuro no tiene remedio.",
    "Neutralise now, shorten the dwell, no further coat.":
    "Neutralice ya, acorte el reposo, ninguna mano más.",
    "The wet look is within the sample's range.":
    "Mojado se ve dentro del rango de la muestra.",
    "Stop there, even if two coats were quoted.": "Pare ahí, aunque se hayan cotizado dos manos.",
    "{#1} left for {#2}": "quedan {#1} para {#2}",
    "{1}: less than {#2} times the need, {#3}.":
    "{1}: menos de {#2} veces lo que se necesita, {#3}.",
    "Stop at this stop line, not later; mix more of the same lots and box it.":
    "Pare en esta línea de parada, no después; mezcle más de los mismos lotes y júntelo.",
    "pH {#1} is below {#2}": "el pH {#1} está debajo de {#2}",
    "the white rag is dirty": "el trapo blanco sale sucio",
    "Not clean yet: {1}. No sealer on it.": "Todavía no está limpio: {1}. Sin sellador encima.",
    "Another scrub, not only another rinse; then pH and rag again, in every 500 ft².":
    "Talle otra vez, no solo enjuague; luego pH y trapo otra vez, cada 500 ft².",
    "This is not mixed.": "Esto no se mezcla.",
    "Pour nothing; air the place; read both sheets.":
    "No vierta nada; ventile el lugar; lea las dos hojas.",
    "Hurt or dizzy: out, and call for help.":
    "Si está lastimado o mareado: salga y pida ayuda.",
    "No acid is added where a sheet names chromate.":
    "No se agrega ácido donde una hoja nombra cromato.",
    "No acid is added where a sheet names an oxidiser: together they give off chlorine.":
    "No se agrega ácido donde una hoja nombra un oxidante: juntos sueltan cloro.",
    "Leave it out.": "Déjelo fuera.",
}  # fmt: skip
