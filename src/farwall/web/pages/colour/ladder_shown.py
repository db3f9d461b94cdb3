"""The ladder as its page shows it: swatches for each state, a paragraph for each rung."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from farwall.colour.swatch import hex_of_lab, in_words
from farwall.facts.job import Job
from farwall.facts.samples import Look, State
from farwall.job.colour.ladder import Apart, Ladder, Rung
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.papers.words import coverage_words
from farwall.units import M2_PER_FT2, f_from_c
from farwall.web.pages.when import date_told
from farwall.web.words import said

SHOWN_FIRST: tuple[State, ...] = ("clean wet", "sealed", "dry")
"""In the order in which they weigh: what is next told of, the truth, what means little."""


@dataclass(frozen=True)
class Cell:
    """A rung in one state. fill: its colour; empty where it was not looked at."""

    name: str
    cut: str
    fill: str
    lab: str
    words: str
    trust: str
    photo: str
    standard: bool


@dataclass(frozen=True)
class StateShown:
    """A state: its rows, weak to strong, a cell or None for each coat; what is told under it."""

    key: str
    rows: tuple[tuple[Cell | None, ...], ...]
    steps: tuple[str, ...]
    scale: str
    seen: int


@dataclass(frozen=True)
class RungShown:
    """What belongs to a sample, in sentences."""

    name: str
    laid: str
    figures: tuple[str, ...]
    standard: bool


def states_shown(ladder: Ladder) -> list[StateShown]:
    """The three states, apart."""
    return [_state(ladder, state) for state in SHOWN_FIRST]


def rungs_shown(ladder: Ladder, job: Job, units: Units) -> list[RungShown]:
    """Every rung with all that was told of it."""
    rooms = {room.id: room.label for room in job.floor.rooms}
    stains = {one.id: one.name or one.id for one in job.stains}
    return [
        RungShown(
            one.name,
            _laid(one, stains),
            tuple(_figures(one, rooms, units)),
            one.name == ladder.standard,
        )
        for one in ladder.rungs
    ]


def state_key(state: State) -> str:
    """The key of a state in the tables of words."""
    return state.replace(" ", "-")


def look_trust(look: Look) -> str:
    """How far a look is to be trusted, and how much L varies in it."""
    told = (
        said("ladder-guess")
        if look.error_de is None
        else said("ladder-off", de=f"{look.error_de:.1f}")
    )
    if look.spread_lightness is None:
        return told
    return f"{told} · {said('ladder-spread', spread=f'{look.spread_lightness:.1f}')}"


def lab_told(look: Look) -> str:
    """`L 41.0  a 9.0  b 20.0`."""
    l_, a, b = look.lab
    return f"L {l_:.1f} · a {a:.1f} · b {b:.1f}"


def look_words(look: Look) -> str:
    """`dark brown`."""
    light, hue = in_words(look.lab)
    return said(
        "ladder-colour", light=said(f"ladder-light-{light.replace(' ', '-')}"),
        hue=said(f"ladder-hue-{hue}"),
    )  # fmt: skip


def _state(ladder: Ladder, state: State) -> StateShown:
    wide = max(ladder.most_coats, 1)
    rows = [
        tuple(_cell(one, state, ladder) for one in row.rungs) + (None,) * (wide - len(row.rungs))
        for row in ladder.rows
    ]
    rows += [(_cell(one, state, ladder), *((None,) * (wide - 1))) for one in ladder.loose]
    if state == "dry":
        rows = [row for row in rows if any(cell is not None and cell.fill for cell in row)]
    scale = ladder.scales[state]
    told = [
        step.name if step.darker is None
        else said("ladder-step", name=step.name, darker=f"{step.darker:.1f}")
        for step in scale
    ]  # fmt: skip
    return StateShown(
        key=state_key(state),
        rows=tuple(rows),
        steps=tuple(_apart(one) for one in ladder.apart if one.state == state),
        scale=", ".join(told) if len(scale) > 1 else "",
        seen=len(scale),
    )


def _cell(rung: Rung, state: State, ladder: Ladder) -> Cell:
    look = rung.look(state)
    cut = rung.cuts[-1] if rung.cuts else rung.sample.cut or ""
    standard = rung.name == ladder.standard
    if look is None:
        return Cell(rung.name, cut, "", "", "", "", "", standard)
    return Cell(
        rung.name, cut, hex_of_lab(look.lab), lab_told(look), look_words(look), look_trust(look),
        look.photo, standard,
    )  # fmt: skip


def _apart(one: Apart) -> str:
    key = "ladder-apart-coat" if one.by == "coat" else "ladder-apart-cut"
    way = said(
        "ladder-darker" if one.darker >= 0 else "ladder-lighter", by=f"{abs(one.darker):.1f}"
    )
    if one.clear is None:
        trust = said("ladder-apart-guess")
    else:
        trust = said("ladder-apart-clear" if one.clear else "ladder-apart-blurred",
                     de=f"{one.blur_de or 0.0:.1f}")  # fmt: skip
    return said(key, one=one.one, other=one.other, way=way, de=f"{one.de:.1f}", trust=trust)


def _laid(one: Rung, stains: dict[str, str]) -> str:
    """What was laid, its stain by the name on its tin."""
    if one.coats is None:
        return said("ladder-over-unknown", cut=one.sample.cut or "?", over=one.sample.over or "?")
    own = one.coats[-1]
    stain = stains.get(own.stain or "", own.stain) or "?"
    told = said("ladder-cut", cut=own.cut or "?", stain=stain)
    if one.beneath:
        beneath = [
            said("ladder-beneath", name=name, cut=made.cut or "?")
            for name, made in zip(one.beneath, one.coats, strict=False)
        ]
        return said("ladder-over", told=told, beneath=", ".join(beneath))
    return told


def _figures(one: Rung, rooms: dict[str, str], units: Units) -> Iterator[str]:
    own = one.sample
    if own.room:
        yield said("ladder-in", room=rooms.get(own.room, own.room))
    if own.area_m2 is not None:
        yield said("ladder-area", area=area_told(own.area_m2, units))
    if one.drank is not None:
        by = said(f"ladder-by-{one.drank.by.replace(' ', '-')}")
        yield said("ladder-covered", covered=coverage_words(one.drank.m2_per_l, units), by=by)
    if one.stain_l_per_m2 is not None:
        key = "ladder-dose-all" if one.beneath else "ladder-dose"
        yield said(key, dose=dose_told(one.stain_l_per_m2, units))
    yield from _times(one)
    yield from _weather(one, units)
    yield from _washed(one)
    if own.sealer:
        yield said("ladder-sealed-with", sealer=own.sealer)
    if own.verdict:
        yield said("ladder-verdict", verdict=said(f"pick-verdict-{own.verdict}"))
    if own.approved_by:
        yield said("ladder-signed", who=own.approved_by, on=day_of(own.approved_on))


def _times(one: Rung) -> Iterator[str]:
    own = one.sample
    for key, value in (("sheen", own.sheen_loss_min), ("dry", own.dry_min)):
        if value is not None:
            yield said(f"ladder-{key}-after", min=f"{value:g}")
    if own.dwell_h is not None:
        yield said("ladder-dwell", h=f"{own.dwell_h:.1f}")


def _weather(one: Rung, units: Units) -> Iterator[str]:
    own = one.sample
    told = [
        said("ladder-slab-was", c=warm_told(own.slab_c, units)) if own.slab_c is not None else "",
        said("ladder-air-was", c=warm_told(own.air_c, units)) if own.air_c is not None else "",
        said("ladder-damp", rh=f"{own.rh_percent:g}") if own.rh_percent is not None else "",
        said("ladder-drop", s=f"{own.drop_s:g}") if own.drop_s is not None else "",
    ]
    if any(told):
        yield ", ".join(filter(None, told))


def _washed(one: Rung) -> Iterator[str]:
    own = one.sample
    told = [
        said("ladder-scrubs", n=own.scrubs) if own.scrubs is not None else "",
        said("ladder-ph", before=_ph(own.before_ph), after=_ph(own.after_ph))
        if own.before_ph is not None or own.after_ph is not None
        else "",
        said(f"ladder-rag-{own.rag}") if own.rag else "",
    ]
    if any(told):
        yield ", ".join(filter(None, told))


def _ph(value: float | None) -> str:
    return "?" if value is None else f"{value:g}"


def dose_told(l_per_m2: float, units: Units) -> str:
    """Stain, not mix, on the floor."""
    ml = 1000 * l_per_m2
    return f"{ml * M2_PER_FT2:.1f} mL/ft²" if units == "us" else f"{ml:.0f} mL/m²"


def area_told(area_m2: float, units: Units) -> str:
    """How large a square is."""
    return f"{area_m2 / M2_PER_FT2:.1f} ft²" if units == "us" else f"{area_m2:.2f} m²"


def warm_told(value_c: float, units: Units) -> str:
    """Degrees."""
    return f"{f_from_c(value_c):.0f} °F" if units == "us" else f"{value_c:.1f} °C"


def day_of(text: str) -> str:
    """A day in words; empty where none is told."""
    try:
        return date_told(date.fromisoformat(text))
    except ValueError:
        return text
