"""Words of setting a sheet's corners on its photo."""

from __future__ import annotations

WORDS = {
    "corners-title": "The sheet on the photo of {name}",
    "corners-seen": "The edge of the paper was looked for: see whether the four corners lie on the "
    "paper's own, and drag those that do not.",
    "corners-unseen": "No sheet of paper was seen. Drag the four corners onto the paper's own.",
    "corners-keys": "By keys: Tab to a corner, the arrows move it, with Shift in larger steps.",
    "corners-picture": "The photo with the sheet's corners",
    "corners-scale": "How large it is",
    "corners-scale-told": "Nothing in a photo tells how large the house is. Tell one of two: the "
    "sheet's size with the scale printed on it, or one length that you know. With neither, the "
    "flattened sheet is laid under the drawing and scaled there.",
    "corners-paper": "Size of the sheet",
    "corners-paper-none": "not known",
    "corners-drawn": "Scale printed on it",
    "corners-drawn-how": "1:50, or 1/4in for a quarter inch to a foot. A sheet printed smaller "
    "than it was drawn is not at its printed scale: measure one length on it.",
    "corners-length": "A length that you know",
    "corners-length-how": "Drag the two ends of the line along a wall or a written dimension, the "
    "longer the better; then type it: 24' 6\", 7.5 m.",
    "corners-places": "Places in pixels, from the photo's upper left",
    "corners-ul": "upper left",
    "corners-ur": "upper right",
    "corners-lr": "lower right",
    "corners-ll": "lower left",
    "corners-from": "one end",
    "corners-to": "other end",
    "corners-do": "Lay it flat and find the rooms",
    "corners-then": "The flat sheet comes to lie under the drawing, and the walls found on it as "
    "a draft. Nothing is planned until you have looked at it and kept it. Words are not "
    "read: you name the rooms.",
    "corners-refused": "Not yet:",
    "corners-no-place": "two numbers of pixels are wanted.",
    "corners-paper-unknown": "no such sheet is known. Choose one of the list.",
    "corners-drawn-unknown": "this is no scale of a drawing. Write 1:50 or 1/4in.",
    "corners-drawn-no-paper": "a printed scale measures paper: choose the sheet's size too.",
    "corners-length-none": "a length with its unit is wanted, such as 24' 6\" or 7.5 m.",
    "corners-scale-twice": "the scale is told twice: leave one of the two away.",
}
