"""Waste water and hexavalent chromium: what can hurt is said whole, and read twice."""

from __future__ import annotations

PHRASES = {
    # Hexavalent chromium: what changes.
    "No acid is added: an oxidiser with hydrochloric acid sets chlorine free.":
    "No se agrega ácido: un oxidante con ácido clorhídrico suelta gas cloro.",
    "Exposure is assessed before the first stroke: by measuring, or by objective data that no use "
    "can reach 0.5 µg/m³ over 8 hours.":
    "La exposición se evalúa antes de la primera pasada: midiendo, o con datos objetivos de que "
    "ningún uso puede llegar a 0.5 µg/m³ en 8 horas.",
    "The limit is 5 µg/m³, the action level 2.5.": "El límite es 5 µg/m³; el nivel de acción, 2.5.",
    "A licensed industrial hygienist says how.":
    "Cómo, lo dice un higienista industrial con licencia.",
    "A regulated area: the place is marked, and nobody who does not work there comes in.":
    "Área regulada: el lugar se marca y no entra nadie que no trabaje ahí.",
    "The rule for general industry asks for one; a hygienist says whether this job must have it.":
    "La regla de la industria en general la exige; si este trabajo debe tenerla lo dice un "
    "higienista.",
    "Nobody eats, drinks, smokes or keeps food there.":
    "Ahí nadie come, bebe, fuma ni guarda comida.",
    "Hands and face are washed before every break and at the end; work clothes stay there.":
    "Manos y cara se lavan antes de cada descanso y al final; la ropa de trabajo se queda ahí.",
    "Gloves, apron and eye protection wherever stain or rinse water can touch: it burns, and a "
    "skin once sensitised stays so.":
    "Guantes, delantal y protección de ojos donde el tinte o el agua de enjuague puedan tocar: "
    "quema, y la piel que una vez se sensibiliza queda así.",
    "Dry powder is taken up with a HEPA vacuum or wet: no dry sweeping, no blowing with air.":
    "El polvo seco se levanta con aspiradora HEPA o en húmedo: no se barre en seco ni se sopla "
    "con aire.",
    "The rinse water is tested for chromium before anything is decided: 5.0 mg/L or more is "
    "hazardous waste, D007.":
    "Al agua de enjuague se le analiza el cromo antes de decidir nada: 5.0 mg/L o más es residuo "
    "peligroso, D007.",
    "It does not fall out at any pH.": "No se asienta a ningún pH.",
    "Nobody sands or grinds this floor dry, now or later; the owner gets that in writing.":
    "Nadie lija ni desbasta este piso en seco, ni ahora ni después; el dueño lo recibe por "
    "escrito.",
    "Papers on exposure are kept for 30 years.": "Los papeles de la exposición se guardan 30 años.",
    "A walk-behind grinder or sander runs with water, or with the maker's shroud and a dust "
    "collector of 99 % filter or better; indoors a HEPA vacuum takes loose dust between passes.":
    "La desbastadora o lijadora de piso trabaja con agua, o con la campana del fabricante y un "
    "colector de polvo con filtro de 99 % o mejor; bajo techo una aspiradora HEPA levanta el "
    "polvo suelto entre pasadas.",
    "A hand grinder has a shroud and a collector of 25 cfm or more for each inch of wheel; "
    "indoors for more than 4 hours a shift a respirator of APF 10 as well.":
    "La esmeriladora de mano lleva campana y un colector de 25 cfm o más por cada pulgada de "
    "disco; bajo techo, más de 4 horas por turno, además un respirador de APF 10.",
    "The maker's opener instead makes no dust.":
    "El abridor del fabricante, en cambio, no hace polvo.",
    "Leave it out; open the slab another way.": "No lo ponga; abra la losa de otra manera.",
    "Ask before this stain is bought.": "Pregunte antes de comprar este tinte.",
    "Signs and tape at every way in.": "Letreros y cinta en cada entrada.",
    "Water, soap and towels at the way out.": "Agua, jabón y toallas en la salida.",
    "By the stain's sheet; changed when torn or wet inside.":
    "Según la hoja del tinte; se cambian si se rompen o se mojan por dentro.",
    "A HEPA vacuum stands there before the wash day.":
    "Una aspiradora HEPA está ahí antes del día de lavado.",
    "Name the laboratory before the wash day.": "Elija el laboratorio antes del día de lavado.",
    "The care sheet and the hand-over say it.": "Lo dicen la hoja de cuidado y la entrega.",
    "One folder holds them.": "Una carpeta los guarda.",
    # Rules by name.
    "sewer word": "permiso del alcantarillado",
    "drum word": "quién se lleva los tambos",
    "waste tests": "análisis del agua",
    "grinding dust": "polvo de desbaste",
    "chromate, no acid": "cromato, sin ácido",
    "chromate, exposure": "cromato, exposición",
    "chromate, area": "cromato, área",
    "chromate, hygiene": "cromato, higiene",
    "chromate, gloves": "cromato, guantes",
    "chromate, vacuum": "cromato, aspirado",
    "chromate, waste": "cromato, residuo",
    "chromate, later": "cromato, después",
    "chromate, records": "cromato, papeles",
    "(published)": "(publicado)",
    "(from memory)": "(de memoria)",
    "(guess)": "(estimación)",
    "(measured here)": "(medido aquí)",
    # Words and tests.
    "Who of the utility gave it in writing, of which office, on which day?":
    "¿Quién de la empresa lo dio por escrito, de qué oficina, qué día?",
    "Who takes the drums, of which office, and who said so on which day?":
    "¿Quién se lleva los tambos, de qué oficina, quién lo dijo y qué día?",
    "Drums and a licensed hauler, or another word in writing.":
    "Tambos y un transportista con licencia, u otro permiso por escrito.",
    "{*1}, {*2}, said yes on {#3}.": "{*1}, {*2}, dijo que sí el {#3}.",
    "{*1} did not allow it.": "{*1} no lo permitió.",
    "The word on the rinse water cannot be leaned on.":
    "Lo dicho sobre el agua de enjuague no basta.",
    "Nobody is named who said it.": "No dice quién lo dijo.",
    "No office is named.": "No dice de qué oficina.",
    "No day is named on which it was said.": "No dice qué día se dijo.",
    "It is not in writing.": "No está por escrito.",
    "It ran out on {#1}.": "Venció el {#1}.",
    "It is of {#1}, more than a year old: ask again.":
    "Es del {#1}, de hace más de un año: pregunte otra vez.",
    "It was not allowed.": "No se permitió.",
    "No limit was named.": "No se nombró ningún límite.",
    "Its pH was not tested.": "No se midió su pH.",
    "Copper was not tested.": "No se analizó el cobre.",
    "Chromium was not tested.": "No se analizó el cromo.",
    "Chromium(VI) was not tested.": "No se analizó el cromo(VI).",
    "Manganese was not tested.": "No se analizó el manganeso.",
    "Iron was not tested.": "No se analizó el hierro.",
    "Zinc was not tested.": "No se analizó el zinc.",
    "Solids was not tested.": "No se analizaron los sólidos.",
    "Its pH is {#1}, and at least {#2} is asked.": "Su pH es {#1}, y el mínimo es {#2}.",
    "Its pH is {#1}, and at most {#2} is asked.": "Su pH es {#1}, y el máximo es {#2}.",
    "Copper {#1} against {#2}.": "Cobre {#1} contra {#2}.",
    "Chromium {#1} against {#2}.": "Cromo {#1} contra {#2}.",
    "Chromium(VI) {#1} against {#2}.": "Cromo(VI) {#1} contra {#2}.",
    "Manganese {#1} against {#2}.": "Manganeso {#1} contra {#2}.",
    "Iron {#1} against {#2}.": "Hierro {#1} contra {#2}.",
    "Zinc {#1} against {#2}.": "Zinc {#1} contra {#2}.",
    "Solids {#1} against {#2}.": "Sólidos {#1} contra {#2}.",
    "Its pH is {#1}: at or below 2, or at or above 12.5, is hazardous waste, D002.":
    "Su pH es {#1}: 2 o menos, o 12.5 o más, es residuo peligroso, D002.",
    "Chromium {#1} mg/L: 5.0 or more is hazardous waste, D007.":
    "Cromo {#1} mg/L: 5.0 o más es residuo peligroso, D007.",
    "not allowed to say": "no se puede decir",
    "below every limit that was named": "por debajo de cada límite que se nombró",
    "above": "por encima",
    "The rinse water is above what was named: {1}":
    "El agua de enjuague pasa de lo que se nombró: {1}",
    "It does not leave.": "No sale.",
    "Settle it and test again, or ask the hauler.":
    "Deje asentar y analice otra vez, o pregunte al transportista.",
    "By a test it may be hazardous waste.": "Según un análisis puede ser residuo peligroso.",
    "The state agency says what it is and who may take it.":
    "La agencia del estado dice qué es y quién puede llevárselo.",
    "Of a tested drum nothing may be said yet: something was not named or not tested.":
    "De un tambo analizado todavía no se puede decir nada: algo no se nombró o no se analizó.",
    "Every tested drum is below every limit that was named.":
    "Cada tambo analizado está por debajo de cada límite que se nombró.",
    "Drum {*1}, by the word of {*2}: above. {3}": "Tambo {*1}, según {*2}: por encima. {3}",
    "Drum {*1}: {2}": "Tambo {*1}: {2}",
    # The part of the acid day.
    "This informs and decides nothing: the utility says what its sewer takes, the state agency "
    "what is hazardous waste, a licensed hauler what he carries.":
    "Esto informa y no decide nada: la empresa dice qué recibe su alcantarillado; la agencia del "
    "estado, qué es residuo peligroso; un transportista con licencia, qué se lleva.",
    "Never into a storm drain, a street, soil, a pond or a septic tank: it holds acid and metals.":
    "Nunca al drenaje pluvial, a la calle, a la tierra, a un estanque ni a la fosa séptica: lleva "
    "ácido y metales.",
    "No: a septic tank lies under the house.": "No: la casa tiene fosa séptica.",
    "Acid and metals kill it and go on into the ground.":
    "El ácido y los metales la matan y siguen al suelo.",
    "No: there is only a storm drain, and it runs to a creek as it is.":
    "No: solo hay drenaje pluvial, y va a un arroyo tal cual.",
    "No: there is no way for the rinse water yet.":
    "No: todavía no hay salida para el agua de enjuague.",
    "Vacuum all of it into drums with vented lids; number each drum and log it.":
    "Aspírela toda a tambos con tapa ventilada; numere cada tambo y anótelo en la bitácora.",
    "Left-over mix stays out of the drums: at pH 2 or below it is hazardous waste by itself, D002.":
    "La mezcla sobrante no va a los tambos: a pH 2 o menos ya es residuo peligroso, D002.",
    "Ask the state agency before raising the pH in a drum: neutralising acid may be treatment.":
    "Pregunte a la agencia del estado antes de subir el pH en un tambo: neutralizar ácido puede "
    "ser tratamiento.",
    "Federal rules let what is hazardous by its pH alone be neutralised without a permit (40 CFR "
    "260.10 and 270.1); with chromium they do not, and a state may ask more.":
    "Las reglas federales dejan neutralizar sin permiso lo que solo es peligroso por su pH (40 "
    "CFR 260.10 y 270.1); con cromo no, y un estado puede pedir más.",
    "Where that is allowed: raise the pH to 8 to 9, lid off until the fizz ends, settle overnight.":
    "Donde se permite: suba el pH a entre 8 y 9, sin tapa hasta que deje de burbujear, y deje "
    "asentar toda la noche.",
    "5 local codes that were read take water into the sewer from pH 5, 5.5 or 6 up to 9.5, 10, "
    "11 or 12: yours decides.":
    "5 códigos locales que se leyeron admiten agua en el alcantarillado desde pH 5, 5.5 o 6 hasta "
    "9.5, 10, 11 o 12: el suyo decide.",
    "Have each drum tested by a laboratory for everything that a limit was named for.":
    "Mande analizar cada tambo en un laboratorio para todo lo que tenga un límite.",
    "A strip shows pH and no metal.": "Una tira muestra el pH y ningún metal.",
    "Decant clear water only with permission, and stop above the sludge.":
    "Saque el agua clara solo con permiso, y pare antes del lodo.",
    "Sludge, rags and filters go to a licensed place, closed and labelled.":
    "El lodo, los trapos y los filtros van a un lugar con licencia, cerrados y con etiqueta.",
    "Keep who said yes and when, where it went, and the manifest number.":
    "Guarde quién dijo que sí y cuándo, a dónde fue y el número de manifiesto.",
    "Clear is not clean: test, never infer.": "Clara no es limpia: analice, nunca suponga.",
    "Hexavalent chromium does not fall out at any pH.":
    "El cromo hexavalente no se asienta a ningún pH.",
    "Much manganese stays dissolved: its hydroxide alone lets {#1} mg/L and more stay at pH 9, "
    "and all of it at pH 8.":
    "Mucho manganeso queda disuelto: su hidróxido por sí solo deja {#1} mg/L y más a pH 9, y todo "
    "a pH 8.",
    "Ammonia keeps copper dissolved: with 0.1 mol/L of it about {#1} mg/L at pH 8 to 9.":
    "El amoníaco mantiene disuelto el cobre: con 0.1 mol/L, unos {#1} mg/L a pH 8 a 9.",
    "Without it up to about 0.6 mg/L may stay, more than some limits allow.":
    "Sin él pueden quedar hasta unos 0.6 mg/L, más que algunos límites.",
    "Iron falls out, most of it, once air has turned it.":
    "El hierro se asienta, casi todo, cuando el aire lo ha cambiado.",
    "Cement brings traces of hexavalent chromium of its own: have it tested though no sheet names "
    "chromate.":
    "El cemento trae trazas propias de cromo hexavalente: mándelo analizar aunque ninguna hoja "
    "nombre cromato.",
    "The metals of {@1} are not known: nobody entered what section 3 of its sheet lists.":
    "Los metales de {@1} no se conocen: nadie anotó lo que dice la sección 3 de su hoja.",
    "For scale: copper chloride at 10 % lays about 97 g of copper on 100 ft² in two coats; if 1 % "
    "of it washes into 12 gal that is 21 mg/L, if 30 % 640, against local limits of 0.06 to 6.0.":
    "Como idea: cloruro de cobre al 10 % deja unos 97 g de cobre en 100 ft² con dos manos; si el "
    "1 % se lava a 12 gal son 21 mg/L; si el 30 %, 640, contra límites locales de 0.06 a 6.0.",
    "The rinse water weighs about {#1} kg.": "El agua de enjuague pesa unos {#1} kg.",
    "If it is hazardous waste, that is more than the 100 kg a month of a very small generator (40 "
    "CFR 262.14), and more rules hold.":
    "Si es residuo peligroso, eso es más que los 100 kg al mes de un generador muy pequeño (40 "
    "CFR 262.14), y rigen más reglas.",
    "Nobody's word is entered: ask the utility, the state agency or a licensed hauler, and enter "
    "name, office and day.":
    "No está anotado lo que dijo nadie: pregunte a la empresa, a la agencia del estado o a un "
    "transportista con licencia, y anote nombre, oficina y día.",
    "The survey says sewer in writing, and no written word with name and day is entered.":
    "La inspección dice alcantarillado por escrito, y no está anotado ningún permiso escrito con "
    "nombre y día.",
    "{1} said no. Ask for another way, and enter who takes the water.":
    "{1} dijo que no. Pregunte por otro camino y anote quién se lleva el agua.",
    "Enter who takes the drums: name, office and day.":
    "Anote quién se lleva los tambos: nombre, oficina y día.",
    "No drum is tested yet.": "Todavía no se ha analizado ningún tambo.",
    "How much of a stain's metal washes off is a guess: one test of all the water of one floor "
    "makes it a measured figure.":
    "Cuánto metal de un tinte se lava es una estimación: un análisis de toda el agua de un piso "
    "la vuelve una cifra medida.",
    # The page for the utility and its log.
    "May this water go to your sewer?": "¿Puede ir esta agua a su alcantarillado?",
    "Rinse water of a stained concrete floor: a page for the utility.":
    "Agua de enjuague de un piso de concreto teñido: una hoja para la empresa de aguas.",
    "A concrete floor of {#1} is coloured with a reactive stain, metal chlorides in dilute "
    "hydrochloric acid, in one coat.":
    "Un piso de concreto de {#1} se colorea con un tinte reactivo, cloruros de metales en ácido "
    "clorhídrico diluido, en una mano.",
    "A concrete floor of {#1} is coloured with a reactive stain, metal chlorides in dilute "
    "hydrochloric acid, in {#2} coats.":
    "Un piso de concreto de {#1} se colorea con un tinte reactivo, cloruros de metales en ácido "
    "clorhídrico diluido, en {#2} manos.",
    "What did not react is neutralised, scrubbed and rinsed off, and taken up by vacuum into "
    "drums.":
    "Lo que no reaccionó se neutraliza, se talla y se enjuaga, y se aspira a tambos.",
    "Work begins on {*1}.": "El trabajo empieza el {*1}.",
    "drums": "tambos",
    "pH": "pH",
    "warmth": "temperatura",
    "{#1}, likely; {#2} to {#3}.": "{#1}, lo probable; de {#2} a {#3}.",
    "{#1} of {#2}, about {#3} each when full.": "{#1} de {#2}, unos {#3} cada uno lleno.",
    "Mostly 6 to 10; lower while residue comes off, up to 12 from new concrete.":
    "Casi siempre de 6 a 10; menos mientras sale residuo, hasta 12 en concreto nuevo.",
    "That of the house, well below 104 °F (40 °C).":
    "La de la casa, muy por debajo de 104 °F (40 °C).",
    "Reckoned from litres of stain by the plan, from density and shares by its safety sheet, with "
    "{#1} % of the metal washing off ({2}) into the water above.":
    "Calculado con los litros de tinte del plan, la densidad y las partes de su hoja de "
    "seguridad, y con que se lava el {#1} % del metal ({2}) al agua de arriba.",
    "No water of this floor has been tested yet.": "Todavía no se ha analizado agua de este piso.",
    "Tests are laid beside this page.": "Los análisis van junto a esta hoja.",
    "Sewer limits that we have read lie a hundredfold apart, copper from 0.06 to 6.0 mg/L: so we "
    "ask for yours.":
    "Los límites de alcantarillado que hemos leído difieren hasta cien veces, cobre de 0.06 a 6.0 "
    "mg/L: por eso pedimos los suyos.",
    "Of {@1} the list of contents was not entered: its metals are not in this table.":
    "De {@1} no se anotó la lista de contenido: sus metales no están en esta tabla.",
    "The sheet of {@1} names chromate: hexavalent chromium does not settle at any pH.":
    "La hoja de {@1} nombra cromato: el cromo hexavalente no se asienta a ningún pH.",
    "May it go to the sewer, raw, or only neutralised and settled?":
    "¿Puede ir al alcantarillado tal cual, o solo neutralizada y asentada?",
    "Which limits hold? Please write them into the table.":
    "¿Qué límites rigen? Por favor anótelos en la tabla.",
    "Where, at which inlet or station, and how fast?":
    "¿Dónde, en qué registro o estación, y qué tan rápido?",
    "On which days, and who must be told before?": "¿Qué días, y a quién se avisa antes?",
    "Which tests, and who gets the paper?": "¿Qué análisis, y quién recibe el papel?",
    "Is raising the pH in a drum treatment that needs a permit here?":
    "¿Subir el pH en un tambo es aquí tratamiento que necesita permiso?",
    "Without a yes in writing it stays in the drums for a licensed hauler.":
    "Sin un sí por escrito se queda en los tambos para un transportista con licencia.",
    "mostly settles": "se asienta casi todo",
    "much stays": "queda mucho",
    "stays at any pH": "queda a cualquier pH",
    "not on the sheet": "no está en la hoja",
    "traces, from cement": "trazas, del cemento",
    "copper": "cobre",
    "chromium": "cromo",
    "chromium, all": "cromo, todo",
    "chromium(VI)": "cromo(VI)",
    "manganese": "manganeso",
    "iron": "hierro",
    "{#1} and more": "{#1} y más",
    "{#1} and more g": "{#1} g y más",
    "{#1} and more mg/L": "{#1} mg/L y más",
    "{#1} mg/L": "{#1} mg/L",
    "What the work is": "Qué es el trabajo",
    "What the water may hold before anything settles":
    "Qué puede llevar el agua antes de que algo se asiente",
    "laid on the floor": "puesto en el piso",
    "in raw rinse water": "en el agua de enjuague",
    "at pH 8 to 9": "a pH 8 a 9",
    "your limit, mg/L": "su límite, mg/L",
    "see above": "ver arriba",
    "to": "a",
    "zinc, solids": "zinc, sólidos",
    "not reckoned": "no calculado",
    "What we ask": "Qué preguntamos",
    "Your answer": "Su respuesta",
    "yes, within these limits": "sí, dentro de estos límites",
    "only as written below": "solo como se anota abajo",
    "no": "no",
    "where, when, how": "dónde, cuándo, cómo",
    "your name": "su nombre",
    "office": "oficina",
    "valid until": "válido hasta",
    "phone": "teléfono",
    "permit no.": "permiso n.º",
    "signature": "firma",
    "asked by, firm": "pregunta, empresa",
    "phone, mail": "teléfono, correo",
    "Where the water went": "A dónde fue el agua",
    "A line for each drum, each time it is filled, treated, moved or emptied.":
    "Una línea por tambo, cada vez que se llena, se trata, se mueve o se vacía.",
    "Kept with the receipts.": "Se guarda con los recibos.",
    "Never into a storm drain, a street, soil, a pond or a septic tank.":
    "Nunca al drenaje pluvial, a la calle, a la tierra, a un estanque ni a la fosa séptica.",
    "drum": "tambo",
    "pH before": "pH antes",
    "pH after": "pH después",
    "who said yes": "quién dijo que sí",
    "where it went": "a dónde fue",
    "manifest no.": "manifiesto n.º",
    "{@1} · waste water · inputs {&2}": "{@1} · agua de desecho · entradas {&2}",
    "kept in the drum": "se queda en el tambo",
    "sewer": "alcantarillado",
    "hauled": "se la llevaron",
    "treatment works": "planta de tratamiento",
    # The log of the day.
    "waste water": "agua de desecho",
    "Drum {*1} went to the sewer, and no written word that can be leaned on is entered.":
    "El tambo {*1} fue al alcantarillado, y no está anotado ningún permiso escrito que valga.",
    "Send no more.": "No mande más.",
    "Ask the utility today, and enter name, office and day.":
    "Pregunte hoy a la empresa, y anote nombre, oficina y día.",
    "Drum {*1} went to the sewer at pH {#2}, and nothing below 5 may.":
    "El tambo {*1} fue al alcantarillado a pH {#2}, y nada por debajo de 5 puede ir.",
    "Tell the utility.": "Avise a la empresa.",
    "Drum {*1} went to the sewer at pH {#2}: at or above 12.5 it is hazardous waste, D002.":
    "El tambo {*1} fue al alcantarillado a pH {#2}: de 12.5 en adelante es residuo peligroso, "
    "D002.",
    "Tell the utility and the state agency.": "Avise a la empresa y a la agencia del estado.",
    "Drum {*1} reads pH {#2}: at or below 2, or at or above 12.5, it is hazardous waste, D002.":
    "El tambo {*1} marca pH {#2}: a 2 o menos, o a 12.5 o más, es residuo peligroso, D002.",
    "It stays shut and labelled until the state agency says who may take it.":
    "Se queda cerrado y con etiqueta hasta que la agencia del estado diga quién puede llevárselo.",
    "Drum {*1} was hauled, and no manifest or receipt is entered.":
    "El tambo {*1} se lo llevaron, y no está anotado el manifiesto ni el recibo.",
    "Enter its number while the paper is at hand.":
    "Anote el número mientras tiene el papel a la mano.",
}  # fmt: skip
