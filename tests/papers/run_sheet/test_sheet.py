"""The run sheet read back from its own PDF: pages, words, margins, type."""

from __future__ import annotations

import ctypes
import re
from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import cache

import pypdfium2
import pypdfium2.raw as pdfium
import pytest
from tests.papers.invented_plan import big_house, long_names, many_bands, refused, small_house

from farwall.facts.plan import Plan, PlanFloor
from farwall.papers.run_sheet import run_sheet_pdf
from farwall.papers.run_sheet.lists import CARRY, EVENING, morning
from farwall.papers.wall_clock import Units
from farwall.papers.words import room_names

HOUSES: dict[str, Callable[[], Plan]] = {
    "small": small_house,
    "long names": long_names,
    "many bands": many_bands,
    "refused": refused,
    "big": big_house,
}
EMERGENCY = "Hurt? Walk straight across. The floor does not matter."
WINS = "The sheet of the material in hand, local codes and licensed practice win."
MARGIN_PT = 14 / 25.4 * 72


@dataclass(frozen=True)
class Page:
    text: str
    width: float
    height: float
    boxes: tuple[tuple[float, float, float, float], ...]
    sizes: frozenset[float]


def pages(pdf: bytes) -> list[Page]:
    document = pypdfium2.PdfDocument(pdf)
    try:
        return [_page(document[k]) for k in range(len(document))]
    finally:
        document.close()


def _page(page: pypdfium2.PdfPage) -> Page:
    text = page.get_textpage()
    # Spaces and line ends that the reader makes up have neither place nor size of their own.
    letters = [
        k for k in range(text.count_chars()) if chr(pdfium.FPDFText_GetUnicode(text, k)).strip()
    ]
    boxes = [text.get_charbox(k) for k in letters]
    sizes = frozenset(round(_drawn_size(text, k), 1) for k in letters)
    said = " ".join(text.get_text_bounded().split())
    width, height = page.get_size()
    return Page(said, width, height, tuple(boxes), sizes)


def _drawn_size(text: pypdfium2.PdfTextPage, k: int) -> float:
    """Type size as it stands on the paper: the font's size through the letter's own matrix."""
    matrix = pdfium.FS_MATRIX()
    pdfium.FPDFText_GetMatrix(text, k, ctypes.byref(matrix))
    return float(pdfium.FPDFText_GetFontSize(text, k) * abs(matrix.d))


@cache
def sheet(house: str, units: Units = "us") -> list[Page]:
    plan = HOUSES[house]()
    return pages(run_sheet_pdf(plan, job_name=plan.job, units=units))


def told_of(house: str, units: Units = "us") -> list[Page]:
    """Pages of the fields, those of ticks that did not fit beside a map among them."""
    return [page for page in sheet(house, units) if re.match(r"Field \d+ of \d+", page.text)]


def field_pages(house: str, units: Units = "us") -> list[Page]:
    return [page for page in told_of(house, units) if "Ticks on the film" not in page.text[:150]]


@pytest.mark.parametrize("house", HOUSES)
def test_every_field_of_every_coat_has_its_page_in_the_order_of_the_day(house: str):
    plan = HOUSES[house]()
    told = field_pages(house)
    assert len(told) == len(plan.fields)
    for field, page in zip(plan.fields, told, strict=True):
        for name in room_names(plan, field.rooms):
            assert name in page.text


@pytest.mark.parametrize("units", ["us", "metric"])
def test_the_small_house_has_a_page_before_the_day_the_moments_and_one_for_each_field(units: Units):
    assert len(sheet("small", units)) == 3 + 10
    assert len(field_pages("small", units)) == 10


@pytest.mark.parametrize("house", HOUSES)
@pytest.mark.parametrize("units", ["us", "metric"])
def test_the_emergency_line_stands_on_every_field_page(house: str, units: Units):
    told = sheet(house, units)
    for page in told:
        if page in field_pages(house, units):
            assert EMERGENCY in page.text
            assert "to the way out" in page.text
    # A field's page that runs on keeps the line too: only the first pages go without.
    first = next(k for k, page in enumerate(told) if EMERGENCY in page.text)
    assert first <= 4
    assert all(EMERGENCY in page.text for page in told[first:])


@pytest.mark.parametrize("house", HOUSES)
def test_every_page_has_its_number_the_job_the_revision_and_the_hash(house: str):
    plan = HOUSES[house]()
    told = sheet(house)
    for n, page in enumerate(told, 1):
        assert f"Page {n} of {len(told)}" in page.text
        assert f"facts 1 · inputs {plan.inputs_hash[:12]}" in page.text
        assert WINS in page.text
        assert plan.job.split(",", maxsplit=1)[0][:12] in page.text


@pytest.mark.parametrize("house", HOUSES)
@pytest.mark.parametrize("units", ["us", "metric"])
def test_nothing_stands_in_the_margins(house: str, units: Units):
    """14 mm all round; a letter's own box may overhang its line by half a point."""
    for page in sheet(house, units):
        left = min(box[0] for box in page.boxes)
        low = min(box[1] for box in page.boxes)
        right = max(box[2] for box in page.boxes)
        top = max(box[3] for box in page.boxes)
        assert left > MARGIN_PT - 0.5
        assert low > MARGIN_PT - 0.5
        assert right < page.width - MARGIN_PT + 0.5
        assert top < page.height - MARGIN_PT + 0.5


@pytest.mark.parametrize("house", HOUSES)
def test_four_sizes_of_type_and_none_too_small(house: str):
    sizes = frozenset().union(*(page.sizes for page in sheet(house)))
    assert len(sizes) <= 4
    assert min(sizes) >= 9


def test_us_letter_or_a4_by_the_users_units():
    assert (sheet("small")[0].width, sheet("small")[0].height) == (612, 792)
    metric = sheet("small", "metric")[0]
    assert (metric.width, metric.height) == pytest.approx((595.28, 841.89), abs=0.1)
    plan = small_house()
    forced = pages(run_sheet_pdf(plan, job_name=plan.job, units="us", paper="a4"))[0]
    assert forced.width == pytest.approx(595.28, abs=0.1)


def test_the_first_page_has_the_checklists_the_mixes_and_the_gate():
    text = sheet("small")[0].text
    for line in (*EVENING, *morning("us"), *CARRY):
        assert line in text
    assert "Water in the tub first, stain into the water" in text
    assert "1:1" in text
    assert "Buy 3 × 1 gal ochre-brown at 58.00" in text
    assert "The gate: begin a field only with at least" in text
    assert "common practice, no source" in text
    assert "in 13 to 16 of 100" in text


def test_the_day_has_the_floor_the_tape_every_field_and_what_to_do_at_once():
    plan = small_house()
    text = sheet("small")[1].text
    for field in plan.fields:
        for name in room_names(plan, field.rooms):
            assert name in text
    assert text.count("8:40 to 9:07") == 1
    assert "dry to recoat 10:22 to 12:32, likely 11:07 (published)" in text
    assert "6.2 of 8.0 min" in text
    assert "Never wipe a hard ring" in text
    assert "A drip on the outside slab" in text
    assert "way out" in text
    assert "What it rests on" in text
    assert "measured here, sample closet-1" in text


@pytest.mark.parametrize("long", range(0, 15, 3))
def test_what_a_day_rests_on_is_never_parted_by_the_end_of_a_page(long):
    """Each long name takes lines of the table away from what stands under it."""
    plan = big_house()
    rooms = [
        replace(
            room,
            name=f"{room.name} with a bath of its own beside the hall" if n < long else room.name,
        )
        for n, room in enumerate(plan.inputs.floor.rooms)
    ]
    floor = replace(plan.inputs.floor, rooms=tuple(rooms))
    named = replace(plan, inputs=replace(plan.inputs, floor=floor))
    told = [page.text for page in pages(run_sheet_pdf(named, job_name="x"))]
    (page,) = [text for text in told if "What it rests on" in text]
    rests = page.split("What it rests on")[1]
    assert "spray rate" in rests
    assert "coverage" in rests
    assert "A drip inside" in page


def test_a_field_page_has_its_bands_clock_ticks_refills_and_figures():
    plan = small_house()
    great_room = plan.fields[4]
    text = field_pages("small")[4].text
    assert "8:40 to 9:07" in text
    assert "Start only with at least 4.50 gal (17.1 L) in tanks and tub" in text
    for band in great_room.bands:
        assert f"{band.order} " in text
    assert "Full tank at 8:56 after band 5" in text
    assert "3' 9½\" (1.15)" in text
    assert "Oldest edge 6.2 min of 8.0: 1.8 min to spare" in text
    assert "For the office: the live front counts as" in text
    assert "no sweep of this floor" in text


def test_times_of_a_long_day_break_no_row():
    """Past midnight am and pm are named: in the title and the table's starts, not in each row."""
    plan = small_house()
    late = replace(plan.clocks[-1], high_min=900.0)
    told = pages(run_sheet_pdf(replace(plan, clocks=(*plan.clocks[:-1], late)), job_name="x"))
    assert "8:40 to 9:07 am" in told[7].text
    assert re.search(r"band clock gal L 1 8:40 0\.\d\d", told[7].text)


def test_a_table_with_long_times_gives_starts_and_leaves_the_room_to_the_names():
    plan = small_house()
    night = replace(plan.fields[-1], end_min=plan.fields[-1].start_min + 900)
    changed = replace(plan, fields=(*plan.fields[:-1], night))
    text = pages(run_sheet_pdf(changed, job_name="x"))[1].text
    assert "field starts mix verdict oldest edge to spare coat 1" in text
    assert "field clock mix verdict oldest edge to spare stop lines" in sheet("small")[1].text


def test_a_field_without_ticks_has_no_heading_for_them():
    plan = small_house()
    room = plan.inputs.floor.rooms[0]
    whole = replace(plan.fields[0].bands[0], polygon=room.polygon)
    field = replace(plan.fields[0], rooms=(room.id,), bands=(whole,))
    text = pages(run_sheet_pdf(replace(plan, fields=(field,)), job_name="x"))[3].text
    assert "No refill" in text or "Full tank" in text or "Begin" in text
    assert "Ticks on the film" not in text


def test_whoever_is_hurt_leaves_by_a_door_of_the_field_itself_where_it_has_one():
    """Though the day's work ends at another door: over wet floor the nearest one counts."""
    plan = small_house()
    inner = next(o for o in plan.inputs.openings if len(o.rooms) == 2)
    ways = {o.id: o for o in plan.inputs.openings}
    own = next(ways[e.opening] for e in plan.inputs.exits)
    field = replace(
        next(f for f in plan.fields if {*own.rooms} & {*f.rooms}), exit=inner.id, rooms=own.rooms
    )
    text = pages(run_sheet_pdf(replace(plan, fields=(field,)), job_name="x"))[3].text
    assert "Straight to the nearest way out, over wet floor" in text


def test_the_way_out_through_rooms_without_walls_between_is_named_by_the_first():
    plan = small_house()
    rooms = tuple(
        replace(room, name=f"{room.label} + Dining room + Kitchen + Entry")
        for room in plan.inputs.floor.rooms
    )
    floor = replace(plan.inputs.floor, rooms=rooms)
    changed = replace(plan, inputs=replace(plan.inputs, floor=floor))
    told = pages(run_sheet_pdf(changed, job_name="x"))
    text = next(page.text for page in told if page.text.startswith("Field 1 of"))
    assert re.search(r"Straight through [\w ]+ to the way out", text)


@pytest.mark.parametrize("units", ["us", "metric"])
def test_gallons_and_litres_both_stand_wherever_a_volume_stands(units: Units):
    for page in sheet("small", units):
        text = re.sub(r"ft²/gal|m²/L", "", page.text)
        assert len(re.findall(r"[\d.]+ gal\b", text)) == len(re.findall(r"[\d.]+ L\b", text)) or (
            "Buy" in text
        )
    text = field_pages("small", units)[0].text
    first, second = ("0.78 gal", "3.0 L") if units == "us" else ("3.0 L", "0.78 gal")
    assert f"{first} ({second})" in text


def test_what_cannot_be_done_says_no_and_what_would_help_and_gives_no_bands():
    page = field_pages("refused")[4]
    assert "NO This field cannot be sprayed in these conditions without a lap line" in page.text
    assert "the edge would grow 11.3 min old, it lives 8.0" in page.text
    assert "Saw a cut from the island to the east wall." in page.text
    assert "6.4 min 1.6 min before staining only" in page.text
    assert "What would make it possible" in page.text
    assert "Start only" not in page.text
    assert "Ticks" not in page.text
    assert "band" not in page.text
    assert "3.3 min over" in sheet("refused")[1].text


@pytest.mark.parametrize(
    ("verdict", "said"),
    [("two", "a second sprayer"), ("stop-line", "one more stop line"), ("helper", "a helper")],
)
def test_what_only_goes_otherwise_says_so_in_large(verdict: str, said: str):
    plan = small_house()
    inputs = replace(plan.inputs, crew=replace(plan.inputs.crew, helper=False))
    field = replace(plan.fields[4], verdict=verdict, peak_age_min=9.4)  # type: ignore[arg-type]
    changed = replace(plan, inputs=inputs, fields=(field,))
    text = pages(run_sheet_pdf(changed, job_name="x"))[3].text
    assert f"NOT AS IT STANDS Only with {said}" in text
    assert "Ticks on the film" not in text, "other bands will come of planning it again"


def test_marks_that_mean_something_to_typst_are_only_letters_here():
    told = sheet("long names")
    text = " ".join(page.text for page in told)
    assert "Quince Lane 3 <&> #1 $9 *new* _wing_ @site [B]" in told[0].text
    assert "Bed *1* _west_ $9 @home [x] \\ `raw`" in text
    assert '<Bath> & "shower" #1' in text


@pytest.mark.parametrize("name", ['#panic("x")', "#sys.inputs", "= Head", "// gone", "```", "\\"])
def test_a_name_never_becomes_an_order(name: str):
    plan = small_house()
    rooms = tuple(replace(room, name=name) for room in plan.inputs.floor.rooms)
    odd = replace(plan, inputs=replace(plan.inputs, floor=PlanFloor(rooms)), fields=plan.fields[:1])
    told = pages(run_sheet_pdf(odd, job_name=name, notes=name))
    assert f"Notes. {name}" in told[0].text
    assert name in told[2].text


def test_thirty_bands_stand_on_one_page_and_their_ticks_on_the_next():
    """With both on one page the map would be 4 cm high."""
    page, turned = (page.text for page in told_of("many bands"))
    assert len(sheet("many bands")) == 5
    for band in many_bands().fields[0].bands:
        assert re.search(rf"\b{band.order}\b", page)
    # 29 edges meet both long walls; every 0.6 m from either end.
    for n in range(1, 30):
        assert turned.count(f"({0.6 * n:.2f})") == 2
        assert f"({0.6 * n:.2f})" not in page


def test_the_same_plan_gives_the_same_bytes():
    plan = small_house()
    first = run_sheet_pdf(plan, job_name=plan.job)
    assert first == run_sheet_pdf(small_house(), job_name=plan.job)
    assert first != run_sheet_pdf(plan, job_name=plan.job, revision=2)


def test_gates_handed_over_win_over_those_of_the_plan():
    plan = small_house()
    gates = [{"field": plan.fields[0].id, "start_l": 7.571, "starts": []}]
    text = pages(run_sheet_pdf(plan, job_name="x", gates=gates))[3].text
    assert "Start only with at least 2.00 gal (7.6 L)" in text


def test_a_plan_without_mixes_clocks_grounds_and_buying_still_prints():
    plan = replace(small_house(), mixes=(), clocks=(), grounds=(), buying=None, cautions=())
    assert len(pages(run_sheet_pdf(plan, job_name="x"))) == 13


def test_an_added_acid_gets_its_column():
    plan = small_house()
    mixes = (replace(plan.mixes[0], acid_l=0.5), *plan.mixes[1:])
    text = pages(run_sheet_pdf(replace(plan, mixes=mixes), job_name="x"))[0].text
    assert "added acid" in text
    assert "0.13 gal (0.50 L)" in text
    assert "added acid" not in sheet("small")[0].text


def test_the_pdf_is_tagged_and_carries_only_its_own_font():
    plan = small_house()
    pdf = run_sheet_pdf(plan, job_name=plan.job)
    assert b"/StructTreeRoot" in pdf or b"/MarkInfo" in pdf
    fonts = set(re.findall(rb"/BaseFont\s*/[A-Z]{6}\+([A-Za-z-]+)", pdf))
    assert fonts <= {b"OpenSans", b"OpenSans-Bold", b"OpenSans-Regular"}
