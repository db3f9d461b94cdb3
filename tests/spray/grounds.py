"""The ground of a field in one line: what the tests of the front and of its lattice begin with."""

from __future__ import annotations

from typing import Any

import numpy as np
from tests.shapes import Place
from tests.spray.hand_floors import seam, world

from farwall.floor.thresholds import join_thresholds
from farwall.readers.job_json import job_from
from farwall.spray.building import build_world
from farwall.spray.front import Front, Ground, equivalent_front_m, sprayed_before
from farwall.spray.fronts import FieldGround, field_ground
from farwall.spray.lattice import Floats
from farwall.spray.world import World

BAND_M = 1.0


def field(of: Place | World, *pieces: str, by: str = "", band_m: float = BAND_M) -> FieldGround:
    """The field of these pieces (of all), left by the seam of that name (else the way out)."""
    here = world(of) if isinstance(of, Place) else of
    out = seam(here, by) if by else next(s for s in here.seams if s.is_way_out)
    return field_ground(here, pieces or sorted(here.pieces), out, band_m, kept={})


def ground(of: Place | World, *pieces: str, by: str = "", band_m: float = BAND_M) -> Ground:
    """Its ground."""
    return field(of, *pieces, by=by, band_m=band_m).ground


def world_of(job: dict[str, Any]) -> World:
    """The floor of a job in plain values, as a person meets it."""
    told = job_from(job, about="house")
    return build_world(join_thresholds(told.floor), told.exits)


def bare(here: Ground, late: Floats, name: str = "bare") -> Front:
    """A sweep by `late` as it stands: nothing is changed so that a body gets out."""
    before = sprayed_before(here.lattice, late)
    return Front(name, late, before, equivalent_front_m(before, here))


def along(here: Ground) -> Floats:
    """Metres along x, from the low end of the floor's box."""
    return np.asarray(here.lattice.xy[:, 0] - here.lattice.floor.bounds[0])
