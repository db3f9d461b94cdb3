"""The strength of the mixes in lines for a terminal."""

from __future__ import annotations

from farwall.facts.numbered import by_number
from farwall.job.acid_day.strength.noun import CoatStrength, Ends, Strength, TubPour
from farwall.units import f_from_c, gal_from_l


def strength_said(part: Strength) -> tuple[str, ...]:
    """Coats with their strength, tubs in the order of pouring, then what is to be minded."""
    coats = [one.coat for one in part.coats]
    lines = [line for coat in part.coats for line in _coat(coat, by_number(coats, coat.coat))]
    lines += map(_tub, part.tubs)
    warnings = [w for coat in part.coats for w in coat.warnings] + list(part.warnings)
    order = [part.order] if part.order else []
    return (*lines, *order, *(f"Mind: {words}" for words in dict.fromkeys(warnings)))


def _coat(coat: CoatStrength, number: str) -> list[str]:
    acid = coat.added_acid_fl_oz_per_gal
    with_acid = f", {acid:g} fl oz/gal of muriatic acid added" if acid else ""
    head = f"coat {number}: {coat.stain_name} at {coat.cut}{with_acid}"
    told = coat.figures
    if told is None or coat.neat_percent is None:
        return [f"{head}: strength unknown."]
    warm = f"{told.tub_c.high:.0f} °C ({f_from_c(told.tub_c.high):.0f} °F)"
    strong = f"{span(told.tub_percent)} % HCl (neat {span(coat.neat_percent)} %)"
    laid = f"{span(told.mol_per_l)} mol/L, lays {span(told.mol_per_m2)} mol/m²"
    over = f"just over it {span(told.over_liquid_ppm)} ppm HCl at rest, were it plain acid"
    lines = [
        f"{head}: {strong}, {laid}.",
        f"  The tub gets to {warm} at most from {coat.start_c:.0f} °C; {over}.",
    ]
    if told.times_by_salts is not None:
        lines.append(f"  Its salts may make {span(told.times_by_salts)} times that (a guess).")
    if told.times_by_acid is not None:
        lines.append(
            f"  The cut alone is {span(told.cut_percent)} %: the added acid makes "
            f"{span(told.times_by_acid)} times the vapour."
        )
    return lines


def _tub(tub: TubPour) -> str:
    acid = f", then {tub.acid_l:.2f} L of muriatic acid" if tub.acid_l else ""
    return (
        f"{tub.mix}: {tub.water_l:.2f} L water ({gal_from_l(tub.water_l):.2f} gal), then "
        f"{tub.stain_l:.2f} L stain ({gal_from_l(tub.stain_l):.2f} gal){acid}."
    )


def span(ends: Ends) -> str:
    """`5.1 to 8.9`; one figure where both ends print alike."""
    low, high = figure(ends.low), figure(ends.high)
    return low if low == high else f"{low} to {high}"


def figure(value: float) -> str:
    """Two figures that count, thousands parted."""
    if value >= 100:
        return f"{round(value, 2 - len(str(int(value)))):,.0f}"
    if value >= 10:
        return f"{value:.0f}"
    return f"{value:.2g}" if value else "0"
