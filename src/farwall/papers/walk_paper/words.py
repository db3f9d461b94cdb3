"""Words of the blank sheets, by language."""

from __future__ import annotations

from farwall.phrasebook import Language

WORDS: dict[Language, dict[str, str]] = {
    "en": {
        "title": "A room, walked with a tape",
        "room": "Room",
        "house": "House",
        "date": "Day",
        "tape": "Tape in",
        "feet": "feet and inches",
        "metres": "metres",
        "sketch": "Sketch: number corners and walls as you walk. Corner 1 is where wall 1 begins.",
        "walls": "Walls, once round",
        "wall": "wall",
        "length": "length",
        "turn": "turn at its end",
        "left": "left",
        "right": "right",
        "ways": "Doors and openings",
        "kind": "kind",
        "from": "from corner",
        "width": "width",
        "depth": "wall depth",
        "to": "to room",
        "checks": "Checks",
        "corner": "corner",
        "to-corner": "to corner",
        "how": "Walk with the walls on your left hand. Measure each wall by itself, corner to "
        "corner, also where it must be like the one across: that is what finds a slip. One "
        "diagonal in each room; in a long hall also the width in the middle (tell the two walls). "
        "An opening is told from the corner where its wall begins, and in both rooms that it "
        "joins; write outside where it leaves the house.",
        "then": "Type it at Walk with a tape, or into a text file for farwall read.",
        "page": "Room",
        "of": "of",
    },
    "es": {
        "title": "Un cuarto, medido con cinta",
        "room": "Cuarto",
        "house": "Casa",
        "date": "Día",
        "tape": "Cinta en",
        "feet": "pies y pulgadas",
        "metres": "metros",
        "sketch": "Croquis: numere esquinas y paredes al andar. En la esquina 1 empieza la pared "
        "1.",
        "walls": "Paredes, una vuelta",
        "wall": "pared",
        "length": "largo",
        "turn": "giro al final",
        "left": "izq.",
        "right": "der.",
        "ways": "Puertas y vanos",
        "kind": "clase",
        "from": "desde esquina",
        "width": "ancho",
        "depth": "grueso",
        "to": "da a",
        "checks": "Comprobaciones",
        "corner": "esquina",
        "to-corner": "a esquina",
        "how": "Ande con las paredes a su izquierda. Mida cada pared por sí sola, de esquina a "
        "esquina, aunque deba ser igual a la de enfrente: así se halla un error. Una diagonal en "
        "cada cuarto; en un pasillo largo también el ancho en medio (diga las dos paredes). Un "
        "vano se dice desde la esquina donde empieza su pared, y en los dos cuartos que une; "
        "escriba afuera donde sale de la casa.",
        "then": "Escríbalo en Medir con cinta, o en un archivo de texto para farwall read.",
        "page": "Cuarto",
        "of": "de",
    },
}
