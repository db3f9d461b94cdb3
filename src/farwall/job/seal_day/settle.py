"""The job as its sealer sees it: coats of sealer, its tools, its containers; nothing left open."""

from __future__ import annotations

from dataclasses import replace

from farwall.air.sealers import SealerLimits
from farwall.evidence import Rank
from farwall.facts import default_table as table
from farwall.facts.default_table import Default
from farwall.facts.job import Coat, Container, Job, Prices, Stain
from farwall.facts.ledger import Ledger
from farwall.facts.plan import Ground, PlanTools
from farwall.facts.sealer import Sealer
from farwall.facts.settled import SettledCoat, SettledJob
from farwall.job.seal_day.films import GUESS, PRACTICE, SHEET, film_of
from farwall.units import L_PER_US_GAL, M2_PER_FT2, M_PER_IN

NEAT = "neat"
SEALER_ID = "sealer"
_PRICES_GAL = ((1.0, "45.00"), (5.0, "200.00"))


def _tool(name: str, unit: str, ends: tuple[float, float, float], source: str) -> Default:
    usual, low, high = ends
    rank = Rank.PRACTICE if source == PRACTICE else Rank.GUESS
    return Default(f"sealer.tools.{name}", unit, usual, rank, source, low=low, high=high)


TOOLS = {
    "tray_l": _tool("tray_l", "L", (L_PER_US_GAL, 1.0, 2 * L_PER_US_GAL), GUESS),
    "band_m": _tool("band_m", "m", (36 * M_PER_IN, 18 * M_PER_IN, 48 * M_PER_IN), GUESS),
    "lay_m2_min": _tool(
        "lay_m2_min", "m2/min",
        (1000 / 60 * M2_PER_FT2, 600 / 60 * M2_PER_FT2, 1300 / 60 * M2_PER_FT2), PRACTICE,
    ),
    "walk_m_min": _tool("walk_m_min", "m/min", (40.0, 25.0, 60.0), GUESS),
    "refill_min": _tool("refill_min", "min", (2.0, 1.0, 4.0), GUESS),
    "swap_min": _tool("swap_min", "min", (0.5, 0.3, 1.0), GUESS),
    "overlap_m": _tool("overlap_m", "m", (4 * M_PER_IN, 2 * M_PER_IN, 6 * M_PER_IN), GUESS),
    "reach_m": _tool("reach_m", "m", (1.9, 1.5, 2.2), GUESS),
}  # fmt: skip
"""An 18 in applicator on a pole, two widths a band; the quick end of 300 to 1,000 ft² a man-hour,
which count cutting in and setting up as well (common practice, no source)."""


def settled_for_sealer(job: Job, settled: SettledJob, limits: SealerLimits) -> SettledJob:
    """The settled job with its coats of sealer in the place of its coats of stain.

    What was read of house, slab and rooms stays. Coats are `seal-1`, `seal-2`, …, neat.
    """
    ledger, sealer = Ledger(), job.sealer
    coverage, rank = _coverage(ledger, sealer)
    stain = Stain(SEALER_ID, sealer.name or (sealer.type or "sealer"))
    spread = ledger.settle(job.wishes.spread_percent, table.SPREAD_UNSAMPLED_PERCENT)
    coats = tuple(
        SettledCoat(
            coat=Coat(f"seal-{number}", SEALER_ID, NEAT, coverage),
            stain=stain,
            cut=NEAT,
            m2_per_l=coverage,
            l_per_m2=1.0 / coverage,
            rank=rank.value,
            spread_percent=spread,
        )
        for number in range(1, limits.coats + 1)
    )
    told_tools = {name: getattr(sealer.tools, name) for name in TOOLS}
    tools = {name: ledger.settle(told_tools[name], TOOLS[name]) for name in TOOLS}
    shelf = tuple(Container(one.size_l, one.price) for one in sealer.containers)
    for size_gal, price in () if shelf else _PRICES_GAL:
        ledger.note(
            f"container of {size_gal:g} gal of sealer",
            price, job.prices.currency, Rank.GUESS, "invented price",
        )  # fmt: skip
    prices = Prices(
        job.prices.currency,
        shelf or tuple(Container(gal * L_PER_US_GAL, price) for gal, price in _PRICES_GAL),
    )
    named = job.wishes
    sealing = replace(
        job,
        stains=(stain,),
        coats=tuple(one.coat for one in coats),
        samples=(),
        prices=prices,
        wishes=replace(named, bands="best", bands_in={}),
    )
    kept = [one for one in settled.grounds if _stays(one)]
    return replace(
        settled,
        job=sealing,
        tools=PlanTools(
            tank_l=tools["tray_l"],
            band_m=tools["band_m"],
            spray_m2_min=tools["lay_m2_min"],
            walk_m_min=tools["walk_m_min"],
            refill_min=tools["refill_min"],
            swap_min=tools["swap_min"],
            overlap_m=tools["overlap_m"],
            reach_m=tools["reach_m"],
        ),
        stains=(stain,),
        coats=coats,
        spread_percent=spread,
        containers=prices.containers,
        grounds=(*ledger.grounds, *kept),
        warnings=(),
    )


def _stays(one: Ground) -> bool:
    """Whether a ground of the stain's plan bears on the sealer too: readings, and a start nobody
    told."""
    stand_in = one.name == "starts_at" and one.rank == Rank.GUESS.value
    return stand_in or one.name.startswith(("survey.", "wishes.certainty"))


def _coverage(ledger: Ledger, sealer: Sealer) -> tuple[float, Rank]:
    """Square metres a litre covers, and its rank."""
    if sealer.m2_per_l is not None:
        ledger.note("sealer.m2_per_l", sealer.m2_per_l, "m2/L", Rank.MEASURED, SHEET)
        return sealer.m2_per_l, Rank.MEASURED
    film = film_of(sealer)
    ledger.note("sealer.m2_per_l", film.m2_per_l, "m2/L", Rank.PRACTICE, PRACTICE)
    return film.m2_per_l, Rank.PRACTICE
