"""Quote, scope, and the firm's own sheet of a price."""

from __future__ import annotations

PHRASES = {
    # offers
    "One colour": "Un color", "Two colours": "Dos colores", "Three colours": "Tres colores",
    "One colour in {1}": "Un color en {1}", "Two colours in {1}": "Dos colores en {1}",
    "Three colours in {1}": "Tres colores en {1}",
    "Four colours": "Cuatro colores", "Five colours": "Cinco colores", "No stain": "Sin tinte",
    "{1}, sealed": "{1}, sellado",
    "{1}, not sealed": "{1}, sin sellar",
    "{1}, sealed, with floor finish": "{1}, sellado, con acabado de piso",
    "{1}, not sealed, with floor finish": "{1}, sin sellar, con acabado de piso",
    "Mask, clean and dry all rooms": "Enmascarar, limpiar y secar todos los cuartos",
    "Mask, clean and dry {#1} of {#2} rooms": "Enmascarar, limpiar y secar {#1} de {#2} cuartos",
    "Stain in {1}, {2}, as the signed sample shows": "Teñir en {1}, {2}, como muestra la muestra "
    "firmada",
    "one colour": "un color", "two colours": "dos colores", "three colours": "tres colores",
    "four colours": "cuatro colores", "five colours": "cinco colores",
    "one coat": "una mano", "two coats": "dos manos", "three coats": "tres manos",
    "four coats": "cuatro manos", "five coats": "cinco manos", "six coats": "seis manos",
    "Neutralise, scrub and rinse until the white rag stays clean":
    "Neutralizar, tallar y enjuagar hasta que el trapo blanco salga limpio",
    "Seal in {1}": "Sellar en {1}",
    "Floor finish in {1}, to be renewed later": "Acabado de piso en {1}, que se renueva después",
    "Unmask, walk the floor together, hand over":
    "Desenmascarar, recorrer juntos el piso, entregar",
    # quote
    "Quote": "Cotización",
    "Draft, not to be handed out: the firm has not told what its hour costs, and these figures "
    "rest on an invented one.":
    "Borrador, no se entrega: la empresa no ha dicho cuánto cuesta su hora, y estas cifras parten "
    "de una inventada.",
    "The floor is stained with a reactive stain that takes its colour in the concrete itself.":
    "El piso se tiñe con un tinte reactivo que toma color en el concreto mismo.",
    "It is varied like stone, as the sealed and signed sample on this very slab shows it.":
    "Es variado como la piedra, como lo enseña la muestra sellada y firmada en esta misma losa.",
    "Date": "Fecha", "Holds": "Vigencia", "until {1}": "hasta el {1}", "{#1} days": "{#1} días",
    "Floor as measured": "Piso según medida",
    "Work begins, as planned": "Inicio según el plan",
    "Handed over, as planned": "Entrega según el plan",
    "Your reference": "Su referencia",
    "Coats of stain": "Manos de tinte", "Coats of sealer": "Manos de sellador",
    "Coats of floor finish": "Manos de acabado de piso",  "Floor": "Piso",
    "Days on site, about": "Días en obra, más o menos", "Days on site": "Días en obra",
    "Price, {*1}": "Precio, {*1}", "What is offered": "Lo que se ofrece",
    "Before tax": "Antes de impuesto",
    "{#1}, in one colour": "{#1}, en un color", "{#1}, in {#2} colours": "{#1}, en {#2} colores",
    "all {#1}": "los {#1}",
    "In each of them: masking, cleaning and drying; neutralising, scrubbing and rinsing until the "
    "white rag stays clean; unmasking, a walk over the floor together, a care sheet.":
    "En cada una: enmascarar, limpiar y secar; neutralizar, tallar y enjuagar hasta que el trapo "
    "blanco salga limpio; desenmascarar, recorrer juntos el piso, una hoja de cuidado.",
    "When it is due": "Cuándo se paga",
    "Before stain is bought": "Antes de comprar el tinte",
    "When the colour is in and rinsed": "Con el color puesto y enjuagado",
    "At hand-over": "A la entrega",
    "If the floor measures more or less than the tolerance, the price goes with it.":
    "Si el piso mide más o menos de la tolerancia, el precio cambia con él.",
    "An hour in which others keep both of us waiting: {*1}.":
    "Una hora en que otros nos tienen esperando a los dos: {*1}.",
    "Work asked for later is written down and signed before it is done: {*1} an hour of one "
    "person, and materials with {#2} % on them.":
    "El trabajo pedido después se escribe y se firma antes de hacerlo: {*1} la hora de una "
    "persona, y materiales con {#2} % encima.",
    "One more sample than agreed: {*1}.": "Una muestra más de lo acordado: {*1}.",
    "Workmanship is warranted for {#1} months.": "La mano de obra tiene garantía de {#1} meses.",
    "Chosen": "Elegida", "{1}, for {*2}": "{1}, por {*2}",
    "Agreed, with the sheet “Scope and what is not in it”:":
    "De acuerdo, junto con la hoja «Alcance y lo que no incluye»:",
    # scope
    "Scope and what is not in it": "Alcance y lo que no incluye",
    "What we do": "Lo que hacemos", "Room": "Cuarto",
    "What the floor will look like": "Cómo se verá el piso",
    "The sealed and signed sample on this slab is the standard, with its natural range.":
    "La muestra sellada y firmada en esta losa es la norma, con su variación natural.",
    "A chart or a chip from another slab is none.":
    "Una carta de colores o un pedazo de otra losa no lo es.",
    "An even colour, without clouds, is not promised: who wants one wants another floor.":
    "No se promete un color parejo, sin nubes: quien lo quiera, quiere otro piso.",
    "Cracks, trowel marks, patches, nail holes, ghosts of tape, glue, wood or old coverings, and "
    "differences in how the slab cured, show through.":
    "Se notan grietas, marcas de llana, parches, hoyos de clavo, fantasmas de cinta, pegamento, "
    "madera o pisos viejos, y diferencias del curado de la losa.",
    "They are not flaws of the work.": "No son defectos del trabajo.",
    "No two floors come out alike, and no two pours.":
    "No hay dos pisos iguales, ni dos colados iguales.",
    "What is not in the price": "Lo que no está en el precio",
    "Repairing cracks, spalls and joints; levelling; grinding off coatings that nobody named.":
    "Reparar grietas, desportilladuras y juntas; nivelar; desbastar capas que nadie mencionó.",
    "Making patches, trenches and pours of another day match the rest.":
    "Igualar con el resto parches, zanjas y colados de otro día.",
    "Moving furniture and appliances; taking off and setting base boards and doors.":
    "Mover muebles y aparatos; quitar y poner zoclos y puertas.",
    "Plumbing, electrical work, gas appliances off and on.":
    "Plomería, electricidad, apagar y prender aparatos de gas.",
    "Asbestos, lead, mould: whoever suspects them calls a licensed inspector first.":
    "Asbesto, plomo, moho: quien los sospeche llama primero a un inspector con licencia.",
    "Moisture and salts from below, floods, movement of the slab.":
    "Humedad y sales de abajo, inundaciones, movimiento de la losa.",
    "Damage by others after the floor is handed over, and what others spill or tape on the slab "
    "before.":
    "Daños de otros después de la entrega del piso, y lo que otros derramen o peguen antes en la "
    "losa.",
    "Painting of walls and trim beyond what our own masking let through.":
    "Pintar paredes y molduras más allá de lo que dejó pasar nuestro enmascarado.",
    "The upkeep of the sealed floor: the care sheet says what it wants.":
    "El mantenimiento del piso sellado: la hoja de cuidado dice qué pide.",
    "What owner and builder provide": "Lo que ponen el dueño y el constructor",
    "The house closed to all other trades from the first cleaning until 24 hours after the last "
    "coat of sealer; keys, and one person who may decide.":
    "La casa cerrada a los demás oficios desde la primera limpieza hasta 24 horas después de la "
    "última mano de sellador; llaves, y una persona que pueda decidir.",
    "Electric power, clean water and light to see colour by.":
    "Corriente eléctrica, agua limpia y luz para ver el color.",
    "Heat: rooms between 60 and 90 °F (16 and 32 °C), the slab never above 85 °F (29 °C), day and "
    "night, without open flames while sealer is laid.":
    "Calor: cuartos entre 60 y 90 °F (16 y 32 °C), la losa nunca a más de 85 °F (29 °C), de día y "
    "de noche, sin llama abierta mientras se sella.",
    "The floor bare, dry and swept; nothing taped to it since the pour.":
    "El piso limpio de cosas, seco y barrido; nada pegado en él desde el vaciado.",
    "Where coloured rinse water goes: {1}.": "Adónde va el agua de enjuague con color: {1}.",
    "into the sewer, by the written permission in hand":
    "al alcantarillado, con el permiso por escrito en la mano",
    "into drums, and from there as the local utility and the material's sheet allow":
    "a tambos, y de ahí como lo permitan el servicio local y la hoja del material",
    "hauled off by a licensed hauler": "se la lleva un transportista con licencia",
    "not settled yet; it is settled in writing before the first stain is poured":
    "aún sin acordar; se acuerda por escrito antes de verter el primer tinte",
    "Anything else is a change order: written, priced and signed before it is done.":
    "Todo lo demás es una orden de cambio: escrita, con precio y firmada antes de hacerse.",
    "What the law of the place says of contracts, liens, warranty, licences and tax wins over this "
    "sheet; have a licensed adviser read it once before it is used.":
    "Lo que diga la ley del lugar sobre contratos, gravámenes, garantía, licencias e impuestos "
    "vale más que esta hoja; que la lea una vez un asesor con licencia antes de usarla.",
    "Read and agreed:": "Leído y de acuerdo:",
    # the firm's own sheet
    "The price, for the firm alone": "El precio, solo para la empresa",
    "Not to be handed out: costs, chances and profit of the firm.":
    "No se entrega: costos, riesgos y ganancia de la empresa.",
    "Ask {*1} ({#2} to {#3} at the ends of cost).":
    "Pida {*1} ({#2} a {#3} en los extremos del costo).",
    "Four such jobs in five cost {#1} to {#2}; {#3} in 100 lose money at this price.":
    "De cada cinco trabajos así, cuatro cuestan de {#1} a {#2}; {#3} de 100 pierden dinero a este "
    "precio.",
    "Cost": "Costo", "Cost, {*1}": "Costo, {*1}", "Rests on": "Se apoya en", "Hours": "Horas",
    "Low": "Bajo", "Likely": "Probable", "High": "Alto",
    "In all, four jobs in five": "En total, cuatro de cinco trabajos",
    "What is added": "Lo que se suma", "cost, likely": "costo, probable",
    "up to the least job": "hasta el trabajo mínimo", "rounding": "redondeo",
    "Of cost": "Del costo",
    "as the draws say": "como dicen los sorteos",
    "To ask": "A pedir", "To ask: the least job": "A pedir: el trabajo mínimo",
    "Offers": "Ofertas", "Offer, {*1}": "Oferta, {*1}", "Price": "Precio",
    "Cost, four in five": "Costo, cuatro de cinco", "Days": "Días", "Loses": "Pierde",
    "What drives the spread, and what would narrow it": "Qué abre el rango, y qué lo cerraría",
    "What": "Qué", "Explains": "Explica", "What to measure": "Qué medir",
    "For": "Por", "Of jobs": "De trabajos", "Costs, {*1}": "Cuesta, {*1}",
    "Why": "Por qué",
    "Rooms, by their floor": "Cuartos, por su piso", "Costs": "Cuesta",
    "Low to high": "Bajo a alto",
    "Brings": "Trae",
    "Left": "Queda",
}  # fmt: skip
