"""An explanation in a few calm lines."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from farwall.job.explained import Explained, OrderFigures, Place
from farwall.units import ft_from_m

_FEW = 12


def said_why(found: Explained, *, us: bool) -> str:
    """Why this order; then, beside it, the one that was asked for; then why each stop line.

    us: walks in feet.
    """
    lines = ["Why this order:"]
    lines += [f"  {_place(place)}" for place in found.places]
    if found.proof is not None:
        lines.append(f"  {found.proof.what}")
    if found.asked is not None:
        lines += _asked(found.best, found.asked, us=us)
    else:
        lines += [f"What it comes to: {_sums(found.best, us=us)}."]
    lines.append("Stop lines inside the house:")
    for stop in found.stops:
        one, two = (" + ".join(rooms) for rooms in stop.between)
        another = ""
        if stop.another is not None and stop.another_share is not None:
            another = f" At {stop.another_name} instead: {100 * stop.another_share:.0f} %."
        name = stop.name[0].upper() + stop.name[1:]
        lines.append(f"  {name}, {one} | {two}: {stop.what}{another}")
    return "\n".join(lines)


def _place(place: Place) -> str:
    rooms = " + ".join(place.rooms)
    shut = [one for one in place.others if one.why == "shut in"]
    line = f"{place.place}. {rooms}, {100 * place.share:.0f} % of its budget: {place.decided}"
    if shut and len(shut) < len(place.others):
        line += f"; not yet {_some(' + '.join(one.rooms) for one in shut)}, others must get out"
    worse = [one for one in place.others if one.why == "margin"]
    if worse:
        told = [f"{' + '.join(one.rooms)} {100 * (one.worst_share or 0):.0f} %" for one in worse]
        line += f" ({_some(told)})"
    return line + "."


def _some(words: Iterable[str]) -> str:
    told = list(words)
    return ", ".join(told[:3]) + (f" and {len(told) - 3} more" if len(told) > 3 else "")


def _asked(best: OrderFigures, asked: OrderFigures, *, us: bool) -> list[str]:
    named = ", ".join(" + ".join(rooms) for rooms in asked.rooms)
    lines = [f"Your order: {named}."]
    if asked.shut_in:
        lines.append("  It shuts somebody in:")
        return lines + [f"    {one}" for one in asked.shut_in[:_FEW]]
    if asked.faults:
        lines.append("  Replayed, the checker finds:")
        lines += [f"    {one}" for one in asked.faults[:_FEW]]
    else:
        lines.append("  Replayed, nobody steps on wet stain and no edge outlives its time.")
    lines.append(f"  It comes to {_sums(asked, us=us)}.")
    lines.append(f"  The best comes to {_sums(best, us=us)}.")
    lines += _fields(best, asked)
    return lines


def _sums(one: OrderFigures, *, us: bool) -> str:
    walked_m = one.walked_m or 0.0
    walked = f"{ft_from_m(walked_m):,.0f} ft" if us else f"{walked_m:,.0f} m"
    return (
        f"{one.minutes:.0f} min, {walked} walked, {one.refills_in_the_open} refills in the open, "
        f"{len(one.stop_lines)} stop lines, least to spare {one.least_margin_min:.1f} min"
    )


def _fields(best: OrderFigures, asked: OrderFigures) -> Sequence[str]:
    """Fields whose oldest edge differs by more than the checker can tell."""
    before = {(one.id.split(".")[0], one.rooms): one for one in best.fields}
    lines = []
    for one in asked.fields:
        old = before.get((one.id.split(".")[0], one.rooms))
        if old is not None and abs(old.peak_age_min - one.peak_age_min) > 0.05:
            lines.append(
                f"  {one.number} {' + '.join(one.rooms)}: oldest edge {one.peak_age_min:.1f} min "
                f"instead of {old.peak_age_min:.1f}, {one.margin_min:.1f} to spare."
            )
    return lines
