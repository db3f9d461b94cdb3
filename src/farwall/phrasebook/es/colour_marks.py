"""Marks on a mopped floor: what can be done, how to photograph it, what a photo came to."""

from __future__ import annotations

PHRASES = {
    "Find out first why it is light: a tight place, something on the slab, sprayed too dry.":
    "Averigüe primero por qué está claro: lugar cerrado, algo sobre la losa, rociado muy seco.",
    "Same batch, same day: a damp sponge or a spray bottle, a ragged outline twice the size of the "
    "mark, feathered out, never square.":
    "Misma mezcla, mismo día: esponja húmeda o atomizador, contorno irregular del doble de la "
    "marca, difuminado, nunca cuadrado.",
    "Where it takes no stain: clean or sand the place and stain it again, else a dye or a tinted "
    "sealer.":
    "Donde no toma tinte: limpie o lije el lugar y tíñalo otra vez; si no, colorante o un sellador "
    "con color.",
    "A feathered second coat over the whole field, the wand in circles and never in rows.":
    "Una segunda mano difuminada sobre todo el tramo, la lanza en círculos y nunca en hileras.",
    "Touching up single stripes makes more of them.": "Retocar rayas sueltas hace más rayas.",
    "A mark that nobody could name stands: do not seal over it.":
    "Queda una marca que nadie supo nombrar: no selle encima.",
    "light patch": "parche claro",
    "missed crescent": "media luna sin rociar",
    "stripe": "raya",
    "lap line": "línea de traslape",
    "drip": "gota",
    "ring": "aro",
    "tape ghost": "huella de cinta",
    "footprint": "pisada",
    "None truly.": "En verdad, ninguno.",
    "A feathered second coat over the whole field, or a saw cut designed on the line.":
    "Una segunda mano difuminada sobre todo el tramo, o un corte diseñado sobre la línea.",
    "Still wet: widen it at once into a random cloud, feather it with a damp sponge or mist, and "
    "put cousins of it elsewhere.":
    "Aún mojada: ábrala enseguida en una nube irregular, difumínela con esponja húmeda o rocío, y "
    "ponga otras parecidas en otros lados.",
    "Dry, it is a dot for good: hide it among cousins with the second coat.":
    "Seca, es un punto para siempre: escóndalo entre otros parecidos con la segunda mano.",
    "In the first minute: brush the puddle out or lift it with a sponge.":
    "En el primer minuto: extienda el charco con cepillo o levántelo con esponja.",
    "Later mostly none, for darker is one-way: lightening changes the texture and yellows. Try it "
    "on a sample, else a tinted sealer, or have it accepted in writing.":
    "Después casi ninguno, pues lo oscuro no regresa: aclarar cambia la textura y amarillea. "
    "Pruébelo en una muestra; si no, un sellador con color, o que se acepte por escrito.",
    "Blend it with the second coat, with a dye or a tinted sealer, or have it accepted in writing.":
    "Fúndala con la segunda mano, con colorante o un sellador con color, o que se acepte por "
    "escrito.",
    "Do not seal. Ask what stood or lay there; seal only a small area and look.":
    "No selle. Pregunte qué estuvo ahí; selle solo un área chica y mire.",
    "The finisher says what can be done, the owner whether it is done; write down both.":
    "Quien acaba dice qué se puede hacer, el dueño si se hace; anote las dos cosas.",
    "The sheet of the material in hand wins over this.":
    "Manda la hoja del material que se tiene en la mano.",
    # why a mark is proposed
    "a straight strip with sharp sides; {#1} m long; its sum is {#2} times the largest that "
    "mottle like this floor's gave":
    "una tira recta de lados nítidos; {#1} m de largo; suma {#2} veces lo más que daba un "
    "jaspeado como el de este piso",
    "dark, thin and straight; {#1} m long; its sum is {#2} times the largest that mottle like "
    "this floor's gave":
    "oscura, delgada y recta; {#1} m de largo; suma {#2} veces lo más que daba un jaspeado "
    "como el de este piso",
    "dark, thin and jagged; {#1} m long; its sum is {#2} times the largest that mottle like "
    "this floor's gave":
    "oscura, delgada y quebrada; {#1} m de largo; suma {#2} veces lo más que daba un jaspeado "
    "como el de este piso",
    "a step between two tones that runs on; {#1} m long; its sum is {#2} times the largest "
    "that mottle like this floor's gave":
    "un escalón corrido entre dos tonos; {#1} m de largo; suma {#2} veces lo más que daba un "
    "jaspeado como el de este piso",
    "a light band that runs on; {#1} m long; its sum is {#2} times the largest that mottle "
    "like this floor's gave":
    "una franja clara corrida; {#1} m de largo; suma {#2} veces lo más que daba un jaspeado "
    "como el de este piso",
    "a dark band that runs on; {#1} m long; its sum is {#2} times the largest that mottle "
    "like this floor's gave":
    "una franja oscura corrida; {#1} m de largo; suma {#2} veces lo más que daba un jaspeado "
    "como el de este piso",
    "lighter inside an outline {#1} times as steep as the floor's; {#2} times the largest "
    "that mottle like this floor's gave":
    "más clara dentro de un contorno {#1} veces más marcado que los del piso; {#2} veces lo "
    "más que daba un jaspeado como el de este piso",
    "darker inside an outline {#1} times as steep as the floor's; {#2} times the largest that "
    "mottle like this floor's gave":
    "más oscura dentro de un contorno {#1} veces más marcado que los del piso; {#2} veces lo "
    "más que daba un jaspeado como el de este piso",
    "lighter in the form of a crescent, radius {#1} m; it stands out {#2} spreads of this floor, "
    "and its gentler side changes {#3} times as fast as the floor does":
    "más clara en forma de media luna, radio {#1} m; sobresale {#2} desviaciones de este piso, y "
    "su orilla más suave cambia {#3} veces más rápido que el piso",
    "a darker strip along the edge of band {#1} of coat {#2} by the run sheet; {#3} m long, about "
    "{#4} cm beside that edge":
    "una tira más oscura a lo largo de la orilla de la franja {#1} de la mano {#2} según la hoja "
    "de trabajo; {#3} m de largo, a unos {#4} cm de esa orilla",
    "a darker strip that runs with the walls of the plan, steep along both of its sides; {#1} m "
    "long":
    "una tira más oscura que corre con los muros del plano, de orilla marcada en sus dos lados; "
    "{#1} m de largo",
    "a round dark dot of about {#1} cm, beyond the floor's own specks":
    "un punto redondo y oscuro de unos {#1} cm, más que las pecas del mismo piso",
}  # fmt: skip
