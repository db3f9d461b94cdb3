"""What can hurt: each said whole, and read twice against the English."""

from __future__ import annotations

PHRASES = {
    "The sheet of the material in hand, local codes and licensed practice win over this plan.":
    "La hoja del material que tiene en la mano, los códigos locales y la práctica con licencia "
    "mandan sobre este plan.",
    "The sheet of the material in hand, local codes and licensed practice win.":
    "Mandan la hoja del material que tiene en la mano, los códigos locales y la práctica con "
    "licencia.",
    "Acid into water, never water into acid.":
    "El ácido se echa al agua, nunca el agua al ácido.",
    "Never with bleach; ammonia only aired and never into an acid tub.":
    "Nunca con cloro (blanqueador); el amoníaco solo con ventilación y nunca en una tina que "
    "tenga ácido.",
    "Goggles and face shield, chemical gloves, sleeves, boots; a fit-tested respirator with "
    "acid-gas and P100 cartridges.":
    "Gafas de protección cerradas y careta, guantes para químicos, mangas, botas; un respirador "
    "con prueba de ajuste y cartuchos para gas ácido y P100.",
    "Air moves out of the house, without a jet on the wet edge.":
    "El aire sale de la casa, sin chorro sobre la orilla húmeda.",
    "Eyewash within 10 seconds, 15 minutes of water at 0.4 gpm (1.5 L/min) or more.":
    "Lavaojos a 10 segundos o menos, 15 minutos de agua a 0.4 gpm (1.5 L/min) o más.",
    "Nobody works alone: a second adult stays within call.":
    "Nadie trabaja solo: otro adulto se queda donde oiga si lo llaman.",
    "Open time is never gained by shutting out the air.":
    "El tiempo abierto nunca se alarga cerrándole el paso al aire.",
    "Rinse water is waste: never to a storm drain, soil or septic tank; to a sewer only with "
    "the utility's written word.":
    "El agua de enjuague es residuo: nunca al drenaje pluvial, a la tierra ni a la fosa séptica; "
    "al alcantarillado solo con permiso escrito de la empresa que lo opera.",
    "The stain's sheet names chromate: hexavalent chromium changes the whole job.":
    "La hoja del tinte nombra cromato: el cromo hexavalente cambia todo el trabajo.",
    "No acid is added, nobody sands this floor later without controls, and exposure, waste and "
    "respirators are for a licensed hygienist to settle first.":
    "No se agrega ácido, nadie lija después este piso sin controles, y la exposición, los residuos "
    "y los respiradores los define primero un higienista con licencia.",
    "The stain's sheet names an oxidiser: no acid is added, for together they give off chlorine; "
    "nothing that its sheet does not name may meet it.":
    "La hoja del tinte nombra un oxidante: no se agrega ácido, pues juntos sueltan cloro; no debe "
    "juntarse con nada que su hoja no nombre.",
    "Nothing was entered from the sheet of {@1}: read it before mixing, above all for "
    "chromate, strength and what it must not meet.":
    "No se anotó nada de la hoja de {@1}: léala antes de mezclar, sobre todo por el cromato, la "
    "concentración y aquello con lo que no debe juntarse.",
    "Nothing was entered from the sheet of {1}: read it before mixing, above all for "
    "chromate, strength and what it must not meet.":
    "No se anotó nada de la hoja de {1}: léala antes de mezclar, sobre todo por el cromato, la "
    "concentración y aquello con lo que no debe juntarse.",
    "Acid is added to the mix of {@1}: the maker's sheet does not cover it, sample it first, "
    "fumes rise.":
    "A la mezcla de {@1} se le agrega ácido: la hoja del fabricante no lo cubre, haga primero una "
    "muestra; suben vapores.",
    "Both sprayers are full before the first stroke of a coat.":
    "Las dos rociadoras están llenas antes de la primera pasada de una mano.",
    "Should one fail inside a field, go on with the other from the same place at once: an edge "
    "that waits is lost.":
    "Si una falla dentro de un tramo, siga de inmediato con la otra desde el mismo lugar: la "
    "orilla que espera se pierde.",
    "There is no spare sprayer: one that fails inside a field costs its live edge.":
    "No hay rociadora de repuesto: la que falla dentro de un tramo cuesta su orilla viva.",
    "Keep a second one full at the way out.":
    "Tenga otra llena en la salida.",
    "Hurt? Walk straight across.": "¿Se lastimó? Cruce derecho.",
    "The floor does not matter.": "El piso no importa.",
}  # fmt: skip
