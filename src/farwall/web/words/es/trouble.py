"""Palabras de una página que dice que no."""

from __future__ import annotations

WORDS = {
    "no-page": "No existe esa página",
    "no-house": "El libro no tiene esa casa",
    "book-trouble": "El libro no se puede usar ahora",
    "too-large": "Demasiado de una vez",
    "from-elsewhere": "Este formulario no vino de aquí",
    "refused": "Esto no se puede hacer",
    "unanswerable": "Todavía no",
    "back-house": "Volver a esta casa",
    "back": "Volver a las casas",
}
