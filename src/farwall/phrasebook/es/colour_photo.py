"""Spanish of what spoils the colours of a photo, and of what is left to be believed."""

from __future__ import annotations

PHRASES = {
    "Nobody has measured this print: its paper is taken for white, light is evened, and tones and "
    "colours stay the camera's. Measure its squares and give their values.":
    "Nadie ha medido esta impresión: su papel se toma por blanco, la luz se empareja, y tonos y "
    "colores siguen siendo los de la cámara. Mida sus cuadros y dé sus valores.",
    "No target is in the photo: its colours are what the camera made of them. Lay the target flat "
    "beside the spot, in the same light.":
    "No hay carta de color en la foto: sus colores son los que hizo la cámara. Ponga la carta "
    "plana junto al lugar, en la misma luz.",
    "Burnt out and not used: {*1}. Take it again, darker, and without a flash.":
    "Quemados y no usados: {*1}. Tómela otra vez, más oscura y sin flash.",
    "Uneven and not used: {*1}. A shadow's edge, a shine or a thing lies on them.":
    "Desiguales y no usados: {*1}. Tienen encima la orilla de una sombra, un brillo o una cosa.",
    "The target is small in the photo: its squares are {#1} points wide. Go nearer.":
    "La carta sale pequeña en la foto: sus cuadros miden {#1} puntos. Acérquese.",
    "The camera looks {#1}° aslant. Hold it over the target.":
    "La cámara mira con {#1}° de inclinación. Sosténgala sobre la carta.",
    "The photo is out of focus or shaken. Touch the target on the screen first.":
    "La foto está desenfocada o movida. Toque antes la carta en la pantalla.",
    "The light changes by {#1} % across the target. Beside it the evening is a guess: lay the "
    "target nearer to the spot.":
    "La luz cambia un {#1} % a lo largo de la carta. Junto a ella emparejarla es una estimación: "
    "ponga la carta más cerca del lugar.",
    "A shadow lies across the target. Beside it the light is not known.":
    "Una sombra cruza la carta. Junto a ella no se conoce la luz.",
    "Corrected, the squares are still {#1} off (CIEDE2000): two lights mix, or the target is not "
    "the one whose values were taken.":
    "Corregidos, los cuadros siguen a {#1} (CIEDE2000): se mezclan dos luces, o la carta no es "
    "aquella cuyos valores se tomaron.",
    "The light may be a tube with narrow bands: light greys come out greener and yellower against "
    "the coloured squares. Floor may be off by 4 or more (CIEDE2000), whatever error is told here. "
    "Take it again by day, by a bulb or by a white LED.":
    "La luz puede ser de un tubo de bandas estrechas: los grises claros salen más verdes y más "
    "amarillos frente a los cuadros de color. El piso puede estar a 4 o más (CIEDE2000), diga lo "
    "que diga aquí el error. Tómela otra vez de día, con un foco incandescente o con LED blanco.",
    "Light shines on the spot: stand so that no window mirrors in it.":
    "El lugar brilla: póngase de modo que ninguna ventana se refleje en él.",
}  # fmt: skip
