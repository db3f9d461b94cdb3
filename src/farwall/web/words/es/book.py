"""Palabras del libro: su estado, sus respaldos."""

from __future__ import annotations

WORDS = {
    "book-title": "El libro",
    "book-houses": "{houses} casas, {closed} ya entregadas; {entries} anotaciones en sus "
    "bitácoras.",
    "book-houses-1": "1 casa, {closed} ya entregadas; {entries} anotaciones en su bitácora.",
    "book-size": "Su archivo mide {size}.",
    "book-files": "{n} fotos y dibujos, {size}.",
    "book-check": "Revisado",
    "book-being-looked": "Se está revisando renglón por renglón; esta página vuelve a mirar sola.",
    "book-trouble-check": "No se pudo revisar:",
    "book-faults-1": "1 falla. Deje este libro como está; trabaje en una copia.",
    "book-faults": "{n} fallas. Deje este libro como está; trabaje en una copia.",
    "book-whole": "El libro está entero: cada renglón está como se puso, no falta nada.",
    "book-calm": "Para saber, sin daño:",
    "book-looked": "Revisado {at}.",
    "book-look-again": "Revisarlo otra vez",
    "book-devices": "Teléfonos y computadoras",
    "book-device": "se supo de él {at}; {entries}",
    "book-ahead": "; su reloj va {minutes} min adelantado",
    "book-behind": "; su reloj va {minutes} min atrasado",
    "book-lacks-1": "Todavía no llega 1 anotación suya: la número {numbers}. Ábrale la hoja de "
    "trabajo al alcance de este servidor.",
    "book-lacks": "Todavía no llegan {n} anotaciones suyas: las número {numbers}. Ábrale la hoja "
    "de trabajo al alcance de este servidor.",
    "book-devices-told": "Un número que falta entre otros es una anotación que sigue en ese "
    "teléfono. Lo que un teléfono guarda después de su última anotación no se puede saber aquí: "
    "el propio teléfono dice cuántas guarda.",
    "book-no-devices": "Ningún aparato ha traído nada todavía.",
    "book-backup": "Respaldar ahora",
    "book-backup-told": "Una copia de todo el libro como está, en un archivo para guardar en "
    "otra parte. Nadie tiene que dejar de trabajar.",
    "book-backup-open": "Bajarlo en formatos abiertos",
    "book-backup-open-told": "Líneas JSON, una tabla, pisos, fotos tal cual: se lee sin este "
    "programa.",
    "book-backup-store": "Bajar una copia de su archivo",
    "book-backup-store-told": "El archivo propio y las fotos: lo más rápido de reponer.",
    "book-lead": "Solo un encargado se lleva el libro entero: pídaselo.",
    "book-which": "no hay tal respaldo.",
    "book-restore": "Reponer uno",
    "book-restore-told": "Aquí no: una página que pudiera poner un libro viejo en lugar de este "
    "podría perder un día de trabajo. Desempaque el archivo y haga un libro nuevo de su carpeta "
    "por línea de comandos:",
    "book-restore-command": "farwall book restore CARPETA --book NUEVO",
}
