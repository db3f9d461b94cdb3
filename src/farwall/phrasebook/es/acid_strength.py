"""Strength of the mixes: what is asked and warned of."""

from __future__ import annotations

PHRASES = {
    "The acid in {@1} was not told: strength, heat and vapour of {@2} stay unknown.":
    "No se anotó el ácido de {@1}: concentración, calor y vapor de {@2} quedan sin saberse.",
    "{@1} is told to hold up to {2} % acid, more than the tool knows of: read its sheet again.":
    "De {@1} se dijo que lleva hasta {2} % de ácido, más de lo que la herramienta conoce: lea otra "
    "vez su hoja.",
    "The density of {@1} was not told: {2} to {3} kg/L is taken.":
    "No se anotó la densidad de {@1}: se toma de {2} a {3} kg/L.",
    "No day was told on which somebody read the sheet of {@1}; sheets change with the lot.":
    "No se anotó qué día alguien leyó la hoja de {@1}; las hojas cambian con el lote.",
    "What is dissolved in {@1} was not told: its chlorides may press out several times as much "
    "hydrogen chloride as plain acid of that strength.":
    "No se anotó qué lleva disuelto {@1}: sus cloruros pueden expulsar varias veces más cloruro de "
    "hidrógeno que el ácido solo de esa concentración.",
    "The tub of {@1} may get as warm as {2} °C: pour slowly, stir, and let it cool before it goes "
    "into a sprayer.":
    "La tina de {@1} puede calentarse hasta {2} °C: vierta despacio, revuelva y deje que se enfríe "
    "antes de pasarla a una rociadora.",
    "a table at 20 °C": "una tabla a 20 °C",
    "What heat the salts of a stain set free themselves is unknown: feel the tub's outside.":
    "No se sabe cuánto calor sueltan las sales mismas de un tinte: toque la tina por fuera.",
}  # fmt: skip
