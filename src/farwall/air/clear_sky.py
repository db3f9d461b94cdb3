"""The sun's beam under a clear sky, and the sun's place, without all that pvlib loads beside them.

The position is pvlib's own file, taken alone: the package's door loads pandas, h5py and more, which
takes 0.75 s of the processor before a first sun. The beam is the simplified Solis model
[ineichen-2008] as pvlib has it, to which a test holds it at every height.
"""

from __future__ import annotations

import sys
from functools import cache
from importlib.util import find_spec, module_from_spec, spec_from_file_location
from pathlib import Path
from typing import Any

import numpy as np
import numpy.typing as npt

from farwall.air.conditions import STANDARD_PRESSURE_PA

Floats = npt.NDArray[np.float64]

BEYOND_W_M2 = 1364.0
"""The beam outside of the air [pvlib's own stand-in]."""
HAZE, WATER_CM = 0.1, 1.0
"""Optical depth at 700 nm and precipitable water: clean, fairly dry air [pvlib's own stand-ins]."""


@cache
def position() -> Any:
    """pvlib's solar position algorithm [reda-andreas-2004]: the module `spa`."""
    if "pvlib.spa" in sys.modules:
        return sys.modules["pvlib.spa"]
    package = find_spec("pvlib")
    assert package is not None
    assert package.submodule_search_locations is not None
    spec = spec_from_file_location(
        "farwall_solar_position", Path(package.submodule_search_locations[0]) / "spa.py"
    )
    assert spec is not None
    assert spec.loader is not None
    module = module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def clear_beam_w_m2(elevation_deg: Floats, *, pressure_pa: float) -> Floats:
    """What falls on a face that looks at the sun under a clear sky. [W/m²]

    elevation_deg: apparent, 0 and above. Made for optical depths to 0.45, 0.2 to 10 cm of water and
    the heights of dwellings. Source: [ineichen-2008].
    """
    water, air = np.log(WATER_CM), np.log(pressure_pa / STANDARD_PRESSURE_PA)
    beyond = BEYOND_W_M2 * (
        0.12 * WATER_CM**0.56 * HAZE**2
        + 0.97 * WATER_CM**0.032 * HAZE
        + 1.08 * WATER_CM**0.0051
        + 0.071 * air
    )
    depth = (
        (1.82 + 0.056 * water + 0.0071 * water**2) * HAZE
        + 0.33 + 0.045 * water + 0.0096 * water**2
        + (0.0089 * WATER_CM + 0.13) * air
    )  # fmt: skip
    bend = (0.00925 * HAZE**2 + 0.0148 * HAZE - 0.0172) * water + (
        -0.7565 * HAZE**2 + 0.5057 * HAZE + 0.4557
    )
    high = np.maximum(1e-30, np.sin(np.radians(elevation_deg)))
    beam: Floats = beyond * np.exp(-depth / high**bend)
    return beam
