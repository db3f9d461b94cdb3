"""Spanish of the sheet for the builder before the pour, and of what all papers share."""

from __future__ import annotations

PHRASES = {
    "Before the pour": "Antes del vaciado",
}
