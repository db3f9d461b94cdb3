"""The acid day in short."""

from __future__ import annotations

PHRASES = {
    "{@1}: the acid in {@2} was not told: read its sheet.":
    "{@1}: no se anotó el ácido de {@2}: lea su hoja.",
    "{@1}, {@2}, {*3}: {#4} to {#5} % acid.": "{@1}, {@2}, {*3}: de {#4} a {#5} % de ácido.",
    "House shut: {@1} about {#2} ppm ({#3} to {#4}) at its worst, a wide guess.":
    "Casa cerrada: {@1} unas {#2} ppm (de {#3} a {#4}) en lo peor, una suposición amplia.",
    "House open: {@1} about {#2} ppm ({#3} to {#4}) at its worst, a wide guess.":
    "Casa abierta: {@1} unas {#2} ppm (de {#3} a {#4}) en lo peor, una suposición amplia.",
    "Its high end passes {#1} ppm, dangerous at once: open the house and set fans before the first "
    "stroke, or do not begin.":
    "Su extremo alto pasa de {#1} ppm, peligro inmediato: abra la casa y ponga ventiladores antes "
    "de la primera pasada, o no empiece.",
    "Air to hold 2 ppm: about {#1} cfm ({#2} m³/h).":
    "Aire para quedar en 2 ppm: unos {#1} cfm ({#2} m³/h).",
    "{#1} pairs of what is in hand are never poured together.":
    "{#1} pares de lo que hay nunca se vierten juntos.",
    "{@1} spilled: {#2} to {#3} lb of bicarbonate a gallon ({#4} to {#5} kg/L).":
    "{@1} derramado: de {#2} a {#3} lb de bicarbonato por galón (de {#4} a {#5} kg/L).",
    "{@1} spilled: {#2} to {#3} lb of soda ash a gallon ({#4} to {#5} kg/L).":
    "{@1} derramado: de {#2} a {#3} lb de carbonato de sodio por galón (de {#4} a {#5} kg/L).",
    "{@1} spilled: {#2} to {#3} lb of ammonia water a gallon ({#4} to {#5} kg/L).":
    "{@1} derramado: de {#2} a {#3} lb de agua de amoníaco por galón (de {#4} a {#5} kg/L).",
    "{@1} spilled: {#2} to {#3} lb of lime a gallon ({#4} to {#5} kg/L).":
    "{@1} derramado: de {#2} a {#3} lb de cal por galón (de {#4} a {#5} kg/L).",
    "About {#1} h ({#2} to {#3}) with 1 person, {#5} gal of water ({#6} L), {#7} drums.":
    "Unas {#1} h (de {#2} a {#3}) con 1 persona, {#5} gal de agua ({#6} L), {#7} tambores.",
    "About {#1} h ({#2} to {#3}) with {#4} people, {#5} gal of water ({#6} L), {#7} drums.":
    "Unas {#1} h (de {#2} a {#3}) con {#4} personas, {#5} gal de agua ({#6} L), {#7} tambores.",
}  # fmt: skip
