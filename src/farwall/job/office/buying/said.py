"""The shopping list in words."""

from __future__ import annotations

from decimal import ROUND_FLOOR

from farwall.job.office.buying.noun import Bought, Buying, Delivered, There, Way
from farwall.job.van.say import amount_words
from farwall.price.money import amount, figure_said

_TINY = 1e-3
SIZED = {"l": "gal", "m": "ft", "kg": "lb"}


def size_said(size: float, unit: str, units: str = "us") -> str:
    """A container: `5 gal`, `1 L`, `180 ft`; a pack of so many; nothing for a single piece."""
    from farwall.units import KG_PER_LB, ft_from_m, gal_from_l

    if unit == "count":
        return "each" if abs(size - 1) < _TINY else f"pack of {size:g}"
    if units == "metric":
        return f"{size:.3g} {'L' if unit == 'l' else unit}"
    told = {"l": gal_from_l(size), "m": ft_from_m(size), "kg": size / KG_PER_LB}[unit]
    if unit == "l" and told < 0.99:
        return f"{told * 4:.3g} qt"
    return f"{told:.4g} {SIZED[unit]}"


def buying_said(found: Buying) -> tuple[str, ...]:
    """Lines for a terminal: what is there, what is bought by seller, what else could be done."""
    units = found.units
    lines = [there_said(one, units) for one in found.there if one.there > 0 or one.mind]
    for seller in found.sellers:
        lines.append(seller_said(seller, found.currency))
        own = [one for one in found.lines if one.seller == seller.seller]
        lines += [f"  {bought_said(one, units)}" for one in own]
    if not found.lines:
        lines.append("Nothing to buy.")
    lines += [f"No price is known for {one}: it is not in the total." for one in found.unpriced]
    lines.append(total_said(found))
    lines += [way_said(one, found) for one in found.ways[1:]]
    if found.chosen is not None and found.chosen.proof.status == "best" and found.lines:
        lines.append("No list costs less: proven.")
    return (*lines, *found.warnings)


def there_said(one: There, units: str = "us") -> str:
    """What the van has of a line."""
    of = (
        f"{amount_words(one.there, one.unit, units)} of {amount_words(one.needed, one.unit, units)}"
    )
    where = f" ({', '.join(one.from_stock)})" if one.from_stock else ""
    return f"In the van: {one.what}, {of}{where}{''.join(f'; {part}' for part in age_said(one))}"


def age_said(one: There) -> tuple[str, ...]:
    """How old what is there is, and what has to be looked at."""
    opened = (f"opened {one.opened}",) if one.opened else ()
    good = (f"good until {one.good_until}",) if one.good_until else ()
    return (*opened, *good, *((one.mind,) if one.mind else ()))


def bought_said(one: Bought, units: str = "us") -> str:
    """A line of the list."""
    lot = f", lot {one.lot}" if one.lot else ""
    guess = " (a guess)" if one.rank == "guess" else ""
    name = f" ({one.name})" if one.name else ""
    return f"{many_said(one, units)} {one.what}{name}{lot}: {figure_said(one.cost)}{guess}"


def many_said(one: Bought, units: str = "us") -> str:
    """How many of which size: `2 × 5 gal`, `3 packs of 25`, `4`."""
    if one.unit == "count":
        if abs(one.size - 1) < _TINY:
            return f"{one.count}"
        return f"{one.count} pack{'s' * (one.count > 1)} of {one.size:g}"
    return f"{one.count} × {size_said(one.size, one.unit, units)}"


def seller_said(one: Delivered, currency: str) -> str:
    """A seller with what is paid there."""
    name = one.seller or "Anywhere"
    if amount(one.delivery):
        goods, delivery = figure_said(one.goods), figure_said(one.delivery)
        return f"{name}: goods {goods}, delivery {delivery} {currency}"
    return f"{name}: {figure_said(one.goods)} {currency}"


def total_said(found: Buying) -> str:
    """The total, and how much of it is guessed."""
    said = f"In all {figure_said(found.total)} {found.currency}"
    if amount(found.guessed):
        said += f", of which {figure_said(found.guessed)} rests on invented prices (rank: guess)"
    return said


def way_said(way: Way, found: Buying) -> str:
    """Another way beside the cheapest, by what it costs more."""
    if way.aim == "plenty":
        said = (
            f"{way.spare_percent:g} % more of everything that is used up: {figure_said(way.total)}"
        )
    else:
        said = f"Fewest left over: {figure_said(way.total)}"
    more = f", {figure_said(way.more)} more" if amount(way.more) else ", the same"
    often = jobs_said(way, found)
    return f"{said}{more}{often}"


def jobs_said(way: Way, found: Buying) -> str:
    """When plenty pays: how often it has to spare a second trip."""
    one_in = one_job_in(way, found)
    if way.aim != "plenty" or one_in is None:
        return ""
    trip = figure_said(found.second_trip)
    if one_in < 1:
        return f"; that is more than a second trip ({trip})"
    if one_in == 1:
        return f"; it pays only where it saves a second trip ({trip}) on nearly every job"
    return f"; it pays where it saves a second trip ({trip}) on one job of {one_in}"


def one_job_in(way: Way, found: Buying) -> int | None:
    """Of how many jobs one has to be spared a second trip so that plenty pays; 0: never."""
    more = amount(way.more)
    if not found.second_trip or more <= 0:
        return None
    return int((amount(found.second_trip) / more).to_integral_value(rounding=ROUND_FLOOR))
