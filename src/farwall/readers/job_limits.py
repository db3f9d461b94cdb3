"""What a figure of a job can sensibly be: beyond these ends it is a slip of the pen.

The bounds on the nouns say what is possible at all (a tank is not negative);
these say what no sprayer, slab or person comes near. Our guesses, set wide.
"""

from __future__ import annotations

from farwall.facts.checks import Morning, Watch
from farwall.facts.job import Coat, Container, RoomSurvey, Sighting, Site, Stain, Survey, Tools
from farwall.facts.samples import Look, Sample
from farwall.facts.sealer import Sealer
from farwall.facts.slab import Choices, MixTicket, MoistureTest, Patch
from farwall.floor.nouns import Floor, Opening, Window
from farwall.nouns import dataclass

FARTHEST_M = 10_000.0
"""Coordinates beyond 10 km are not metres in the frame of one house."""


@dataclass(frozen=True)
class Limit:
    """Lowest and highest sensible value, ends included."""

    low: float
    high: float


_DROP_S = Limit(0.01, 86_400)
_AIR_SPEED_M_S = Limit(0, 40)
_COVERAGE_M2_PER_L = Limit(0.2, 200)

LIMITS: dict[tuple[type, str], Limit] = {
    (Survey, "slab_age_days"): Limit(0, 73_000),
    (Survey, "air_speed_m_s"): _AIR_SPEED_M_S,
    (Survey, "drop_s"): _DROP_S,
    (RoomSurvey, "drop_s"): _DROP_S,
    (Survey, "sheet_slab_age_days"): Limit(0, 400),
    (Survey, "slab_thickness_m"): Limit(0.03, 1),
    (MixTicket, "cement_kg_m3"): Limit(50, 800),
    (Patch, "age_days"): Limit(0, 73_000),
    (Patch, "drop_s"): _DROP_S,
    (MoistureTest, "vapour_ug_m2_s"): Limit(0, 5_000),
    (Choices, "least_slab_age_days"): Limit(0, 400),
    (Choices, "most_vapour_ug_m2_s"): Limit(1, 5_000),
    (Morning, "tip_l_min"): Limit(0.01, 50),
    (Watch, "left_l"): Limit(0, 2_000),
    (Watch, "left_m2"): Limit(0, 100_000),
    (Sealer, "recoat_from_h"): Limit(0.1, 1_000),
    (Sealer, "recoat_to_h"): Limit(0.1, 1_000),
    (Sealer, "walk_h"): Limit(0.1, 1_000),
    (Sealer, "furniture_h"): Limit(0.1, 2_000),
    (Sample, "m2_per_l"): _COVERAGE_M2_PER_L,
    (Sample, "sheen_loss_min"): Limit(0.05, 1_440),
    (Sample, "air_speed_m_s"): _AIR_SPEED_M_S,
    (Sample, "drop_s"): _DROP_S,
    (Sample, "area_m2"): Limit(0.01, 20),
    (Sample, "laid_ml"): Limit(1, 20_000),
    (Sample, "sprayer_before_kg"): Limit(0.05, 100),
    (Sample, "sprayer_after_kg"): Limit(0.05, 100),
    (Sample, "dry_min"): Limit(0.5, 20_160),
    (Sample, "dwell_h"): Limit(0.02, 240),
    (Look, "error_de"): Limit(0, 100),
    (Look, "spread_lightness"): Limit(0, 50),
    (Sighting, "after_min"): Limit(0.05, 20_160),
    (Sighting, "air_speed_m_s"): _AIR_SPEED_M_S,
    (Sighting, "drop_s"): _DROP_S,
    (Sighting, "tile_kg_m2_h"): Limit(0, 5),
    (Survey, "tile_kg_m2_h"): Limit(0, 5),
    (Site, "heater_kw"): Limit(0, 200),
    (Stain, "density_kg_l"): Limit(0.5, 3),
    (Coat, "m2_per_l"): _COVERAGE_M2_PER_L,
    (Coat, "added_acid_fl_oz_per_gal"): Limit(0, 64),
    (Tools, "tank_l"): Limit(0.1, 200),
    (Tools, "spray_m2_min"): Limit(0.05, 50),
    (Tools, "walk_m_min"): Limit(2, 200),
    (Tools, "refill_min"): Limit(0, 120),
    (Tools, "swap_min"): Limit(0, 60),
    (Tools, "tip_l_min"): Limit(0.01, 50),
    (Container, "size_l"): Limit(0.01, 2_000),
    (Opening, "width_m"): Limit(0.05, 100),
    (Window, "sill_m"): Limit(0, 20),
    (Window, "height_m"): Limit(0.05, 20),
    (Window, "reveal_m"): Limit(0, 1),
    (Floor, "north_deg"): Limit(-360, 360),
}
