"""What is done with a thing besides pouring it: opening, sanding, sweeping, hosing. Pure.

The same kind of rule and the same kind of answer as for pouring; an act that no rule names is
refused.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial
from typing import Literal

from farwall.acid.pouring.gate import fired_by
from farwall.acid.pouring.making import a_rule
from farwall.acid.pouring.nouns import WORDS, Rule, Thing, Verdict, Word

Act = Literal[
    "open under pressure", "open released", "sand dry", "grind with shroud and vacuum",
    "sweep dry", "vacuum dry", "blow dry", "hose a spill", "close a vented lid",
]  # fmt: skip
ACTS: tuple[Act, ...] = (
    "open under pressure", "open released", "sand dry", "grind with shroud and vacuum",
    "sweep dry", "vacuum dry", "blow dry", "hose a spill", "close a vented lid",
)  # fmt: skip

_refuses = partial(a_rule, "refused")
_warns = partial(a_rule, "allowed with warning")
_ANYTHING = (
    "water, water-borne, flammable, finish, clay, organic, unknown, stain, residue, combustible"
)
_SILICA = (
    "Dust of concrete holds silica: a shroud that fits, a vacuum with a filter of 99 % or better, "
    "a HEPA vacuum between passes; over four hours indoors a respirator besides."
)
_CHROMATE = "Dust of this floor carries hexavalent chromium, by its sheet or because nobody told."
_HYGIENIST = (
    "Nobody sands it before a licensed hygienist has said how; enter what the sheet says of "
    "chromate."
)

BY_ACT: dict[Act, tuple[Rule, ...]] = {
    "open under pressure": (
        _refuses("open under pressure", _ANYTHING,
                 what="It sprays acid into the face.",
                 instead="Release the pressure at its valve, wand down into a pail, then open.",
                 source="common-practice"),
    ),
    "open released": (
        _warns("open released", _ANYTHING, what="A last hiss may be left under the cap.",
               instead="A quarter turn, wait, face away, goggles on.", source="common-practice"),
    ),
    "sand dry": (
        _refuses("sand chromate", "chromate", what=_CHROMATE, instead=_HYGIENIST,
                 source="osha-chromium"),
        _refuses("sand without controls", _ANYTHING,
                 what="Dry sanding without a vacuum fills the house with silica and stain dust.",
                 instead=_SILICA, source="silica"),
    ),
    "grind with shroud and vacuum": (
        _refuses("sand chromate", "chromate", what=_CHROMATE, instead=_HYGIENIST,
                 source="osha-chromium"),
        _warns("silica controls", _ANYTHING, what="Fine dust still comes off.", instead=_SILICA,
               source="silica"),
    ),
    "sweep dry": (
        _refuses("sweep dry", _ANYTHING,
                 what="A broom lifts stain powder and silica into the air.",
                 instead="A HEPA vacuum, or wet.", source="silica, common-practice"),
    ),
    "vacuum dry": (
        _warns("vacuum chromate", "chromate", what=_CHROMATE,
               instead="A HEPA vacuum, its bag shut wet and kept as waste; a fit-tested respirator "
                       "with acid-gas and P100 cartridges.",
               source="osha-chromium"),
        _warns("vacuum powder", "residue, stain, rinse, clay",
               what="A shop filter lets stain powder through.",
               instead="A HEPA vacuum; the powder is waste.", source="common-practice"),
    ),
    "blow dry": (
        _refuses("blow dry", _ANYTHING,
                 what="A blower lifts stain powder and silica through the whole house.",
                 instead="A HEPA vacuum, or wet.", source="silica, common-practice"),
    ),
    "hose a spill": (
        _refuses("hose a spill", _ANYTHING,
                 what="Water spreads it, to the next drain, door or soil.",
                 instead="Dam it, bicarbonate until the fizz ends, clay, then lift it.",
                 source="common-practice"),
    ),
    "close a vented lid": (
        _refuses("close a vented lid", "rinse, may give gas, stain, strong acid, carbonate, lime",
                 what="Carbon dioxide bursts a drum whose lid is shut.",
                 instead="Leave the vent open, upright, tied, in moving air.",
                 source="common-practice"),
    ),
}  # fmt: skip


def may_do(act: Act, things: Sequence[Thing]) -> Verdict:
    """Whether it may be done with these; refused where no rule names the act for a thing."""
    found = [one for rule in BY_ACT[act] for thing in things for one in fired_by(rule, (thing,))]
    seen = {met.name for one in found for met in one.met}
    words: list[Word] = [one.word for one in found]
    if not things or any(thing.name not in seen for thing in things):
        words.append("refused")
    word = max(words, key=WORDS.index)
    ordered = sorted(found, key=lambda one: -WORDS.index(one.word))
    return Verdict(word, tuple(thing.name for thing in things), act, tuple(ordered))
