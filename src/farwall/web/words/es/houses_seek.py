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
    "houses-show-aside": "apartadas ({n})",
    "next-aside": "apartada.",
    "aside-do": "Apartar esta casa",
    "aside-told": "Sale de las listas, del calendario, de la camioneta y de las lecciones. Nada "
    "se borra: sus datos, bitácora, fotos y papeles se quedan, y se puede traer de "
    "vuelta. Quien tiene sus papeles no se entera por esto: avíseles.",
    "aside-logged": "Algo se anotó en su piso. Apartarla no cambia nada allí: lo que está mojado, "
    "neutralizado o en un tambor se atiende primero.",
    "aside-why": "Por qué (se cayó el trato, se anotó dos veces)",
    "aside-is": "Esta casa está apartada: no está en ninguna lista, ni en el calendario ni en "
    "la camioneta.",
    "aside-because": "Por qué: {why}",
    "aside-back": "Traerla de vuelta",
    "aside-not-you": "Apartar una casa no es para su papel. Pregunte a un "
    "encargado o a la oficina.",
}
