"""Whether the air that passes through the house can carry off what a wet floor gives it."""

from __future__ import annotations

from farwall.air import moist
from farwall.air.conditions import Conditions
from farwall.air.day import at
from farwall.air.house import CEILING_M
from farwall.facts.settled import SettledCoat
from farwall.job.lasting import Lasting
from farwall.job.waits import Waits
from farwall.units import gal_from_l

_VAPOUR_J_KG_K = 461.5
"""Gas constant of water vapour [arithmetic: 8.314 J/(mol·K) over 18.015 g/mol]."""


def carried_kg_h(now: Conditions, *, air_changes_h: float, volume_m3: float) -> float:
    """The most water that passing air takes along, when it leaves as damp as the slab. [kg/h]

    The air comes with what it holds now and can go with what saturates it at
    the slab's temperature; never below zero. Arithmetic on [ashrae-2017-ch1].
    """
    kelvin = now.surface_c + 273.15
    most = moist.saturation_pressure_pa(air_c=now.surface_c)
    held = moist.vapour_pressure_pa(air_c=now.air_c, rh_percent=now.rh_percent)
    return max(0.0, most - held) / (_VAPOUR_J_KG_K * kelvin) * air_changes_h * volume_m3


def airing_warnings(lasting: Lasting, coat: SettledCoat) -> tuple[str, ...]:
    """That the house is too shut for its wet floor, where its air was reckoned. A guess.

    All of the coat's water is counted, though the slab keeps a part of it.
    """
    if not lasting.hours:
        return ()
    first = at(lasting.hours, lasting.starts_at)
    wait = Waits(lasting).dry(coat, 0.0)
    if first.air_changes_h is None or wait.likely_min is None:
        return ()
    floor_m2 = sum(room.polygon.shape.area for room in lasting.job.job.floor.rooms)
    water_l = floor_m2 * coat.l_per_m2
    carried = carried_kg_h(
        first.conditions, air_changes_h=first.air_changes_h, volume_m3=floor_m2 * CEILING_M
    )
    if carried * wait.likely_min / 60 >= water_l:
        return ()
    standing = lasting.job.job.site.house or "shut (nothing else was told)"
    told = (
        f"A coat gives the air up to {gal_from_l(water_l):.0f} gal ({water_l:.0f} L) of water. The "
        f"house stands {standing}: about {first.air_changes_h:.1f} air changes an hour (a guess) "
        f"carry off {gal_from_l(carried):.1f} gal ({carried:.1f} L) an hour at most, so the "
        "floor will dry slower than the clocks say. Set fans blowing out, without a jet on the wet "
        "edge, and let air through when no edge is live; the fumes ask for it too."
    )
    return (told,)
