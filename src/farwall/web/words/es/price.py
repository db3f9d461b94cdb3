"""Words of the pages of money."""

from __future__ import annotations

WORDS = {
    "way-price": "precio",
    "price-part-title": "{name}: {part}",
    "price-firm-alone": "Lo que le cuesta a la empresa es para la oficina y el encargado.",
    "price-ways": "Partes del precio",
    "price-part-price": "precio",
    "price-part-hours": "horas",
    "price-part-quantities": "cantidades",
    "price-part-masking": "enmascarado",
    "price-part-buying": "para comprar",
    "papers-before-the-pour": "Antes del vaciado",
    "papers-quote": "Para la cotización",
    "papers-day": "Para el día",
    "papers-hand-over": "Para la entrega y después",
    "papers-name-slab-protection-pdf": "Antes del vaciado (PDF)",
    "papers-for-slab-protection-pdf": "Para el constructor: de qué hay que cuidar la losa, para "
    "que tome color.",
}
