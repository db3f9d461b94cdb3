"""What the samples say, in words and as plain values. Pure."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from farwall.evidence import Rank
from farwall.facts.plain import plain
from farwall.job.colour.document import BELIEF, coat, rounded
from farwall.job.colour.figures import coverage, lab_said
from farwall.job.colour.fit_noun import Between, FitAnswer, Swatch
from farwall.job.colour.in_words import lab_words
from farwall.units import ft2_per_gal_from_m2_per_l

Json = dict[str, Any]


def fit_lines(found: FitAnswer, stains: Mapping[str, str]) -> list[str]:
    """For a terminal; stains: what the job calls them, by id."""
    lines = [
        f"The bare floor, clean and wet: {lab_words(found.bare.lab)}, {lab_said(found.bare.lab)}."
    ]
    lines += _swatch_lines(found, stains)
    lines += ["", "How well each is told by the others"]
    lines += [
        f"  {one.name}: {one.away:.1f} CIEDE2000"
        f"{' (no other tells of its stain: a guess)' if one.alone else ''}"
        for one in found.told
    ] or ["  There is only one: nothing to hold it against."]
    lines += ["", "How colour comes of stain"]
    lines += [f"  {one.optics}, lime {one.lime}: {one.weight:.0%}" for one in found.forms]
    lines += ["", "What is left unknown", *(f"  {between(one)}" for one in found.unknown)]
    if found.asks:
        lines += ["", "What would tell more", *(f"  {one.what}" for one in found.asks)]
    return lines


def between(one: Between) -> str:
    """`lime: 0.5 (0.3 to 0.9) L of stain on a square metre`."""
    return f"{one.name}: {one.likely:.2g} ({one.low:.2g} to {one.high:.2g}) {one.unit}"


def _swatch_lines(found: FitAnswer, stains: Mapping[str, str]) -> list[str]:
    lines: list[str] = []
    last = None
    for one in found.swatches:
        over = ", ".join(f"{stains.get(each.stain, each.stain)} {each.cut}" for each in one.over)
        stain = stains.get(one.stain, one.stain)
        title = f"{stain} over {over}" if over else f"{stain} on the bare floor"
        if title != last:
            lines += ["", f"{title}, {coverage(one.l_per_m2)}"]
            last = title
        lines.append(
            f"  {one.cut:<5} L* {one.lab[0]:.1f} ({one.low_l:.1f} to {one.high_l:.1f})  "
            f"{lab_words(one.lab)}"
        )
    return lines


def fit_document(found: FitAnswer) -> Json:
    """All of it."""
    document = {
        "job": found.job,
        "bare": swatch(found.bare),
        "swatches": [swatch(one) for one in found.swatches],
        "forms": [plain(one) for one in found.forms],
        "told_again": [
            {
                "name": one.name, "seen_lab": list(one.seen), "told_lab": list(one.told),
                "de2000": one.away, "stain_told_by_no_other": one.alone,
            }
            for one in found.told
        ],
        "unknown": [plain(one) for one in found.unknown],
        "sealing": plain(found.sealing),
        "standard": plain(found.standard),
        "asks": [plain(one) for one in found.asks],
        "learned_from": found.learned_from,
        "rank": Rank.GUESS.value if any(not p.with_target for p in found.found.patches)
        else Rank.MEASURED.value,
        "source": f"{len(found.found.patches)} patches seen clean and wet; {BELIEF}",
    }  # fmt: skip
    return dict(rounded(document))


def swatch(one: Swatch) -> Json:
    """A dose and its look; low and high are 10 and 90 % of the lightness."""
    m2_per_l = 1 / one.l_per_m2 if one.l_per_m2 else None
    return {
        "stain": one.stain or None, "cut": one.cut or None, "m2_per_l": m2_per_l,
        "ft2_per_gal": None if m2_per_l is None else ft2_per_gal_from_m2_per_l(m2_per_l),
        "stain_l_per_m2": one.stain_l_per_m2, "over": [coat(each) for each in one.over],
        "lab": list(one.lab), "words": lab_words(one.lab),
        "lightness": {"low": one.low_l, "likely": one.lab[0], "high": one.high_l},
    }  # fmt: skip
