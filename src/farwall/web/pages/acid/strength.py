"""The strength of a job's mixes in the words of the screen."""

from __future__ import annotations

from typing import Any

from farwall.evidence import rank_words
from farwall.facts.contents import Content
from farwall.facts.numbered import numbered
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.noun import AcidDay
from farwall.job.acid_day.strength.noun import CoatStrength, Ends, Sheet, TubPour
from farwall.job.acid_day.strength.said import figure
from farwall.papers.acid.batch_names import batch_name
from farwall.papers.wall_clock import Units
from farwall.papers.words import degrees_words, names_in, volume
from farwall.phrasebook import LANGUAGE, speaking, told
from farwall.units import L_PER_US_FL_OZ, L_PER_US_GAL
from farwall.web.words import said

SMALL_L = L_PER_US_GAL / 4


def strength_shown(ground: Ground, day: AcidDay) -> dict[str, Any]:
    """Coats with their figures in sentences, tubs in the order of pouring, what to mind."""
    names = {*names_in(ground.plan), *(one.name for one in day.strength.sheets)}
    with speaking("es" if LANGUAGE.get() == "es" else "en", names):
        return _shown(ground, day)


def _shown(ground: Ground, day: AcidDay) -> dict[str, Any]:
    part, units = day.strength, ground.job.wishes.units
    sheets = {sheet.stain: sheet for sheet in part.sheets}
    tubs: dict[str, list[dict[str, str]]] = {}
    mixes = {mix.id: batch_name(ground.plan, mix) for mix in ground.plan.mixes}
    for tub in part.tubs:
        name = mixes[tub.mix].by("es" if LANGUAGE.get() == "es" else "en")
        tubs.setdefault(tub.coat, []).append(_tub(tub, name, units))
    return {
        "coats": [
            _coat(coat, numbered(ground.plan, coat.coat), units)
            | {"tubs": tubs.get(coat.coat, []), "sheet": _sheet(sheets[coat.stain])}
            for coat in part.coats
        ],
        "order": told(part.order),
        "mind": [told(words) for words in part.warnings],
        "has_stains": bool(ground.job.stains),
    }


def _coat(coat: CoatStrength, number: str, units: Units) -> dict[str, Any]:
    added = coat.added_acid_fl_oz_per_gal
    head = said("acid-strength-head", coat=number, stain=coat.stain_name, cut=coat.cut)
    amount = f"{added:g} fl oz/gal" if units == "us" else f"{added * 1000 / 128:.0f} mL/L"
    return {
        "head": head,
        "added": said("acid-strength-added", amount=amount) if added else "",
        "rows": _rows(coat, units),
        "mind": [told(words) for words in coat.warnings],
        "trust": ", ".join(map(told, rank_words(coat.rank, coat.source).split(", "))),
    }


def _sheet(sheet: Sheet) -> str:
    """What was told of a stain's sheet, in a sentence or three."""
    picks = ((f"pick-{key}-{_YES_NO[told_so]}") for key, told_so in
             (("chromate", sheet.chromate), ("oxidiser", sheet.oxidiser)))  # fmt: skip
    chromate, oxidiser = map(said, picks)
    sentences = [said("acid-strength-sheet", chromate=chromate, oxidiser=oxidiser)]
    if sheet.contents:
        listed = ", ".join(map(_content, sheet.contents))
        sentences.append(said("acid-strength-lists", contents=listed))
    if sheet.sheet_read:
        sentences.append(said("acid-strength-read", day=sheet.sheet_read))
    return " ".join(sentences)


_YES_NO = {True: "yes", False: "no", None: ""}


def _content(content: Content) -> str:
    """`iron(III) chloride, ferric 5 to 15 %`."""
    name = said(f"pick-substance-{content.substance.replace(' ', '-')}")
    low, high = content.mass_percent_low, content.mass_percent_high
    if low is None and high is None:
        return name
    if low is None or high is None:
        key = "from" if high is None else "to"
        return said(f"acid-strength-share-{key}", name=name, share=f"{low or high or 0:g}")
    return f"{name} {span(Ends(low, high))} %"


def _rows(coat: CoatStrength, units: Units) -> list[tuple[str, str, str]]:
    """What, how much, and a word beside it; empty where the strength is unknown."""
    figures, neat = coat.figures, coat.neat_percent
    if figures is None or neat is None:
        return []
    rows = [("neat", f"{span(neat)} %", "")]
    if coat.added_acid_fl_oz_per_gal:
        rows.append(("cut", f"{span(figures.cut_percent)} %", ""))
    rows += [
        ("tub", f"{span(figures.tub_percent)} %", f"{span(figures.mol_per_l)} mol/L"),
        ("laid", f"{span(figures.mol_per_m2)} mol/m²", ""),
        ("warm", degrees_words(figures.tub_c.high, units), said(
            "acid-strength-from", start=degrees_words(coat.start_c, units)
        )),
        ("over", f"{span(figures.over_liquid_ppm)} ppm", said("acid-strength-plain")),
    ]  # fmt: skip
    if figures.times_by_acid is not None:
        rows.append(("by-acid", times(figures.times_by_acid), ""))
    if figures.times_by_salts is not None:
        rows.append(("by-salts", times(figures.times_by_salts), said("acid-strength-guess")))
    return [(said(f"acid-strength-{key}"), value, beside) for key, value, beside in rows]


def _tub(tub: TubPour, name: str, units: Units) -> dict[str, str]:
    poured = ((tub.water_l, "water"), (tub.stain_l, "stain"), (tub.acid_l, "acid"))
    steps = [
        said(f"acid-strength-pour-{what}", litres=_amount(litres, units))
        for litres, what in poured
        if litres > 0
    ]
    return {"mix": name, "poured": said("acid-strength-then").join(steps)}


def _amount(litres: float, units: Units) -> str:
    """As a volume; below a quart by the fluid ounce, or the millilitre."""
    if litres >= SMALL_L:
        return volume(litres, units)
    ounces, metric = f"{litres / L_PER_US_FL_OZ:.1f} fl oz", f"{litres * 1000:.0f} mL"
    return f"{ounces} ({metric})" if units == "us" else f"{metric} ({ounces})"


def span(ends: Ends) -> str:
    """`5.1 to 8.9`; one figure where both ends print alike."""
    low, high = figure(ends.low), figure(ends.high)
    return low if low == high else said("acid-strength-span", low=low, high=high)


def times(ends: Ends) -> str:
    """`1.6 to 2.1 times`."""
    return said("acid-strength-times", factor=span(ends))
