"""Causes of call-backs as a table: what each looks like, what speaks for it, what against it.

Common practice of the trade, no source: white haze and footprints in the first week, peeling at
doors in months one to three (residue, damp), dull lanes from month six (no finish), white in
winter (humidity, salts), worn finish in the second year. One sign weighs the same for every cause
that it speaks for, so that more of them never lower the place of a cause.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import field

from farwall.facts.call_back_signs import WEIGHTS
from farwall.job.call_back.noun import Whose
from farwall.nouns import dataclass

__all__ = ["BY_ID", "CAUSES", "HARSH", "MILD", "WEIGHTS", "Cause"]

Values = Mapping[str, frozenset[str]]
HARSH = frozenset({"ammonia", "bleach", "vinegar", "pine", "solvent", "steam"})
MILD = frozenset({"water", "neutral"})


@dataclass(frozen=True)
class Cause:
    """A cause. looks: what it looks like, any other look rules it out · speaks_for, against:
    values by kind of sign · rules_out: values with which it cannot be."""

    id: str
    what: str
    looks: frozenset[str]
    whose: Whose
    whose_why: str
    do: str
    kit: tuple[str, ...]
    speaks_for: Values = field(default_factory=dict)
    against: Values = field(default_factory=dict)
    rules_out: Values = field(default_factory=dict)


def _of(**told: str) -> dict[str, frozenset[str]]:
    """`where="door|walls"` as a set for each kind."""
    return {kind: frozenset(one.split("|")) for kind, one in told.items()}


_HARSH = "|".join(sorted(HARSH))
_MILD = "|".join(sorted(MILD))

CAUSES: tuple[Cause, ...] = (
    Cause(
        "residue", "Residue of the stain was left under the sealer",
        frozenset({"peeling", "powder", "haze", "spots"}), "ours",
        "Scrubbing and rinsing were our work.",
        "Tape pressed on and torn off; rub the bare spot with a white rag; strip and scrub where "
        "it is dirty, then pH and rag before any sealer.",
        ("scrub pads and stripper for the sealer",),
        _of(when="month 1-3|week 1", where="door|lanes", ph="low|high", rag="dirty",
            powder="seen", rinses="few", stain="much"),
        _of(ph="in", rag="clean", powder="none", rinses="enough", when="later"),
    ),
    Cause(
        "damp", "Moisture comes up through the slab",
        frozenset({"peeling", "haze", "spots", "colour"}), "to be seen",
        "Moisture from below is not the finisher's, unless a test before sealing showed it or a "
        "sealer was laid that cannot breathe.",
        "Meter in a grid around the place and in a room that is sound; a sheet taped to itself "
        "over night, in a closet; look for a leak before anything is stripped.",
        ("clear sheet and weights",),
        _of(where="walls|all over|spot|under something", damp="damp", dried="not seen",
            when="month 1-3|month 3-9", winter="yes"),
        _of(damp="dry", dried="seen"),
    ),
    Cause(
        "cold or wet sealing", "Sealer was laid too cold, too damp or near the dew point",
        frozenset({"haze", "peeling", "powder", "white salts"}), "ours",
        "The hour of sealing was our choice.",
        "Try a hand's breadth with the solvent of the sealer's own sheet: haze that goes is "
        "blush; haze that stays is stripped.",
        ("solvent named by the sealer's sheet, with its respirator",),
        _of(when="week 1|month 1-3", where="door|window|walls", margin="small", slab="cold",
            air="damp", dried="not seen"),
        _of(margin="enough", slab="warm", air="dry", when="later"),
    ),
    Cause(
        "too thick", "Sealer lies too thick or stands in joints",
        frozenset({"haze", "peeling", "spots"}), "ours",
        "How much was laid was our work.",
        "Look along the floor against the window: milky joints, bubbles, laps. Thin down or "
        "strip the spot, one thin coat.",
        ("scrub pads and stripper for the sealer",),
        _of(where="joints|spot", sealer="thick", when="week 1|month 1-3"),
        _of(sealer="usual|thin"),
    ),
    Cause(
        "walked on early", "It was walked on or covered before the sealer was hard",
        frozenset({"footprints", "haze", "scratches", "mat marks", "lines"}), "to be seen",
        "Ours where we let people in; else of whoever went in or laid covers.",
        "Compare the hour of the last coat with who was let in when; buff, and one thin coat.",
        ("the log of who was let in", "white pads"),
        _of(when="week 1", where="lanes|door"),
        _of(when="month 3-9|month 9-18|later"),
    ),
    Cause(
        "cleaner", "A cleaner that the sealer does not bear",
        frozenset({"haze", "dull", "spots", "peeling", "powder", "colour"}), "the owner's",
        "The care sheet names what is not to be used.",
        "Ask to see the bottle and how it was thinned; rinse twice with clear water and look again "
        "when dry; then finish or thin sealer.",
        ("pH-neutral cleaner and a clean mop", "the care sheet"),
        _of(cleaner=_HARSH, where="all over|lanes|wet room"),
        _of(when="week 1"),
        _of(cleaner=_MILD),
    ),
    Cause(
        "rug", "A rug, mat or foot with rubber or plastic marked the sealer",
        frozenset({"mat marks", "haze", "spots", "lines"}), "the owner's",
        "The care sheet asks for felt and for rugs that breathe, the first month above all.",
        "Lift it, let the floor air for a week, look again; a thin coat where the mark stays.",
        ("felt pads and a breathable underlay to show",),
        _of(rug="rubber", where="under something|door|wet room"),
        _of(rug="breathable"),
        _of(rug="none"),
    ),
    Cause(
        "no finish", "The sacrificial finish is worn through or was never laid",
        frozenset({"dull", "scratches", "footprints", "haze"}), "the owner's",
        "A new coat of finish is upkeep; ours where it was sold and not laid.",
        "Clean, dry, two thin coats of finish in the lanes; show the owner how.",
        ("floor finish, clean mop, neutral cleaner",),
        _of(where="lanes|door", when="month 3-9|month 9-18|later", finish="none"),
        _of(when="week 1", finish="laid"),
    ),
    Cause(
        "salts", "Salts come out of the concrete",
        frozenset({"white salts", "haze", "powder", "spots"}), "to be seen",
        "Water that moves in the slab brings them; find the water first.",
        "Brush it off dry; never acid on it; meter, and find where the water comes from.",
        ("dry brush and HEPA vacuum",),
        _of(winter="yes", where="walls|joints|spot|door", damp="damp", wet="yes"),
        _of(damp="dry"),
    ),
    Cause(
        "standing water", "Water, a plant pot or a wet mat stood on it",
        frozenset({"spots", "haze", "white salts", "peeling", "mat marks", "colour"}),
        "the owner's",
        "Standing water is not wear; another trade's where its pipe leaked.",
        "Dry it with moving air for days before judging; look for the leak.",
        ("towels and a fan",),
        _of(wet="yes", where="wet room|spot|under something|door|window"),
        _of(),
        _of(wet="no"),
    ),
    Cause(
        "wear", "Grit, chair feet and things dragged",
        frozenset({"scratches", "dull", "lines"}), "the owner's",
        "Wear and scratches are not the finisher's.",
        "Felt under every foot, mats at the doors inside and out; finish over scuffs.",
        ("floor finish, clean mop, neutral cleaner",),
        _of(where="lanes|door|under something", when="month 3-9|month 9-18|later"),
        _of(when="week 1"),
    ),
    Cause(
        "what lay there", "A mark of what lay on the slab before or during the stain",
        frozenset({"lines", "spots", "footprints", "colour"}), "another trade's",
        "Tape, chalk, lumber and hoses leave ghosts; ours where they were ours, or where the "
        "survey shows no such mark.",
        "Hold the survey's wetted photographs against it; blend only with the owner's word.",
        ("survey photographs", "the signed slab-protection sheet"),
        _of(when="week 1|month 1-3"),
        _of(when="later"),
    ),
    Cause(
        "copper", "A copper colour goes on darkening with damp",
        frozenset({"colour", "spots"}), "to be seen",
        "Copper colours drift for weeks where the slab is damp.",
        "Meter against a sound room; photograph with a grey card now and in four weeks.",
        (),
        _of(copper="yes", damp="damp", wet="yes", when="week 1|month 1-3"),
        _of(damp="dry"),
        _of(copper="no"),
    ),
    Cause(
        "colour as sampled", "The colour is within the range of the signed sample, seen otherwise",
        frozenset({"colour", "spots"}), "to be seen",
        "The signed, sealed sample with its natural range is the standard.",
        "Lay the sample beside it, by day at the window and at night under the lamp; then talk.",
        ("the signed sample and its photographs",),
        _of(when="week 1", where="all over|window"),
        _of(when="later", wet="yes"),
    ),
    Cause(
        "crack", "The slab cracked, or a crack shows that was there",
        frozenset({"crack", "lines"}), "to be seen",
        "Cracks are of the slab; a step or a widening crack is for an engineer.",
        "Width with a card, step with a straightedge, date on a pencil mark beside it.",
        ("crack card and straightedge", "survey photographs"),
    ),
)  # fmt: skip
BY_ID = {one.id: one for one in CAUSES}
