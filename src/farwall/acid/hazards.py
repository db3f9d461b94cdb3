"""Hazard and precautionary statements of the GHS by code, in English and Spanish; pictograms.

Texts of the United Nations' Globally Harmonized System, annex 3, tables A3.1.2, A3.2.2 to A3.2.5,
its English and its Spanish edition [un-ghs]: read as lists in other hands, not in the print itself.
Where a text leaves a choice of words, the words that fit a spray of acid stand.
"""

from __future__ import annotations

from typing import Literal, NamedTuple

Pictogram = Literal["ghs03", "ghs05", "ghs06", "ghs07", "ghs08", "ghs09"]
Signal = Literal["danger", "warning"]


class Statement(NamedTuple):
    """What a code says, in both languages."""

    en: str
    es: str


SIGNALS: dict[Signal, Statement] = {
    "danger": Statement("Danger", "Peligro"),
    "warning": Statement("Warning", "Atención"),
}

HAZARDS: dict[str, Statement] = {
    "H272": Statement("May intensify fire; oxidizer", "Puede agravar un incendio; comburente"),
    "H290": Statement("May be corrosive to metals", "Puede ser corrosiva para los metales"),
    "H300": Statement("Fatal if swallowed", "Mortal en caso de ingestión"),
    "H301": Statement("Toxic if swallowed", "Tóxico en caso de ingestión"),
    "H302": Statement("Harmful if swallowed", "Nocivo en caso de ingestión"),
    "H310": Statement("Fatal in contact with skin", "Mortal en contacto con la piel"),
    "H311": Statement("Toxic in contact with skin", "Tóxico en contacto con la piel"),
    "H312": Statement("Harmful in contact with skin", "Nocivo en contacto con la piel"),
    "H314": Statement(
        "Causes severe skin burns and eye damage",
        "Provoca graves quemaduras en la piel y lesiones oculares",
    ),
    "H315": Statement("Causes skin irritation", "Provoca irritación cutánea"),
    "H317": Statement(
        "May cause an allergic skin reaction", "Puede provocar una reacción cutánea alérgica"
    ),
    "H318": Statement("Causes serious eye damage", "Provoca lesiones oculares graves"),
    "H319": Statement("Causes serious eye irritation", "Provoca irritación ocular grave"),
    "H330": Statement("Fatal if inhaled", "Mortal si se inhala"),
    "H331": Statement("Toxic if inhaled", "Tóxico si se inhala"),
    "H332": Statement("Harmful if inhaled", "Nocivo si se inhala"),
    "H334": Statement(
        "May cause allergy or asthma symptoms or breathing difficulties if inhaled",
        "Puede provocar síntomas de alergia o asma o dificultades respiratorias si se inhala",
    ),
    "H335": Statement("May cause respiratory irritation", "Puede irritar las vías respiratorias"),
    "H340": Statement("May cause genetic defects", "Puede provocar defectos genéticos"),
    "H350": Statement("May cause cancer", "Puede provocar cáncer"),
    "H360": Statement(
        "May damage fertility or the unborn child",
        "Puede perjudicar la fertilidad o dañar al feto",
    ),
    "H372": Statement(
        "Causes damage to organs through prolonged or repeated exposure",
        "Provoca daños en los órganos tras exposiciones prolongadas o repetidas",
    ),
    "H373": Statement(
        "May cause damage to organs through prolonged or repeated exposure",
        "Puede provocar daños en los órganos tras exposiciones prolongadas o repetidas",
    ),
    "H400": Statement("Very toxic to aquatic life", "Muy tóxico para los organismos acuáticos"),
    "H410": Statement(
        "Very toxic to aquatic life with long lasting effects",
        "Muy tóxico para los organismos acuáticos, con efectos nocivos duraderos",
    ),
    "H411": Statement(
        "Toxic to aquatic life with long lasting effects",
        "Tóxico para los organismos acuáticos, con efectos nocivos duraderos",
    ),
    "H412": Statement(
        "Harmful to aquatic life with long lasting effects",
        "Nocivo para los organismos acuáticos, con efectos nocivos duraderos",
    ),
}

PRECAUTIONS: dict[str, Statement] = {
    "P202": Statement(
        "Do not handle until all safety precautions have been read and understood.",
        "No manipular antes de haber leído y comprendido todas las precauciones de seguridad.",
    ),
    "P220": Statement(
        "Keep away from clothing and other combustible materials.",
        "Mantener alejado de la ropa y otros materiales combustibles.",
    ),
    "P260": Statement("Do not breathe mist, vapours, spray.", "No respirar nieblas, vapores, "
        "aerosoles."),
    "P264": Statement(
        "Wash hands thoroughly after handling.",
        "Lavarse las manos cuidadosamente después de la manipulación.",
    ),
    "P273": Statement("Avoid release to the environment.", "No dispersar en el medio ambiente."),
    "P280": Statement(
        "Wear protective gloves, protective clothing, eye protection and face protection.",
        "Usar guantes, ropa de protección y equipo de protección para los ojos y la cara.",
    ),
    "P284": Statement("Wear respiratory protection.", "Usar equipo de protección respiratoria."),
    "P301+P330+P331": Statement(
        "IF SWALLOWED: Rinse mouth. Do NOT induce vomiting.",
        "EN CASO DE INGESTIÓN: Enjuagar la boca. NO provocar el vómito.",
    ),
    "P303+P361+P353": Statement(
        "IF ON SKIN (or hair): Take off immediately all contaminated clothing. Rinse skin with "
        "water or shower.",
        "EN CASO DE CONTACTO CON LA PIEL (o el pelo): Quitar inmediatamente toda la ropa "
        "contaminada. Enjuagar la piel con agua o ducharse.",
    ),
    "P304+P340": Statement(
        "IF INHALED: Remove person to fresh air and keep comfortable for breathing.",
        "EN CASO DE INHALACIÓN: Transportar a la persona al aire libre y mantenerla en una "
        "posición que le facilite la respiración.",
    ),
    "P305+P351+P338": Statement(
        "IF IN EYES: Rinse cautiously with water for several minutes. Remove contact lenses, if "
        "present and easy to do. Continue rinsing.",
        "EN CASO DE CONTACTO CON LOS OJOS: Enjuagar con agua cuidadosamente durante varios "
        "minutos. Quitar las lentes de contacto cuando estén presentes y pueda hacerse con "
        "facilidad. Proseguir con el lavado.",
    ),
    "P308+P313": Statement(
        "IF exposed or concerned: Get medical advice or attention.",
        "EN CASO DE exposición demostrada o supuesta: consultar a un médico.",
    ),
    "P310": Statement(
        "Immediately call a POISON CENTER or doctor.",
        "Llamar inmediatamente a un CENTRO DE TOXICOLOGÍA o a un médico.",
    ),
    "P390": Statement(
        "Absorb spillage to prevent material damage.",
        "Absorber el vertido para prevenir daños materiales.",
    ),
    "P405": Statement("Store locked up.", "Guardar bajo llave."),
    "P501": Statement(
        "Dispose of contents and container in accordance with local regulation.",
        "Eliminar el contenido y el recipiente conforme a la reglamentación local.",
    ),
}  # fmt: skip

PICTOGRAM_OF: dict[str, Pictogram] = {
    "H272": "ghs03",
    **dict.fromkeys(("H290", "H314", "H318"), "ghs05"),
    **dict.fromkeys(("H300", "H301", "H310", "H311", "H330", "H331"), "ghs06"),
    **dict.fromkeys(("H302", "H312", "H315", "H317", "H319", "H332", "H335"), "ghs07"),
    **dict.fromkeys(("H334", "H340", "H350", "H360", "H372", "H373"), "ghs08"),
    **dict.fromkeys(("H400", "H410", "H411"), "ghs09"),
}
"""The pictogram of a statement [un-ghs, annex 1; from memory]; H412 has none."""

WARNS = frozenset(
    ("H290", "H302", "H312", "H315", "H317", "H319", "H332", "H335", "H373", "H400", "H410")
)
"""Statements whose signal word is Warning; H411, H412 have none; all others say Danger."""
_NONE = frozenset(("H411", "H412"))

_ORDER: tuple[Pictogram, ...] = ("ghs05", "ghs06", "ghs08", "ghs07", "ghs03", "ghs09")
_ACUTE_LESS = frozenset(("H302", "H312", "H332"))
_IRRITANT = frozenset(("H315", "H319"))


def pictograms(codes: tuple[str, ...]) -> tuple[Pictogram, ...]:
    """The pictograms of a label, worst first, those left out that a worse one stands for.

    UN GHS 1.4.10.5.3.1 (from memory): no exclamation mark for acute toxicity beside the skull, for
    skin or eye irritation beside corrosion, for skin beside respiratory sensitisation.
    Raises KeyError for a code that is not in `HAZARDS`.
    """
    left_out: set[str] = set()
    found = {code for code in codes if HAZARDS[code]}
    if any(PICTOGRAM_OF.get(code) == "ghs06" for code in found):
        left_out |= _ACUTE_LESS
    if found & {"H314", "H318"}:
        left_out |= _IRRITANT
    if "H334" in found:
        left_out |= {"H317", *_IRRITANT}
    shown = {PICTOGRAM_OF[code] for code in found - left_out if code in PICTOGRAM_OF}
    return tuple(one for one in _ORDER if one in shown)


def signal(codes: tuple[str, ...]) -> Signal | None:
    """The signal word: danger where one statement asks for it, else warning, else none."""
    asked = [code for code in codes if code not in _NONE]
    if not asked:
        return None
    return "warning" if all(code in WARNS for code in asked) else "danger"
