"""A material of the job as a thing that meets others: its kind, and what its sheet adds."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from farwall.acid.pouring.nouns import Has, Thing, Trait
from farwall.acid.pouring.traits import ONE_SUBSTANCE, STRONG, traits_of
from farwall.evidence import Rank
from farwall.facts.contents import Substance
from farwall.facts.job import Stain
from farwall.facts.materials import Material

SOURED_PH, STRONG_ACID_PH = 5.0, 2.0
"""At and below 2 water is corrosive by rule [epa-corrosive]; below 5 no sewer takes it
[epa-sewer], and bleach gives off chlorine, from memory below about 6."""
ALKALI_PH, LYE_PH = 10.0, 12.5
"""At and above 12.5 water is corrosive by rule [epa-corrosive]; 10 is our guess."""

_OF_STAINS = ("stain", "mixed stain")
_ADDS: dict[Substance, tuple[Trait, ...]] = {
    "sodium dichromate": ("chromate", "oxidiser"),
    "potassium dichromate": ("chromate", "oxidiser"),
    "ammonium chloride": ("ammonium salt",),
    "nitric acid": ("oxidiser", "unnamed acid"),
    "hydrogen peroxide": ("peroxide", "oxidiser"),
    "other oxidiser": ("oxidiser",),
    "other": ("oxidiser not told",),
}


def thing_of(material: Material, stain: Stain | None = None, *, left: bool = False) -> Thing:
    """A material as the gate takes it; `stain` is the job's stain that it is.

    What is not told adds traits and never takes one away: a stain of which nobody said whether
    its sheet names an oxidiser has the trait that says so.
    """
    known = {one.trait: one for one in _all(material, stain)}
    return Thing(
        name=material.name or (stain.name if stain else "") or material.id,
        kind=material.kind,
        stuff=_stuff(material),
        has=tuple(known.values()),
        id=material.id,
        left=left,
        never_with=material.never_with,
        may_with=material.may_with,
        sampled_with=material.sampled_with,
    )


def left_over(thing: Thing) -> Thing:
    """The same, there from before and not rinsed off."""
    return replace(thing, left=True)


def _stuff(material: Material) -> str:
    if material.kind in _OF_STAINS:
        return f"stain {material.stain}" if material.stain else f"stain of {material.id}"
    return material.kind if material.kind in ONE_SUBSTANCE else f"{material.kind} {material.id}"


def _all(material: Material, stain: Stain | None) -> Iterator[Has]:
    yield from traits_of(material.kind)
    yield from _by_ph(material)
    if material.kind in _OF_STAINS:
        yield from _by_sheet(stain)
    elif material.kind == "dried stain" and (stain is None or stain.names_chromate is not False):
        yield _told("chromate", "its sheet names chromate, or nobody told")
    if not _was_read(material, stain):
        yield _told("sheet not read", "nobody entered that its sheet was read")
        strong = STRONG & {one.trait for one in traits_of(material.kind)}
        if strong and material.kind not in ONE_SUBSTANCE:
            yield _told("strong and not read", "nobody entered that its sheet was read")


def _by_ph(material: Material) -> Iterator[Has]:
    ph = material.sheet_ph
    if ph is None or material.kind in {*_OF_STAINS, "water"}:
        return
    if ph <= STRONG_ACID_PH:
        yield _told("strong acid", f"pH {ph:g}")
    if ph < SOURED_PH:
        yield _told("spent acid", f"pH {ph:g}")
    if ph >= ALKALI_PH:
        yield _told("alkali", f"pH {ph:g}")
    if ph >= LYE_PH:
        yield _told("lye", f"pH {ph:g}")


def _by_sheet(stain: Stain | None) -> Iterator[Has]:
    if stain is None:
        yield _told("oxidiser not told", "its sheet was not entered")
        return
    for content in stain.contents:
        for trait in _ADDS.get(content.substance, ()):
            yield _told(trait, f"its sheet lists {content.substance}")
    if stain.names_chromate:
        yield _told("chromate", "its sheet names chromate")
        yield _told("oxidiser", "its sheet names chromate")
    if stain.names_oxidiser:
        yield _told("oxidiser", "its sheet names an oxidiser")
    if not names_no_oxidiser(stain):
        yield _told("oxidiser not told", "nobody entered whether its sheet names an oxidiser")


def names_no_oxidiser(stain: Stain) -> bool:
    """Whether it was entered that the sheet names neither chromate nor another oxidiser.

    Both were answered with no, and nothing that the sheet lists speaks against it. A list alone
    is no answer, for lists leave things out.
    """
    listed = {trait for one in stain.contents for trait in _ADDS.get(one.substance, ())}
    if listed & {"oxidiser", "oxidiser not told"}:
        return False
    return stain.names_chromate is False and stain.names_oxidiser is False


def _was_read(material: Material, stain: Stain | None) -> bool:
    if material.kind in {"water", "dried stain", "rinse water", "neutralised rinse water", "rags"}:
        return True
    return material.sheet_read or (stain is not None and bool(stain.sheet_read))


def _told(trait: Trait, because: str) -> Has:
    return Has(trait, because, "told in the job", Rank.MEASURED)
