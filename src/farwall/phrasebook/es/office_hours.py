"""Hours and price: tasks, rules, what drives a spread, what a figure is held against."""

from __future__ import annotations

PHRASES = {
    # tasks
    "travel, phone and papers": "viajes, teléfono y papeles",
    "survey and samples": "inspección y muestras",
    "set up and clear away": "montar y recoger",
    "mix, box and wash out": "mezclar, juntar y lavar el equipo",
    "spray": "rociar",
    "judge and touch up": "juzgar y retocar",
    "lay floor finish": "aplicar el acabado de piso",
    "unmask and hand over": "desenmascarar y entregar",
    # groups of materials
    "masking": "enmascarado",
    "protective gear": "equipo de protección",
    "washing and waste": "lavado y desechos",
    "sprayers and tools": "rociadores y herramienta",
    "delivery": "envío",
    "travel to the site": "viajes a la obra",
    # rules
    "for a job, whatever its size": "por trabajo, de cualquier tamaño",
    "for a survey and a sample of three dilutions":
    "por una inspección y una muestra de tres diluciones",
    "{#1} h for each of {#2} days on site": "{#1} h por cada uno de {#2} días en obra",
    "{#1} h for each of {#2} coats": "{#1} h por cada una de {#2} manos",
    "{#1} min of the plan for {#2} people": "{#1} min del plan para {#2} personas",
    "as the wash day is reckoned, room by room": "según el día de lavado, cuarto por cuarto",
    "as the shopping list has it": "según la lista de compras",
    "as the shopping list has it, kept gear by its share of the jobs it lasts":
    "según la lista de compras; el equipo que se guarda, por su parte de los trabajos que dura",
    "Gear that is kept": "Equipo que se guarda", "Jobs it lasts": "Trabajos que dura",
    "Of it in this price": "De ello en este precio", "in the van": "en la camioneta",
    "Gear that is kept is in the price whole, as the job says.":
    "El equipo que se guarda va entero en el precio, como dice el trabajo.",
    "All of it is paid when it is bought; this price bears its share of the jobs it lasts.":
    "Todo se paga al comprarlo; este precio lleva su parte de los trabajos que dura.",
    "{#1} times the hours of a floor of 1,500 ft²": "{#1} veces las horas de un piso de 1,500 ft²",
    "{#1} times the hours of a floor of 139 m²": "{#1} veces las horas de un piso de 139 m²",
    "{#1} ft of wall at {#2} to {#3} an hour, usually {#4}":
    "{#1} ft de pared, de {#2} a {#3} por hora, normalmente {#4}",
    "{#1} m of wall at {#2} to {#3} an hour, usually {#4}":
    "{#1} m de pared, de {#2} a {#3} por hora, normalmente {#4}",
    "{#1} ft² of floor at {#2} to {#3} an hour, usually {#4}":
    "{#1} ft² de piso, de {#2} a {#3} por hora, normalmente {#4}",
    "{#1} m² of floor at {#2} to {#3} an hour, usually {#4}":
    "{#1} m² de piso, de {#2} a {#3} por hora, normalmente {#4}",
    "{#1} ft² of floor at {#2} to {#3} an hour, usually {#4}, {#5} times":
    "{#1} ft² de piso, de {#2} a {#3} por hora, normalmente {#4}, {#5} veces",
    "{#1} m² of floor at {#2} to {#3} an hour, usually {#4}, {#5} times":
    "{#1} m² de piso, de {#2} a {#3} por hora, normalmente {#4}, {#5} veces",
    "{#1} gal at {#2}": "{#1} gal a {#2}",
    "{#1} ft of wall at {#2}": "{#1} ft de pared a {#2}",
    "{#1} ft² of floor at {#2}": "{#1} ft² de piso a {#2}",
    "{#1} L at {#2}": "{#1} L a {#2}",
    "{#1} m of wall at {#2}": "{#1} m de pared a {#2}",
    "{#1} m² of floor at {#2}": "{#1} m² de piso a {#2}",
    "{#1} days of a person at {#2}": "{#1} días de una persona a {#2}",
    "{#1} trips at {#2}": "{#1} viajes a {#2}",
    "learned from {#1} jobs": "aprendido de {#1} trabajos",
    "learned from 1 job": "aprendido de 1 trabajo",
    "told by the firm": "dicho por la empresa",
    "one house alone, mild days": "una casa sola, días templados",
    "the calendar": "el calendario",
    "No hours were learned yet: these are common practice with no source, and guesses. Close jobs "
    "with their hours by task, and they become your own.":
    "Todavía no se aprendió ninguna hora: estas son práctica común sin fuente, y estimaciones. "
    "Cierre trabajos con sus horas por tarea, y serán las suyas.",
    "No coat of stain is in it.": "No lleva ninguna mano de tinte.",
    # what drives the spread
    "the house itself": "la casa misma",
    "prices of materials": "precios de materiales",
    "what an hour truly costs": "lo que de verdad cuesta una hora",
    "a second mobilisation": "una segunda movilización",
    "call-back: residue": "llamada de vuelta: residuo",
    "call-back: moisture": "llamada de vuelta: humedad",
    "call-back: colour": "llamada de vuelta: color",
    "Walk the floor with a wet rag and drops in every room before you quote: a dirty or thirsty "
    "house is slow in all of its tasks.":
    "Recorra el piso con un trapo mojado y gotas en cada cuarto antes de cotizar: una casa sucia o "
    "sedienta es lenta en todas sus tareas.",
    "Reckon your own loaded hour from last year's books and tell it under rates.":
    "Saque su propia hora cargada de los libros del año pasado y anótela en las tarifas.",
    "Read in a price list of your sellers.": "Cargue una lista de precios de sus vendedores.",
    "Tell what a trip to the site costs you.": "Diga cuánto le cuesta un viaje a la obra.",
    "Look at the weather of the sealing night, and have the other trades sign the lock of the "
    "house.":
    "Vea el tiempo de la noche del sellado, y haga que los otros oficios firmen el cierre de la "
    "casa.",
    "Name the sealer and read in its price.": "Nombre el sellador y cargue su precio.",
    "Lay a sample on this slab: it says how much the floor drinks.":
    "Haga una muestra en esta losa: dice cuánto bebe el piso.",
    "Settle in writing where the rinse water goes, and what hauling costs.":
    "Acuerde por escrito adónde va el agua de enjuague, y cuánto cuesta llevársela.",
    "Scrub the sample as hard as the floor, and seal no room before its white rag stays clean.":
    "Talle la muestra tan fuerte como el piso, y no selle ningún cuarto antes de que su trapo "
    "blanco salga limpio.",
    "Test the slab for moisture in a closet of every pour.":
    "Pruebe la humedad de la losa en un clóset de cada colado.",
    "Have a sealed sample on this very slab signed before you quote.":
    "Haga firmar una muestra sellada en esta misma losa antes de cotizar.",
    "Clean one square metre of the worst room and time it.":
    "Limpie un metro cuadrado del peor cuarto y mida el tiempo.",
    "Count openings, tubs and stairs on the plan, and say which walls need full height.":
    "Cuente vanos, tinas y escaleras en el plano, y diga qué paredes van cubiertas a toda altura.",
    "Count the rinses that the sample takes until the rag is clean.":
    "Cuente los enjuagues que pide la muestra hasta que el trapo salga limpio.",
    "Time the spraying of the sample with the tools of the job.":
    "Mida el tiempo de rociar la muestra con el equipo del trabajo.",
    "The sample is signed: keep it on site and judge every coat beside it.":
    "La muestra está firmada: téngala en la obra y juzgue cada mano junto a ella.",
    "The slab was tested: read the meter again on the day before you seal.":
    "La losa ya se probó: lea otra vez el medidor el día antes de sellar.",
    "The sample was scrubbed: seal no room before its white rag stays clean.":
    "La muestra ya se talló: no selle ningún cuarto antes de que su trapo blanco salga limpio.",
    "Time a coat of sealer on the sample.": "Mida el tiempo de una mano de sellador en la muestra.",
    "Write down what trips, calls and papers take on this job.":
    "Anote lo que toman viajes, llamadas y papeles en este trabajo.",
    "Close jobs with their hours by task: they become your own ranges.":
    "Cierre trabajos con sus horas por tarea: serán sus propios rangos.",
    # rooms
    "Keep it with the rest and price the job as a whole: alone by its floor it does not pay. Named "
    "alone, ask for a least amount a room.":
    "Déjelo con el resto y cotice el trabajo entero: solo, por su piso, no se paga. Si va aparte, "
    "pida un mínimo por cuarto.",
    "Offer the job without it, or name a least amount for it: its walls cost more than its floor "
    "brings.":
    "Ofrezca el trabajo sin él, o ponga un mínimo para él: sus paredes cuestan más de lo que da su "
    "piso.",
    # figures beside it
    "{#1} USD a ft², inside the {#2} to {#3} that finishers' own pages ask for acid-based "
    "colour.":
    "{#1} USD por ft², dentro de los {#2} a {#3} que piden las páginas de los propios "
    "aplicadores por color a base de ácido.",
    "{#1} USD a ft², below the {#2} to {#3} that finishers' own pages ask for acid-based "
    "colour.":
    "{#1} USD por ft², por debajo de los {#2} a {#3} que piden las páginas de los propios "
    "aplicadores por color a base de ácido.",
    "{#1} USD a ft², above the {#2} to {#3} that finishers' own pages ask for acid-based "
    "colour.":
    "{#1} USD por ft², por encima de los {#2} a {#3} que piden las páginas de los propios "
    "aplicadores por color a base de ácido.",
    "{#1} USD a m², inside the {#2} to {#3} that finishers' own pages ask for acid-based "
    "colour.":
    "{#1} USD por m², dentro de los {#2} a {#3} que piden las páginas de los propios "
    "aplicadores por color a base de ácido.",
    "{#1} USD a m², below the {#2} to {#3} that finishers' own pages ask for acid-based "
    "colour.":
    "{#1} USD por m², por debajo de los {#2} a {#3} que piden las páginas de los propios "
    "aplicadores por color a base de ácido.",
    "{#1} USD a m², above the {#2} to {#3} that finishers' own pages ask for acid-based "
    "colour.":
    "{#1} USD por m², por encima de los {#2} a {#3} que piden las páginas de los propios "
    "aplicadores por color a base de ácido.",
    "An hour is reckoned at {#1} USD ({1}), {#2} times the median wage of cement masons and "
    "concrete finishers in the United States, {#3} USD in May 2019; wages have risen since.":
    "La hora se cuenta a {#1} USD ({1}), {#2} veces el salario mediano de los albañiles de "
    "concreto en Estados Unidos, {#3} USD en mayo de 2019; los salarios han subido desde entonces.",
    "A loaded hour holds insurance, taxes, holidays and idle days as well.":
    "Una hora cargada lleva además seguros, impuestos, vacaciones y días parados.",
    "{#1} ft² is below {#2} ft²: such jobs rarely pay, for set-up, waits and visits do not shrink.":
    "{#1} ft² es menos de {#2} ft²: esos trabajos rara vez se pagan, pues montar, esperas y "
    "visitas no se achican.",
    "{#1} m² is below {#2} m²: such jobs rarely pay, for set-up, waits and visits do not shrink.":
    "{#1} m² es menos de {#2} m²: esos trabajos rara vez se pagan, pues montar, esperas y "
    "visitas no se achican.",
    "Tell the least job that you take.": "Diga el trabajo más chico que acepta.",
    "Invented figures stand in for: {1}.": "Cifras inventadas ocupan el lugar de: {1}.",
    "They are of dollars, and so is the cost of a call-back.":
    "Son de dólares, y también el costo de una llamada de vuelta.",
    "Tell your own under rates.": "Anote las suyas en las tarifas.",
    "an hour": "una hora", "a trip": "un viaje", "overhead": "gastos generales",
    "profit": "ganancia", "risk": "riesgo",
    "The offer {*1} names no room of the floor.":
    "La oferta {*1} no nombra ningún cuarto del piso.",
}  # fmt: skip
