"""What is believed of stain, slab and photo before a sample of this job is seen.

Every figure here is a guess unless a library of samples brought its own: a firm that closes jobs
learns how strong its stains are (`learned` gives what a job told of them).
"""

from __future__ import annotations

from farwall.nouns import dataclass

Three = tuple[float, float, float]


@dataclass(frozen=True)
class Strength:
    """Depth that a litre of stain on a square metre adds, by channel, above 0, and how sure.

    scattering, absorbing: middle in the forms of either optics (`colour.dose`) · spread: of all
    channels together, channel_spread: of each by itself; both of the logarithm, above 0.
    """

    scattering: Three = (10.0, 10.0, 10.0)
    absorbing: Three = (10.0, 10.0, 10.0)
    spread: float = 1.0
    channel_spread: float = 0.8


@dataclass(frozen=True)
class Prior:
    """Beliefs before the samples; without arguments the tool's own guesses.

    strengths: by number of the stain; a stain past their end takes `Strength()` · lime: M of
    `colour.dose`, litres of the first stain on a square metre · takes: lime that a litre of another
    stain takes against it · meets: share by which two colours add to more or less where both lie ·
    place: how the floor differs from the place of the samples, room: how a room differs from the
    floor, patch: how a patch differs from its room; `_thirst` of the dose it takes, `_shade` of the
    slab's own depth · photo: error of a corrected photo in L, a, b · spot: what is left where one
    spot is read twice, in each of them · patchy_of: degrees of freedom behind `patch_thirst` and
    `patch_shade`. Spreads are standard deviations, of logarithms where no unit stands; all above 0.
    """

    strengths: tuple[Strength, ...] = ()
    lime: float = 0.5
    lime_spread: float = 0.8
    takes_spread: float = 0.2
    meets_spread: float = 0.2
    place_thirst: float = 0.12
    place_shade: float = 0.08
    room_thirst: float = 0.15
    room_shade: float = 0.06
    patch_thirst: float = 0.13
    patch_shade: float = 0.09
    photo: Three = (0.4, 0.3, 0.35)
    spot: float = 0.3
    patchy_of: float = 5.0

    def strength(self, stain: int) -> Strength:
        """What is believed of that stain."""
        return self.strengths[stain] if stain < len(self.strengths) else Strength()
