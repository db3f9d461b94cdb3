"""What is taken when a job does not say: every default with its unit, range and rank.

A default is a stand-in until the sample or the slab has spoken; nothing here
is a measurement of the job at hand. Two lists of figures feed it: what
finishers take by habit (common practice, no source) and our own guesses,
which say so.
"""

from __future__ import annotations

from farwall.evidence import Rank
from farwall.nouns import dataclass
from farwall.units import L_PER_US_GAL, M2_PER_FT2, M_PER_FT, M_PER_IN, m2_per_l_from_ft2_per_gal

PRACTICE = "common-practice"
OUR_GUESS = "house-guess"


@dataclass(frozen=True)
class Default:
    """One value taken when none was told: low, usual, high, in `unit`, and how far to trust it."""

    name: str
    unit: str
    usual: float
    rank: Rank
    source: str
    low: float | None = None
    high: float | None = None


def _gal(volume_gal: float) -> float:
    return volume_gal * L_PER_US_GAL


def _ft2(area_ft2: float) -> float:
    return area_ft2 * M2_PER_FT2


def _coverage(name: str, low: float, usual: float, high: float) -> Default:
    figures = [m2_per_l_from_ft2_per_gal(figure) for figure in (low, usual, high)]
    return Default(
        name, "m2/L", figures[1], Rank.PRACTICE, PRACTICE, low=figures[0], high=figures[2]
    )


FIRST_COAT_M2_PER_L = _coverage("coverage of the first coat", 120, 200, 300)
LATER_COAT_M2_PER_L = _coverage("coverage of a later coat", 200, 300, 450)

TOOLS: dict[str, Default] = {
    entry.name.removeprefix("tools."): entry
    for entry in (
        Default("tools.tank_l", "L", _gal(2), Rank.PRACTICE, PRACTICE, low=_gal(2), high=_gal(3.5)),
        Default(
            "tools.band_m", "m", 1.1, Rank.PRACTICE, PRACTICE, low=3 * M_PER_FT, high=4 * M_PER_FT
        ),
        Default(
            "tools.spray_m2_min",
            "m2/min",
            _ft2(30),
            Rank.PRACTICE,
            PRACTICE,
            low=_ft2(20),
            high=_ft2(45),
        ),
        Default("tools.walk_m_min", "m/min", 40.0, Rank.GUESS, OUR_GUESS, low=25.0, high=60.0),
        Default("tools.refill_min", "min", 3.0, Rank.GUESS, OUR_GUESS, low=2.0, high=5.0),
        Default("tools.swap_min", "min", 0.5, Rank.GUESS, OUR_GUESS, low=0.3, high=1.0),
        Default(
            "tools.overlap_m",
            "m",
            0.2,
            Rank.PRACTICE,
            PRACTICE,
            low=4 * M_PER_IN,
            high=12 * M_PER_IN,
        ),
        Default("tools.reach_m", "m", 1.9, Rank.GUESS, OUR_GUESS, low=1.5, high=2.2),
    )
}

SLAB_C = Default("survey.slab_c", "C", 21.0, Rank.PRACTICE, PRACTICE, low=13.0, high=27.0)
AIR_C = Default("survey.air_c", "C", 21.0, Rank.PRACTICE, PRACTICE, low=13.0, high=27.0)
RH_PERCENT = Default("survey.rh_percent", "%", 45.0, Rank.PRACTICE, PRACTICE, low=30.0, high=70.0)
AIR_SPEED_M_S = Default(
    "survey.air_speed_m_s", "m/s", 0.1, Rank.GUESS, OUR_GUESS, low=0.05, high=0.3
)
DROP_S = Default("survey.drop_s", "s", 12.0, Rank.PRACTICE, PRACTICE, low=5.0, high=20.0)

SILL_M = Default("floor.windows.sill_m", "m", 0.9, Rank.GUESS, OUR_GUESS, low=0.0, high=1.1)
WINDOW_HEIGHT_M = Default(
    "floor.windows.height_m", "m", 1.2, Rank.GUESS, OUR_GUESS, low=0.6, high=1.5
)
REVEAL_M = Default("floor.windows.reveal_m", "m", 0.15, Rank.GUESS, OUR_GUESS, low=0.1, high=0.3)

CERTAINTY_PERCENT = Default(
    "wishes.certainty_percent", "%", 99.0, Rank.GUESS, OUR_GUESS, low=95.0, high=99.9
)
SPREAD_SAMPLED_PERCENT = Default(
    "wishes.spread_percent", "%", 15.0, Rank.GUESS, OUR_GUESS, low=10.0, high=20.0
)
SPREAD_UNSAMPLED_PERCENT = Default(
    "wishes.spread_percent", "%", 20.0, Rank.GUESS, OUR_GUESS, low=15.0, high=25.0
)

STAIN_DENSITY_KG_L = Default(
    "stains.density_kg_l", "kg/L", 1.2, Rank.MEMORY, "stain-sheets", low=1.05, high=1.33
)
"""Taken when the sheet of the stain in hand is silent; sheets seen say 1.15 to 1.33."""

CONTAINERS_GAL: tuple[tuple[float, str], ...] = ((1.0, "60.00"), (5.0, "270.00"))
"""Sizes stain is sold in and an invented price for each: a guess, to be replaced by the shop's."""

WRITTEN_TO = 5e-4
"""Defaults written out into a job keep four digits; within this share they are the same figure."""

STARTS_AT = "2001-01-01T08:00:00+00:00"
"""Eight in the morning of a day that is plainly nobody's working day: no start was told."""


def coverage_default(coat_number: int) -> Default:
    """Square metres a litre of mix covers in coat 1, 2, …, when neither sample nor coat says."""
    return FIRST_COAT_M2_PER_L if coat_number == 1 else LATER_COAT_M2_PER_L
