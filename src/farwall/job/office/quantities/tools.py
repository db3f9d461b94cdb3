"""Sprayers and what is carried beside them, spill kit and eyewash. Pure."""

from __future__ import annotations

from farwall.evidence import Rank
from farwall.facts.kept_gear import SPRAYER_LASTS
from farwall.facts.quantities import Quantity
from farwall.job.office.quantities.basis import Basis, line
from farwall.job.office.quantities.practice import EYEWASH_L, FLUSH_L, SPARE_SPRAYERS
from farwall.job.van.sprayers import condition

_SPARES = (
    ("spare-tip", "spare tip", "One more of the tip that was measured, the same number."),
    ("spare-wand", "spare wand", "All plastic, no metal in wand, spring or valve."),
    ("seals", "set of seals and O-rings", "Made for acid; greased with silicone."),
)


def tool_lines(basis: Basis) -> tuple[Quantity, ...]:
    """Sprayers first."""
    spares = (
        line("other", what, (0, 0, 1), rule, id_=id_, ready=1, of=what)
        for id_, what, rule in _SPARES
    )
    return (_sprayers(basis), *spares, _spill_kit(basis), _eyewash(basis))


def _sprayers(basis: Basis) -> Quantity:
    """Those to be bought: one for each who sprays and a spare, less the sound ones in the van."""
    job = basis.ground.job
    wanted = job.crew.sprayers + SPARE_SPRAYERS
    van = basis.ground.van
    states = [] if van is None else [condition(one) for one in van.sprayers]
    sound = sum(one.word != "no" for one in states)
    new = max(wanted - sound, 0)
    cheap, good = ("{} to {}".format(*SPRAYER_LASTS[kind]) for kind in ("cheap", "acid-proof"))
    said = [f"{wanted} alike, one of them spare: one that fails in mid-field leaves a seam."]
    if van is not None:
        said.append(f"{sound} sound in the van.")
    said.append(
        f"A cheap one lasts {cheap} jobs, a good one, flushed daily with "
        f"{basis.said(FLUSH_L, 'l')} of water, {good}."
    )
    if job.supplies.sprayers is not None:
        new = job.supplies.sprayers
        said.append("How many are bought was told.")
    return line("sprayer", "new sprayers", (new, new, max(new, wanted)), " ".join(said))


def _spill_kit(basis: Basis) -> Quantity:
    rule = "One on site, open beside the mixing tub; finishers count one for each 1,000 ft²."
    if basis.units == "metric":
        rule = "One on site, open beside the mixing tub; finishers count one for each 93 m²."
    return line("spill-kit", "spill kit", (1, 1, max(1.0, basis.thousands)), rule)


def _eyewash(basis: Basis) -> Quantity:
    rule = (
        f"In reach within 10 s, running 15 min: {basis.said(EYEWASH_L, 'l')} and more, or a "
        "tempered hose. Two squeeze bottles are not enough."
    )
    return line(
        "other",
        "eyewash for 15 min",
        (1, 1, 1),
        rule,
        id_="eyewash",
        rank=Rank.PUBLISHED,
        source="eyewash",
        of="eyewash",
    )
