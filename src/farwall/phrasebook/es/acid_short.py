"""The acid day in short."""

from __future__ import annotations

PHRASES = {
    "by its sheet": "según su hoja",
    "Coat {#1}: the acid in {@2} was not told: read its sheet.":
    "Mano {#1}: no se anotó el ácido de {@2}: lea su hoja.",
    "Coat {#1}, {@2}, {*3}: {#4} to {#5} % acid, by its sheet ({6}).":
    "Mano {#1}, {@2}, {*3}: de {#4} a {#5} % de ácido, según su hoja ({6}).",
    "House shut: {@1} about {#2} ppm ({#3} to {#4}) at its worst ({5}, and a wide one).":
    "Casa cerrada: {@1} unas {#2} ppm (de {#3} a {#4}) en lo peor ({5}, y amplia).",
    "House open: {@1} about {#2} ppm ({#3} to {#4}) at its worst ({5}, and a wide one).":
    "Casa abierta: {@1} unas {#2} ppm (de {#3} a {#4}) en lo peor ({5}, y amplia).",
    "Fumes, house shut: {@1} about {#2} ppm ({#3} to {#4}) at its worst ({5}, and a wide one).":
    "Vapores, casa cerrada: {@1} unas {#2} ppm (de {#3} a {#4}) en lo peor ({5}, y amplia).",
    "Fumes, house open: {@1} about {#2} ppm ({#3} to {#4}) at its worst ({5}, and a wide one).":
    "Vapores, casa abierta: {@1} unas {#2} ppm (de {#3} a {#4}) en lo peor ({5}, y amplia).",
    "Air wanted to hold {#1} ppm: about {#2} air changes an hour ({#3} to {#4}), {#5} cfm ({#6} to "
    "{#7}), {#8} m³/h.":
    "Aire necesario para quedar en {#1} ppm: unos {#2} cambios de aire por hora (de {#3} a {#4}), "
    "{#5} cfm (de {#6} a {#7}), {#8} m³/h.",
    "Air wanted to hold {#1} ppm: about {#2} air changes an hour ({#3} to {#4}), {#5} m³/h ({#6} "
    "to {#7}), {#8} cfm.":
    "Aire necesario para quedar en {#1} ppm: unos {#2} cambios de aire por hora (de {#3} a {#4}), "
    "{#5} m³/h (de {#6} a {#7}), {#8} cfm.",
    "At the high end a room passes 45 ppm, dangerous at once to life or health: cartridges are not "
    "enough there.":
    "En el extremo alto un cuarto pasa de 45 ppm, peligro inmediato para la vida o la salud: ahí "
    "no bastan los cartuchos.",
    "Open the house and set fans before the first stroke, or do not begin.":
    "Abra la casa y ponga ventiladores antes de la primera pasada, o no empiece.",
    "A figure is no respirator and no measurement.":
    "Una cifra no es un respirador ni una medición.",
    "Its high end passes {#1} ppm, dangerous at once: open the house and set fans before the first "
    "stroke, or do not begin.":
    "Su extremo alto pasa de {#1} ppm, peligro inmediato: abra la casa y ponga ventiladores antes "
    "de la primera pasada, o no empiece.",
    "Air to hold 2 ppm: about {#1} cfm, {#2} to {#3} ({#4} m³/h; {5}).":
    "Aire para quedar en 2 ppm: unos {#1} cfm, de {#2} a {#3} ({#4} m³/h; {5}).",
    "{#1} pairs of what is in hand are never poured together.":
    "{#1} pares de lo que hay nunca se vierten juntos.",
    "{@1} spilled: {#2} to {#3} lb of bicarbonate a gallon ({#4} to {#5} kg/L; {6}).":
    "{@1} derramado: de {#2} a {#3} lb de bicarbonato por galón (de {#4} a {#5} kg/L; {6}).",
    "{@1} spilled: {#2} to {#3} lb of soda ash a gallon ({#4} to {#5} kg/L; {6}).":
    "{@1} derramado: de {#2} a {#3} lb de carbonato de sodio por galón (de {#4} a "
    "{#5} kg/L; {6}).",
    "{@1} spilled: {#2} to {#3} lb of ammonia water a gallon ({#4} to {#5} kg/L; {6}).":
    "{@1} derramado: de {#2} a {#3} lb de agua de amoníaco por galón (de {#4} a {#5} kg/L; {6}).",
    "{@1} spilled: {#2} to {#3} lb of lime a gallon ({#4} to {#5} kg/L; {6}).":
    "{@1} derramado: de {#2} a {#3} lb de cal por galón (de {#4} a {#5} kg/L; {6}).",
    "About {#1} h ({#2} to {#3}) with 1 person (guess).":
    "Unas {#1} h (de {#2} a {#3}) con 1 persona (estimación).",
    "About {#1} h ({#2} to {#3}) with {#4} people (guess).":
    "Unas {#1} h (de {#2} a {#3}) con {#4} personas (estimación).",
    "About {#1} gal of water, {#2} to {#3} ({#4} L; guess): {#5} drums, the spare among them.":
    "Unos {#1} gal de agua, de {#2} a {#3} ({#4} L; estimación): {#5} tambos, con el de "
    "repuesto.",
    "Air to hold 2 ppm: about {#1} m³/h, {#2} to {#3} ({#4} cfm; {5}).":
    "Aire para quedar en 2 ppm: unos {#1} m³/h, de {#2} a {#3} ({#4} cfm; {5}).",
    "About {#1} L of water, {#2} to {#3} ({#4} gal; guess): {#5} drums, the spare among them.":
    "Unos {#1} L de agua, de {#2} a {#3} ({#4} gal; estimación): {#5} tambos, con el de "
    "repuesto.",
    "{@1} spilled: {#2} to {#3} kg of bicarbonate a litre ({#4} to {#5} lb/gal; {6}).":
    "{@1} derramado: de {#2} a {#3} kg de bicarbonato por litro "
    "(de {#4} a {#5} lb/gal; {6}).",
    "{@1} spilled: {#2} to {#3} kg of soda ash a litre ({#4} to {#5} lb/gal; {6}).":
    "{@1} derramado: de {#2} a {#3} kg de carbonato de sodio por litro "
    "(de {#4} a {#5} lb/gal; {6}).",
    "{@1} spilled: {#2} to {#3} kg of ammonia water a litre ({#4} to {#5} lb/gal; {6}).":
    "{@1} derramado: de {#2} a {#3} kg de agua de amoníaco por litro "
    "(de {#4} a {#5} lb/gal; {6}).",
    "{@1} spilled: {#2} to {#3} kg of lime a litre ({#4} to {#5} lb/gal; {6}).":
    "{@1} derramado: de {#2} a {#3} kg de cal por litro "
    "(de {#4} a {#5} lb/gal; {6}).",
}  # fmt: skip
