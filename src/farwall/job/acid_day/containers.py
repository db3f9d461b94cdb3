"""What stands in jugs, sprayers, pails and drums on the site, and what each has to say of itself.

The worse end of the sheet counts; a share that the sheet leaves open is taken as high as the rest
leaves room for. What nobody told is named, for the label has a line to write it on.
"""

from __future__ import annotations

from typing import Literal

from farwall.acid.hazards import Pictogram, Signal, pictograms, signal
from farwall.acid.mixture_hazards import HYDROCHLORIC_ACID, NEAT, hazard_codes
from farwall.facts.job import Stain
from farwall.facts.numbered import stain_named
from farwall.facts.plan import Mix, Plan, PlanCoat
from farwall.job.acid_day.ground import Ground
from farwall.mix.batch import TRADE_ACID_KG_L, TRADE_ACID_PERCENT
from farwall.nouns import dataclass

Kind = Literal["batch", "muriatic acid", "bicarbonate", "ammonia water", "rinse water"]
Unknown = Literal["strength", "chromate", "contents", "other"]
STAIN_KG_L = 1.3
"""Density where no sheet told one: the usual 1.30 of safety sheets; heavier is the worse end."""
AMMONIA_PERCENT = 10.0
"""Household ammonia water, its strong end (from memory)."""
_CHROMATES = ("sodium dichromate", "potassium dichromate")


@dataclass(frozen=True)
class Container:
    """One thing to label. Volumes in litres; `unknown`: what nobody told of it."""

    kind: Kind
    batch: str = ""
    coat: str = ""
    product: str = ""
    cut: str = ""
    stain_l: float = 0.0
    water_l: float = 0.0
    acid_l: float = 0.0
    codes: tuple[str, ...] = ()
    pictograms: tuple[Pictogram, ...] = ()
    signal: Signal | None = None
    holds: tuple[str, ...] = ()
    unknown: tuple[Unknown, ...] = ()


def containers_of(ground: Ground) -> tuple[Container, ...]:
    """The batches first, then what is poured beside them, then the drums' water."""
    coats = {coat.id: coat for coat in ground.plan.inputs.coats}
    stains = {stain.id: stain for stain in ground.job.stains}
    batches = [_batch(mix, coats.get(mix.coat), stains, ground.plan) for mix in ground.plan.mixes]
    kinds = {one.kind for one in ground.job.materials}
    beside: list[Container] = []
    if any(mix.acid_l > 0 for mix in ground.plan.mixes) or "muriatic acid" in kinds:
        beside.append(_told("muriatic acid", {HYDROCHLORIC_ACID: TRADE_ACID_PERCENT.value}))
    beside.append(Container("bicarbonate"))
    if ground.job.washing.base == "ammonia water" or "ammonia water" in kinds:
        beside.append(_told("ammonia water", {"ammonia water": AMMONIA_PERCENT}))
    return (*batches, *beside, _rinse_water(batches))


def shares_percent(stain: Stain) -> dict[str, float]:
    """The highest mass share that the sheet allows each of its substances. [%]

    An open end is as high as the low ends of all others leave room for.
    """
    lines: list[tuple[str, float | None, float | None]] = [
        (one.substance, one.mass_percent_low, one.mass_percent_high) for one in stain.contents
    ]
    if stain.chromate and not any(name in _CHROMATES for name, _, _ in lines):
        lines.append((_CHROMATES[0], None, None))
    if stain.hcl_percent_low is not None or stain.hcl_percent_high is not None:
        lines.append((HYDROCHLORIC_ACID, stain.hcl_percent_low, stain.hcl_percent_high))
    held = sum(least or 0.0 for _, least, _ in lines)
    found: dict[str, float] = {}
    for name, least, most in lines:
        share = most if most is not None else max(100.0 - held + (least or 0.0), least or 0.0)
        found[name] = min(100.0, found.get(name, 0.0) + share)
    return found


def _batch(mix: Mix, coat: PlanCoat | None, stains: dict[str, Stain], plan: Plan) -> Container:
    stain = stains.get(coat.stain) if coat is not None else None
    unknown = _unknown(stain)
    shares = _cut(shares_percent(stain), stain.density_kg_l, mix) if stain is not None else {}
    codes = set(hazard_codes(shares))
    if "strength" in unknown:
        codes |= {"H290", "H314"}
    if stain is not None and (stain.oxidiser or _oxidises(stain)):
        codes.add("H272")
    name = stain_named(plan, coat.stain) if coat is not None else mix.coat
    if stain is not None and stain.name:
        name = stain.name
    told = tuple(sorted(codes))
    return Container(
        "batch", mix.id, mix.coat, name, mix.cut, mix.stain_l, mix.water_l, mix.acid_l, told,
        pictograms(told), signal(told), tuple(shares), unknown,
    )  # fmt: skip


def _oxidises(stain: Stain) -> bool:
    return any(one.substance == "other oxidiser" for one in stain.contents)


def _unknown(stain: Stain | None) -> tuple[Unknown, ...]:
    if stain is None:
        return ("strength", "chromate", "contents")
    found: list[Unknown] = []
    if stain.hcl_percent_high is None and stain.hcl_percent_low is None:
        found.append("strength")
    if stain.chromate is None and not any(one.substance in _CHROMATES for one in stain.contents):
        found.append("chromate")
    if not stain.contents:
        found.append("contents")
    if any(one.substance not in NEAT for one in stain.contents):
        found.append("other")
    return tuple(found)


def _cut(shares: dict[str, float], density_kg_l: float | None, mix: Mix) -> dict[str, float]:
    """The shares after water and added acid: by mass, water at 1 kg/L."""
    stain_kg = mix.stain_l * (density_kg_l or STAIN_KG_L)
    acid_kg = mix.acid_l * TRADE_ACID_KG_L.value
    whole = stain_kg + acid_kg + mix.water_l
    if whole <= 0:
        return {}
    found = {name: share * stain_kg / whole for name, share in shares.items()}
    if acid_kg:
        more = TRADE_ACID_PERCENT.value * acid_kg / whole
        found[HYDROCHLORIC_ACID] = found.get(HYDROCHLORIC_ACID, 0.0) + more
    return found


def _told(kind: Kind, shares: dict[str, float]) -> Container:
    codes = hazard_codes(shares)
    return Container(kind, codes=codes, pictograms=pictograms(codes), signal=signal(codes))


def _rinse_water(batches: list[Container]) -> Container:
    """Not tested, so nothing is claimed of it: what it may hold is named, no class is reckoned."""
    held = dict.fromkeys(name for one in batches for name in one.holds if name in NEAT)
    unknown: tuple[Unknown, ...] = ("contents",)
    return Container("rinse water", holds=tuple(held), unknown=unknown)
