"""What is wrong with the file of a forecast, and what to do about it."""

from __future__ import annotations

PHRASES = {
    "column {&1}": "columna {&1}",
    "header": "encabezado",
    "line {#1}": "línea {#1}",
    "line {#1}, {&2}": "línea {#1}, {&2}",
    "Its unit is not known.": "No se conoce su unidad.",
    "Call it {&1} or {&2} or {&3} or {&4}.": "Llámela {&1}, {&2}, {&3} o {&4}.",
    "Call it {&1} or {&2}.": "Llámela {&1} o {&2}.",
    "Call it {&1}.": "Llámela {&1}.",
    "Write it like {*1}.": "Escríbala como {*1}.",
    "{&1} tells the same.": "{&1} dice lo mismo.",
    "No column tells the temperature.": "Ninguna columna dice la temperatura.",
    "No column tells the humidity.": "Ninguna columna dice la humedad.",
    "No column tells the wind.": "Ninguna columna dice el viento.",
    "No column is called time.": "Ninguna columna se llama time.",
    "Write ISO 8601 times under time.": "Escriba horas ISO 8601 bajo time.",
    "Its time is not ISO 8601.": "Su hora no es ISO 8601.",
    "Its time has no offset.": "Su hora no lleva desfase.",
    "Write {*1} behind it, or a line `# utc_offset: {*2}`.":
    "Escriba {*1} detrás, o una línea `# utc_offset: {*2}`.",
    "Its time is not after the one before.": "Su hora no es posterior a la anterior.",
    "Sort the rows.": "Ordene las filas.",
    "It comes more than {#1} after the one before.": "Llega más de {#1} después de la anterior.",
    "Fill the gap, or cut the file there.": "Rellene el hueco o corte ahí el archivo.",
    "It is longer than {#1}.": "Dura más de {#1}.",
    "That is no forecast; take its first days.":
    "Eso no es un pronóstico; tome sus primeros días.",
    "This is not a number.": "Esto no es un número.",
    "{#1} lies outside what air does ({#2} to {#3}).":
    "{#1} queda fuera de lo que hace el aire (de {#2} a {#3}).",
    "Check the value and the unit of the column.": "Revise el valor y la unidad de la columna.",
    "The file holds no hours.": "El archivo no contiene horas.",
    "Give a header and a row an hour.": "Dé un encabezado y una fila por hora.",
    "A row has {#1} cells, the header {#2}.":
    "Una fila tiene {#1} celdas, el encabezado {#2}.",
    "Repair the row.": "Repare la fila.",
    "The file cannot be parted into columns.": "El archivo no se puede partir en columnas.",
    "Save it anew as CSV.": "Guárdelo de nuevo como CSV.",
    "The forecast goes from {#1} to {#2} and does not hold {#3}.":
    "El pronóstico va de {#1} a {#2} y no contiene {#3}.",
    "Fetch a forecast of the day, or mend starts_at.":
    "Traiga un pronóstico de ese día, o corrija starts_at.",
    "The forecast goes from {#1} to {#2}; the calendar begins on {#3}.":
    "El pronóstico va de {#1} a {#2}; el calendario empieza el {#3}.",
    "Fetch a forecast of these days, or begin within it.":
    "Traiga un pronóstico de estos días, o empiece dentro de él.",
}  # fmt: skip
