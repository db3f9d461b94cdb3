"""Spanish of the texts that disagree, as the rules of go or no-go quote them."""

from __future__ import annotations

PHRASES = {
    "14 days, better 21 (a page of questions and answers)":
    "14 días, mejor 21 (una página de preguntas y respuestas)",
    "20 to 28 days, or an even light grey (a maker)":
    "20 a 28 días, o un gris claro parejo (un fabricante)",
    "21 days, 28 where highs stay below 50 °F, 10 °C (another maker)":
    "21 días, 28 donde las máximas no pasan de 50 °F, 10 °C (otro fabricante)",
    "30 days (a how-to page, a maker)": "30 días (una página de instrucciones, un fabricante)",
    "4 to 6 weeks (a maker's and finishers' sheets for builders)":
    "4 a 6 semanas (hojas de un fabricante y de aplicadores para constructores)",
    "sand it evenly (a maker)": "lijarla pareja (un fabricante)",
    "a chemical opener (another maker)": "un producto que abre el poro (otro fabricante)",
    "never sand with a buffer, it hits high trowel lines only (a how-to page)":
    "nunca lijar con pulidora de piso, solo toca las marcas altas de llana (una página de "
    "instrucciones)",
    "grind with metal of 100 to 120 grit (the same page): another, grainy look":
    "esmerilar con metal de grano 100 a 120 (la misma página): otro aspecto, granulado",
    "none (a maker)": "ninguna (un fabricante)",
    "below 10 % (the same maker, elsewhere)": "menos de 10 % (el mismo fabricante, en otra parte)",
    "at most 15 % when above 80 °F, 27 °C (a finisher's sheet for builders)":
    "15 % como máximo arriba de 80 °F, 27 °C (hoja de un aplicador para constructores)",
    "3 lb/(1,000 ft²·24 h) (films by one specification)":
    "3 lb/(1,000 ft²·24 h) (películas según una especificación)",
    "5 lb/(1,000 ft²·24 h) (films by another)": "5 lb/(1,000 ft²·24 h) (películas según otra)",
    "5 to 8 lb for breathable acrylics (from memory)":
    "5 a 8 lb para acrílicos que respiran (de memoria)",
    "75 % (the low end of usual limits)": "75 % (el extremo bajo de los límites usuales)",
    "90 % (the high end)": "90 % (el extremo alto)",
    "59 to 70 °F, 15 to 21 °C (a garden page)": "59 a 70 °F, 15 a 21 °C (una página de jardín)",
    "at most 75 to 80 °F, 24 to 27 °C (a maker)": "75 a 80 °F, 24 a 27 °C como máximo (un "
    "fabricante)",
    "50 to 90 °F, 10 to 32 °C (usual sheets)": "50 a 90 °F, 10 a 32 °C (hojas usuales)",
}  # fmt: skip
