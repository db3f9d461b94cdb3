"""Spanish of the days of a house: the page for other trades, and the tape on it."""

from __future__ import annotations

PHRASES = {
    "The days of this house": "Los días de esta casa",
    "the days": "los días",
    "All other trades stay out": "Los demás oficios se quedan fuera",
    "from {#1} until {#2}": "desde {#1} hasta {#2}",
    "{#1} coats of stain": "{#1} manos de tinte",
    "{#1} coat of stain": "{#1} mano de tinte",
    "crew {#1}": "cuadrilla {#1}",
    "may end": "puede acabar",
    "after:": "tras:",
    "Before": "Antes",
    "Mind": "Ojo",
    "On the tape: a bar begins on the first day; dashed: planned, it may move; wedge: when it may "
    "be handed over.":
    "En la cinta: barra llena, el primer día; con guiones, planeado y puede moverse; cuña, cuándo "
    "se puede entregar.",
    "Weather: {1}.": "Clima: {1}.",
    "the survey's readings, taken to last for days":
    "lecturas de la inspección, como si duraran días",
    "a mild day": "un día templado",
    "weather file": "archivo de clima",
    "forecast": "pronóstico",
    "Hours of work for the floor and its crew, and waits: common practice, no source; how hours "
    "part within a line is a guess.":
    "Horas de trabajo para el piso y su cuadrilla, y esperas: práctica común, sin fuente; cómo se "
    "reparten las horas de un renglón es estimación.",
    "Chance that a day for stain or sealer is lost to the weather: {#1} (guess).":
    "Probabilidad de que el tiempo eche a perder un día de tinte o de sellador: {#1} "
    "(estimación).",
    "Due {#1}.": "Entrega pedida: {#1}.",
    "Due {#1}: late by {#2}.": "Entrega pedida: {#1}; con {#2} de retraso.",
    # On the tape.
    "cleaning": "limpieza",
    "handed over, {#1}": "se entrega, {#1}",
    "handed over, {#1} on, open end": "se entrega desde {#1}, sin fin",
    "Sat": "sáb",
    "Sun": "dom",
}  # fmt: skip
