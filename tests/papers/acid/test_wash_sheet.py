"""The wash-day sheet, read back from the PDF."""

import re
from dataclasses import replace

import pytest
from tests.job.live.test_now import JOB, PLAN
from tests.papers.acid.ground import pages_of

from farwall.facts.job import Wishes
from farwall.facts.washing import Drums, Washing
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.washing import washing_of
from farwall.job.acid_day.washing.day import grounds_of
from farwall.job.acid_day.washing.words import CAUTIONS, steps_of
from farwall.papers.acid.wash.sheet import own_names, wash_data, wash_day_pdf
from farwall.papers.run_sheet.in_language import template_words
from farwall.papers.run_sheet.margins import paper_for
from farwall.phrasebook import in_spanish, said_whole, speaking
from farwall.units import L_PER_US_GAL, M2_PER_FT2, M_PER_FT

TOLD = Washing(
    base="bicarbonate", tap_ph=7.8, unstained_ph=9.0, water_from="yard tap",
    drums=Drums(count=9, at="yard"), upstairs=True, floor_load_kg_m2=250.0, van_load_kg=600.0,
    ground_fault=True,
)  # fmt: skip


def ground(washing=TOLD, **wishes):
    return Ground(replace(JOB, washing=washing, wishes=Wishes(**wishes)), PLAN)


def texts(told):
    return pages_of(wash_day_pdf(told, washing_of(told)))


def strings(value):
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        for key, one in value.items():
            if key not in {"map", "paper", "footer", "job", "lang", "phrases"}:
                yield from strings(one)
    elif isinstance(value, list):
        for one in value:
            yield from strings(one)


def test_front_steps_and_a_block_for_each_room():
    told = ground()
    front, steps, *rooms = texts(told)
    assert "Wash day" in front
    assert "Drawn at: yard tap." in front
    assert "Each wants a square of" in front
    assert "29 CFR 1926.404(b)(1)" in steps
    day = washing_of(told)
    for one in steps_of(day):
        assert one.split(".")[0] in steps
    whole = " ".join(rooms)
    for room in day.rooms:
        assert room.name in whole
    assert whole.count("no powder") == len(day.rooms)


def test_what_is_not_told_stands_on_the_front():
    front = texts(ground(Washing()))[0]
    assert "Before the first pail" in front
    assert "Nobody said whether the wet machines hang on ground-fault protection." in front


def test_metres_and_litres_where_they_are_wished():
    page = " ".join(texts(ground(units="metric")))
    assert "7 to 15 g/L (2 to 4 tablespoons to the gallon)" in page
    assert "into the last by 30 cm (a foot)" in page
    for us in ("ft²", "gal "):
        assert us not in page.replace("(several ft²)", "")
    assert " L" in page


def test_the_usual_figures_are_the_same_in_both_units():
    """8, 12, 20 gal on 100 ft² are 3.26, 4.89, 8.15 L/m² by the definitions of foot and gallon; the
    rest likewise, as far as they are rounded."""
    us, metric = (_figures(units) for units in ("us", "metric"))
    per = (L_PER_US_GAL / (100 * M2_PER_FT2), *(M2_PER_FT2,) * 3, M_PER_FT)
    for name, factor in zip(_NAMES, per, strict=True):
        scaled = [one * factor for one in us[name]]
        assert metric[name] == pytest.approx(scaled, rel=0.04), name


_NAMES = ("water of all rinses", "scrubbing", "vacuum", "all the work", "edges by hand")


def _figures(units: str) -> dict[str, list[float]]:
    job = ground(Washing(), units=units).job
    found = {name: value for name, value, _, _ in grounds_of(job)}
    return {name: [float(one) for one in _TOLD.findall(_PER.sub("", found[name]))]
            for name in _NAMES}  # fmt: skip


_TOLD, _PER = re.compile(r"\d+(?:\.\d+)?"), re.compile(r" on .*")


@pytest.mark.parametrize("washing", [TOLD, Washing(), Washing(base="lime", ground_fault=False)])
def test_in_spanish_every_sentence_is_spanish(washing, monkeypatch):
    told = ground(washing)
    monkeypatch.setattr("farwall.papers.acid.wash.sheet.in_language", lambda data, units: data)
    data = wash_data(told, washing_of(told), paper_for("us", None))
    with speaking("es", own_names(told)):
        assert [one for one in strings(data) if not said_whole(one)] == []


def test_the_words_of_the_template_are_in_the_book():
    own = {"Wash day", "Room by room", "Every room, step by step", "Before the first pail",
           "each rinse", "rag", "powder", "no powder", "next day, dry", "Cautions"}  # fmt: skip
    assert own <= template_words()
    assert [one for one in own if in_spanish(one, frozenset()) is None] == []


def test_the_same_job_gives_the_same_bytes():
    told = ground(language="es")
    assert wash_day_pdf(told, washing_of(told)) == wash_day_pdf(told, washing_of(told))
    assert len(CAUTIONS) == 6
