"""Days drawn from the spreads: a standard normal for the job and one for each field.

`FIELD_SHARE` of every input's variance is a field's own, the rest is common to the
job, as the mix believes of thirst; each coat has its own thirst (`mix.gate`).
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence

import numpy as np
import numpy.typing as npt

from farwall.job.chances.spreads import Input, Spread
from farwall.mix.thirst import FIELD_SHARE
from farwall.nouns import dataclass

Floats = npt.NDArray[np.float64]


@dataclass(frozen=True)
class Days:
    """Standard normals: of each input the job's (by coat for thirst), and each field's own.

    `job[name]`: coats x days for thirst, 1 x days else. `own[name]`: fields x days. `second`:
    where two spray, of the second one's rate each field's own, in the place of `own`.
    """

    job: Mapping[Input, Floats]
    own: Mapping[Input, Floats]
    second: Floats | None = None

    def normal(self, name: Input, field: int, coat: int, *, share: float = FIELD_SHARE) -> Floats:
        """One standard normal a day for this field of this coat; `share` of it is the field's."""
        common = self.job[name][coat if len(self.job[name]) > 1 else 0]
        return np.asarray(math.sqrt(1 - share) * common + math.sqrt(share) * self.own[name][field])

    def factor(self, name: Input, spread: Spread, field: int, coat: int) -> Floats:
        """The input's value over its likely one, a day each."""
        return strayed(self.normal(name, field, coat), spread.below, spread.above)

    def factor_of_second(self, spread: Spread, field: int) -> Floats:
        """The second sprayer's rate over its likely one: the day's factor and one of his own."""
        assert self.second is not None
        share = FIELD_SHARE
        common = self.job["spray rate"][0]
        normal = math.sqrt(1 - share) * common + math.sqrt(share) * self.second[field]
        return strayed(np.asarray(normal), spread.below, spread.above)


def strayed(normal: Floats, below: float, above: float) -> Floats:
    """exp(width · z), the width below nothing and above it each its own."""
    return np.asarray(np.exp(normal * np.where(normal < 0, below, above)))


def drawn_days(
    rng: np.random.Generator,
    names: Sequence[Input],
    *,
    days: int,
    fields: int,
    coats: int,
    two: bool = False,
) -> Days:
    """So many days, the same for the same generator; `two`: with a second sprayer's rate."""
    job, own = {}, {}
    for name in names:
        job[name] = rng.standard_normal((coats if name == "thirst" else 1, days))
        own[name] = rng.standard_normal((fields, days))
    return Days(job, own, rng.standard_normal((fields, days)) if two else None)
