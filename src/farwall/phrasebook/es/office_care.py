"""Spanish of the care sheet, for owner, helper and whoever cleans."""

from __future__ import annotations

PHRASES = {
    "Care of this floor": "Cuidado de este piso",
    "Who cleans here reads this first. Keep it with the house.":
    "Quien limpia aquí lee esto primero. Guárdelo con la casa.",
    "The first days": "Los primeros días",
    "The last coat of sealer went down": "La última mano de sellador se puso",
    "what is not done": "qué no se hace",
    "after the last coat of sealer": "tras la última mano de sellador", "so until": "o sea hasta",
    "nobody on it, no pets": "nadie encima, ni mascotas",
    "socks only; no water": "solo calcetines; sin agua",
    "no furniture; then carried in, on felt":
    "sin muebles; después se meten cargados, con fieltro",
    "no wet mopping, no covers, nothing heavy on wheels":
    "sin trapear mojado, sin cubiertas, nada pesado con ruedas",
    "no rugs, no mats; then only such as breathe":
    "sin tapetes ni alfombras; después solo los que respiran",
    "Hours and days as the sealer's label has them; longer waits of ours where it is open.":
    "Horas y días como los tiene la etiqueta del sellador; esperas nuestras más largas donde no "
    "dice.",
    "The sealer's label was not told: usual waits of its type stand here, common practice with no "
    "source. The label wins.":
    "No se dijo la etiqueta del sellador: aquí están las esperas usuales de su tipo, práctica "
    "común sin fuente. Manda la etiqueta.",
    "Cleaning": "Limpieza", "Never": "Nunca",
    "Dust mop each week, a soft one, dry.": "Mopa seca y suave cada semana.",
    "Damp mop with a pH-neutral cleaner, as weak as its label says; well wrung.":
    "Trapeador húmedo con limpiador de pH neutro, tan diluido como diga su etiqueta; bien "
    "exprimido.",
    "Wipe up spills at once: wine, oil, pet accidents, lemon, vinegar.":
    "Seque los derrames enseguida: vino, aceite, orines de mascota, limón, vinagre.",
    "Mats inside and outside each door: they take most of the dirt.":
    "Tapetes adentro y afuera de cada puerta: agarran casi toda la tierra.",
    "Felt under every chair and table leg; look at them twice a year.":
    "Fieltro bajo cada pata de silla y mesa; revíselo dos veces al año.",
    "Lift furniture, never drag it.": "Levante los muebles, nunca los arrastre.",
    "No ammonia, no bleach, no vinegar, no pine cleaner, no solvent.":
    "Sin amoníaco, sin cloro, sin vinagre, sin limpiador de pino, sin solvente.",
    "No steam mop, no standing water.": "Sin trapeador de vapor, sin agua encharcada.",
    "No rubber or plastic backs under rugs: they mark the sealer, most in the first month.":
    "Sin hule ni plástico bajo los tapetes: marcan el sellador, más en el primer mes.",
    "No tape on the floor, not even on covers.":
    "Sin cinta en el piso, ni siquiera para cubiertas.",
    "No wax or polish other than the finish that is named here.":
    "Sin cera ni abrillantador fuera del acabado que aquí se nombra.",
    "stain, cut, lot": "tinte, proporción, lote",
    "sealer, generic type": "sellador, tipo genérico", "its name and lot": "su nombre y lote",
    "coats of it": "cuántas manos",
    "finish, generic type and lot": "acabado, tipo genérico y lote",
    "New finish": "Acabado nuevo",
    "The finish is there to be worn, so that the sealer is not. When lanes turn dull, clean and "
    "lay new finish before the sealer shows: in homes about once a year, twice where many walk.":
    "El acabado está para gastarse, y que no se gaste el sellador. Cuando los pasos se ponen "
    "opacos, limpie y ponga acabado nuevo antes de que asome el sellador: en casas como una vez al "
    "año, dos donde pisan muchos.",
    "First new finish by": "Primer acabado nuevo para el", "Call": "Llame a",
    "Left with the owner": "Se queda con el dueño",
    "a quart (1 L) of finish, its name and how it is laid":
    "un cuarto de galón (1 L) de acabado, su nombre y cómo se pone",
    "this sheet": "esta hoja", "the sample, signed": "la muestra, firmada",
    "the warranty": "la garantía",
    "a mop that fits the finish": "un trapeador que va con el acabado",
    "Finishers' care sheets and common practice with no source; the labels of sealer, finish and "
    "cleaner win.":
    "Hojas de cuidado de aplicadores y práctica común sin fuente; mandan las etiquetas de "
    "sellador, acabado y limpiador.",
    "sealer of unknown type": "sellador de tipo desconocido",
}  # fmt: skip
