"""Spanish of the colour target and of what a photo of it says."""

from __future__ import annotations

PHRASES = {
    "Colour target": "Carta de color",
    "Laid beside a sample or on the floor, so that photos can be compared":
    "Junto a una muestra o en el piso, para que las fotos se puedan comparar",
    "date and time": "fecha y hora",
    "room, sample": "cuarto, muestra",
    "dry, wet or sealed; which light": "seco, mojado o sellado; qué luz",
    "Print it in colour at 100 %, on plain matt paper, and put a rule to the bar: 150 mm, or the "
    "lengths in a photo are wrong too. Keep one print for the whole job, dry and in the dark.":
    "Imprímala en color al 100 %, en papel mate común, y ponga una regla en la barra: 150 mm, o "
    "también las medidas de una foto saldrán mal. Guarde una impresión para toda la obra, seca y a "
    "oscuras.",
    "Lay it flat beside the spot, a hand away, in the same light: no shadow of yours over one of "
    "them, no lamp and window mixed, no flash. Not on wet stain.":
    "Póngala plana junto al lugar, a un palmo, en la misma luz: sin su sombra sobre uno de los "
    "dos, sin mezclar lámpara y ventana, sin flash. No sobre tinte mojado.",
    "Hold the camera over both, less than 45° aslant, the four black corners in the picture, a "
    "third of its width filled. Touch the target on the screen, so that its white is not burnt.":
    "La cámara sobre los dos, con menos de 45° de inclinación, las cuatro esquinas negras en la "
    "foto, llenando un tercio del ancho. Toque la carta en la pantalla, para que su blanco no se "
    "queme.",
    "What the printer made of these squares nobody knows until the print is measured. Without "
    "that the paper is taken for white and the rest stays a guess.":
    "Qué hizo la impresora de estos cuadros nadie lo sabe hasta medir la impresión. Sin eso el "
    "papel se toma por blanco y lo demás sigue siendo una estimación.",
    "A photo is no floor: two colours that one light shows alike, another may part; what decides "
    "is the signed sample, looked at by day and by lamp.":
    "Una foto no es un piso: dos colores que una luz muestra iguales, otra los separa; lo que "
    "decide es la muestra firmada, vista de día y con lámpara.",
    "Twelve grey and thirty-two coloured squares between four markers.":
    "Doce cuadros grises y treinta y dos de color entre cuatro marcas.",
}  # fmt: skip
