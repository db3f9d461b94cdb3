"""What a fixture is to a masker, and what the stages of the build mean."""

import pytest

from farwall.job.office.masking.rules import STAGES, fixture_kind


@pytest.mark.parametrize(
    ("name", "kind"),
    [
        ("cabinets", "cabinet"), ("Cabinet", "cabinet"), ("vanity", "cabinet"),
        ("island", "island"), ("tub", "tub"), ("shower", "tub"), ("stairs", "stair"),
        ("column", "post"), ("range", "appliance"), ("water heater", "appliance"),
        ("planter", "other"), ("", "other"),
    ],
)  # fmt: skip
def test_the_words_of_plans_for_fixtures(name, kind):
    assert fixture_kind(name) == kind


@pytest.mark.common_practice
def test_each_later_stage_has_at_least_as_much_to_mask():
    """No source: before board few walls, after paint everything."""
    rules = [STAGES[one] for one in ("before board", "before mud", "after paint")]
    heights = [one.film_m for one in rules]
    assert heights == sorted(heights)
    assert [one.frames for one in rules] == [False, False, True]
