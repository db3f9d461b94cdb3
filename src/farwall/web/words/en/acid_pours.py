"""Words of what may be poured together, and of the form for the materials in hand."""

from __future__ import annotations

from farwall.phrasebook.es.acid_materials import KINDS

VESSELS = {
    "open tub": "an open plastic tub",
    "floor": "the floor",
    "spill": "a spill on the floor",
    "sprayer": "the plastic sprayer",
    "metal sprayer": "a sprayer with metal in it",
    "closed jug": "a closed jug",
    "closed drum": "a closed drum",
    "vented drum": "a plastic drum with a vented lid",
    "metal pail": "a metal pail",
    "wet vacuum": "the wet vacuum",
    "drink bottle": "a drink bottle",
}
_SAID = {"absorbent": "clay absorbent", "dried stain": "stain dried on the floor",
         "other": "something else, unknown", "mixed stain": "cut stain"}  # fmt: skip

WORDS: dict[str, str] = {
    "acid-pours-title": "{name}: may this be poured?",
    "acid-pours-ask": "May this be poured?",
    "acid-pours-into": "Into",
    "acid-pours-first": "first",
    "acid-pours-then": "then",
    "acid-pours-and": "and then",
    "acid-pours-left": "Left there from before, not rinsed off:",
    "acid-pours-none": "nothing",
    "acid-pours-here": "On this job",
    "acid-pours-any": "Any kind",
    "acid-pours-with": "{one} with {others}",
    "acid-pours-in-turn": "{others} into {one}, not the other way about",
    "acid-pours-where": "{pairs} ({vessel})",
    "acid-pours-word-refused": "Refused",
    "acid-pours-word-allowed-with-warning": "Allowed, with care",
    "acid-pours-word-allowed": "Allowed",
    "acid-pours-order": "{things}; in {vessel}.",
    "acid-pours-next": "{one}, then {other}",
    "acid-pours-materials-way": "Enter what stands there, and whose sheet was read",
    "acid-pours-sheets-way": "What the sheets of the stains say",
    "acid-pours-unread": "Nobody entered that these sheets were read: {names}.",
    "acid-pours-never": "Never together",
    "acid-pours-care": "With care",
    "acid-pours-goes": "Goes together",
    "acid-pours-brought": "Brought by somebody: never with stain",
    "acid-pours-deeds": "Opening, sanding, sweeping",
    "acid-pours-back": "All of this job's materials",
    "acid-pours-two": "Pick at least what is poured first.",
    "acid-pours-unknown": "Nobody knows {word}. Pick from the list; unknown means refused.",
    "acid-pours-deed-open-under-pressure": "Opening a sprayer under pressure",
    "acid-pours-deed-open-released": "Opening a sprayer, its pressure released",
    "acid-pours-deed-sand-dry": "Sanding the stained floor dry",
    "acid-pours-deed-grind-with-shroud-and-vacuum": "Grinding it with a shroud and a vacuum",
    "acid-pours-deed-sweep-dry": "Sweeping it dry",
    "acid-pours-deed-vacuum-dry": "Vacuuming the dry powder",
    "acid-pours-deed-blow-dry": "Blowing the powder off",
    "acid-pours-deed-hose-a-spill": "Hosing a spill away",
    "acid-pours-deed-close-a-vented-lid": "Closing the vent of a drum",
    "materials": "Materials in hand",
    "materials-told": "What stands on the floor and in the van to be poured. Water, the stains, "
    "bicarbonate and rinse water are there without being entered.",
    "way-materials": "materials",
    "materials-part": "One for each bottle, bag and drum",
    "materials-part-told": "What is not entered is judged as the worst that is sold under its "
    "name; what nobody knows is refused.",
    "s-material": "{material-id}, called {material-name}, is {material-kind}; where that is "
    "stain, it is {material-stain}.",
    "s-material-sheet": "Its own sheet {material-read}; its pH is {material-ph}.",
    "s-material-sampled": "On this slab a sample was made of it mixed with {material-sampled}.",
    "name-material-id": "Its short name",
    "name-material-name": "What it is called",
    "name-material-kind": "The kind of thing it is",
    "name-material-stain": "The stain that it is",
    "name-material-read": "Whether its own sheet was read",
    "name-material-ph": "pH by its sheet or a strip",
    "name-material-sampled": "Short names, with commas between",
    "read-yes": "was read",
    "read-no": "was not read",
    "help-material": "The kind decides what it may meet. Where two kinds fit, take the stronger "
    "one; where none fits, take something else, unknown: then nothing is poured with it.",
    "help-material-sheet": "Section 10 of a safety sheet names what it must not meet; section 9 "
    "its pH. A sheet that was not read keeps strong things from meeting others.",
    "help-material-sampled": "Two stains meet only where a sample of this very mix, on this slab, "
    "was looked at sealed and dry.",
    **{f"material-{kind.replace(' ', '-')}": _SAID.get(kind, kind) for kind in KINDS},
    **{f"acid-pours-in-{one.replace(' ', '-')}": said for one, said in VESSELS.items()},
}
