"""Words of a page that says that something broke, in Spanish."""

from __future__ import annotations

WORDS = {
    "broke": "Aquí se rompió algo",
    "broke-told": "Hágalo otra vez; si sigue igual, está en el registro del servidor como "
    "{number}.",
}
