"""Palabras del formulario que prueba otros datos, y de lo que se ganó."""

from __future__ import annotations

WORDS = {
    "try-facts": "Probar otros datos",
    "try-told": "Cada cambio se guarda como datos nuevos y se planea al lado; los datos anteriores "
    "se quedan en el libro.",
    "fact-helper": "Ayudante",
    "fact-helper-yes": "sí, cambia tanques llenos",
    "fact-helper-no": "no",
    "fact-sprayers": "Rociadores",
    "fact-one": "uno",
    "fact-two": "dos",
    "fact-day": "Día",
    "fact-start": "Inicio",
    "fact-band-us": "Ancho de franja, pulgadas",
    "fact-band-metric": "Ancho de franja, cm",
    "fact-put": "Planear con estos",
    "facts-refused": "Estos datos no se guardaron:",
    "facts-same": "Ya son estos los datos; no se cambió nada.",
    "facts-other": "alguien más cambió los datos desde que se hizo esta página. Vea los nuevos y "
    "luego cámbielos.",
    "facts-day-wrong": "{text} no es día ni hora. Escríbalos como piden los campos.",
    "facts-choice-wrong": "{text} no se puede elegir aquí.",
    "facts-band-wrong": "{text} no es un ancho. Escriba un número, como {such}.",
    "gain": "Frente a los datos {n} ({told}): {fields}, {spare}, {ends}.",
    "gain-fit": "caben {fit} de {fields} tramos, antes {was} de {of}",
    "gain-fit-same": "caben {fit} de {fields} tramos como antes",
    "gain-more": "sobran {by} min más en la orilla más justa",
    "gain-less": "sobran {by} min menos en la orilla más justa",
    "gain-even": "la orilla más justa como antes",
    "gain-later": "rociado {by} min más tarde",
    "gain-earlier": "rociado {by} min más temprano",
    "gain-when-same": "rociado tan temprano como antes",
    "told-helper": "un ayudante",
    "told-alone": "sin ayudante",
    "told-two": "dos rociadores",
    "told-one": "un rociador",
    "told-start": "inicio {at}",
    "told-band": "franjas de {width}",
}
