"""What the usual rule would have mixed, and how often that runs dry."""

from __future__ import annotations

import math

import numpy as np
import pytest

from farwall.mix.thirst import first_belief
from farwall.mix.usual_rule import usual_rule

HOUSE_L = (5.2, 3.1, 2.9, 2.4, 1.2, 11.8)


@pytest.mark.common_practice
@pytest.mark.parametrize("spread_percent", [15, 20, 25])
def test_the_usual_rule_runs_dry_in_one_job_of_nine_to_one_of_four(spread_percent):
    """One extra gallon on five or six, mixed once; counted on simulated days, then by formula."""
    belief = first_belief(spread_percent)
    rng = np.random.default_rng(spread_percent)
    job = rng.normal(0.0, math.sqrt(belief.variance), size=(200_000, 1))
    own = rng.normal(0.0, math.sqrt(belief.field_variance), size=(200_000, len(HOUSE_L)))
    taken = (np.array(HOUSE_L) * np.exp(job + own)).sum(axis=1)
    rule = usual_rule(HOUSE_L, coat="first", belief=belief)
    # 200,000 days: three standard errors are 0.3 %; the fitted sum may add as much.
    assert rule.chance_dry_low == pytest.approx((taken > rule.high_l).mean(), abs=0.006)
    assert rule.chance_dry_high == pytest.approx((taken > rule.low_l).mean(), abs=0.006)
    assert 0.09 < rule.chance_dry_low < rule.chance_dry_high < 0.28


def test_the_usual_rule_mixes_one_gallon_more_on_five_or_six():
    rule = usual_rule((10.0, 20.0), coat="first", belief=first_belief(20))
    assert (rule.low_l, rule.high_l) == (pytest.approx(35.0), pytest.approx(36.0))
