"""Words on the floor, on the tape and on the strip of moments; days."""

from __future__ import annotations

_DAYS = dict(
    zip(
        ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"),
        ("lunes", "martes", "miércoles", "jueves", "viernes", "sábado", "domingo"),
        strict=True,
    )
)
_MONTHS = {
    "January": "enero", "February": "febrero", "March": "marzo", "April": "abril", "May": "mayo",
    "June": "junio", "July": "julio", "August": "agosto", "September": "septiembre",
    "October": "octubre", "November": "noviembre", "December": "diciembre",
}  # fmt: skip

PHRASES = {
    "day not set": "día sin fijar",
    **{
        f"{day}, {month} {{#1}}, {{#2}}": f"{_DAYS[day]} {{#1}} de {_MONTHS[month]} de {{#2}}"
        for day in _DAYS
        for month in _MONTHS
    },
    **{
        f"{day}, {{#1}} {month} {{#2}}": f"{_DAYS[day]} {{#1}} de {_MONTHS[month]} de {{#2}}"
        for day in _DAYS
        for month in _MONTHS
    },
    "way out": "salida",
    "this way out": "por aquí se sale",
    "stop line": "línea de parada",
    "leave to": "salga hacia",
    "leave to {@1}": "salga hacia {@1}",
    "leave here": "salga aquí",
    "sprayed first": "se rocía primero",
    "kept dry": "se deja seco",
    "full tank": "tanque lleno",
    "full tank {#1}": "tanque lleno {#1}",
    "live edge": "orilla viva",
    "no live edge": "sin orilla viva",
    "live edge {#1} old, lives {#2}": "orilla viva de {#1}, vive {#2}",
    "{1}, {#2} in the tank": "{1}, {#2} en el tanque",
    "just sprayed": "recién rociado",
    "an edge's life ago": "hace una vida de orilla",
    "sprayed, keep off": "rociado, no pisar",
    "sun": "sol",
    "no sun": "sin sol",
    "sun reaches it in the half hour from then, under a clear sky":
    "el sol llega ahí en la media hora que sigue, con cielo despejado",
    "No sun falls on this floor on that day": "Ese día no da el sol en este piso",
    "Nothing of this coat can be sprayed as things stand":
    "Nada de esta mano se puede rociar así como están las cosas",
    "{#1} moments of {2}": "{#1} momentos de {2}",
    "Floor of {@1}": "Piso de {@1}",
    "this job": "este trabajo",
    "{@1}: not to be sprayed as things stand.": "{@1}: no se rocía así como están las cosas.",
    "{@1}: {#2} bands, numbered in the order in which they are sprayed.":
    "{@1}: {#2} franjas, numeradas en el orden en que se rocían.",
    "Fields in the order in which they are sprayed: {1}":
    "Tramos en el orden en que se rocían: {1}",
    "{@1}: field {#2} is {3}": "{@1}: el tramo {#2} es {3}",
    "field {#1} is {@2}": "el tramo {#1} es {@2}",
    "helper": "ayudante",
    "you": "usted",
    "cut here": "corte aquí",
    "What was sent is no drawing.": "Lo que se mandó no es un dibujo.",
    "This is no list of things.": "Esto no es una lista de cosas.",
    "This thing has no id.": "Esta cosa no tiene identificador.",
    "Load the page again.": "Cargue la página otra vez.",
}  # fmt: skip
