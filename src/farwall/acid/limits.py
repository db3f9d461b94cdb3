"""How much of a vapour or a mist may be in the air one breathes: the limits, as data.

Federal law, the hygienists' advice, and what is dangerous at once, each with its year and rank.
States with a plan of their own may be stricter and win, as does the sheet of the material in hand.
"""

from __future__ import annotations

from typing import Literal

from farwall.acid.masses import molar_mass_g_mol
from farwall.evidence import Rank
from farwall.nouns import dataclass

Kind = Literal[
    "ceiling", "8 h mean", "10 h mean", "15 min mean", "at once", "action level", "smell"
]
"""`at once`: immediately dangerous to life or health."""
Air = Literal["HCl", "NH3", "NH4Cl", "silica", "chromium VI"]

L_PER_MOL = 24.465
"""A gas at 25 °C and 101 325 Pa: R·T/p [arithmetic]; the basis of ppm [osha-z1], note a."""
MG_M3_PER_PPM: dict[Air, float] = {"HCl": 1.49, "NH3": molar_mass_g_mol(N=1, H=3) / L_PER_MOL}
"""Of a gas at 25 °C and one atmosphere; hydrogen chloride as printed [nrc-hcl], p. 106, which is
what 36.46 g/mol over 24.465 L/mol gives."""
CEILING_MIN = 15.0
"""A ceiling that no instrument follows is read as a mean over 15 minutes [osha-ceiling]."""
DAY_H = 8.0
STRICTER = (
    "These are federal and the hygienists' figures. A state with a plan of its own, such as "
    "California, may be stricter, and wins; so does the sheet of the material in hand."
)


@dataclass(frozen=True)
class Limit:
    """One limit. `ppm` for gases, `mg_m3` for all; `year`: since when it stands so, as told.

    `rank` is that of the value, `year_rank` that of the year.
    """

    air: Air
    by: str
    kind: Kind
    mg_m3: float
    ppm: float | None = None
    year: int | None = None
    rank: Rank = Rank.PUBLISHED
    year_rank: Rank = Rank.MEMORY
    source: str = ""


def mg_m3_from_ppm(ppm: float, air: Air = "HCl") -> float:
    """Mass in a cubic metre of air at 25 °C and one atmosphere. [mg/m³] Source: [osha-z1], note a.

    Raises KeyError for what is no gas (silica, chromate).
    """
    return ppm * MG_M3_PER_PPM[air]


def ppm_from_mg_m3(mg_m3: float, air: Air = "HCl") -> float:
    """Parts of a million of the air at 25 °C and one atmosphere. [ppm]"""
    return mg_m3 / MG_M3_PER_PPM[air]


def _gas(
    air: Air, by: str, kind: Kind, ppm: float, year: int | None = None, *, source: str,
    mg_m3: float | None = None, rank: Rank = Rank.PUBLISHED, year_rank: Rank = Rank.MEMORY,
) -> Limit:  # fmt: skip
    held = mg_m3_from_ppm(ppm, air) if mg_m3 is None else mg_m3
    return Limit(air, by, kind, held, ppm, year, rank, year_rank, source)


def _dust(
    air: Air, by: str, kind: Kind, mg_m3: float, year: int | None = None, *, source: str,
    rank: Rank = Rank.PUBLISHED, year_rank: Rank = Rank.MEMORY,
) -> Limit:  # fmt: skip
    return Limit(air, by, kind, mg_m3, None, year, rank, year_rank, source)


LIMITS: dict[str, Limit] = {
    "hcl-law": _gas("HCl", "OSHA", "ceiling", 5, 1971, mg_m3=7, source="osha-hcl"),
    "hcl-niosh": _gas("HCl", "NIOSH", "ceiling", 5, mg_m3=7, source="osha-hcl"),
    "hcl-hygienists": _gas("HCl", "ACGIH", "ceiling", 2, 2003, mg_m3=3, source="osha-hcl"),
    "hcl-california": _gas(
        "HCl", "California", "8 h mean", 0.3, source="from-memory", rank=Rank.MEMORY
    ),
    "hcl-california-ceiling": _gas(
        "HCl", "California", "ceiling", 2, source="from-memory", rank=Rank.MEMORY
    ),
    "hcl-at-once-1994": _gas("HCl", "NIOSH", "at once", 50, 1994, source="osha-hcl"),
    "hcl-at-once": _gas(
        "HCl", "NIOSH", "at once", 45, 2025, mg_m3=67, source="niosh-idlh-hcl",
        year_rank=Rank.PUBLISHED,
    ),
    "hcl-smell": _gas("HCl", "", "smell", 0.77, source="cameo-hcl"),
    "nh3-law": _gas("NH3", "OSHA", "8 h mean", 50, 1971, mg_m3=35, source="osha-z1"),
    "nh3-niosh": _gas("NH3", "NIOSH", "10 h mean", 25, mg_m3=18, source="niosh-pocket"),
    "nh3-niosh-15": _gas("NH3", "NIOSH", "15 min mean", 35, mg_m3=27, source="niosh-pocket"),
    "nh3-hygienists": _gas("NH3", "ACGIH", "8 h mean", 25, source="niosh-pocket"),
    "nh3-hygienists-15": _gas("NH3", "ACGIH", "15 min mean", 35, source="niosh-pocket"),
    "nh3-at-once": _gas("NH3", "NIOSH", "at once", 300, 1994, source="niosh-pocket"),
    "nh4cl-california": _dust("NH4Cl", "California", "8 h mean", 10, source="california-5155"),
    "nh4cl-california-15": _dust(
        "NH4Cl", "California", "15 min mean", 20, source="california-5155"
    ),
    "silica-law": _dust(
        "silica", "OSHA", "8 h mean", 0.05, 2016, source="silica-1153", year_rank=Rank.MEMORY
    ),
    "silica-action": _dust("silica", "OSHA", "action level", 0.025, 2016, source="silica-1153"),
    "silica-niosh": _dust("silica", "NIOSH", "10 h mean", 0.05, source="cpwr-silica"),
    "silica-hygienists": _dust("silica", "ACGIH", "8 h mean", 0.025, source="cpwr-silica"),
    "silica-at-once": _dust(
        "silica", "NIOSH", "at once", 50, 1994, source="from-memory", rank=Rank.MEMORY
    ),
    "chromium-law": _dust(
        "chromium VI", "OSHA", "8 h mean", 0.005, 2006, source="osha-chromium",
        year_rank=Rank.PUBLISHED,
    ),
    "chromium-action": _dust(
        "chromium VI", "OSHA", "action level", 0.0025, 2006, source="osha-chromium",
        year_rank=Rank.PUBLISHED,
    ),
    "chromium-niosh": _dust(
        "chromium VI", "NIOSH", "8 h mean", 0.0002, 2013, source="from-memory", rank=Rank.MEMORY
    ),
}  # fmt: skip
"""By key. An action level is a mean over 8 hours from which more must be done."""
