"""Palabras del formulario de las hojas de seguridad de los tintes."""

from __future__ import annotations

WORDS: dict[str, str] = {
    "sheets": "Hojas de seguridad de los tintes",
    "sheets-told": (
        "Las secciones 3 y 9 de la hoja que vino con la botella que tiene en la mano. Lo que queda "
        "vacío se pregunta y nunca se adivina. El tinte mismo se nombra en Muestras."
    ),
    "sheet-part": "Su hoja",
    "contents-part": "Lo que lleva",
    "contents-part-told": (
        "Cada renglón de la sección 3, con su parte de la masa. Deje vacío el extremo que la hoja "
        "no da."
    ),
    "s-oxidiser": "Además, {oxidiser}.",
    "s-sheet-read": "La hoja de este lote se leyó el {sheet-read}.",
    "s-content": "{substance}: de {share-low} a {share-high}.",
    "name-oxidiser": "Oxidante",
    "name-sheet-read": "Día en que se leyó la hoja",
    "name-substance": "Sustancia",
    "name-share-low": "Parte, mínimo",
    "name-share-high": "Parte, máximo",
    "help-oxidiser": (
        "Un oxidante hace cloro del ácido clorhídrico. Sección 3, o las palabras comburente, "
        "peróxido, nítrico en la sección 2 o 10. Con uno, o con cromato, no se agrega ácido "
        "(hojas de tintes)."
    ),
    "help-sheet-read": (
        "Las hojas cambian con el lote. Quien vierte leyó la que vino con esta botella."
    ),
    "help-contents": (
        "Los cloruros expulsan cloruro de hidrógeno del ácido; el cobre, el manganeso y el cromo "
        "deciden qué es el agua de enjuague. Visto en hojas: cloruros de hierro 5-30 %, cloruro de "
        "manganeso 15-20 %, cloruro de cobre más de 10 % (hojas de tintes)."
    ),
    "pick-oxidiser-yes": "nombra otro oxidante",
    "pick-oxidiser-no": "no nombra otro oxidante",
    "pick-oxidiser-": "nadie ha buscado oxidantes",
    "pick-substance-": "elija una sustancia",
    "pick-substance-iron(II)-chloride": "cloruro de hierro(II), ferroso",
    "pick-substance-iron(III)-chloride": "cloruro de hierro(III), férrico",
    "pick-substance-manganese(II)-chloride": "cloruro de manganeso",
    "pick-substance-copper(II)-chloride": "cloruro de cobre(II), cúprico",
    "pick-substance-copper(II)-sulfate": "sulfato de cobre",
    "pick-substance-sodium-dichromate": "dicromato de sodio",
    "pick-substance-potassium-dichromate": "dicromato de potasio",
    "pick-substance-chromium(III)-chloride": "cloruro de cromo(III)",
    "pick-substance-calcium-chloride": "cloruro de calcio",
    "pick-substance-ammonium-chloride": "cloruro de amonio",
    "pick-substance-phosphoric-acid": "ácido fosfórico",
    "pick-substance-nitric-acid": "ácido nítrico",
    "pick-substance-sulfuric-acid": "ácido sulfúrico",
    "pick-substance-hydrogen-peroxide": "peróxido de hidrógeno",
    "pick-substance-other-oxidiser": "otro oxidante",
    "pick-substance-other": "otra cosa",
}
