"""Spanish of why a house moved in the calendar."""

from __future__ import annotations

PHRASES = {
    "The {*1} has the house on {#2}, and it is shut to all others from its cleaning to a day after "
    "its sealing.":
    "La casa la tiene {*1} el {#2}, y está cerrada a todos los demás desde su limpieza hasta un "
    "día después de su sellado.",
    "Rain on {#1}: no stain and no sealer, and all dries slower.":
    "Lluvia el {#1}: ni tinte ni sellador, y todo seca más despacio.",
    "Other houses moved, and their crews with them.":
    "Otras casas se movieron, y sus cuadrillas con ellas.",
    "Begun on {#1} of the {#2} working days between, it would still be shut when the trade comes.":
    "Empezada en {#1} de los {#2} días hábiles de en medio, seguiría cerrada cuando viene el "
    "oficio.",
    "Begun on {#1} of the {#2} working days between, it would want a crew that is at another "
    "house.":
    "Empezada en {#1} de los {#2} días hábiles de en medio, pediría una cuadrilla que está en otra "
    "casa.",
    "Begun on {#1} of the {#2} working days between, it would be ready no sooner, or be shut "
    "longer.":
    "Empezada en {#1} de los {#2} días hábiles de en medio, no estaría lista antes, o estaría "
    "cerrada más tiempo.",
    "Begun on {#1} of the {#2} working days between, “{3}” would come later than the step before "
    "lets it.":
    "Empezada en {#1} de los {#2} días hábiles de en medio, «{3}» llegaría más tarde de lo que el "
    "paso anterior permite.",
    "Begun on {#1} of the {#2} working days between, “{3}” would find no {4} that suffice.":
    "Empezada en {#1} de los {#2} días hábiles de en medio, «{3}» no hallaría {4} que alcancen.",
    "Begun on {#1} of the {#2} working days between, “{3}” would wait days for {4}.":
    "Empezada en {#1} de los {#2} días hábiles de en medio, «{3}» esperaría días a tener {4}.",
    "“{1}” could begin on {#2} by its waits; it is held back until {#3} for the crew.":
    "«{1}» podría empezar el {#2} según sus esperas; se retrasa hasta el {#3} por la cuadrilla.",
    "“{1}” could begin on {#2} by its waits; until {#3} what follows it would find no hours that "
    "suffice.":
    "«{1}» podría empezar el {#2} según sus esperas; hasta el {#3} lo que sigue no hallaría horas "
    "que alcancen.",
    "“{1}” could begin on {#2} by its waits; until {#3} it finds no {4} that suffice.":
    "«{1}» podría empezar el {#2} según sus esperas; hasta el {#3} no halla {4} que alcancen.",
    "working hours": "horas de trabajo",
    "hours in which stain may go down": "horas en que se pueda teñir",
    "hours in which sealer may go down": "horas en que se pueda sellar",
}  # fmt: skip
