"""What a film of colour throws back and lets through, alone and over a backing."""

from __future__ import annotations

import numpy as np

from farwall.colour.films import film, over
from farwall.errors import Mistake, Refused
from farwall.evidence import Rank
from farwall.job.sums.noun import Argument, Given, Json, Result, Sum
from farwall.job.sums.numbers import numbers

MOST = 1e4


def reckon(given: Given) -> Result:
    """R and T of the film and R on the backing, a number for each channel that was given.

    Source: [curtis-1997]. Raises Refused with every number that is none or out of range.
    """
    mistakes: list[Mistake] = []
    k, s = (numbers(key, given.texts(key), mistakes, low=0.0, high=MOST) for key in ("k", "s"))
    thickness = numbers("thickness", given.texts("thickness"), mistakes, low=0.0, high=MOST)
    backing = numbers("r_backing", given.texts("r_backing"), mistakes, low=0.0, high=1.0)
    lists = {"k": k, "s": s, "thickness": thickness, "r_backing": backing}
    channels = max(map(len, lists.values()))
    mistakes += [
        Mistake(key, f"It has {len(one)} numbers.", f"Give one, or {channels}.")
        for key, one in lists.items()
        if not mistakes and len(one) not in {1, channels}
    ]
    if mistakes:
        raise Refused(*mistakes, about="The sum cannot be done with this.")
    found = film(k, s, np.array(thickness))
    seen = over(found, backing)
    return {
        "r": _told(found.r, channels),
        "t": _told(found.t, channels),
        "r_on_backing": _told(seen, channels),
        "rank": Rank.PUBLISHED.value,
        "source": "curtis-1997",
        "warnings": [],
    }


def _told(values: np.ndarray, channels: int) -> Json:
    every = [float(one) for one in np.broadcast_to(values, (channels,))]
    return every[0] if channels == 1 else list(every)


SUM = Sum(
    name="film-colour",
    what="what a film of colour throws back, alone and over a backing",
    arguments=(
        Argument("k", needed=True, several=True), Argument("s", needed=True, several=True),
        Argument("thickness", needed=True, several=True),
        Argument("r_backing", needed=True, several=True),
    ),
    reckon=reckon,
)  # fmt: skip
