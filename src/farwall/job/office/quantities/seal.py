"""Sealer by coat and floor finish by coat, without the seal day's plan of bands. Pure."""

from __future__ import annotations

from dataclasses import replace

from farwall.air.sealers import limits_of
from farwall.evidence import Rank
from farwall.facts.default_table import OUR_GUESS, PRACTICE
from farwall.facts.quantities import Quantity, Share
from farwall.facts.settled import SettledJob
from farwall.facts.van import StockKind
from farwall.job.acid_day.neutralising.floor import washed_fields
from farwall.job.office.quantities.basis import Basis, line
from farwall.job.office.quantities.practice import (
    FINISH_COATS,
    FINISH_FT2_PER_GAL,
    LEFT_WITH_OWNER_L,
)
from farwall.job.seal_day.films import SHEET, film_of
from farwall.job.seal_day.settle import settled_for_sealer
from farwall.mix.thirst import first_belief
from farwall.units import m2_per_l_from_ft2_per_gal as m2_per_l

_FINISH = "floor finish"
_NO_FILM = "penetrating"


def seal_lines(basis: Basis) -> tuple[Quantity, ...]:
    """Sealer, finish on top of it where it leaves a film, and what lays them."""
    sealer = basis.ground.job.sealer
    settled = settled_for_sealer(basis.ground.job, basis.settled, limits_of(sealer))
    made = [_sealer(basis, settled)]
    if sealer.type not in {_FINISH, _NO_FILM}:
        made.append(_finish(basis))
    coats = len(settled.coats)
    made.append(
        line(
            "other",
            "sealer applicators",
            (coats, coats, coats + 1),
            f"One for each coat, {coats}, and a spare.",
            id_="applicators",
            ready=coats + 1,
            rank=Rank.GUESS,
            source=OUR_GUESS,
            of="sealer applicators",
        )
    )
    return tuple(made)


def lapped(settled: SettledJob) -> float:
    """How much more than its area a floor takes, for each strip laps onto the one before."""
    return 1 + settled.tools.overlap_m / settled.tools.band_m


def _sealer(basis: Basis, settled: SettledJob) -> Quantity:
    """As the seal day has it: usual coverage, laps, and its certainty shared by the coats."""
    sealer, coats = basis.ground.job.sealer, settled.coats
    each = _coat(basis, settled)
    low, likely, high, ready = (
        one * len(coats) for one in (each.low, each.likely, each.high, each.ready)
    )
    told = sealer.m2_per_l is not None
    area = sum(_areas(basis))
    rule = (
        f"Coats {len(coats)}, on {basis.area_said(area)} at "
        f"{basis.coverage_said(coats[0].m2_per_l)}, laps of {(lapped(settled) - 1) * 100:.0f} % "
        f"counted; ready so that it is enough {settled.certainty_percent:g} times in 100. The "
        "seal day reckons it band by band."
    )
    kind: StockKind = "finish" if sealer.type == _FINISH else "sealer"
    made = line(
        kind, sealer.name or sealer.type or "sealer", (low, likely, max(high, ready)), rule,
        unit="l", ready=ready, rank=Rank.GUESS,
        source=f"{SHEET if told else PRACTICE}, {OUR_GUESS}",
        of=sealer.name or sealer.type or "",
    )  # fmt: skip
    return replace(made, shares=tuple(replace(each, coat=one.id) for one in coats))


def _areas(basis: Basis) -> list[float]:
    """Of the fields of one coat: the floor that is sealed."""
    found = [field.area_m2 for field in washed_fields(basis.ground.plan)]
    return found or [basis.area_m2]


def _coat(basis: Basis, settled: SettledJob) -> Share:
    """Litres of one coat: by its sheet, give and take the floor's thirst, else as its type goes."""
    areas, coverage = _areas(basis), settled.coats[0].m2_per_l
    litres = [one * lapped(settled) / coverage for one in areas]
    likely = sum(litres)
    belief = first_belief(settled.spread_percent)
    chance_dry = (1 - settled.certainty_percent / 100) / len(settled.coats)
    ready = max(belief.enough_for_all_l(litres, chance_dry=chance_dry), likely)
    if basis.ground.job.sealer.m2_per_l is not None:
        low, high = (belief.enough_for_all_l(litres, chance_dry=one) for one in (0.9, 0.1))
    else:
        least, usual, most = film_of(basis.ground.job.sealer).ft2_per_gal
        low, high = likely * usual / most, likely * usual / least
    return Share(min(low, likely), likely, max(high, likely), ready)


def _finish(basis: Basis) -> Quantity:
    """Two to four thin coats at hand-over, and a quart left with the owner."""
    thick, usual, thin = (m2_per_l(one) for one in FINISH_FT2_PER_GAL)
    few, coats, many = FINISH_COATS
    area = basis.area_m2
    likely = area * coats / usual
    ready = area * coats / thick + LEFT_WITH_OWNER_L
    rule = (
        f"{coats} thin coats on {basis.area_said()} at {basis.coverage_said(usual)}, up to {many}; "
        f"ready at {basis.coverage_said(thick)}, and {basis.said(LEFT_WITH_OWNER_L, 'l')} for the "
        "owner."
    )
    high = max(area * many / thick, ready)
    made = line(
        "finish", "floor finish", (area * few / thin, likely, high), rule, unit="l", ready=ready
    )
    each = ready / coats
    shares = tuple(
        Share(area / thin, area / usual, area / thick, each, coat=f"finish-{number}")
        for number in range(1, coats + 1)
    )
    return replace(made, shares=shares)
