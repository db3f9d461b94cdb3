"""Palabras de la forma que prueba otros datos, y de lo que se ganó con ellos."""

from __future__ import annotations

WORDS = {
    "try-facts": "Probar otros datos",
    "try-told": "Cada cambio se guarda como datos nuevos y se planea aparte; los datos de antes "
    "quedan en el libro.",
    "fact-helper": "Ayudante",
    "fact-helper-yes": "sí, cambia tanques llenos",
    "fact-helper-no": "no",
    "fact-sprayers": "Rociadores",
    "fact-one": "uno",
    "fact-two": "dos",
    "fact-day": "Día",
    "fact-start": "Empieza",
    "fact-band-us": "Ancho de franja, pulgadas",
    "fact-band-metric": "Ancho de franja, cm",
    "fact-put": "Planear con estos",
    "facts-refused": "Estos datos no se guardaron:",
    "facts-same": "Esos ya son los datos; no se cambió nada.",
    "facts-other": "alguien más cambió los datos desde que se hizo esta página. Vea los nuevos y "
    "cámbielos después.",
    "facts-other-merged": "alguien más cambió los datos desde que se hizo esta página. Lo que dijo "
    "está aquí junto a lo que usted escribió: revíselo y guárdelo.",
    "facts-both": "Alguien más puso {text} aquí entretanto. Queda lo suyo: guárdelo, o escriba lo "
    "del otro.",
    "facts-both-empty": "Alguien más vació esto entretanto. Queda lo suyo: guárdelo, o déjelo "
    "vacío.",
    "facts-row-lost": "una fila que usted cambió ya no está, o estaba marcada para quitarse: mire "
    "las filas y dígalo otra vez.",
    "facts-day-wrong": "{text} no es un día con hora. Escríbalos como piden los campos.",
    "facts-choice-wrong": "{text} no se puede elegir aquí.",
    "facts-band-wrong": "{text} no es un ancho. Escriba un número, como {such}.",
    "gain": "Frente a los datos {n} ({told}): {fields}, {spare}, {ends}.",
    "gain-fit": "salen {fit} de {fields} tramos, antes {was} de {of}",
    "gain-fit-same": "salen {fit} de {fields} tramos, como antes",
    "gain-more": "{by} min más de sobra en la orilla más justa",
    "gain-less": "{by} min menos de sobra en la orilla más justa",
    "gain-even": "la orilla más justa como antes",
    "gain-later": "rociado {by} min más tarde",
    "gain-earlier": "rociado {by} min más temprano",
    "gain-when-same": "rociado tan temprano como antes",
    "told-helper": "con ayudante",
    "told-alone": "sin ayudante",
    "told-two": "dos rociadores",
    "told-one": "un rociador",
    "told-start": "empieza {at}",
    "told-band": "franjas de {width}",
}
