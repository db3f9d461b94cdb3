"""The seal sheet: its foot, both languages whole, nothing over anything, the same bytes."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import pytest
from tests.papers.office import houses, looked_at

from farwall.facts.checks import Watch
from farwall.facts.job import Job, Wishes
from farwall.facts.sealer import Sealer
from farwall.job.seal_day import seal_day
from farwall.papers.run_sheet.in_language import template_words
from farwall.papers.run_sheet.margins import MARGIN_PT, paper_for
from farwall.papers.seal_drawing import seal_svg
from farwall.papers.seal_front import front_page
from farwall.papers.seal_pages import coat_pages
from farwall.papers.seal_says import for_paper, with_care
from farwall.papers.seal_sheet import own_names, seal_data, seal_sheet_pdf
from farwall.phrasebook import said_whole, speaking, told
from farwall.web.pages.told import reads_english

HERE = "https://book.example/houses/7"
MORNING = "2027-05-03T07:30:00-05:00"
SEALERS = {
    "water": Sealer(type="water acrylic", wet_edge_min=8, m2_per_l=10, coats=2),
    "one coat": Sealer(type="penetrating", coats=1),
    "epoxy": Sealer(type="epoxy", coats=2),
    "solvent": Sealer(
        type="solvent acrylic", name="clear gloss", coats=2, solvent_g_l=600,
        solvent_limit_mg_m3=200,
    ),
    "solvent of no weight": Sealer(type="solvent acrylic", coats=2),
    "hardener": Sealer(type="water epoxy and urethane", coats=2, test_wait_h=20),
    "nobody named": None,
}  # fmt: skip
WATCHES = {"told": Watch(rinse_ph=7.5, rag="clean"), "bad": Watch(rinse_ph=5.5, rag="dirty")}


def long_names():
    """Nine rooms whose names have sixty letters, a third of them one word."""
    floor, out = houses.grid_floor(3)
    return Job(version=1, floor=floor, exits=(out,), id="long", name=houses.UNBROKEN)


@cache
def day_of(sealer, watch="told", *, long=False, starts_at=MORNING):
    job = long_names() if long else houses.bare().job
    kind = SEALERS[sealer]
    job = replace(job, watch=WATCHES.get(watch, Watch()), starts_at=starts_at, revision=4)
    return seal_day(job if kind is None else replace(job, sealer=kind))


def pdf_of(day, *, screens=HERE, **wishes):
    return seal_sheet_pdf(day.plan, day.sealing, Wishes(**wishes), revision=4, screens=screens)


def strings(value, key=""):
    """Every text of the data that is set, but for drawings and the user's own."""
    if isinstance(value, str):
        if key not in {"map", "job", "notes", "paper", "unit", "slab_unit", "qr", "screen"}:
            yield value
    elif isinstance(value, dict):
        for name, one in value.items():
            yield from strings(one, name)
    elif isinstance(value, list | tuple):
        for one in value:
            yield from strings(one, key)


DAYS = [*((one, "told") for one in SEALERS), ("water", "bad"), ("water", "untold")]


@pytest.mark.parametrize(("sealer", "watch"), DAYS)
@pytest.mark.parametrize("units", ["us", "metric"])
def test_every_sentence_is_said_in_spanish(sealer, watch, units):
    day = day_of(sealer, watch)
    with speaking("es", own_names(day.plan, day.sealing)):
        data = (
            front_page(day.plan, day.sealing, units=units, notes=""),
            coat_pages(day.plan, day.sealing, units=units, size=paper_for(units, None)),
        )
        assert [one for one in strings(data) if not said_whole(one)] == []
        assert [one for one in template_words() if not said_whole(one)] == []


def test_what_the_plan_warns_of_stands_among_the_cautions():
    """Each of them: without weather the night is not in it, and dry was told before its clock."""
    day = day_of("water")
    early = "Told as dry from Tue 4 May 9:00 am, before the late end of its clock"
    plan = replace(day.plan, warnings=(*day.plan.warnings, early))
    cautions = front_page(plan, day.sealing, units="us", notes="")["cautions"]
    assert any(one.startswith("No weather: slab and air") for one in cautions)
    assert early in cautions
    assert set(day.plan.cautions) <= set(cautions)


SAID_SELDOM = (
    ("Told as dry from Tue 4 May 9:00 am, before the late end of its clock (Tue 4 May 11:00 pm): "
    "look again for dark islands."),
    "not known: no weather reaches Tue 4 May 09:00.",
    ("Tue 4 May 09:00: dew: the slab is 1.2 K (2.1 °F) above the dew point, less than 3 K "
    "(5 °F)."),
    ("Tue 4 May 09:00: dew: the slab is 5.2 °F (2.9 K) above the dew point, less than 3 K, which "
    "the rule rounds to 5 °F."),
    ("Coat 1, Den: 5.2 °F (2.9 K) above the dew point, less than 3 K, which the rule rounds to "
    "5 °F."),
    ("At sealing the slab was 5.2 °F (2.9 K) above the dew point; a sealer wants 3 K, which the "
    "rule rounds to 5 °F."),
    ("The slab is 5.2 °F (2.9 K) above the dew point (61 °F); a sealer wants 3 K, which the rule "
    "rounds to 5 °F."),
    ("The slab is 2.1 °F (1.2 K) above the dew point (61 °F); a sealer wants 5 °F (3 K)."),
    "Coat 1, Den: 2.1 °F (1.2 K) above the dew point, less than 5 °F (3 K).",
    ("Nothing dries there, and no sealer goes on nearer to the dew point than 3 K, which the rule "
    "rounds to 5 °F."),
    ("Mon 3 May 07:30: too warm: the slab is at 31.0 °C (88 °F), above 29.0 °C (84 °F) (in the "
    "sun, Den)."),
    "No hour is known from Mon 3 May 07:30 on.",
    "Coat 2: coat 1 does not get ready for it within four days.",
    ("Recoat window too short: coat 1 begun Mon 3 May 07:30 is ready for the next at Tue 4 May "
    "09:00 at the late end, and from Tue 4 May 07:30 on it has to be abraded first."),
    ("Coat 2 finds no hours between Mon 3 May 12:30 (ready at the late end) and Tue 4 May 07:30 "
    "(abraded from then on): it is night, the working day is over, or nobody works."),
    ("Edge: in Den (field 1.1) an edge would be 6.0 min old, and it lives 3.7. Two sprayers side "
    "by side on each band, each with a full tank."),
    ("Edge: in Den (field 1.1) an edge would be 6.0 min old, and it lives 3.7. A helper who swaps "
    "full tanks, and bands of 2' 6\"."),
    with_care(("damp air: 66 % humidity; below 60 % is better",
               "not known: fewer than 6 hours lie ahead in this weather")),
)  # fmt: skip


@pytest.mark.parametrize("said", SAID_SELDOM)
def test_what_is_said_seldom_is_said_in_spanish_too(said):
    with speaking("es", {"Den"}):
        assert said_whole(for_paper(said)), said
        assert not reads_english(told(for_paper(said)))


@pytest.mark.parametrize("sealer", ["water", "nobody named"])
def test_a_drawing_says_laid_and_tray_in_either_language(sealer):
    day = day_of(sealer)
    with speaking("es", own_names(day.plan, day.sealing)):
        spanish = seal_svg(day.plan, day.sealing)
    english = seal_svg(day.plan, day.sealing)
    for word in ("rocía", "tanque", "laid first", "Sealer"):
        assert word not in spanish
    for word in ("sprayed", "tank"):
        assert word not in english
    assert "se pone primero" in spanish
    assert "laid first" in english


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_foot_has_job_revision_hash_and_page(language):
    day = day_of("water")
    pages = looked_at.sheets(pdf_of(day, language=language))
    page, of, revision, inputs = (
        ("Page", "of", "facts", "inputs")
        if language == "en"
        else ("Página", "de", "datos", "entradas")
    )
    for number, sheet in enumerate(pages, 1):
        lines, crossing = looked_at.foot_lines(sheet, MARGIN_PT + 28)
        assert crossing == []
        assert len(lines) == 2, lines
        first = " ".join(lines[0])
        assert first.startswith(f"{page} {number} {of} {len(pages)} ·")
        assert first.endswith(f"{revision} 4 · {inputs} {day.plan.inputs_hash[:12]}")


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize(("units", "paper"), [("us", "us-letter"), ("metric", "a4")])
@pytest.mark.parametrize(
    ("sealer", "watch", "long"),
    [("solvent", "bad", False), ("nobody named", "untold", False), ("water", "told", True)],
)
def test_no_word_lies_on_another_or_beyond_a_margin(language, units, paper, sealer, watch, long):
    day = day_of(sealer, watch, long=long)
    pdf = pdf_of(day, language=language, units=units, paper=paper, notes=houses.LONG)
    assert looked_at.is_tagged(pdf)
    assert looked_at.fonts_not_embedded(pdf) == []
    for number, sheet in enumerate(looked_at.sheets(pdf), 1):
        assert looked_at.on_each_other(sheet) == [], number
        assert looked_at.beyond(sheet, 0) == [], number


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_same_day_gives_the_same_bytes(language):
    day = day_of("water")
    again = seal_day(
        replace(houses.bare().job, watch=WATCHES["told"], starts_at=MORNING, revision=4,
                sealer=SEALERS["water"])
    )  # fmt: skip
    assert pdf_of(day, language=language) == pdf_of(again, language=language)


def test_no_key_of_a_file_and_no_command_stands_on_the_paper():
    for sealer, watch in DAYS:
        day = day_of(sealer, watch)
        data = seal_data(day.plan, day.sealing)
        text = " ".join(strings(data))
        for word in ("watch.", "farwall", "solvent_g_l", "seal-1 ", "sealer.t"):
            assert word not in text, (sealer, word)
