"""Palabras de la parte de la gente en la página de ácido y agua."""

from __future__ import annotations

WORDS: dict[str, str] = {
    "acid-people-form": "Anotar gente, cartuchos y sus propios números de emergencia",
    "acid-people-looks": "Ir a ver a quien rocía",
    "acid-people-eyewash": "Lavaojos",
    "acid-people-out": "Los demás",
    "acid-people-aid": "Primeros auxilios",
    "acid-people-papers": "Para la mañana y para la puerta, en papel:",
    "papers-name-people-pdf": "Gente",
    "papers-for-people-pdf": "Para la mañana: quién puede hacer qué, cuándo ir a ver a quien "
    "rocía, lavaojos, minutos con el respirador.",
    "papers-name-keep-out-pdf": "Letrero para la puerta",
    "papers-for-keep-out-pdf": "Prohibida la entrada hasta enjuagar y ventilar, en inglés y "
    "español.",
}
