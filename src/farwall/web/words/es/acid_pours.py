"""Words of what may be poured together, and of the form for the materials in hand."""

from __future__ import annotations

from farwall.phrasebook.es.acid_materials import KINDS, VESSELS

WORDS: dict[str, str] = {
    "acid-pours-title": "{name}: ¿se puede verter esto?",
    "acid-pours-ask": "¿Se puede verter esto?",
    "acid-pours-into": "En",
    "acid-pours-first": "primero",
    "acid-pours-then": "luego",
    "acid-pours-and": "y luego",
    "acid-pours-left": "Lo que quedó ahí de antes, sin enjuagar:",
    "acid-pours-none": "nada",
    "acid-pours-here": "En este trabajo",
    "acid-pours-any": "Cualquier clase",
    "acid-pours-with": "{one} con {others}",
    "acid-pours-in-turn": "{others} en {one}, no al revés",
    "acid-pours-where": "{pairs} ({vessel})",
    "acid-pours-word-refused": "No se permite",
    "acid-pours-word-allowed-with-warning": "Se permite, con cuidado",
    "acid-pours-word-allowed": "Se permite",
    "acid-pours-order": "{things}; en {vessel}.",
    "acid-pours-next": "{one}, luego {other}",
    "acid-pours-materials-way": "Anote qué hay ahí, y de qué se leyó la hoja",
    "acid-pours-sheets-way": "Lo que dicen las hojas de los tintes",
    "acid-pours-unread": "Nadie anotó que se leyeron estas hojas: {names}.",
    "acid-pours-never": "Nunca juntos",
    "acid-pours-care": "Con cuidado",
    "acid-pours-goes": "Van juntos",
    "acid-pours-brought": "Lo que alguien traiga: nunca con tinte",
    "acid-pours-deeds": "Abrir, lijar, barrer",
    "acid-pours-back": "Todos los materiales de este trabajo",
    "acid-pours-two": "Escoja por lo menos lo que se vierte primero.",
    "acid-pours-unknown": "Nadie conoce {word}. Escoja de la lista; lo desconocido se rechaza.",
    "acid-pours-deed-open-under-pressure": "Abrir una rociadora con presión",
    "acid-pours-deed-open-released": "Abrir una rociadora ya sin presión",
    "acid-pours-deed-sand-dry": "Lijar en seco el piso teñido",
    "acid-pours-deed-grind-with-shroud-and-vacuum": "Desbastarlo con campana y aspiradora",
    "acid-pours-deed-sweep-dry": "Barrerlo en seco",
    "acid-pours-deed-vacuum-dry": "Aspirar el polvo seco",
    "acid-pours-deed-blow-dry": "Soplar el polvo",
    "acid-pours-deed-hose-a-spill": "Lavar un derrame con manguera",
    "acid-pours-deed-close-a-vented-lid": "Cerrar el respiradero de un tambo",
    "materials": "Materiales a la mano",
    "materials-told": "Lo que hay en el piso y en la camioneta para verter. El agua, los tintes, "
    "el bicarbonato y el agua de enjuague ya están sin anotarlos.",
    "way-materials": "materiales",
    "materials-part": "Uno por cada botella, bolsa y tambo",
    "materials-part-told": "Lo que no se anota se juzga como lo peor que se vende con ese nombre; "
    "lo que nadie conoce se rechaza.",
    "s-material": "{material-id}, que llamamos {material-name}, es {material-kind}; si es "
    "tinte, es {material-stain}.",
    "s-material-sheet": "Su propia hoja {material-read}; su pH es {material-ph}.",
    "s-material-sampled": "En esta losa se hizo una muestra mezclándolo con {material-sampled}.",
    "name-material-id": "Su nombre corto",
    "name-material-name": "Cómo se llama",
    "name-material-kind": "Qué clase de material es",
    "name-material-stain": "El tinte que es",
    "name-material-read": "Si se leyó su hoja",
    "name-material-ph": "pH según su hoja o una tira",
    "name-material-sampled": "Nombres cortos, separados por comas",
    "read-yes": "se leyó",
    "read-no": "no se leyó",
    "help-material": "La clase decide con qué puede juntarse. Si quedan dos clases, tome la más "
    "fuerte; si no queda ninguna, tome otra cosa: es desconocida y no se vierte con nada.",
    "help-material-sheet": "La sección 10 de una hoja de seguridad nombra con qué no debe "
    "juntarse; la 9, su pH. Sin leer la hoja, lo fuerte no se junta con otra cosa.",
    "help-material-sampled": "Dos tintes se juntan solo si se vio, sellada y seca, una muestra de "
    "esta misma mezcla en esta losa.",
    **{f"material-{kind.replace(' ', '-')}": said for kind, said in KINDS.items()},
    **{f"acid-pours-in-{one.replace(' ', '-')}": said for one, said in VESSELS.items()},
}
