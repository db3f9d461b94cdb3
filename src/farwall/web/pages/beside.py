"""Two plans side by side in words: the one before a changed fact, and the one with it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import datetime, timedelta
from typing import Any

from farwall.facts.plan import Plan
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.papers.words import volume
from farwall.store.book import Book
from farwall.web.pages.fact_form import facts_in_words, version_in_words
from farwall.web.pages.figures import BEFORE, figures_of, noted
from farwall.web.pages.moment_words import named
from farwall.web.pages.shown import Shown, State
from farwall.web.words import said

_RARE = 0.001


@dataclass(frozen=True)
class Row:
    """One figure of both plans."""

    what: str
    before: str
    now: str


@dataclass(frozen=True)
class Beside:
    """Both plans: their versions, their facts in words, a row for each figure."""

    before: int
    now: int
    before_told: str
    now_told: str
    rows: tuple[Row, ...]


def sums_of(plan: Plan) -> dict[str, Any]:
    """What is kept of a plan, beside its figures, to be told against the next one."""
    chances = plan.chances
    return {
        "litres": round(sum(m.stain_l + m.water_l + m.acid_l for m in plan.mixes), 3),
        "tightest": list(figures_of(plan).tightest),
        "dies": chances.any_edge_dies if chances is not None else None,
        "short": chances.mix_short if chances is not None else None,
    }


def plans_beside(book: Book, state: State) -> Beside | None:
    """The plan of the facts before and the one shown; None where there is only one."""
    before = book.document(BEFORE, state.id)
    shown = state.shown
    if before is None or shown is None or not state.fresh or "litres" not in before:
        return None
    if before["facts"] != state.version - 1:
        return None
    told = version_in_words(book, state.id, before["facts"])
    return beside({**before, "told": told}, shown)


def beside(before: Mapping[str, Any], shown: Shown) -> Beside:
    """Both in words, from what was kept of the one before."""
    told = facts_in_words(shown.job)
    now = noted(shown.figures, version=shown.version, starts_at=shown.plan.starts_at, told=told)
    now |= sums_of(shown.plan)
    rows = [
        Row(said(f"beside-{key}"), tell(before, shown.units), tell(now, shown.units))
        for key, tell in _ROWS.items()
    ]
    return Beside(before["facts"], shown.version, before["told"], told, tuple(rows))


def _spare(note: Mapping[str, Any], _: Units) -> str:
    if note["spare_min"] < 0:
        return said("beside-late", rooms=named(note["tightest"]), late=f"{-note['spare_min']:.1f}")
    return said("beside-to-spare", rooms=named(note["tightest"]), spare=f"{note['spare_min']:.1f}")


def _fit(note: Mapping[str, Any], _: Units) -> str:
    return said("beside-of", fit=note["fit"], fields=note["fields"])


def _ends(note: Mapping[str, Any], units: Units) -> str:
    ends = datetime.fromisoformat(note["starts_at"]) + timedelta(minutes=note["ends_min"])
    hour = ends.hour if units == "metric" else (ends.hour - 1) % 12 + 1
    return f"{hour}:{ends.minute:02d}"


def _litres(note: Mapping[str, Any], units: Units) -> str:
    return volume(note["litres"], units)


def _chance(key: str, note: Mapping[str, Any]) -> str:
    share = note[key]
    if share is None:
        return said("beside-unknown")
    return said("under-01") if share < _RARE else f"{100 * share:.1f}\u00a0%"


_ROWS: dict[str, Callable[[Mapping[str, Any], Units], str]] = {
    "fit": _fit,
    "spare": _spare,
    "ends": _ends,
    "litres": _litres,
    "dies": lambda note, _: _chance("dies", note),
    "short": lambda note, _: _chance("short", note),
}
