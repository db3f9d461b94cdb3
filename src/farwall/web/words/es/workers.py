"""Palabras del formulario de la gente con ácido y de los números de emergencia."""

from __future__ import annotations

WORDS = {
    "workers": "Gente con ácido",
    "workers-told": "Quién hace qué, y para qué tiene cada quien prueba de ajuste, visto bueno "
    "médico y guantes. Nada se da por hecho: lo vacío se pregunta, y lo que falta lo detiene.",
    "workers-part": "Gente",
    "workers-part-told": "Una fila por persona. Quién puede usar qué lo dicen quien hace la "
    "prueba de ajuste, el médico y el higienista con licencia; aquí solo va lo que dijeron.",
    "emergency-part": "Emergencia",
    "emergency-part-told": "Sus propios números. Aquí no se pone ninguno: uno equivocado en una "
    "tarjeta es peor que un renglón vacío.",
    "firm-emergency": "Números de emergencia",
    "firm-emergency-told": "Los suyos; cada casa nueva empieza con ellos. Aquí no se pone ninguno.",
    "s-worker": "{worker} hace esto: {duties}",
    "s-respirator": "Respirador: {respirator}, prueba de ajuste con él el {fit-tested}, visto "
    "bueno médico del {cleared}; su orilla {shaven}.",
    "s-cartridge": "Cartuchos {marking}: gas ácido {acid-gas}, P100 {p100}, amoníaco {ammonia}.",
    "s-change": "Su bolsa se abrió el {bag-opened}; se cambian a los {change-after} de uso, {used} "
    "de ellos antes de esta obra.",
    "s-worn": "Guantes: {gloves}. Gafas cerradas y careta {goggles}, delantal para ácido {apron}, "
    "botas de hule {boots}.",
    "s-trained": "Repasó hoja, tarjetas y lavaojos el {trained}.",
    "s-settled": "Si una hoja nombra cromato: un higienista con licencia resolvió la exposición "
    "el {settled}.",
    "s-calls": "En una emergencia llame al {number}; el centro de intoxicaciones es {poison}.",
    "s-spill": "Por un derrame llame al {spill-line}.",
    "s-hospital": "Sala de emergencias más cercana: {hospital}.",
    "s-address": "Dígale a quien venga: {address}.",
    "s-eyewash-at": "El lavaojos está aquí: {eyewash-at}.",
    "s-looks": "A quien rocía se le va a ver cada {look-in}.",
    "effect-look-in": "Si queda vacío se toman cada 15 minutos: estimación nuestra.",
    "name-worker": "Nombre",
    "name-duties": "Lo que hace la persona",
    "name-respirator": "Respirador",
    "name-fit-tested": "Día de la prueba de ajuste",
    "name-cleared": "Día del visto bueno médico",
    "name-shaven": "Orilla sobre la piel",
    "name-marking": "Marca de los cartuchos",
    "name-acid-gas": "Marcados para gas ácido",
    "name-p100": "P100",
    "name-ammonia": "Marcados para amoníaco",
    "name-bag-opened": "Día en que se abrió la bolsa",
    "name-change-after": "Uso hasta cambiarlos",
    "name-used": "Usados antes",
    "name-gloves": "Guantes",
    "name-goggles": "Gafas cerradas y careta",
    "name-apron": "Delantal para ácido",
    "name-boots": "Botas de hule",
    "name-trained": "Día de la capacitación",
    "name-settled": "Día de la palabra del higienista",
    "name-number": "Número de emergencia",
    "name-poison": "Centro de intoxicaciones",
    "name-spill-line": "Número para un derrame",
    "name-hospital": "Sala de emergencias más cercana",
    "name-address": "Dirección de la casa",
    "name-eyewash-at": "Dónde está el lavaojos",
    "name-look-in": "Tiempo entre dos vistas",
    "pick-duties-mixes": "mezcla",
    "pick-duties-sprays": "rocía",
    "pick-duties-helps": "ayuda",
    "pick-duties-scrubs": "talla",
    "pick-duties-seals": "sella",
    "pick-duties-stands-by": "vigila afuera",
    "pick-respirator-half-face": "de media cara",
    "pick-respirator-full-face": "de cara completa",
    "pick-respirator-powered": "con soplador, ajustado",
    "pick-respirator-powered-hood": "con soplador, capucha suelta",
    "pick-clean_shaven-yes": "queda sobre piel rasurada",
    "pick-clean_shaven-no": "queda sobre pelo",
    "marked-yes": "sí",
    "marked-no": "no",
    "there-yes": "hay",
    "there-no": "no hay",
    "help-duties": "Quien mezcla, rocía o pasa tanques respira el vapor y se le pide respirador; "
    "a quien talla, donde se neutraliza con amoníaco o una hoja nombra cromato. Quien vigila se "
    "queda afuera donde oiga, va a ver, y no entra por nadie sin todo puesto.",
    "help-respirator": "Uno ajustado lleva prueba de ajuste de menos de doce meses con ese mismo "
    "modelo, después del visto bueno médico, y su orilla queda sobre piel rasurada (29 CFR "
    "1910.134). Una capucha suelta con soplador no pide prueba ni rasurado. Un filtro solo de "
    "polvo no detiene el ácido.",
    "help-cartridge": "Para gas ácido, con P100 por la niebla: las dos cosas van impresas. Donde "
    "se neutraliza con amoníaco, quien talla necesita cartuchos marcados para amoníaco.",
    "help-change-after": "Según el calendario del fabricante para este vapor (29 CFR "
    "1910.134(d)(3)(iii)), nunca por el olor. Los minutos de esta obra se cuentan en la bitácora, "
    "de respirador puesto a respirador fuera, y antes del final se pide un par nuevo.",
    "help-worn": "Como pide la hoja del tinte: material y grueso de los guantes, como nitrilo "
    "0.4 mm. Una cara completa o una capucha cubre también los ojos.",
    "help-trained": "Antes de abrir la primera garrafa: la hoja de este mismo tinte, las "
    "tarjetas, dónde está el lavaojos y cómo corre (29 CFR 1910.1200(h)).",
    "help-settled": "El cromo hexavalente cambia toda la obra (29 CFR 1926.1126): primero se "
    "determina la exposición, y de ella salen respirador y ropa.",
    "help-calls": "Van en las tarjetas, en la puerta y bajo primeros auxilios. Pruébelos una vez "
    "desde la casa: no todo teléfono tiene señal ahí.",
    "help-spill-line": "A quién llama cuando tinte o agua de enjuague corre adonde no debe: el "
    "servicio de aguas, la agencia del estado, su transportista.",
    "help-address": "Calle, número y cómo se entra: una casa en construcción es difícil de hallar.",
    "help-eyewash": "A diez segundos a pie de donde se vierte y rocía ácido, 15 minutos de agua, "
    "0.4 gal (1.5 L) por minuto o más; probado antes de abrir una garrafa.",
    "help-look-in": "Alguien de afuera mira a quien rocía, y pregunta. Cada cuánto no está en "
    "ningún texto que hayamos hallado.",
}
