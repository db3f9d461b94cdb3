"""Spanish of the first call: its questions, what they come to, and its sheet."""

from __future__ import annotations

PHRASES = {
    # The twelve questions and the wishes.
    "Is the slab poured yet, new or old, and how many days old?":
    "¿Ya está colada la losa, es nueva o vieja, y de cuántos días?",
    "What lies on it now, or lay there last?": "¿Qué tiene encima ahora, o qué tuvo al último?",
    "Is there any curing compound, sealer, garage paint on it? Was it ever washed with acid? Ask "
    "for the bottles.":
    "¿Tiene curador, sellador o pintura de cochera? ¿Se lavó alguna vez con ácido? Pida los "
    "envases.",
    "Is there an overlay or a self-leveller on it?": "¿Tiene un recubrimiento o un autonivelante?",
    "Is the slab heated?": "¿La losa tiene calefacción?",
    "Was part of it poured later: an addition, a trench, patches?":
    "¿Se coló algo después: ampliación, zanja, parches?",
    "Who else works in the house on those days?": "¿Quién más trabaja en la casa esos días?",
    "When is the floor to be used?": "¿Cuándo se va a usar el piso?",
    "Are there running water, two 20 A circuits, heat?":
    "¿Hay agua, dos circuitos de 20 A, calefacción?",
    "Sewer or septic tank? Where could wash water go?":
    "¿Alcantarillado o fosa séptica? ¿A dónde va el agua?",
    "Does anybody live there meanwhile, children, pets?":
    "¿Vive alguien ahí mientras tanto, niños, mascotas?",
    "Are there plants, lawn or bare concrete at the doors?":
    "¿Hay plantas, pasto o concreto junto a las puertas?",
    "How large is the floor, and what is it to look like?":
    "¿De qué tamaño es el piso, y cómo ha de verse?",
    "A natural range, or one even colour, or a colour of a chart?":
    "¿Una gama natural, un color parejo, o de carta?",
    "Is it new or old?": "¿Es nueva o vieja?",
    "How many days old is the slab?": "¿Cuántos días tiene la losa?",
    "Is there any curing compound, sealer, garage paint on it? Ask for the bottles.":
    "¿Tiene curador, sellador o pintura de cochera? Pida los envases.",
    "Was it ever washed or etched with acid?": "¿Se lavó o grabó alguna vez con ácido?",
    "Is there running water?": "¿Hay agua corriente?",
    "How many 20 A circuits are there for the finisher alone?":
    "¿Cuántos circuitos de 20 A hay solo para el aplicador?",
    "Can the house be heated?": "¿Se puede calentar la casa?",
    "How large is the floor?": "¿De qué tamaño es el piso?",
    "What is it to look like?": "¿Cómo ha de verse?",
    # What they come to.
    "Decline, as it stands.": "No se toma, tal como está.",
    "Visit: look at it before any word on price.": "Visita: véalo antes de hablar de precio.",
    "A rough range may be said.": "Se puede decir un precio aproximado.",
    "The slab is not poured, and the floor is to be used in {#1}.":
    "La losa no está colada, y el piso se va a usar en {#1}.",
    "A later day: {#1} of the slab and {#2} of work at least, or what the stain's sheet asks for.":
    "Una fecha posterior: {#1} de losa y {#2} de trabajo al menos, o lo que pida la hoja del "
    "tinte.",
    "The slab is not poured: the best moment to call.":
    "La losa no está colada: el mejor momento para llamar.",
    "The sheet for the builder goes out today; visit before the pour.":
    "La hoja para el constructor sale hoy; visita antes del vaciado.",
    "The slab is {#1} old today, and about {#2} when work could begin.":
    "La losa tiene hoy {#1}, y tendría unos {#2} cuando pueda empezar el trabajo.",
    "Not before {#1}, better {#2} or the stain's sheet; a sample decides.":
    "No antes de {#1}, mejor {#2} o la hoja del tinte; decide una muestra.",
    "Something was laid on the floor and nobody knows what: paints are sold as stain, and an "
    "unknown film may never let go.":
    "Al piso se le puso algo y nadie sabe qué: se venden pinturas como tinte, y una película "
    "desconocida quizá nunca se suelte.",
    "The bottles or the receipt; or a visit that is paid, with a solvent rag and a key in a "
    "closet, and stripping priced high.":
    "Los envases o el recibo; o una visita pagada, con trapo de solvente y llave en un clóset, y "
    "el decapado con precio alto.",
    "Carpet lies on it: tack holes, glue and dye show.":
    "Tiene alfombra: se ven hoyos de tachuelas, pegamento y tintura.",
    "Lift a corner in each room; have the ghosts accepted in writing.":
    "Levante una esquina en cada cuarto; que las marcas se acepten por escrito.",
    "No overlay, no self-leveller.": "Sin recubrimiento, sin autonivelante.",
    "The slab is not heated.": "La losa no tiene calefacción.",
    "The slab is heated: no hole and no cut in it.":
    "La losa tiene calefacción: ningún hoyo y ningún corte.",
    "Where the tubes lie is for the builder's drawings; the heat low and steady on the days of "
    "stain and sealer, and the slab itself read.":
    "Dónde van los tubos lo dicen los planos del constructor; calefacción baja y pareja los días "
    "de tinte y sellador, y se mide la losa misma.",
    "The floor is to be used in {#1}; most houses take 4 to 5 on site.":
    "El piso se va a usar en {#1}; la mayoría de las casas toman 4 a 5 en obra.",
    "A later day: {#1} from survey to hand-over, {#2} more without traffic.":
    "Una fecha posterior: {#1} de la inspección a la entrega, {#2} más sin tránsito.",
    "{#1} are few: survey to hand-over takes about {#2}, and {#3} more are without traffic.":
    "{#1} son pocos: de la inspección a la entrega van unos {#2}, y {#3} más sin tránsito.",
    "Visit at once, the sample the same day; say that it may not be ready.":
    "Visita enseguida, la muestra el mismo día; diga que quizá no esté listo.",
    "The floor is to be used in {#1}.": "El piso se va a usar en {#1}.",
    "Running water is there.": "Hay agua corriente.",
    "There is no running water.": "No hay agua corriente.",
    "Who brings it, how much and at whose cost, in the quote.":
    "Quién la trae, cuánta y a costa de quién, en la cotización.",
    "{#1} circuits of 20 A for the finisher.": "{#1} circuitos de 20 A para el aplicador.",
    "{#1} circuits of 20 A: machine and vacuum want two.":
    "{#1} circuitos de 20 A: máquina y aspiradora piden dos.",
    "1 circuit of 20 A: machine and vacuum want two.":
    "1 circuito de 20 A: máquina y aspiradora piden dos.",
    "An electrician's temporary circuits, or a generator outside; priced.":
    "Circuitos provisionales de un electricista, o un generador afuera; cotizado.",
    "The house can be held at 60 to 90 °F (16 to 32 °C).":
    "La casa se puede mantener a 60 a 90 °F (16 a 32 °C).",
    "The house cannot be heated.": "La casa no se puede calentar.",
    "A season in which the slab holds 55 °F (13 °C) by itself, or vented heat at the owner's "
    "cost.":
    "Una temporada en que la losa guarde 55 °F (13 °C) por sí sola, o calefacción con tiro a "
    "costa del dueño.",
    "There is a sewer; nobody has the utility's word yet.":
    "Hay alcantarillado; nadie tiene todavía el permiso de la compañía.",
    "Ask the utility in writing; until then drums and a licensed hauler are priced.":
    "Pídalo por escrito a la compañía; hasta entonces se cotizan tambos y un transportista con "
    "licencia.",
    "Nobody lives there.": "Nadie vive ahí.",
    "People live there, and go out for it.": "Vive gente ahí, y sale de la casa.",
    "Out with children and pets until the floor is rinsed and the house aired; furniture and food "
    "out; days and keys in the quote.":
    "Fuera niños y mascotas hasta que el piso esté enjuagado y la casa ventilada; fuera muebles y "
    "comida; días y llaves en la cotización.",
    "People, children or pets would stay in the house: the fumes of the acid are no place for "
    "them.":
    "Personas, niños o mascotas se quedarían en la casa: los vapores del ácido no son lugar para "
    "ellos.",
    "They move out from the first coat until it is rinsed and aired.":
    "Salen desde la primera mano hasta que esté enjuagado y ventilado.",
    "Nothing at the doors that stain could hurt.": "Nada junto a las puertas que el tinte dañe.",
    "Plants, lawn or bare concrete lie at the doors.":
    "Hay plantas, pasto o concreto desnudo junto a las puertas.",
    "Wetted, film and a towel dam at each door; no rinse water ever goes there.":
    "Mojado, plástico y un dique de toallas en cada puerta; nunca va ahí agua de enjuague.",
    "The floor is a leveller: it takes stain unlike the slab, if at all.":
    "El piso es un autonivelante: toma el tinte distinto que la losa, si lo toma.",
    "The floor is an overlay: it takes stain unlike the slab, if at all.":
    "El piso es un recubrimiento: toma el tinte distinto que la losa, si lo toma.",
    # The range.
    "acid stain, one colour, clean-up, sealer: finishers' pages of today":
    "tinte ácido, un color, limpieza, sellador: páginas de aplicadores de hoy",
    "simple stain, clean-up, sealer: a trade article, older, no date":
    "tinte sencillo, limpieza, sellador: un artículo del oficio, más viejo, sin fecha",
    "saw-cut pattern and colour changes: a trade article, older, no date":
    "dibujo de cortes de sierra y cambios de color: un artículo más viejo, sin fecha",
    "acid stain with saw cuts for 0.75 to 1.50: finishers' pages":
    "tinte ácido con cortes de sierra por 0.75 a 1.50: páginas de aplicadores",
    "several colours built up: finishers' pages of today, and a trade article, older, no date":
    "varios colores en capas: páginas de hoy, y un artículo más viejo, sin fecha",
    "stencilled or blasted work: a trade article, older, no date":
    "trabajo de plantilla o chorro: un artículo del oficio, más viejo, sin fecha",
    "preparing the surface, where something comes off: finishers' pages of today":
    "preparar la superficie, donde hay que quitar algo: páginas de aplicadores de hoy",
    "The firm takes no job below {#1}.": "La empresa no toma trabajos de menos de {#1}.",
    "It is priced as {#1}: below that set-up, waits and visits do not shrink, and a job rarely "
    "pays.":
    "Se cotiza como {#1}: por debajo de eso el montaje, las esperas y las visitas no se achican, "
    "y un trabajo rara vez rinde.",
    "A rough range is no quote: published prices of other firms, in one country. The price comes "
    "after a visit, a drop map and a signed, sealed sample on this slab.":
    "Un precio aproximado no es una cotización: precios publicados de otras empresas, en un país. "
    "El precio viene después de una visita, un mapa de gotas y una muestra sellada y firmada en "
    "esta losa.",
    "Crack repair is priced by itself, 3 to 5 USD a foot of crack on finishers' pages.":
    "La reparación de grietas se cotiza aparte, 3 a 5 USD por pie de grieta en páginas de "
    "aplicadores.",
    "Local codes and licensed practice win; licensed people test for asbestos and lead before "
    "anybody sands or scrapes.":
    "Mandan los códigos locales y la práctica con licencia; gente con licencia hace la prueba de "
    "asbesto y plomo antes de que nadie lije o raspe.",
    # What is wrong with an answer.
    "It is counted in whole ones.": "Se cuenta en enteros.",
    "Write it like 2.": "Escríbalo como 2.",
    "“{*1}” is not a number.": "“{*1}” no es un número.",
    '"{*1}" is not a number.': '"{*1}" no es un número.',
    "It must be {1}.": "Debe ser {1}.",
    "at least {#1} and at most {#2}": "por lo menos {#1} y a lo más {#2}",
    "above {#1} and at most {#2}": "más de {#1} y a lo más {#2}",
    "Write it like 21 or 21.5.": "Escríbalo como 21 o 21.5.",
    "Write it like 1234.5.": "Escríbalo como 1234.5.",
    '"{*1}" has a comma.': '"{*1}" tiene una coma.',
    '"{*1}" is none of the choices.': '"{*1}" no es ninguna de las opciones.',
    "price pages": "páginas de precios",
    "finishers' sheets for builders": "hojas de aplicadores para constructores",
    "finishers' terms": "condiciones de aplicadores",
    "finishers' care sheets": "hojas de cuidado de aplicadores",
}  # fmt: skip
PHRASES |= {
    # Its sheet.
    "The first call": "La primera llamada",
    "Twelve questions: a visit, a no, or a rough range":
    "Doce preguntas: una visita, un no, o un precio aproximado",
    "Who calls": "Quién llama", "Day and hour": "Día y hora",
    "A no, unless it changes": "Un no, si no cambia",
    "Something on the floor that nobody can name.": "Algo en el piso que nadie sabe nombrar.",
    "The whole floor washed or etched with acid.": "Todo el piso lavado o grabado con ácido.",
    "One even colour, or a colour of a chart, insisted on.":
    "Un color parejo, o de carta, sin ceder.",
    "A slab younger than 21 days when work would begin.":
    "Una losa de menos de 21 días al empezar.",
    "Painters or plumbers overhead on the same days.": "Pintores o plomeros arriba esos días.",
    "Needed in less than 5 days.": "Se necesita en menos de 5 días.",
    "Owner, children or pets staying in the house.":
    "Dueño, niños o mascotas que se quedan en la casa.",
    "No way at all for the wash water.": "Ninguna salida para el agua de lavado.",
    "What may be said on the phone: USD for a square foot":
    "Lo que se puede decir por teléfono: USD por pie cuadrado",
    "low": "bajo", "high": "alto",
    "A floor below {#1} is priced as one of that size.":
    "Un piso de menos de {#1} se cotiza como uno de ese tamaño.",
    "Published prices of other firms, in one country. Nothing said on the phone is a quote: the "
    "price comes after a visit and a signed, sealed sample.":
    "Precios publicados de otras empresas, en un país. Nada de esto es una cotización: el precio "
    "viene tras una visita y una muestra sellada y firmada.",
    "Visit, decline or range; why": "Visita, no o precio aproximado; por qué",
    "Call back on": "Volver a llamar el",
}  # fmt: skip
