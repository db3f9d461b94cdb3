"""Remedies of people and bands: a helper, a second sprayer, narrower bands."""

from __future__ import annotations

from farwall.facts.plan import PlanTools
from farwall.spray.remedies.case import NARROWER, TIGHT, Trial, narrower
from farwall.spray.remedies.offer import Offer
from farwall.units import length_words


def with_helper(trial: Trial) -> Offer:
    """A helper who swaps tanks, with narrower bands where that is needed too."""
    words = "A helper who swaps full tanks"
    return _widest(trial, "helper", words, trial.case.coat.tools, helper=True)


def with_two(trial: Trial) -> Offer:
    """Two who spray each band that has room for both, each with a tank: their real layout."""
    words = "Two sprayers side by side on each band, each with a full tank"
    coat = trial.case.coat
    return _widest(trial, "two", words, coat.tools, helper=coat.helper, sprayers=2)


def with_narrower_bands(trial: Trial) -> Offer | None:
    """The widest bands below the present ones that leave room, else the younger edge of two tries.

    None where none can be laid.
    """
    best: Offer | None = None
    for share in _shares(trial):
        thin = narrower(trial.case.coat.tools, share)
        found = trial.timed(thin, helper=trial.case.coat.helper)
        if found is None:
            continue
        what = f"Bands of {length_words(thin.band_m, us=trial.case.coat.us)}."
        offer = Offer("bands", what, found, trial.budget_min)
        if best is None or best.found is None or found.peak_age_min < best.found.peak_age_min:
            best = offer
        if trial.with_room(found):
            break
    return best


def _shares(trial: Trial) -> tuple[float, ...]:
    """The two widest bands that may leave room if an edge ages as bands are wide, narrower now."""
    case = trial.case
    now = case.sweep.depth_m / case.coat.tools.band_m
    wanted = now * (1 - TIGHT) * trial.budget_min / trial.stands.peak_age_min
    below = [share for share in NARROWER if share < now - 0.01]
    return tuple([share for share in below if share <= wanted + 0.05][:2] or below[-1:])


def _widest(
    trial: Trial,
    code: str,
    words: str,
    tools: PlanTools,
    *,
    helper: bool,
    sprayers: int | None = None,
) -> Offer:
    """The remedy with the widest bands that it works with, else with full ones."""
    full = trial.timed(tools, helper=helper, sprayers=sprayers)
    if trial.works(full):
        return Offer(code, f"{words}.", full, trial.budget_min)
    for share in NARROWER:
        thin = narrower(tools, share)
        found = trial.timed(thin, helper=helper, sprayers=sprayers)
        if trial.works(found):
            wide = length_words(thin.band_m, us=trial.case.coat.us)
            what = f"{words}, and bands of {wide}."
            return Offer(code, what, found, trial.budget_min)
    return Offer(code, f"{words}.", full, trial.budget_min)
