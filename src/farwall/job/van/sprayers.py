"""Which sprayer to take, which to carry beside it, and which to leave."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from farwall.facts.kept_gear import SPRAYER_LASTS
from farwall.facts.van import Condition, Van, VanSprayer
from farwall.units import gal_from_l

WORN_TIP = 0.10
"""A tip is replaced when it gives so much more than when it was new [nozzle-flow]."""
ODD_FLOW = 0.10
"""Two sprayers that differ by more lay two shades; so does a flow this far from the wanted one:
a guess, from the same tenth."""


def condition(one: VanSprayer) -> Condition:
    """The state of a sprayer, from its uses since its seals were renewed and its measured flow."""
    low, high = SPRAYER_LASTS[one.kind]
    uses = one.uses - min(one.seals_at, one.uses)
    left = (max(low - uses, 0), max(high - uses, 0))
    flow = one.flows[-1].l_min if one.flows else None
    change = one.flows[-1].l_min / one.flows[0].l_min - 1 if len(one.flows) > 1 else None
    against: list[str] = []
    mind: list[str] = []
    if one.unsound:
        against.append(one.unsound)
    if left[1] == 0:
        against.append(f"its seals have done {uses} jobs; they last {low} to {high}: renew them")
    elif left[0] == 0:
        mind.append(f"its seals have done {uses} jobs of {low} to {high}: this may be their last")
    if change is not None and change > WORN_TIP:
        against.append(f"its tip gives {_percent(change)} more than when new: a new tip")
    elif change is not None and change < -WORN_TIP:
        mind.append(f"its tip gives {_percent(-change)} less than at first: clean tip and filter")
    if flow is None:
        mind.append("its tip was never measured: one minute into a jug")
    word = "no" if against else "watch" if mind else "sound"
    return Condition(one.id, word, tuple(against + mind), left, flow, change)  # type: ignore[arg-type]


def chosen(
    van: Van, *, tank_l: float, wanted_l_min: Mapping[str, float], us: bool = True
) -> tuple[str, str, tuple[str, ...]]:
    """The sprayer to take, the spare, and what to mind; empty names where there is none.

    tank_l: what the plan reckons a tank to hold · wanted_l_min: by the number of the coat, spray
    rate times litres a square metre · us: gallons first. Taken are sound ones before those to
    watch; of the tank that was planned; as near as can be to one another in flow, so that a
    change in mid-field is not seen.
    """
    state = {one.id: condition(one) for one in van.sprayers}
    fit = [one for one in van.sprayers if state[one.id].word != "no"]
    fit.sort(key=lambda one: _order(one, state[one.id], tank_l))
    if not fit:
        return "", "", ("No sprayer in the van is sound: buy two alike.",)
    first = fit[0]
    rest = sorted(fit[1:], key=lambda one: (_apart(first, one), _order(one, state[one.id], tank_l)))
    spare = rest[0] if rest else None
    mind = [f"{first.id}: {why}." for why in state[first.id].why]
    if spare is None:
        mind.append("There is no sound spare: one that fails in mid-field leaves a seam. Buy one.")
    elif _apart(first, spare) > ODD_FLOW:
        mind.append(
            f"{first.id} and {spare.id} differ by {_percent(_apart(first, spare))} in flow or "
            "tank: a change in mid-field may be seen; change at a stop line."
        )
    if abs(first.tank_l - tank_l) > 0.05 * tank_l:
        mind.append(
            f"{first.id} holds {_volume(first.tank_l, us=us)} and the plan fills "
            f"{_volume(tank_l, us=us)}: plan with its tank."
        )
    mind += _flow_words(first, wanted_l_min, us=us)
    return first.id, spare.id if spare is not None else "", tuple(mind)


def _flow_words(one: VanSprayer, wanted_l_min: Mapping[str, float], *, us: bool) -> Sequence[str]:
    if not one.flows:
        return []
    flow = one.flows[-1].l_min
    return [
        f"{one.id} gives {_flow(flow, us=us)} where coat {coat} wants {_flow(wanted, us=us)}: "
        f"walk {'faster' if flow > wanted else 'slower'} ({_percent(flow / wanted)} of the "
        "planned pace), or another tip."
        for coat, wanted in wanted_l_min.items()
        if abs(flow / wanted - 1) > ODD_FLOW
    ]


def _percent(share: float) -> str:
    return f"{100 * share:.0f} %"


def _flow(l_min: float, *, us: bool) -> str:
    metric = f"{l_min:.2f} L/min"
    return f"{gal_from_l(l_min):.2f} gal/min ({metric})" if us else metric


def _volume(litres: float, *, us: bool) -> str:
    metric = f"{litres:.1f} L"
    return f"{gal_from_l(litres):.1f} gal ({metric})" if us else metric


def _order(one: VanSprayer, state: Condition, tank_l: float) -> tuple[bool, bool, int, str]:
    return (state.word != "sound", abs(one.tank_l - tank_l) > 0.05 * tank_l, one.uses, one.id)


def _apart(one: VanSprayer, other: VanSprayer) -> float:
    """How far two sprayers differ: the greater of flow and tank, as a share; unmeasured is far."""
    tank = abs(other.tank_l / one.tank_l - 1)
    if not one.flows or not other.flows:
        return max(tank, 2 * ODD_FLOW if one.tip != other.tip else 0.0)
    return max(tank, abs(other.flows[-1].l_min / one.flows[-1].l_min - 1))
