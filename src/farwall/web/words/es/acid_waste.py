"""Words of waste water: the part of the acid page, its form, its paper."""

from __future__ import annotations

WORDS: dict[str, str] = {
    "acid-waste-water": "Unos {likely} de agua de enjuague, de {low} a {high}: {drums} de {holds}, "
    "unos {weight} cada uno lleno.",
    "acid-waste-drums": "{n} tambos",
    "acid-waste-drums-1": "1 tambo",
    "acid-waste-metals": "Qué puede llevar antes de que algo se asiente, en mg/L",
    "acid-waste-metal": "metal",
    "acid-waste-laid": "puesto, g",
    "acid-waste-raw": "agua sin tratar",
    "acid-waste-local": "límites locales leídos",
    "acid-waste-settles": "a pH 8 a 9",
    "acid-waste-local-told": "Los límites locales difieren hasta cien veces: seis tablas de EE. "
    "UU. de 1991 a 2021. No obligan más que a quienes viven bajo ellos; el suyo es el que diga la "
    "empresa.",
    "acid-waste-share": "Calculado con que se lava el {share} % del metal puesto ({rank}).",
    "acid-waste-sludge": "De {low} a {high} de lodo de metales; los finos de cemento van aparte.",
    "acid-waste-sludge-open": "{low} de lodo de metales y más; los finos de cemento van aparte.",
    "acid-waste-asks": "Falta preguntar",
    "acid-waste-words": "Quién dijo qué",
    "acid-waste-tests": "Tambos analizados",
    "acid-waste-by": "Tambo {drum}, según {office}:",
    "acid-waste-none": "Tambo {drum}: no se puede decir. No se nombró ningún límite.",
    "acid-waste-hazard": "Tambo {drum}:",
    "acid-waste-seen": "Tambo {drum}: se lavó el {share} % del {metal} puesto, medido aquí.",
    "acid-waste-steps": "Qué hacer con ella",
    "acid-waste-chromium": "El cromo hexavalente cambia el trabajo",
    "acid-waste-dust": "Donde se desbasta o se lija concreto",
    "acid-waste-form": "Anotar quién dijo qué, y los análisis",
    "acid-waste-paper": "La hoja para la empresa, con el registro (PDF)",
    "acid-waste-until": "hasta {day}",
    "waste": "Agua de desecho",
    "waste-told": "Quién permite que salga, y qué se encontró en ella. Aquí nada decide: se guarda "
    "para que se pueda leer.",
    "waste-words": "Palabra oficial o con licencia",
    "waste-words-told": "De la empresa, de la agencia del estado, de un transportista con "
    "licencia: nombre, oficina y día. Un no también conviene guardarlo.",
    "waste-tests": "Tambos analizados",
    "waste-tests-told": "Por un laboratorio; una tira muestra el pH y ningún metal.",
    "waste-shares": "Qué se lava",
    "waste-shares-told": "Lo analizado una vez de un tinte conviene anotarlo en cada casa "
    "siguiente.",
    "s-waste-word": "{waste-way}: lo dijo {waste-who} de {waste-office} el {waste-on}, "
    "{waste-writing}; vale hasta {waste-until}.",
    "s-waste-said": "En sus palabras: {waste-said}",
    "s-waste-limits": "Límites nombrados: pH de {least-ph} a {most-ph}; cobre {copper}, cromo de "
    "todo tipo {chromium}, hexavalente {chromium-vi}, manganeso {manganese}, hierro {iron}, zinc "
    "{zinc}, sólidos {solids}.",
    "s-waste-test": "Tambo {waste-drum}, analizado el {waste-tested-on} por {waste-by}; la muestra "
    "representa {waste-water} de agua de enjuague sin tratar.",
    "s-waste-found": "Se encontró: pH {found-ph}; cobre {copper}, cromo de todo tipo {chromium}, "
    "hexavalente {chromium-vi}, manganeso {manganese}, hierro {iron}, zinc {zinc}, sólidos "
    "{solids}.",
    "s-waste-share": "De los metales puestos, se lavó el {washed-off}.",
    "name-waste-way": "La vía",
    "name-waste-who": "Quién lo dijo",
    "name-waste-office": "Oficina",
    "name-waste-on": "Día en que se dijo",
    "name-waste-writing": "Por escrito",
    "name-waste-until": "Último día",
    "name-waste-said": "Qué se dijo",
    "name-least-ph": "pH más bajo",
    "name-most-ph": "pH más alto",
    "name-copper": "Cobre",
    "name-chromium": "Cromo de todo tipo",
    "name-chromium-vi": "Cromo hexavalente",
    "name-manganese": "Manganeso",
    "name-iron": "Hierro",
    "name-zinc": "Zinc",
    "name-solids": "Sólidos en suspensión",
    "name-waste-drum": "Tambo",
    "name-waste-tested-on": "Día del análisis",
    "name-waste-by": "Analizado por",
    "name-waste-water": "Agua que representa la muestra",
    "name-found-ph": "pH encontrado",
    "name-washed-off": "Se lavó",
    "pick-waste-way-sewer": "Al alcantarillado",
    "pick-waste-way-hauled": "Se la llevan",
    "pick-waste-way-treatment-works": "A la planta de tratamiento",
    "pick-waste-way-not-allowed": "No se permite",
    "pick-in_writing-yes": "por escrito",
    "pick-in_writing-no": "de palabra",
    "pick-in_writing-": "por escrito o no",
    "help-waste-word": "Escriba los días como año-mes-día, por ejemplo 2027-05-04. Lo dicho sin "
    "último día se vuelve a preguntar al año. Para el alcantarillado solo cuenta un permiso por "
    "escrito, y en ningún caso nada por debajo de pH 5 (40 CFR 403.5).",
    "help-waste-limits": "Solo lo que nombraron: un espacio vacío es un límite que nadie nombró. "
    "El análisis se compara con cada uno.",
    "help-waste-test": "Si la muestra es de toda el agua de enjuague de un piso antes de "
    "asentarse, anote cuánta agua era: así se mide cuánto tinte se lava.",
    "help-waste-share": "Gramos encontrados en toda el agua de un piso contra gramos puestos, una "
    "vez por cada tinte. Hasta entonces se toma de 1 a 30 % (estimación).",
    "unit-mg-l": "mg/L",
    "papers-name-waste-page-pdf": "Agua de desecho: hoja para la empresa y registro (PDF)",
    "papers-for-waste-page-pdf": "Qué puede llevar el agua y qué se pregunta, con lugar para un sí "
    "y sus límites; luego una línea por tambo, del registro donde lo diga.",
}
