"""Words of the list of quantities and of its switches."""

from __future__ import annotations

WORDS = {
    "price-quantities-told": "Lo que pide el trabajo. Toque un renglón para ver su regla y qué "
    "tanto confiar en ella.",
    "price-quantities-change": "Quitar renglones y poner cifras propias",
    "price-quantities-what": "Qué",
    "price-quantities-ready": "Tener",
    "price-quantities-ends": "Probable, y de bajo a alto",
    "price-quantities-stain": "Para teñir",
    "price-quantities-mask": "Para enmascarar",
    "price-quantities-wash": "Para neutralizar y lavar",
    "price-quantities-seal": "Para sellar",
    "price-quantities-wear": "Para ponerse",
    "price-quantities-tools": "Herramientas",
    "price-quantities-range": "probable {likely}, de {low} a {high}",
    "price-quantities-likely": "probable {likely}",
    "price-quantities-own": "su propia cifra; la regla da {ruled}",
    "price-quantities-is-off": "no",
    "price-quantities-lots": "Lotes:",
    "price-supplies": "Lo que se lleva",
    "price-supplies-told": "Desmarque lo que no se va a comprar. Una cifra propia toma el lugar "
    "de la de la regla.",
    "price-supplies-list": "La lista con sus reglas",
    "price-supplies-on": "Se lleva",
    "price-supplies-ruled": "Por la regla",
    "price-supplies-own": "Su propia cifra",
    "price-supplies-own-of": "Su propia cifra para {name}, {unit}",
    "price-supplies-empty": "Un espacio vacío deja la cifra de la regla.",
    "price-supplies-kept": "Guardado como datos {n}.",
    "price-supplies-no-plan": "Aún no tiene plan: abra la casa y se hace uno.",
    "price-supplies-gear": "Va en el precio",
    "price-supplies-kept-gear": "Equipo que sirve para muchos trabajos",
    "price-supplies-gear-untold": "como si no se dijo (por su parte)",
    "price-supplies-gear-share": "por su parte de los trabajos que dura",
    "price-supplies-gear-whole": "entero",
    "price-supplies-lasts": "{name}: dura",
    "price-supplies-lasts-rule": "trabajos; si no, de {low} a {high}",
    "price-supplies-person-days": "Días en la obra, sumados por persona",
    "price-supplies-sprayers": "Rociadoras que se compran nuevas",
    "price-supplies-spare-percent": "Más de todo lo que se compra, %",
}
