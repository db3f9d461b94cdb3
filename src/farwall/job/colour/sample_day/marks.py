"""What is known of each sample: marks, and the minutes at which it was laid, dried and washed.

A mark is a step that is done or a figure that is there. The phone folds the same entries the same
way (`web/src/pure/sample_marks.ts`), and a test holds the two together.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import field

from farwall.facts.samples import Sample
from farwall.job.colour.sample_day.nouns import Step
from farwall.job.story.noun import Happened
from farwall.nouns import dataclass

FIGURES = (
    "weighed", "slab", "air", "humidity", "drop", "sheen", "dry", "dwell", "scrubs", "ph", "rag",
    "held", "wet", "sealer", "day", "lamp", "verdict",
)  # fmt: skip
"""The figures of a sample, in the order in which they come."""
AFTER: Mapping[str, Step] = {
    "weighed": "lay", "slab": "lay", "air": "lay", "humidity": "lay", "drop": "lay",
    "sheen": "sheen", "dry": "dry", "dwell": "wash", "scrubs": "wash", "ph": "wash", "rag": "wash",
    "held": "wash", "wet": "wet", "sealer": "seal", "day": "day", "lamp": "lamp",
    "verdict": "judge",
}  # fmt: skip
"""By figure the step after which it is missing where it is not there."""
DOES: Mapping[str, str] = {
    "sample-laid": "lay", "sample-sheen-lost": "sheen", "sample-dry": "dry",
    "sample-washed": "wash", "sample-sealed": "seal", "sample-judged": "judge",
    "sample-approved": "signed",
}  # fmt: skip
"""By word the mark that it makes as such."""
CARRIES: Mapping[str, Mapping[str, str]] = {
    "sample-laid": {
        "laid_ml": "weighed", "before_kg": "before", "after_kg": "after", "slab_c": "slab",
        "air_c": "air", "rh_percent": "humidity", "drop_s": "drop",
    },
    "sample-sheen-lost": {"after_min": "sheen"},
    "sample-dry": {"after_min": "dry"},
    "sample-washed": {
        "dwell_h": "dwell", "scrubs": "scrubs", "ph": "ph", "rag": "rag", "held": "held",
    },
    "sample-judged": {"verdict": "verdict"},
}  # fmt: skip
"""By word and key the figure that is there when the key is."""
LOOKS = ("photo", "sample-seen")
"""Words that show how a sample looks: a photo whose colour is still to be read counts as well."""


@dataclass
class Marks:
    """What is known of one sample. order: how many were laid before it; None before it is laid."""

    marks: set[str] = field(default_factory=set)
    laid_min: float | None = None
    dry_min: float | None = None
    washed_min: float | None = None
    verdict: str = ""
    order: int | None = None


def marks_of(told: Mapping[str, Iterable[str]], happened: Iterable[Happened]) -> dict[str, Marks]:
    """By sample what is known, facts first. happened: in order, struck ones out."""
    found = {name: Marks(set(marks)) for name, marks in told.items()}
    for known in found.values():
        said = (one.split("=")[1] for one in known.marks if one.startswith("verdict="))
        known.verdict = next(said, "")
    laid = 0
    for one in happened:
        name = one.text("sample").strip()
        if not name or not (one.word in DOES or one.word in LOOKS):
            continue
        mine = found.setdefault(_called(name, found), Marks())
        if one.word in LOOKS:
            mine.marks |= _looked(one)
            continue
        _took(mine, one)
        if one.word == "sample-laid" and mine.order is None:
            mine.order = laid
            laid += 1
    return found


def _called(name: str, found: Mapping[str, Marks]) -> str:
    """As it was written first: names that differ in capitals alone are one."""
    return next((one for one in found if one.casefold() == name.casefold()), name)


def _took(mine: Marks, one: Happened) -> None:
    mine.marks.add(DOES[one.word])
    for key, figure in CARRIES.get(one.word, {}).items():
        if one.about.get(key) not in (None, ""):
            mine.marks.add(figure)
    if {"before", "after"} <= mine.marks:
        mine.marks.add("weighed")
    if one.word == "sample-sealed":
        mine.marks.add("sealer")
    if one.word == "sample-judged":
        mine.verdict = one.text("verdict")
    if one.word == "sample-laid" and mine.laid_min is None:
        mine.laid_min = one.at_min
    if one.word == "sample-dry" and mine.dry_min is None:
        mine.dry_min = one.at_min
    if one.word == "sample-washed" and mine.washed_min is None:
        mine.washed_min = one.at_min
        if mine.laid_min is not None:  # from laying to the wash: nobody has to tell it
            mine.marks.add("dwell")


def _looked(one: Happened) -> set[str]:
    """A look when sealed counts for the light that it names, by day where it names none."""
    state = one.text("state")
    if state == "clean wet":
        return {"wet"}
    if state == "sealed":
        return {"lamp" if one.text("light") == "lamp" else "day"}
    return set()


def marks_told(one: Sample) -> tuple[str, ...]:
    """The marks that the facts of a sample make, sorted."""
    figures = {
        "weighed": one.m2_per_l or one.laid_ml or one.sprayer_after_kg,
        "slab": one.slab_c is not None, "air": one.air_c is not None,
        "humidity": one.rh_percent is not None, "drop": one.drop_s,
        "sheen": one.sheen_loss_min, "dry": one.dry_min, "dwell": one.dwell_h,
        "scrubs": one.scrubs is not None, "ph": one.after_ph is not None, "rag": one.rag,
        "sealer": one.sealer, "verdict": one.verdict, "signed": one.approved_by,
    }  # fmt: skip
    marks = {name for name, there in figures.items() if there}
    for look in one.looks:
        wet, sealed = look.state == "clean wet", look.state == "sealed"
        marks |= {"wet"} if wet else {look.light or "day"} if sealed else set()
    steps = {AFTER[name] for name in marks if name in AFTER}
    verdict = {f"verdict={one.verdict}"} if one.verdict else set()
    return tuple(sorted(marks | steps | verdict))
