"""Words of a floor walked with a tape."""

from __future__ import annotations

WORDS = {
    "walk-title": "A floor walked with a tape",
    "walk-told": "No drawing? Walk each room once round, wall after wall, and one diagonal. What "
    "you read is closed by least squares; a wall that cannot be right is named.",
    "walk-sheet": "Blank sheets to print",
    "new-walk-title": "Walk it with a tape",
    "new-walk-told": "No drawing? Each room wall by wall, checked by a diagonal.",
    "new-walk": "Walk with a tape",
    "walk-first": "The first room",
    "walk-next": "The next room",
    "walk-name": "Its name",
    "help-walk-room": "Stand in a corner. Measure the wall, turn where it ends, measure the next, "
    "until you are back. With the walls on your left hand you turn right at most corners. A length "
    "may be typed or said: 12' 6 1/2\", 12 foot 6 and a half, 3.82 m. A question mark stands for a "
    "wall that cannot be reached.",
    "walk-wall-of": "Length of wall {n}",
    "walk-turn-of": "Turn at the end of wall {n}",
    "walk-left": "left",
    "walk-right": "right",
    "walk-more-walls": "More walls",
    "walk-ways": "Doors and openings, from the corner where their wall begins",
    "help-walk-ways": "Tell a door in both rooms that it joins, by the names of the rooms: that is "
    "how they find each other. Where it leads is left empty for outside.",
    "walk-way-kind": "Kind of opening {n}",
    "walk-kind-door": "door",
    "walk-kind-cased": "cased opening",
    "walk-kind-wide": "wide opening",
    "walk-in-wall": "in wall",
    "walk-way-wall": "Wall of opening {n}",
    "walk-at": "from the corner",
    "walk-way-at": "Opening {n}: from the corner",
    "walk-wide": "width",
    "walk-way-wide": "Width of opening {n}",
    "walk-deep": "wall depth",
    "walk-way-deep": "Depth of the wall at opening {n}",
    "walk-to": "to",
    "walk-way-to": "Opening {n} leads to",
    "walk-diagonal": "Diagonal from corner",
    "walk-diagonal-to": "to corner",
    "walk-diagonal-is": "is",
    "walk-check-from": "Diagonal from corner",
    "walk-check-to": "Diagonal to corner",
    "walk-check-long": "Length of the diagonal",
    "help-walk-diagonal": "Corner 1 is where you began, corner 2 the end of wall 1, and so on. "
    "Without a diagonal a slip is seen and cannot be told from one in the wall across.",
    "walk-add": "Add this room",
    "walk-so-far": "The walk so far",
    "walk-how": "Say or type it here too, a line for each thing; the microphone of a phone's "
    "keyboard will do.",
    "help-walk-text": "room Bath · 7', right, 5', right, 7', right, 5' · door in wall 1 at 4' wide "
    "2' 4\" deep 4 1/2\" to Hall · diagonal 1 to 3 = 8' 7 1/4\" · across 1 to 3 = 5' · a turn that "
    "is not told is to the right. A line is struck by deleting it.",
    "walk-see": "See how it closes",
    "walk-make-again": "Make this floor, that wall reckoned from the others",
    "walk-wrong": "This was not understood:",
    "walk-again": "Measure again before you trust this floor",
    "walk-again-long": "{what}: {read} was read, {by} too long for all the rest; {rest} would fit "
    "(chance {chance} %).",
    "walk-again-short": "{what}: {read} was read, {by} too short for all the rest; {rest} would "
    "fit (chance {chance} %).",
    "walk-look-at": "{what}: it is off by {by}.",
    "walk-again-other": "It may as well be {others}.",
    "walk-or": " or ",
    "walk-of-wall": "Wall {wall} of {room}",
    "walk-of-diagonal": "Diagonal {wall} to {other} of {room}",
    "walk-of-across": "The width between walls {wall} and {other} of {room}",
    "walk-of-at": "{room}, the opening to {to}: its place",
    "walk-of-width": "{room}, the opening to {to}: its width",
    "walk-of-rest": "{room}, beyond the opening to {to}",
    "walk-of-depth": "{room}, the depth of the wall at an opening",
    "walk-of-square": "The direction of wall {wall} of {room}",
    "walk-outside": "outside",
    "walk-laid": "{area} in {rooms} rooms",
    "walk-laid-one": "{area} in one room",
    "walk-picture": "The floor as it closed, walls numbered, where each walk ends by an arrow",
    "walk-key": "Drawn to scale after closing. Rings are first corners, small numbers are walls.",
    "walk-key-arrows": "An arrow goes from where the walk of a room began to where it ended, drawn "
    "{times} times as long as it is, the longest cut short.",
    "walk-closings": "How each room closes",
    "walk-closes": "It ends where it began.",
    "walk-closes-reckoned": "A wall was not measured; it was reckoned from the others.",
    "walk-misses": "It ends {by} from where it began, 1 in {ratio}.",
    "walk-not-seen": "Half a foot too much would not be seen in wall {walls}.",
    "walk-not-apart": "A slip in wall {walls} would be seen, not told from the wall across.",
    "walk-measure-diagonal": "Measure the diagonal from corner {one} to {two}.",
    "walk-measure-across": "Measure the width in the middle, from wall {one} to wall {two}.",
    "walk-by-wall": "Wall by wall",
    "walk-col-wall": "Wall",
    "walk-col-read": "Read",
    "walk-col-added": "Added by least squares",
    "walk-col-simple": "By share of length alone",
    "walk-blank": "not measured",
    "help-walk-closings": "Least squares weighs all that was measured at once: walls, diagonals, "
    "doors, square corners. Beside it the simple rule of surveyors, which shares what is missing "
    "by length alone (Bowditch). How far readings and corners stray is our guess: 4 mm and 0.4 mm "
    "a metre, a quarter of a degree.",
    "walk-not-walked": "The opening from {room} leads to {to}, which was not walked yet.",
    "walk-one-side": "The opening from {room} to {to} was not found from the other side. Tell it "
    "in both rooms, and end the line of each of two doors by mark A and mark B.",
    "walk-not-joined": "Not all rooms are joined by doors; groups are drawn side by side, not "
    "where they lie.",
    "walk-no-way-out": "No opening leads outside: nobody may be shut in. Tell which door leaves "
    "the house.",
}
