"""Spanish of the schedule for builder and trades."""

from __future__ import annotations

PHRASES = {
    "Schedule": "Calendario",
    "No days were found in which this floor could be done as it stands.":
    "No se hallaron días en que este piso se pudiera hacer tal como está.",
    "day": "día", "from, to": "de, a", "who stays out": "quién se queda fuera",
    "what is done": "qué se hace", "after this wait": "tras esta espera",
    "at the latest until": "a más tardar hasta",
    "open end": "sin fin",
    "All other trades, owner and pets stay out from {*1} until {*2}.":
    "Los demás oficios, dueño y mascotas se quedan fuera desde {*1} hasta {*2}.",
    "Where drying is slow there is no end that can be told: ask before you go in.":
    "Donde el secado es lento no se puede decir el fin: pregunte antes de entrar.",
    "Where drying is slow until {*1}: ask before you go in.":
    "Donde el secado es lento hasta {*1}: pregunte antes de entrar.",
    "The days": "Los días", "Who comes back when": "Quién vuelve cuándo",
    "the sealer's own wait for the next coat": "espera del sellador para la siguiente mano",
    "trades, owner, pets": "oficios, dueño, mascotas",
    "a day after the last coat of sealer":
    "un día tras la última mano de sellador",
    "socks": "calcetines",
    "{#1} after the last coat of sealer": "{#1} tras la última mano de sellador",
    "the label of the sealer wins": "manda la etiqueta del sellador",
    "covers": "cubiertas", "{#1} after it": "{#1} después",
    "board or paper that breathes, taped to itself":
    "cartón o papel que respire, pegado a sí mismo",
    "furniture on felt": "muebles con fieltro",
    "carried, never dragged": "cargados, nunca arrastrados",
    "rugs that breathe": "tapetes que respiran",
    "no rubber, no plastic backs": "sin hule ni reverso de plástico",
    "who, what": "quién, qué", "not before": "no antes de", "in what way": "de qué manera",
    "Done before we come": "Listo antes de que lleguemos",
    "Mud, paint and wet work overhead finished.":
    "Pasta, pintura y trabajo de arriba terminado.",
    "Slab scraped and swept; nothing stored on it.":
    "Losa raspada y barrida; nada guardado encima.",
    "Water and two 20 A circuits on, within reach.":
    "Agua y dos circuitos de 20 A al alcance.",
    "Heat on and held steady.": "Calefacción encendida y pareja.",
    "All other trades told these dates, in writing.":
    "Los demás oficios avisados por escrito.",
    "Who takes the drums of wash water, named.":
    "Quién se lleva los tambos de agua, con nombre.",
    "Keys, alarm, parking in reach of a hose.":
    "Llaves, alarma, lugar de estacionar cerca.",
    "Owner, children and pets have another bed.":
    "Dueño, niños y mascotas tienen otra cama.",
    "Nobody crosses fresh stain. A trade inside the lock stops the floor; waiting is charged as "
    "agreed.":
    "Nadie cruza tinte fresco. Un oficio dentro del cierre detiene el piso; la espera se "
    "cobra como se acordó.",
    "builder sheet: what must not touch the slab":
    "hoja del constructor: qué no debe tocar la losa",
    "survey: rooms, drops, moisture": "inspección: cuartos, gotas, humedad",
    "samples on this slab": "muestras en esta losa",
    "sample sealed, looked at and signed": "muestra sellada, vista y firmada",
    "From the firm's calendar.": "Del calendario de la empresa.",
    "Reckoned for this house alone.": "Calculado para esta casa sola.",
    "Hours and waits: common practice, no source, or guesses; we call when a day moves.":
    "Horas y esperas: práctica común, sin fuente, o estimaciones; avisamos si un día se mueve.",
    "No day was told: days are counted from the first one on site.":
    "No se dijo ningún día: los días se cuentan desde el primero en obra.",
    "Its first coat does not fall on the day of the run sheet: ask us.":
    "Su primera mano no cae en el día de la hoja de trabajo: pregúntenos.",
    "These dates are passed on to every trade.": "Estas fechas se pasan a todos los oficios.",
}  # fmt: skip
