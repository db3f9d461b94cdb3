"""`farwall bench price`: how honest the range of a price is, on invented jobs."""

from __future__ import annotations

import json
from dataclasses import asdict


def run_price(*, as_json: bool, tuning: bool) -> int:
    """Score the half for judging (or for tuning); 1 when the range of all jobs is not honest."""
    from farwall.bench.price import AIM, lines, score_price
    from farwall.bench.price_jobs import TEST, TUNING

    seeds = TUNING if tuning else TEST
    scores, losses = score_price(seeds)
    honest = AIM[0] <= scores[0].held_percent <= AIM[1]
    if as_json:
        told = {
            "honest": honest,
            "price": [asdict(one) for one in scores],
            "losses": [asdict(one) for one in losses],
        }
        print(json.dumps(told, ensure_ascii=False))
        return 0 if honest else 1
    half = "the half for tuning" if tuning else "the half for judging"
    print(f"{len(seeds)} invented jobs, {half}. Four in five should lie within: {AIM[0]:.0f} to")
    print(f"{AIM[1]:.0f} %. Width is that of the range over its middle.")
    print("\n".join(lines(scores, losses)))
    return 0 if honest else 1
