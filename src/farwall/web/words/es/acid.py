"""Words of the page of acid and water."""

from __future__ import annotations

WORDS: dict[str, str] = {
    "way-acid": "ácido",
    "acid-title": "{name}: ácido y agua",
    "acid-wins": (
        "La hoja del material que tiene en la mano, las normas locales y la práctica con licencia "
        "valen más que todo esto."
    ),
    "acid-papers": "En papel:",
    "acid-part-strength": "Concentración",
    "acid-part-fumes": "Vapores",
    "acid-part-neutralising": "Neutralización",
    "acid-part-washing": "Día de lavado",
    "acid-part-waste": "Agua de desecho",
    "acid-part-people": "Personas",
    "acid-part-pours": "Qué se vierte con qué",
    "acid-part-title": "{name}: {part}",
    "acid-ways": "Partes de ácido y agua",
    "acid-all": "Todo en breve",
    "acid-nothing": "Nada resalta.",
    "acid-told": "Lo que más importa de cada parte, en el orden del día; todo lo demás, tras su "
    "nombre.",
}
