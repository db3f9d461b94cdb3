"""Palabras de los ajustes."""

from __future__ import annotations

WORDS = {
    "way-settings": "Ajustes",
    "settings": "Ajustes",
    "settings-browser": "Este navegador",
    "settings-tongue": "Hablar en",
    "settings-tongue-browser": "lo que pida el navegador",
    "settings-tongue-en": "English",
    "settings-tongue-es": "Español",
    "settings-light": "Mostrar las páginas",
    "settings-light-paper": "como siempre, en papel cálido",
    "settings-light-sun": "para el sol, negro sobre blanco",
    "settings-browser-keep": "Dejarlo así",
    "settings-kept-browser": "Quedó puesto en este navegador.",
    "settings-kept-firm": "Guardado. Cada casa nueva empieza con esto; las que ya están en el "
    "libro se quedan como están.",
    "firm": "Con qué empieza cada casa nueva",
    "firm-told": "Su cuadrilla, su rociadora, sus tintes. Una casa puede decir otra cosa; un "
    "job.json que se trae conserva lo que dice.",
    "firm-terms": "Su nombre, tarifas, impuestos y condiciones se dicen con una casa, en precio: "
    "las siguientes también empiezan con ellos.",
    "firm-terms-way": "Empresa, cliente y condiciones",
    "firm-keep": "Guardar para casas nuevas",
    "firm-units": "Unidades",
    "help-tongue": "El idioma de las pantallas en este navegador. Los nombres de casas y cuartos "
    "quedan como se escribieron.",
    "help-light": "Con luz fuerte el papel cálido se lee mal: negro sobre blanco, líneas más "
    "gruesas.",
    "rooms-unit-us": "pies",
    "rooms-unit-metric": "metros",
}
