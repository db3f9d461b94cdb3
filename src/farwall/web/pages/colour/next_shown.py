"""The verdict as the page shows it: sentences in the page's language, swatches on their ruler."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import fields

from markupsafe import Markup

from farwall.colour.next_coat import Outlook
from farwall.colour.swatch import hex_of_lab
from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.job.colour.figures import coverage
from farwall.job.colour.fit_noun import Swatch
from farwall.job.colour.in_words import lab_words
from farwall.job.colour.next_noun import NextAnswer
from farwall.job.colour.say import SCREEN, SaidNext, said
from farwall.nouns import dataclass
from farwall.papers.words import names_in
from farwall.phrasebook import LANGUAGE, speaking
from farwall.units import measures_own_first
from farwall.web.pages.colour.picture import NARROW, WIDE, Row, Ruler, ruler
from farwall.web.pages.told import told_on_page
from farwall.web.words import said as words

Told = dict[str, list[str]]


@dataclass(frozen=True)
class Dose:
    """A line of the table of doses: cut, colour for the screen, words, range of lightness."""

    cut: str
    colour: str
    words: str
    range: str


@dataclass(frozen=True)
class NextShown:
    """What the template is given. doses: by stain and what lies beneath, from strong to weak."""

    told: Told
    wide: Markup
    narrow: Markup
    rows: tuple[Row, ...]
    screen: str
    doses: tuple[tuple[str, tuple[Dose, ...]], ...]


def next_shown(
    job: Job, plan: Plan, found: NextAnswer, swatches: Sequence[Swatch] = ()
) -> NextShown:
    """All of it in the language that is spoken; swatches: doses as `doses_of` has them."""
    with speaking(LANGUAGE.get(), names_of(job, plan, found)):
        told = _told(said(job, found), us=job.wishes.units == "us")
        drawn = _ruler(found)
        return NextShown(
            told, ruler(drawn, WIDE), ruler(drawn, NARROW), tuple(drawn.rows),
            told_on_page(SCREEN), _doses(job, swatches),
        )  # fmt: skip


def names_of(job: Job, plan: Plan, found: NextAnswer) -> set[str]:
    """What no language changes: rooms, stains, coats, samples, who signed."""
    own = {one.name for one in job.stains if one.name} | set(found.found.stains)
    samples = {one.id for one in found.found.samples}
    return {*names_in(plan), *own, *samples, found.standard.approved_by}


def _told(of: SaidNext, *, us: bool) -> Told:
    def own(text: str) -> str:
        return measures_own_first(told_on_page(text), us=us)

    return {one.name: [own(text) for text in getattr(of, one.name)] for one in fields(of)}


def _ruler(found: NextAnswer) -> Ruler:
    standard = found.standard
    now = words("colour-next-row-now" if found.floor_seen else "colour-next-row-now-foreseen")
    rows = [
        Row(words("colour-next-row-sample", sample=standard.sample), _words(standard.lab),
            standard.lab),
        _row(now, found.stop) if not found.floor_seen else Row(
            now, _words(found.floor_now), found.floor_now, *_ends(found, found.stop)
        ),
    ]  # fmt: skip
    if found.would == "lay":
        rows.append(_row(words("colour-next-row-after"), found.chosen, found))
    rows.append(_row(words("colour-next-row-habit"), found.habit, found))
    return Ruler(
        tuple(rows), standard.lab[0], words("colour-next-mark-sample"),
        standard.lab[0] - found.dark_range, words("colour-next-mark-dark"),
    )  # fmt: skip


def _doses(job: Job, swatches: Sequence[Swatch]) -> tuple[tuple[str, tuple[Dose, ...]], ...]:
    names = {one.id: one.name or one.id for one in job.stains}
    tables: dict[str, list[Dose]] = {}
    for one in swatches:
        if not one.stain:
            continue
        us = job.wishes.units == "us"
        stain = names.get(one.stain, one.stain)
        at = measures_own_first(coverage(one.l_per_m2), us=us)
        over = ", ".join(f"{names.get(c.stain, c.stain)} {c.cut}" for c in one.over)
        key = "colour-next-doses-over" if over else "colour-next-doses-of"
        title = words(key, stain=stain, over=over, coverage=at)
        told = words("colour-next-range", likely=f"{one.lab[0]:.1f}", low=f"{one.low_l:.1f}",
                     high=f"{one.high_l:.1f}")  # fmt: skip
        dose = Dose(one.cut, hex_of_lab(one.lab), told_on_page(lab_words(one.lab)), told)
        tables.setdefault(title, []).append(dose)
    return tuple((title, tuple(rows)) for title, rows in tables.items())


def _row(name: str, one: Outlook, found: NextAnswer | None = None) -> Row:
    if found is None:
        return Row(name, _words(one.lab), one.lab)
    return Row(name, _words(one.lab), one.lab, *_ends(found, one))


def _ends(found: NextAnswer, one: Outlook) -> tuple[float, float]:
    """10 and 90 % of the lightness."""
    sample = found.standard.lab[0]
    return sample + one.gap_low, sample + one.gap_high


def _words(lab: tuple[float, float, float]) -> str:
    return f"{told_on_page(lab_words(lab))}, L* {lab[0]:.1f}"
