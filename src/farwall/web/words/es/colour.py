"""Words of the pages of colour that all of them share, in Spanish."""

from __future__ import annotations

WORDS = {
    "way-colour": "color",
    "colour-ways": "El color de esta casa",
    "colour-part-next": "la próxima mano",
    "colour-part-ladder": "la escalera",
    "colour-part-sample-day": "el día de muestras",
    "colour-part-marks": "marcas en el piso",
    "colour-part-pairs": "antes y después",
}
