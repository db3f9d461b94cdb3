"""Spanish of what has to be known of a calendar, beside its days."""

from __future__ import annotations

PHRASES = {
    "The slab is too young: about {#1} old at the first coat, and {#2} are asked for.":
    "La losa es demasiado nueva: tiene unos {#1} en la primera mano, y se piden {#2}.",
    "Begin so that no coat comes before {#1}; the stain's sheet wins.":
    "Empiece de modo que ninguna mano caiga antes del {#1}; manda la hoja del tinte.",
    "Which sealer is not told: the strictest limits of all types were taken, {#1} between its "
    "coats among them. Read its label, and tell its type among the facts.":
    "No se dice qué sellador es: se tomaron los límites más estrictos de todos los tipos, entre "
    "ellos {#1} entre sus manos. Lea su etiqueta y diga su tipo entre los datos.",
    "Coat 1 does not fall on the day that the job tells as its start, for which its run sheet is "
    "made: agree on one day, tell it, and plan anew.":
    "La mano 1 no cae en el día que el trabajo dice como su comienzo, para el que está hecha su "
    "hoja de trabajo: acuerden un día, díganlo y planifiquen de nuevo.",
    "The heater is taken to hold the air at {#1} as far as it can, ten days before the first one "
    "too (a guess).":
    "Se supone que el calentador mantiene el aire a {#1} hasta donde puede, también los diez días "
    "antes del primero (estimación).",
    "Stain and sealer are held to the slab in the sun as well as to the shaded one (reckoned for a "
    "clear sky, a guess).":
    "El tinte y el sellador se ciñen también a la losa al sol, no solo a la de la sombra "
    "(calculada con cielo despejado, estimación).",
    "More than {#1} from the first step to the last: the weather leaves too few hours between. "
    "Warm the house and tell the heater's power, or begin later.":
    "Más de {#1} del primer paso al último: el tiempo deja muy pocas horas entre ellos. Caliente "
    "la casa y diga la potencia del calentador, o empiece más tarde.",
    "The forecast goes until {#1}.": "El pronóstico llega hasta el {#1}.",
    "It does not say when it was issued.": "No dice cuándo se emitió.",
    "It is issued after the first step begins.": "Se emite después de que empiece el primer paso.",
    "It will be {#1} old when the first step begins.":
    "Tendrá {#1} cuando empiece el primer paso.",
    "From its end on {1}.": "Desde su final, {1}.",
    "each day is taken like the mean of its own days (a guess); with a weather file of a year "
    "beside it a typical year stands there":
    "cada día se toma como la media de los suyos (estimación); con un archivo de clima de un año "
    "al lado rige un año típico",
    "a typical year stands, which foretells no day":
    "rige un año típico, que no pronostica ningún día",
    "Ask again with a new forecast before anybody is sent.":
    "Vuelva a pedirlo con un pronóstico nuevo antes de mandar a nadie.",
}  # fmt: skip
