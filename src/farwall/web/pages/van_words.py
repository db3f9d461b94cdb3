"""The van in sentences; in English as `farwall van` has them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date

from farwall.facts.van import Condition, Shopping, Stock, UsedUp, Van, VanPlan, VanSprayer
from farwall.job.van.say import amount_words, flow_words, tank_words
from farwall.papers.wall_clock import Units
from farwall.phrasebook import told
from farwall.web.pages.when import date_told
from farwall.web.words import said, words


def sprayer_told(one: VanSprayer, state: Condition, units: Units = "us") -> str:
    """What a sprayer is, what it has done, what is left in its seals, its tip's flow."""
    flow = ""
    if state.flow_l_min:
        flow = said("van-flow", flow=flow_words(state.flow_l_min, units))
    change = "" if state.flow_change is None else f" ({_since_new(state.flow_change)})"
    low, high = state.uses_left
    left = said("van-left", low=low, high=high) if high else said("van-left-none")
    return said(
        "van-sprayer", kind=said(f"van-kind-{one.kind}"), tank=tank_words(one.tank_l, units),
        state=said(f"van-state-{state.word}"), left=left, flow=flow + change,
        uses=said("van-use-1") if one.uses == 1 else said("van-uses", n=one.uses),
    )  # fmt: skip


def _since_new(change: float) -> str:
    if abs(change) < 0.005:
        return said("van-as-new")
    return said("van-since-new", change=f"{change:+.0%}")


def stock_told(one: Stock, units: Units = "us") -> str:
    """What lies on the shelf: how much of what, its lot, until when it is good."""
    told = f"{_of(one.amount, one.unit, units)} {one.of or thing_name(one.kind)}"
    if one.lot:
        told += said("van-lot", lot=one.lot)
    if one.good_until:
        told += said("van-good-until", day=one.good_until)
    return told


def age_told(one: Stock, today: date) -> str:
    """How long it has been open; empty where that is not told."""
    opened = _date(one.opened)
    if opened is None:
        return ""
    days = (today - opened).days
    ago = said("van-days-1") if days == 1 else said("van-days", n=days)
    return said("van-opened", day=date_told(opened), ago=ago)


def is_past(one: Stock, today: date) -> bool:
    """Whether its day is over."""
    until = _date(one.good_until)
    return until is not None and until < today


def _date(text: str) -> date | None:
    try:
        return date.fromisoformat(text)
    except ValueError:
        return None


def thing_name(kind: str) -> str:
    """What a kind of thing is called."""
    key = f"van-thing-{kind}"
    return said(key) if key in words("en") else kind


def _of(amount: float, unit: str, units: Units) -> str:
    return amount_words(amount, unit, units) + ("" if unit == "count" else said("van-of"))


def take_told(found: VanPlan) -> str:
    """Which sprayer to take and which beside it."""
    if not found.sprayer:
        return said("van-no-sprayer")
    return said("van-take", sprayer=found.sprayer, spare=found.spare or said("van-no-spare"))


def there_told(one: Shopping, units: Units = "us") -> str:
    """A need that is there, from where."""
    where = f" ({', '.join(one.from_stock)})" if one.from_stock else ""
    mind = f"; {one.mind}" if one.mind else ""
    return f"{_of(one.need.amount, one.need.unit, units)} {_named(one)}{where}{mind}"


def buy_told(one: Shopping, units: Units = "us") -> str:
    """What has to be bought, of how much."""
    unit = one.need.unit
    of = ""
    if one.there:
        needed, there = (amount_words(each, unit, units) for each in (one.need.amount, one.there))
        of = said("van-needed", needed=needed, there=there)
    mind = f"; {one.mind}" if one.mind else ""
    return f"{_of(one.buy, unit, units)} {_named(one)}{of}{mind}"


def _named(one: Shopping) -> str:
    need = one.need
    if need.of and need.kind not in {"stain", "sealer"}:
        return told(need.of)  # a word of the list, not a name of the job's own
    return told(need.name or need.of) or thing_name(need.kind)


def used_told(used: UsedUp, units: Units = "us") -> Iterator[str]:
    """What a job took, by its log."""
    for name in used.sprayers:
        yield said("van-used-sprayer", name=name)
    for stain, lot, litres in used.stains:
        of_lot = said("van-of-lot", lot=lot) if lot else ""
        yield said(
            "van-used-stain", litres=amount_words(litres, "l", units), stain=stain, lot=of_lot
        )


def by_kind(van: Van) -> list[tuple[str, Sequence[Stock]]]:
    """The shelf by kinds, stain first, in the order in which a job is packed."""
    kinds = dict.fromkeys(("stain", "sealer", *(one.kind for one in van.stock)))
    return [
        (said(f"van-kinds-{_group(kind)}"), mine) for kind in kinds
        if (mine := [one for one in van.stock if one.kind == kind])
    ]  # fmt: skip


def _group(kind: str) -> str:
    return kind if f"van-kinds-{kind}" in words("en") else "other"
