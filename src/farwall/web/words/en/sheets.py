"""Words of the form for what the stains' safety sheets say."""

from __future__ import annotations

WORDS: dict[str, str] = {
    "sheets": "Safety sheets of the stains",
    "sheets-told": (
        "Sections 3 and 9 of the sheet that came with the bottle in hand. What is left empty "
        "is asked for and never guessed. A stain itself is named under Samples."
    ),
    "sheet-part": "Its sheet",
    "contents-part": "What is in it",
    "contents-part-told": (
        "One line of section 3 each, with its share of the mass. Leave out an end that the sheet "
        "leaves out."
    ),
    "s-oxidiser": "It {oxidiser}.",
    "s-sheet-read": "The sheet of this lot was read on {sheet-read}.",
    "s-content": "{substance}: {share-low} to {share-high}.",
    "name-oxidiser": "Oxidiser",
    "name-sheet-read": "Day on which the sheet was read",
    "name-substance": "Substance",
    "name-share-low": "Share, least",
    "name-share-high": "Share, most",
    "help-oxidiser": (
        "An oxidiser makes chlorine of hydrochloric acid. Section 3, or the words oxidising, "
        "peroxide, nitric in section 2 or 10. With one, or with chromate, no acid is added "
        "(stain sheets)."
    ),
    "help-sheet-read": (
        "Sheets change with the lot. Who pours has read the one that came with this bottle."
    ),
    "help-contents": (
        "Chlorides press hydrogen chloride out of the acid; copper, manganese and chromium decide "
        "what the rinse water is. Seen on sheets: iron chlorides 5-30 %, manganese chloride "
        "15-20 %, copper chloride above 10 % (stain sheets)."
    ),
    "pick-oxidiser-yes": "names an oxidiser, not chromate",
    "pick-oxidiser-no": "names no other oxidiser",
    "pick-oxidiser-": "was not read for oxidisers yet",
    "pick-substance-": "choose a substance",
    "pick-substance-iron(II)-chloride": "iron(II) chloride, ferrous",
    "pick-substance-iron(III)-chloride": "iron(III) chloride, ferric",
    "pick-substance-manganese(II)-chloride": "manganese chloride",
    "pick-substance-copper(II)-chloride": "copper(II) chloride, cupric",
    "pick-substance-copper(II)-sulfate": "copper sulfate",
    "pick-substance-sodium-dichromate": "sodium dichromate",
    "pick-substance-potassium-dichromate": "potassium dichromate",
    "pick-substance-chromium(III)-chloride": "chromium(III) chloride",
    "pick-substance-calcium-chloride": "calcium chloride",
    "pick-substance-ammonium-chloride": "ammonium chloride",
    "pick-substance-phosphoric-acid": "phosphoric acid",
    "pick-substance-nitric-acid": "nitric acid",
    "pick-substance-sulfuric-acid": "sulfuric acid",
    "pick-substance-hydrogen-peroxide": "hydrogen peroxide",
    "pick-substance-other-oxidiser": "another oxidiser",
    "pick-substance-other": "something else",
}
