"""The van in a few calm lines."""

from __future__ import annotations

from farwall.facts.van import Condition, Shopping, Van, VanPlan
from farwall.units import KG_PER_LB, ft_from_m, gal_from_l

_WORDS = {"sound": "sound", "watch": "look at it", "no": "NOT for this job"}
_SI = {"l": "L", "kg": "kg"}
NAMES = {
    "ph-strips": "pH strips", "cartridges": "pairs of cartridges", "pads": "pads or brushes",
    "rags": "white rags", "bags": "contractor bags", "gloves": "pairs of gloves",
    "tape": "tape", "film": "masking film", "goggles": "goggles and face shields", "suit": "suits",
    "mops": "mop heads", "drums": "drums", "boots": "pairs of rubber boots",
    "jamb-wrap": "rolls of cling film", "dams": "towels for dams at outside doors",
    "spill-kit": "spill kit", "finish": "floor finish", "cleaner": "cleaner",
    "paper": "masking paper", "plugs": "plugs", "sprayer": "sprayers",
}  # fmt: skip


def said_state(van: Van, conditions: tuple[Condition, ...]) -> str:
    """Every sprayer with its state, then the shelf."""
    lines = []
    for one, state in zip(van.sprayers, conditions, strict=True):
        flow = f", {flow_words(state.flow_l_min)}" if state.flow_l_min else ""
        change = "" if state.flow_change is None else f" ({_since_new(state.flow_change)})"
        low, high = state.uses_left
        left = f"{low} to {high}" if high else "none"
        lines.append(
            f"{one.id} ({one.kind}, {tank_words(one.tank_l)}): {_WORDS[state.word]}; "
            f"{one.uses} job{'s' * (one.uses != 1)} done, {left} left in its seals{flow}{change}"
        )
        lines += [f"  {why}" for why in state.why]
    lines += [
        f"{one.id}: {_of(one.amount, one.unit)} {one.of or NAMES.get(one.kind, one.kind)}"
        + (f", lot {one.lot}" if one.lot else "")
        + (f", good until {one.good_until}" if one.good_until else "")
        for one in van.stock
    ]
    return "\n".join(lines) if lines else "The van is empty."


def _since_new(change: float) -> str:
    return f"{change:+.0%} since new" if abs(change) >= 0.005 else "as when new"


def said_for_job(found: VanPlan) -> str:
    """What to take, what to mind, what is there and what to buy."""
    lines = [sprayers_words(found)]
    lines += [f"Mind: {one}" for one in found.mind]
    lines.append("There is enough of:" if any(not one.buy for one in found.shopping) else "")
    lines += [f"  {thing(one)}" for one in found.shopping if not one.buy]
    lines.append("To buy:" if any(one.buy for one in found.shopping) else "Nothing to buy.")
    lines += [f"  {to_buy(one)}" for one in found.shopping if one.buy]
    return "\n".join(line for line in lines if line)


def sprayers_words(found: VanPlan) -> str:
    """Which sprayer and which spare."""
    if not found.sprayer:
        return "No sound sprayer."
    return f"Take {found.sprayer}; beside it {found.spare or 'NO sound spare'}."


def thing(one: Shopping) -> str:
    """A need that is there, from where."""
    where = f" ({', '.join(one.from_stock)})" if one.from_stock else ""
    mind = f"; {one.mind}" if one.mind else ""
    return f"{_of(one.need.amount, one.need.unit)} {named(one)}{where}{mind}"


def to_buy(one: Shopping) -> str:
    """What has to be bought, of how much."""
    there = f", {amount_words(one.there, one.need.unit)} there" if one.there else ""
    mind = f"; {one.mind}" if one.mind else ""
    needed = amount_words(one.need.amount, one.need.unit)
    of = f" ({needed} needed{there})" if one.there else ""
    return f"{_of(one.buy, one.need.unit)} {named(one)}{of}{mind}"


def _of(amount: float, unit: str) -> str:
    return amount_words(amount, unit) + ("" if unit == "count" else " of")


def named(one: Shopping) -> str:
    """What it is: the stain by its name, all else in trade words."""
    return one.need.name or one.need.of or NAMES.get(one.need.kind, one.need.kind)


def tank_words(litres: float, units: str = "us") -> str:
    """A tank's size: gallons or litres."""
    return f"{gal_from_l(litres):.1f} gal" if units == "us" else f"{litres:.1f} L"


def flow_words(l_min: float, units: str = "us") -> str:
    """What a tip gives in a minute: gallons with litres behind, or litres alone."""
    litres = f"{l_min:.2f} L/min"
    return f"{gal_from_l(l_min):.2f} gal/min ({litres})" if units == "us" else litres


def amount_words(amount: float, unit: str, units: str = "us") -> str:
    """An amount with its unit: gallons, feet, pounds first, or SI alone; or a count."""
    if units == "metric" and unit != "count":
        return f"{amount:.0f} m" if unit == "m" else f"{amount:.1f} {_SI[unit]}"
    if unit == "l":
        return f"{gal_from_l(amount):.2f} gal ({amount:.1f} L)"
    if unit == "m":
        return f"{ft_from_m(amount):.0f} ft ({amount:.0f} m)"
    if unit == "kg":
        return f"{amount / KG_PER_LB:.1f} lb ({amount:.1f} kg)"
    return f"{amount:g}"
