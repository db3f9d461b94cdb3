"""Palabras de la lista de casas: buscar, filtros, lo que sigue."""

from __future__ import annotations

WORDS = {
    "houses-seek": "Buscar por nombre",
    "houses-seek-do": "Buscar",
    "houses-filters": "Cuáles casas",
    "houses-none-such": "Ninguna casa es así.",
    "houses-show-all": "todas ({n})",
    "houses-show-plan": "por planear ({n})",
    "houses-show-week": "esta semana ({n})",
    "houses-show-work": "en obra ({n})",
    "houses-show-drying": "secando ({n})",
    "houses-show-done": "entregadas ({n})",
    "line-unread": "sus datos no se pueden leer como están",
    "next-done": "entregada.",
    "next-no": "no se puede planear con sus datos: ábrala y vea por qué.",
    "next-choose-day": "elija su día.",
    "next-to-plan": "ábrala y se hace su plan.",
    "next-step": "{what}, {when}.",
    "next-day-past": "su día, {day}, ya pasó y no se anotó nada: elija otro, o anote lo que se "
    "hizo.",
    "next-go-on": "en obra; lo último anotado, {word}, {at}.",
    "next-dry": "está seco: ahora, {what}.",
    "next-another": "otra mano, como se juzgó.",
    "next-neutralise": "neutralizar, si el color basta.",
    "next-rinse": "enjuagar hasta que el trapo blanco salga limpio.",
    "next-dries": "está secando; después, {then}.",
    "next-dries-by": "está secando; {then} desde {low}, lo más probable {likely}.",
    "next-damp": "todavía húmedo {at}; mire otra vez, y después {then}.",
    "next-then-neutralise": "neutralizar",
    "next-then-seal": "sellador, mano 1",
    "next-then-sealed": "la siguiente mano de sellador, o el acabado",
}
