"""What each duty with acid asks of the one who has it, and whether it is in order on a day.

Pure; days are dates. What a duty asks is common practice with the sheets of such stain; when it is
in order is said by the standards that are named with each check. Nothing is taken for granted:
what nobody told is `not told`, never `in order`.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import Literal

from farwall.facts.workers import Duty, Worker
from farwall.nouns import dataclass

State = Literal["in order", "missing", "not told"]
Item = Literal[
    "respirator", "fit test", "medical word", "clean-shaven", "cartridges", "change schedule",
    "exposure settled", "gloves", "eyes", "apron", "boots", "training",
]  # fmt: skip

BREATHING: tuple[Item, ...] = (
    "respirator", "fit test", "medical word", "clean-shaven", "cartridges", "change schedule",
)  # fmt: skip
_HANDS: tuple[Item, ...] = ("gloves", "eyes")
ASKED: dict[Duty, tuple[Item, ...]] = {
    "mixes": (*BREATHING, *_HANDS, "apron", "boots", "training"),
    "sprays": (*BREATHING, *_HANDS, "apron", "boots", "training"),
    "helps": (*BREATHING, *_HANDS, "boots", "training"),
    "scrubs": (*_HANDS, "boots", "training"),
    "seals": (*_HANDS, "training"),
    "stands by": ("training",),
}
"""Who mixes, sprays or hands tanks breathes the vapour [stain-sheets, common-practice]. Sealers ask
for more by their own sheet. Who stands by stays outside, and goes in to nobody without all of it.
"""

_RESPIRATORS, _HAZCOM, _SHEETS = "osha-respirators", "hazcom", "stain-sheets"


@dataclass(frozen=True)
class Check:
    """One thing looked at: how it stands, and why where it is not simply in order."""

    item: Item
    state: State
    why: str = ""
    source: str = _RESPIRATORS


@dataclass(frozen=True)
class Needs:
    """What of the job bears on people: chromate on a sheet, ammonia to neutralise with."""

    chromate: bool = False
    ammonia: bool = False


def asked_of(duty: Duty, needs: Needs) -> tuple[Item, ...]:
    """What a duty asks on this job.

    Scrubbing asks for a respirator where ammonia is the base or chromate is on the sheet
    (1926.1126 reaches the wash water's mist); chromate asks a hygienist's word of all who touch it.
    """
    items = ASKED[duty]
    if duty == "scrubs" and (needs.ammonia or needs.chromate):
        items = (*BREATHING, *items)
    if needs.chromate and duty not in {"stands by", "seals"}:
        items = (*items, "exposure settled")
    return items


def checked(worker: Worker, duty: Duty, day: date, needs: Needs) -> tuple[Check, ...]:
    """Everything that a duty asks, looked at for one person on one day."""
    return tuple(_LOOKS[item](worker, duty, day, needs) for item in asked_of(duty, needs))


def held_until(told: date) -> date:
    """The last day on which a fit test of that day holds: twelve months (29 CFR 1910.134(f)(2))."""
    year = told.year + 1
    return date(year, 2, 28) if (told.month, told.day) == (2, 29) else told.replace(year=year)


def day_told(text: str) -> date | None:
    """A day such as 2027-05-04; None where nobody told one or it is none."""
    try:
        return date.fromisoformat(text) if text else None
    except ValueError:
        return None


def _to_come(item: Item, what: str, told: date, source: str = _RESPIRATORS) -> Check:
    return Check(item, "missing", f"{what}, {told}, is still to come", source)


def _loose(worker: Worker) -> bool:
    return worker.respirator == "powered hood"


def _respirator(worker: Worker, duty: Duty, day: date, needs: Needs) -> Check:  # noqa: ARG001
    if worker.respirator is None:
        return Check("respirator", "not told", "which respirator it is")
    return Check("respirator", "in order")


def _fit(worker: Worker, duty: Duty, day: date, needs: Needs) -> Check:  # noqa: ARG001
    """29 CFR 1910.134(f)(2): before first use, whenever another facepiece is taken, yearly."""
    if _loose(worker):
        return Check("fit test", "in order", "a loose hood is worn without one")
    told = day_told(worker.fit_tested)
    if told is None:
        return Check("fit test", "not told", "the day of the last fit test with that respirator")
    if told > day:
        return _to_come("fit test", "the day of the fit test", told)
    last = held_until(told)
    if day > last:
        return Check("fit test", "missing", f"the last fit test, {told}, held until {last}")
    return Check("fit test", "in order")


def _medical(worker: Worker, duty: Duty, day: date, needs: Needs) -> Check:  # noqa: ARG001
    """29 CFR 1910.134(e)(1): before use; (e)(7) says when it is asked again."""
    told = day_told(worker.cleared)
    if told is None:
        return Check("medical word", "not told", "the day of the medical word")
    if told > day:
        return _to_come("medical word", "the day of the medical word", told)
    return Check("medical word", "in order")


def _shaven(worker: Worker, duty: Duty, day: date, needs: Needs) -> Check:  # noqa: ARG001
    """29 CFR 1910.134(g)(1)(i): no hair between the edge and the skin, or under the valve."""
    if _loose(worker):
        return Check("clean-shaven", "in order", "a loose hood does not seal on the skin")
    if worker.clean_shaven is None:
        return Check("clean-shaven", "not told", "whether the respirator's edge lies on skin")
    if not worker.clean_shaven:
        return Check(
            "clean-shaven", "missing", "hair under the respirator's edge lets the vapour in"
        )
    return Check("clean-shaven", "in order")


def _cartridges(worker: Worker, duty: Duty, day: date, needs: Needs) -> Check:
    """Acid gas and P100 for the mist; where ammonia is the base, scrubbing asks for it too."""
    pair = worker.cartridge
    if pair is None:
        return Check("cartridges", "not told", "which cartridges are on")
    wanted = {"acid gas": pair.acid_gas, "P100": pair.p100}
    if duty == "scrubs" and needs.ammonia:
        wanted = {"ammonia": pair.ammonia, **({"P100": pair.p100} if needs.chromate else {})}
    lacking = [name for name, told in wanted.items() if told is False]
    if lacking:
        return Check(
            "cartridges", "missing", f"the cartridges are not marked for {' and '.join(lacking)}"
        )
    opened = day_told(pair.opened)
    if opened is not None and opened > day:
        return _to_come("cartridges", "the day on which the cartridges were opened", opened)
    unread = [name for name, told in wanted.items() if told is None]
    if unread:
        why = f"whether the cartridges are marked for {' and '.join(unread)}"
        return Check("cartridges", "not told", why)
    if opened is None:
        return Check("cartridges", "not told", "when the cartridges were opened")
    return Check("cartridges", "in order")


def _schedule(worker: Worker, duty: Duty, day: date, needs: Needs) -> Check:  # noqa: ARG001
    """29 CFR 1910.134(d)(3)(iii)(B)(2): changed by a schedule, never by smell."""
    pair = worker.cartridge
    if pair is None or pair.change_after_min is None:
        why = "after how many minutes the maker's schedule has the cartridges changed"
        return Check("change schedule", "not told", why)
    left = pair.change_after_min - pair.used_min
    if left <= 0:
        used = f"{pair.used_min:g} of {pair.change_after_min:g} min"
        why = f"the cartridges are used up, {used}: a new pair first"
        return Check("change schedule", "missing", why)
    return Check("change schedule", "in order")


def _settled(worker: Worker, duty: Duty, day: date, needs: Needs) -> Check:  # noqa: ARG001
    """29 CFR 1926.1126(d), (f): exposure is determined; what is worn follows from it."""
    told = day_told(worker.exposure_settled)
    source = "osha-chromium"
    if told is None:
        why = "when a licensed hygienist settled exposure and respirator: the sheet names chromate"
        return Check("exposure settled", "not told", why, source)
    if told > day:
        return _to_come("exposure settled", "the day of the hygienist's word", told, source)
    return Check("exposure settled", "in order", "", source)


def _gloves(worker: Worker, duty: Duty, day: date, needs: Needs) -> Check:  # noqa: ARG001
    if not worker.gloves:
        return Check("gloves", "not told", "which gloves there are", _SHEETS)
    return Check("gloves", "in order", "", _SHEETS)


def _eyes(worker: Worker, duty: Duty, day: date, needs: Needs) -> Check:  # noqa: ARG001
    """Goggles and face shield; a full facepiece or a hood has both in it."""
    if worker.respirator in {"full face", "powered hood"} and "respirator" in asked_of(duty, needs):
        return Check("eyes", "in order", "the respirator covers the face", _SHEETS)
    unsaid = "whether goggles and face shield are there"
    return _there("eyes", worker.goggles, unsaid, "no goggles and face shield")


def _apron(worker: Worker, duty: Duty, day: date, needs: Needs) -> Check:  # noqa: ARG001
    unsaid = "whether an acid-proof apron is there"
    return _there("apron", worker.apron, unsaid, "no acid-proof apron")


def _boots(worker: Worker, duty: Duty, day: date, needs: Needs) -> Check:  # noqa: ARG001
    unsaid = "whether rubber boots are there"
    return _there("boots", worker.boots, unsaid, "no rubber boots")


def _there(item: Item, told: bool | None, unsaid: str, none: str) -> Check:  # noqa: FBT001
    if told is None:
        return Check(item, "not told", unsaid, _SHEETS)
    return Check(item, "in order" if told else "missing", "" if told else none, _SHEETS)


def _training(worker: Worker, duty: Duty, day: date, needs: Needs) -> Check:  # noqa: ARG001
    """29 CFR 1910.1200(h): before the first work with it; the sheet of this very stain."""
    told = day_told(worker.trained)
    if told is None:
        why = "when sheet, cards and eyewash were gone through"
        return Check("training", "not told", why, _HAZCOM)
    if told > day:
        return _to_come("training", "the day of training", told, _HAZCOM)
    return Check("training", "in order", "", _HAZCOM)


_Look = Callable[[Worker, Duty, date, Needs], Check]
_LOOKS: dict[Item, _Look] = {
    "respirator": _respirator, "fit test": _fit, "medical word": _medical, "clean-shaven": _shaven,
    "cartridges": _cartridges, "change schedule": _schedule, "exposure settled": _settled,
    "gloves": _gloves, "eyes": _eyes, "apron": _apron, "boots": _boots, "training": _training,
}  # fmt: skip
