"""Palabras para poner las esquinas de la hoja en su foto."""

from __future__ import annotations

WORDS = {
    "corners-title": "La hoja en la foto de {name}",
    "corners-seen": "Se buscó el borde del papel: mire si las cuatro esquinas están sobre las del "
    "papel y arrastre las que no.",
    "corners-unseen": "No se vio ninguna hoja de papel. Arrastre las cuatro esquinas hasta las del "
    "papel.",
    "corners-keys": "Con teclas: Tab va a una esquina, las flechas la mueven, con Mayúsculas en "
    "pasos más grandes.",
    "corners-picture": "La foto con las esquinas de la hoja",
    "corners-scale": "Qué tan grande es",
    "corners-scale-told": "Nada en una foto dice qué tan grande es la casa. Diga una de dos cosas: "
    "el tamaño de la hoja con la escala impresa en ella, o una medida que usted conozca. Sin "
    "ninguna, la hoja aplanada queda debajo del dibujo y ahí se le da escala.",
    "corners-paper": "Tamaño de la hoja",
    "corners-paper-none": "no se sabe",
    "corners-drawn": "Escala impresa",
    "corners-drawn-how": "1:50, o 1/4in para un cuarto de pulgada por pie. Una hoja impresa más "
    "chica de lo que se dibujó no está a su escala impresa: mida algo en ella.",
    "corners-length": "Una medida que usted conozca",
    "corners-length-how": "Arrastre los dos extremos de la línea a lo largo de un muro o de una "
    "cota escrita, cuanto más larga mejor; después escríbala: 24' 6\", 7.5 m.",
    "corners-places": "Lugares en píxeles, desde la esquina de arriba a la izquierda de la foto",
    "corners-ul": "arriba a la izquierda",
    "corners-ur": "arriba a la derecha",
    "corners-lr": "abajo a la derecha",
    "corners-ll": "abajo a la izquierda",
    "corners-from": "un extremo",
    "corners-to": "otro extremo",
    "corners-do": "Aplanarla y buscar los cuartos",
    "corners-then": "La hoja aplanada queda debajo del dibujo, y los muros que se hallen en ella, "
    "como borrador. Nada se planea hasta que usted lo haya mirado y guardado. Las palabras no se "
    "leen: usted pone los nombres.",
    "corners-refused": "Todavía no:",
    "corners-no-place": "hacen falta dos números de píxeles.",
    "corners-paper-unknown": "no se conoce esa hoja. Elija una de la lista.",
    "corners-drawn-unknown": "esto no es la escala de un dibujo. Escriba 1:50 o 1/4in.",
    "corners-drawn-no-paper": "una escala impresa mide papel: elija también el tamaño de la hoja.",
    "corners-length-none": "hace falta una medida con su unidad, como 24' 6\" o 7.5 m.",
    "corners-scale-twice": "la escala se dice dos veces: deje una de las dos.",
}
