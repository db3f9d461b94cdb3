"""Palabras de la parte sobre la concentración del ácido."""

from __future__ import annotations

WORDS: dict[str, str] = {
    "acid-strength-head": "Mano {coat}: {stain} a {cut}",
    "acid-strength-added": "Con {amount} de ácido muriático comercial sobre la mezcla diluida.",
    "acid-strength-sheet": "Su hoja: {chromate}, {oxidiser}.",
    "acid-strength-lists": "Lleva {contents}.",
    "acid-strength-read": "Leída el {day}.",
    "acid-strength-share-from": "{name} desde {share} %",
    "acid-strength-share-to": "{name} hasta {share} %",
    "acid-strength-caption": "Ácido clorhídrico, % en masa",
    "acid-strength-neat": "Puro, según su hoja",
    "acid-strength-cut": "Diluido, antes de agregar ácido",
    "acid-strength-tub": "En la tina",
    "acid-strength-laid": "Puesto en el piso",
    "acid-strength-warm": "Lo más que se calienta la tina",
    "acid-strength-over": "Aire justo encima de la tina",
    "acid-strength-by-acid": "El ácido agregado lo multiplica por",
    "acid-strength-by-salts": "Sus sales pueden multiplicarlo por",
    "acid-strength-from": "desde {start}",
    "acid-strength-plain": "en reposo, si fuera ácido solo",
    "acid-strength-guess": "es una estimación, y muy amplia",
    "acid-strength-span": "{low} a {high}",
    "acid-strength-times": "{factor}",
    "acid-strength-pour-water": "{litres} de agua",
    "acid-strength-pour-stain": "{litres} de tinte",
    "acid-strength-pour-acid": "{litres} de ácido muriático",
    "acid-strength-then": ", luego ",
    "acid-strength-sheets": "Anotar lo que dicen las hojas",
    "acid-strength-name-them": "Primero nombre los tintes",
}
