"""How warm the face of a slab is: heat down through concrete and ground, hour by hour.

One dimension, implicit steps (`air.chain`), nodes on the face and at every
interval below it. It starts from what the air was like before, is brought to
an infrared reading where there is one, and takes the sun's heat as a flux.

What it leaves out: edges of the house and footings, heating pipes, carpets,
the cooling by a wet film, and heat that rain brings through the ground.
"""

from __future__ import annotations

from collections.abc import Sequence

from farwall.air.chain import CRANK_NICOLSON, Chain, stepped
from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

HOUR_S = 3600.0
SINCE_H = 12
"""A reading that the history does not explain is laid to air that was otherwise until half a day
before it: a guess, which leaves the skin of the slab at rest and the depth shifted."""


@dataclass(frozen=True)
class Layer:
    """Thickness, conductivity and heat held by a cubic metre; cut into `parts`, each wider."""

    thick_m: float
    w_mk: float
    j_m3k: float
    parts: int
    wider: float = 1.0


CONCRETE = Layer(thick_m=0.10, w_mk=1.6, j_m3k=2.0e6, parts=8)
"""Four inches, normal weight [from-memory: 1.4 to 2 W/(m·K), 2.0 to 2.2 MJ/(m³·K)]."""
GROUND = Layer(thick_m=1.6, w_mk=1.2, j_m3k=2.0e6, parts=9, wider=1.35)
"""Fill and damp soil [from-memory: 0.5 to 2 W/(m·K)]. A day's wave dies out in the first 0.5 m."""
ON_GRADE = (CONCRETE, GROUND)
FACE_W_M2K = 7.0
"""Between face and room, air and radiation together: 6.1 with heat flowing down, 9.3 up
[from-memory]; the middle is taken for both."""


@dataclass(frozen=True)
class Seen:
    """An infrared reading of the face at the beginning of an hour of the history."""

    hour: int
    face_c: float


def chain_of(layers: Sequence[Layer] = ON_GRADE) -> Chain:
    """The nodes of these layers from the face down; the last one lies on what is below."""
    steps = [(width, layer) for layer in layers for width in _widths(layer)]
    holds = [0.0] * (len(steps) + 1)
    for n, (width, layer) in enumerate(steps):
        holds[n] += width * layer.j_m3k / 2
        holds[n + 1] += width * layer.j_m3k / 2
    return Chain(tuple(holds), tuple(layer.w_mk / width for width, layer in steps))


def face_c(
    air_c: Sequence[float],
    *,
    ground_c: float,
    absorbed_w_m2: Sequence[float] | None = None,
    seen: Seen | None = None,
    layers: Sequence[Layer] = ON_GRADE,
    face_w_m2k: float = FACE_W_M2K,
) -> tuple[float, ...]:
    """Temperature of the slab's face, the mean of each hour. [°C]

    air_c: of the room, an hour each; ten days or more before the hours that
    matter, else the start shows through. ground_c: at the lower end of the
    layers. absorbed_w_m2: sun taken up by the face, an hour each, none when
    left out. seen: a reading; the profile is then shifted as it would lie had
    the air been warmer or cooler until `SINCE_H` before, so that face and
    depth agree.
    Raises `Refused` for no hours, lists of unlike length, a reading outside them.
    """
    sun = absorbed_w_m2 if absorbed_w_m2 is not None else [0.0] * len(air_c)
    _insist(air_c, sun, seen)
    chain = chain_of(layers)
    ties = [face_w_m2k] + [0.0] * len(chain.between_w_m2k)
    start = air_c[: 24 if len(air_c) > 24 else len(air_c)]
    profile = _steady(chain, face_w_m2k, sum(start) / len(start), ground_c)
    shift = [0.0] * len(profile)
    told = []
    for hour, (air, flux) in enumerate(zip(air_c, sun, strict=True)):
        if seen is not None and hour == seen.hour:
            profile = _pulled(profile, shift or profile, seen.face_c)
        given = [face_w_m2k * air + flux] + [0.0] * len(chain.between_w_m2k)
        then = _held(chain, profile, ties, given, ground_c)
        if seen is not None and hour < seen.hour:
            given[0] = face_w_m2k if hour < seen.hour - SINCE_H else 0.0
            shift = _held(chain, shift, ties, given, 0.0)
        told.append((profile[0] + then[0]) / 2)
        profile = then
    return tuple(told)


def _held(
    chain: Chain, profile: list[float], ties: list[float], given: list[float], ground_c: float
) -> list[float]:
    """One hour later, the lowest node kept at `ground_c`."""
    upper = Chain(chain.holds_j_m2k[:-1], chain.between_w_m2k[:-1])
    last = chain.between_w_m2k[-1]
    ties, given = ties[:-1], given[:-1]
    ties[-1] += last
    given[-1] += last * ground_c
    then = stepped(
        upper, profile[:-1], step_s=HOUR_S, ties_w_m2k=ties, given_w_m2=given,
        share_new=CRANK_NICOLSON,
    )  # fmt: skip
    return [*then, ground_c]


def _steady(chain: Chain, face_w_m2k: float, air_c: float, ground_c: float) -> list[float]:
    """The profile that this air and this ground would settle to."""
    resist = [1 / face_w_m2k]
    for one in chain.between_w_m2k:
        resist.append(resist[-1] + 1 / one)
    return [air_c + (ground_c - air_c) * one / resist[-1] for one in resist]


def _pulled(profile: list[float], shift: list[float], seen_c: float) -> list[float]:
    """The profile brought to the reading; with no history the whole slab above ground moves."""
    off = seen_c - profile[0]
    if shift[0] <= 1e-6:
        last = len(profile) - 1
        return [one + off * (1 - n / last) for n, one in enumerate(profile)]
    return [one + off * by / shift[0] for one, by in zip(profile, shift, strict=True)]


def _widths(layer: Layer) -> list[float]:
    grown = [layer.wider**n for n in range(layer.parts)]
    return [layer.thick_m * one / sum(grown) for one in grown]


def _insist(air_c: Sequence[float], sun: Sequence[float], seen: Seen | None) -> None:
    mistakes = []
    if not air_c:
        mistakes.append(Mistake("air_c", "No hours came.", "Give at least one."))
    if len(sun) != len(air_c):
        told = f"{len(sun)} hours of sun for {len(air_c)} of air."
        mistakes.append(Mistake("absorbed_w_m2", told, "Give one for each hour."))
    if seen is not None and not 0 <= seen.hour < max(len(air_c), 1):
        told = f"Hour {seen.hour} is none of {len(air_c)}."
        mistakes.append(Mistake("seen", told, "Read the slab within the hours that are given."))
    if mistakes:
        raise Refused(*mistakes)


def depths_m(layers: Sequence[Layer] = ON_GRADE) -> tuple[float, ...]:
    """How deep each node lies below the face. [m]"""
    told = [0.0]
    for layer in layers:
        for width in _widths(layer):
            told.append(told[-1] + width)
    return tuple(told)
