"""The office side in words, for a terminal."""

from __future__ import annotations

from collections.abc import Callable

from farwall.job.office.billing.owed import owed_said
from farwall.job.office.buying import buying_said
from farwall.job.office.hours import hours_said
from farwall.job.office.masking import masked_said
from farwall.job.office.noun import Office
from farwall.job.office.priced import priced_said
from farwall.job.office.quantities import quantities_said

PARTS: dict[str, tuple[str, Callable[[Office, bool], tuple[str, ...]]]] = {
    "price": ("Price", lambda office, _us: priced_said(office.priced)),
    "hours": ("Hours", lambda office, _us: hours_said(office.hours)),
    "masking": ("Masking", lambda office, us: masked_said(office.masked, us=us)),
    "quantities": ("Quantities", lambda office, _us: quantities_said(office.quantities)),
    "due": ("Amounts due", lambda office, _us: owed_said(office.owed)),
    "buying": ("To buy", lambda office, _us: buying_said(office.buying)),
}
"""Name of a part, its head, and its lines; those are told in feet first or in metres first."""


def said(office: Office, parts: tuple[str, ...] = (), *, us: bool = True) -> str:
    """The parts asked for, all where none is; us: feet first. Raises KeyError for no such part."""
    lines: list[str] = []
    for one in parts or tuple(PARTS):
        head, told = PARTS[one]
        lines += [*([""] if lines else []), head]
        lines += [f"  {line}".rstrip() for line in told(office, us)]
    return "\n".join(lines)
