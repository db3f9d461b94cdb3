"""One thing entered on two phones counts once; what was undone on one and stands on another. Pure.

Two people on one floor tap the same: who sprays and who helps both enter the batch, the filled
tank, the rinse, a drum, their hours, a coat of sealer. What adds up would then be there twice, and
a tub believed too full runs dry in mid-field. What only says how things stand (a band is done, a
room is closed) may come twice.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace

from farwall.facts.numbered import numbered
from farwall.facts.plan import Plan
from farwall.job.story.noun import Happened
from farwall.job.story.whose import two_spray
from farwall.nouns import dataclass

SAME_MIN = 4.0
"""Within so many minutes two phones tell of one batch, fill or rinse: the next cannot be done
sooner, for a batch takes four minutes with all set out. Rank: guess."""
HAIR = 0.05
"""Figures that differ by less are the same. Rank: guess."""

_ADDS_UP: Mapping[str, tuple[str, ...]] = {
    "mixed": ("coat",), "filled": ("sprayer",), "rinsed": ("room",),
    "neutralised": ("room",), "scrubbed": ("room",), "vacuumed": ("room",), "sealed": ("room",),
    "waste": ("drum",), "hours": ("task",), "standby": ("why",), "change": ("what",),
    "paid": ("part",), "called-back": ("what",),
}  # fmt: skip
"""The words that are counted, with what tells one from another."""


@dataclass(frozen=True)
class Once:
    """What happened, each thing once; those that another phone had told already, what to say."""

    happened: tuple[Happened, ...]
    doubled: tuple[Happened, ...]
    words: tuple[str, ...]


def once(plan: Plan, happened: Sequence[Happened]) -> Once:
    """What happened, in order; of one thing told by several phones the first, with all it carries.

    Each phone's own entries are never taken for one another: entered twice there, it was done
    twice. Where two spray, tanks count apart and one that is not named may be either's.
    """
    two = two_spray(plan)
    kept: dict[str, Happened] = {}
    devices: dict[str, set[str]] = {}
    doubled: list[Happened] = []
    words: list[str] = []
    for one in happened:
        earlier = kept.values() if one.word in _ADDS_UP else ()
        near = [each for each in earlier if _may_be(each, one, two=two)]
        first = next((e for e in near if one.device not in devices[e.id] and _alike(e, one)), None)
        if first is not None:
            kept[first.id] = replace(first, about={**one.about, **first.about})
            devices[first.id].add(one.device)
            doubled.append(one)
            words.append(_counts_once(plan, one))
            continue
        other = next((e for e in near if one.word == "mixed" and one.device != e.device), None)
        if other is not None:
            words.append(_unlike(plan, other, one))
        kept[one.id] = one
        devices[one.id] = {one.device}
    return Once(tuple(kept.values()), tuple(doubled), tuple(words))


def _may_be(first: Happened, one: Happened, *, two: bool) -> bool:
    """Whether both are of one kind, from phones, and near enough to be one thing."""
    if one.word != first.word or not (one.device and first.device):
        return False
    if one.word == "filled" and two and not one.text("sprayer"):
        return False
    return one.at_min - first.at_min < SAME_MIN and all(
        first.text(key) == one.text(key) for key in _ADDS_UP[one.word]
    )


def _alike(first: Happened, one: Happened) -> bool:
    """Whether nothing that both carry differs."""
    return all(_same(first.about[key], value) for key, value in one.about.items()
               if key in first.about)  # fmt: skip


def _same(first: object, other: object) -> bool:
    if isinstance(first, int | float) and isinstance(other, int | float):
        return abs(first - other) < HAIR
    return first == other


def _counts_once(plan: Plan, one: Happened) -> str:
    if one.word == "mixed":
        return (
            f"Coat {numbered(plan, one.text('coat'))}: a batch of {one.number('litres') or 0:.1f} "
            "L came from two phones and counts once; if there were two, enter the other again."
        )
    if one.word == "filled":
        return (
            "A filled tank came from two phones and counts once; if two were filled, enter the "
            "other again."
        )
    if one.word == "rinsed":
        return (
            "A rinse came from two phones and counts once; if there were two, enter the other "
            "again."
        )
    return (
        f"What is entered as {one.word} came from two phones and counts once; if there were two, "
        "enter the other again."
    )


def _unlike(plan: Plan, first: Happened, one: Happened) -> str:
    litres = [each.number("litres") or 0.0 for each in (first, one)]
    return (
        f"Coat {numbered(plan, one.text('coat'))}: two phones enter batches of {litres[0]:.1f} L "
        f"and {litres[1]:.1f} L at nearly the same time, and both count; if it was one, strike the "
        "wrong one."
    )


def stand_all_the_same(
    plan: Plan, happened: Sequence[Happened], struck: Iterable[Happened]
) -> Iterator[str]:
    """Bands and fields that were undone on one phone while another had told them too."""
    at = {one.text("entry"): one.at_min for one in happened if one.word == "struck"}
    for gone in struck:
        key = {"band-done": "band", "field-done": "field"}.get(gone.word)
        if key is None or gone.id not in at:
            continue
        name = gone.text(key)
        for one in happened:
            if (one.word == gone.word and one.text(key) == name and one.device != gone.device
                    and one.at_min <= at[gone.id]):  # fmt: skip
                what = numbered(plan, name)
                yield (
                    f"Undone on one phone, {what} was entered on another too and counts as done; "
                    "if it is not, strike that entry as well."
                )
                break
