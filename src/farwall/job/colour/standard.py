"""Which sample the floor is held against: the approved one, by its clean wet look. Pure."""

from __future__ import annotations

from farwall.colour.sealed import Sealing
from farwall.facts.samples import Sample
from farwall.job.colour.seen import SEALED, WET, Ask, Gathered, Lab, blur_of, look_in
from farwall.nouns import dataclass


@dataclass(frozen=True)
class Standard:
    """The sample that was approved, else the one that was judged right.

    lab: its clean wet look · seen: "clean wet", or "sealed" where it was seen sealed alone and its
    wet look is reckoned · unsure_l: what that leaves unsure in L, else 0 · approved_by: empty where
    nobody signed · spread_l: standard deviation of L between its spots, None where not looked at ·
    blur: how many times a corrected photo's usual error its look has.
    """

    sample: str
    lab: Lab
    sealed_lab: Lab | None
    seen: str
    unsure_l: float
    approved_by: str
    approved_on: str
    with_target: bool
    spread_l: float | None
    dwell_h: float | None
    blur: float = 1.0

    @property
    def approved(self) -> bool:
        """Whether somebody signed it."""
        return bool(self.approved_by)


def standard_of(found: Gathered, sealing: Sealing) -> tuple[Standard | None, tuple[Ask, ...]]:
    """The standard, or what is missing for there to be one; asks also where nobody signed."""
    sample = _chosen(found.samples)
    if sample is None:
        what = "Approve a sample: the one that the floor is to look like, signed."
        return None, (Ask("standard", what),)
    wet, sealed = look_in(sample.looks, WET), look_in(sample.looks, SEALED)
    look = wet or sealed
    if look is None:
        what = (
            f"Look at sample {sample.id}, which the floor is held against, clean and wet, "
            "with a target in the photo."
        )
        return None, (Ask("standard-look", what),)
    asks = []
    if not sample.approved_by:
        what = f"Have sample {sample.id} signed: it was judged right and nobody approved it."
        asks.append(Ask("standard-signed", what))
    if wet is None:
        asks.append(Ask(
            "standard-wet",
            f"Look at sample {sample.id} clean and wet: only its sealed look is known, and what "
            "sealing moved is reckoned back.",
        ))  # fmt: skip
    return Standard(
        sample=sample.id,
        lab=sealing.wet(look.lab) if wet is None else look.lab,
        sealed_lab=None if sealed is None else sealed.lab,
        seen=WET if wet is not None else SEALED,
        unsure_l=sealing.spread[0] if wet is None else 0.0,
        approved_by=sample.approved_by,
        approved_on=sample.approved_on,
        with_target=look.error_de is not None,
        spread_l=look.spread_lightness,
        dwell_h=sample.dwell_h,
        blur=blur_of(look),
    ), tuple(asks)


def _chosen(samples: tuple[Sample, ...]) -> Sample | None:
    """The one approved last, else the last that was judged right."""
    approved = [one for one in samples if one.approved_by]
    if approved:
        latest = max(one.approved_on for one in approved)
        return [one for one in approved if one.approved_on == latest][-1]
    right = [one for one in samples if one.verdict == "right"]
    return right[-1] if right else None
