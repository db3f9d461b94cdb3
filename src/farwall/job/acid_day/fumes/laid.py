"""From a plan to what is sprayed where and when: patches of a few minutes, each in one room."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import numpy as np
import numpy.typing as npt
from shapely import Polygon

from farwall.acid.film import Fate, Standing
from farwall.acid.house_air import Laid
from farwall.acid.masses import HCL_G_MOL
from farwall.acid.salting import CHLORIDES
from farwall.facts.job import Stain
from farwall.facts.plan import Band, Field, Plan
from farwall.facts.settled import SettledCoat, SettledJob
from farwall.floor.nouns import Room
from farwall.job.acid_day.fumes.cases import (
    LIME_HALF_MIN,
    MIST,
    OPEN,
    SALTS_COUNT,
    STRENGTH,
    TRANSFER,
    Cases,
)
from farwall.mix.batch import STAIN_KG_L, TRADE_ACID_KG_L, TRADE_ACID_PERCENT
from farwall.mix.cut import parse_cut
from farwall.nouns import dataclass
from farwall.units import L_PER_US_FL_OZ, L_PER_US_GAL

Array = npt.NDArray[np.float64]
TOGETHER_MIN = 4.0
"""Bands of one room within so many minutes dry as one patch."""
SHORTEST_MIN = 0.1
_NO_MOL_L = 1e-6
HCL_PERCENT = (5.0, 12.0, 20.0)
"""Sheets seen say below 10 to 20 % [stain-sheets]; taken where the sheet was not entered."""
SALT_PERCENT = 25.0
"""Metal chlorides together, where the sheet was not entered: sheets seen say 15 to 40 %."""
CL_MOL_100G = 1.7
"""Chloride of 100 g of such salts: from 1.5 (copper) to 1.9 (iron III) [arithmetic]."""


@dataclass(frozen=True)
class Patch:
    """Floor of one room sprayed within a few minutes of one coat."""

    room: str
    coat: str
    field: Field
    at_min: float
    spray_min: float
    litres: float


def patches_of(plan: Plan, rooms: Sequence[Room]) -> tuple[Patch, ...]:
    """All patches in order of time; a band in two rooms counts where its middle is."""
    shapes = {room.id: room.polygon.shape for room in rooms}
    found: list[Patch] = []
    for field in plan.fields:
        for band in sorted(field.bands, key=lambda one: one.start_min):
            room = _room_of(band, field, shapes)
            last = found[-1] if found else None
            minutes = max(band.end_min - band.start_min, SHORTEST_MIN)
            if (
                last is not None
                and (last.room, last.field.id, last.coat) == (room, field.id, field.coat)
                and band.end_min - last.at_min <= TOGETHER_MIN
            ):
                found[-1] = Patch(
                    room, field.coat, field, last.at_min, band.end_min - last.at_min,
                    last.litres + band.litres,
                )  # fmt: skip
            else:
                found.append(Patch(room, field.coat, field, band.start_min, minutes, band.litres))
    return tuple(sorted(found, key=lambda one: one.at_min + one.spray_min / 2))


def _room_of(band: Band, field: Field, shapes: Mapping[str, Polygon]) -> str:
    if len(field.rooms) == 1:
        return field.rooms[0]
    middle = band.polygon.shape.representative_point()
    for room in field.rooms:
        if shapes[room].covers(middle):
            return room
    return min(field.rooms, key=lambda one: shapes[one].distance(middle))


def strength_told(stain: Stain) -> bool:
    """Whether either end of the stain's strength was told."""
    return stain.hcl_percent_low is not None or stain.hcl_percent_high is not None


def hcl_percent(stain: Stain) -> tuple[float, float, float]:
    """Low, likely, high % HCl of the stain as bought; an end that is missing is the other one, and
    ends told the wrong way round are turned: no sheet is taken for less than it says."""
    if not strength_told(stain):
        return HCL_PERCENT
    low, high = stain.hcl_percent_low, stain.hcl_percent_high
    told = [one for one in (low, high) if one is not None]
    return min(told), sum(told) / len(told), max(told)


def chloride_mol_kg(stain: Stain) -> float:
    """Chloride of metals in a kilogram of the stain, by the middle of what its sheet says."""
    if not stain.contents:
        return SALT_PERCENT / 100 * 10 * CL_MOL_100G
    mol = 0.0
    for one in stain.contents:
        salt = CHLORIDES.get(one.substance)
        told = [x for x in (one.mass_percent_low, one.mass_percent_high) if x is not None]
        if salt is not None and told:
            mol += sum(told) / len(told) * 10 / salt.g_mol * salt.charge
    return mol


def salt_share(stain: Stain) -> float:
    """Share of the stain's mass (0 to 1) that is dissolved salt."""
    if not stain.contents:
        return SALT_PERCENT / 100
    told = [
        (one.mass_percent_low, one.mass_percent_high)
        for one in stain.contents
        if one.mass_percent_low is not None or one.mass_percent_high is not None
    ]
    return min(
        sum(((low or 0.0) + (high if high is not None else low or 0.0)) / 2 for low, high in told)
        / 100,
        0.7,
    )


def no_acid(settled: SettledJob, patches: Sequence[Patch]) -> bool:
    """Whether what is sprayed holds no hydrochloric acid at all, as its sheets were entered."""
    coats = {one.coat for one in patches}
    return all(in_litre(settled.coat(coat)).acid_mol[2] <= _NO_MOL_L for coat in coats)


@dataclass(frozen=True)
class InLitre:
    """What a litre of mix holds: kg water, mol acid (low, likely, high), mol chloride of metals."""

    water_kg: float
    acid_mol: tuple[float, float, float]
    chloride_mol: float


def in_litre(coat: SettledCoat) -> InLitre:
    """A litre of a coat's mix, volumes taken as adding up, added acid counted."""
    cut = parse_cut(coat.cut)
    acid_l = (coat.coat.added_acid_fl_oz_per_gal or 0.0) * L_PER_US_FL_OZ / L_PER_US_GAL
    density = coat.stain.density_kg_l or STAIN_KG_L.likely or STAIN_KG_L.low
    whole = 1 + acid_l
    stain_kg, water_kg = cut.stain_share * density / whole, (1 - cut.stain_share) / whole
    added_kg = acid_l * TRADE_ACID_KG_L.value / whole
    added_hcl = added_kg * TRADE_ACID_PERCENT.value / 100
    acid = tuple(
        (stain_kg * percent / 100 + added_hcl) * 1000 / HCL_G_MOL
        for percent in hcl_percent(coat.stain)
    )
    likely = hcl_percent(coat.stain)[1] / 100
    of_stain = max(1 - likely - salt_share(coat.stain), 0.2) * stain_kg
    low, middle, high = acid
    return InLitre(
        of_stain + water_kg + added_kg - added_hcl,
        (low, middle, high),
        chloride_mol_kg(coat.stain) * stain_kg,
    )


def laid_of(
    patches: Sequence[Patch], settled: SettledJob, room_at: Mapping[str, int], tried: Cases,
    *, water_m_s: float,
) -> tuple[Laid, Fate]:  # fmt: skip
    """What is sprayed in every case, and how it fares. water_m_s: transfer of water vapour."""
    litres = {coat.id: in_litre(coat) for coat in settled.coats}
    l_per_m2 = np.array([settled.coat(one.coat).l_per_m2 for one in patches])
    one = np.ones((len(tried), len(patches)))
    acid = _between(tried[STRENGTH], [litres[one.coat].acid_mol for one in patches])
    times = [one.field.open_time_min for one in patches]
    open_min = _between(
        tried[OPEN], [(max(t.low, 1.0), max(t.likely, 1.0), max(t.high, 1.0)) for t in times]
    )
    return (
        Laid(
            room=np.array([room_at[one.room] for one in patches], dtype=np.intp),
            at_min=np.array([one.at_min for one in patches]),
            spray_min=np.array([one.spray_min for one in patches]),
            m2=np.array([one.litres for one in patches]) / l_per_m2,
            on_m2=Standing(
                one * np.array([litres[p.coat].water_kg for p in patches]) * l_per_m2,
                acid * l_per_m2,
                one * np.array([litres[p.coat].chloride_mol for p in patches]) * l_per_m2,
            ),
            mist=tried[MIST],
        ),
        Fate(
            one * water_m_s * tried[TRANSFER][:, None],
            open_min,
            one * tried[LIME_HALF_MIN][:, None],
            one * tried[SALTS_COUNT][:, None],
        ),
    )


def _between(position: Array, ends: Sequence[tuple[float, float, float]]) -> Array:
    """Low at -1, likely at 0, high at 1, for every case and patch."""
    low, likely, high = (np.array([one[n] for one in ends]) for n in range(3))
    where = position[:, None]
    found: Array = np.where(
        where < 0, likely + where * (likely - low), likely + where * (high - likely)
    )
    return found
