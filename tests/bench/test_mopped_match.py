"""The rules by which a proposal meets a mark of a mopped floor."""

import numpy as np
import pytest
from shapely import Polygon

from farwall.bench.mopped_floors import MoppedFloor, TrueMark
from farwall.bench.mopped_match import _outline as outline_of
from farwall.bench.mopped_match import matched
from farwall.bench.mopped_slab import Decoy
from farwall.colour.marks.nouns import Mark, Sheet

SHEET = Sheet(np.zeros((400, 400, 3), np.float32), np.ones((400, 400), np.bool_), 0.01, 0.0, 4.0)


def box(left, low, right, top):
    return ((left, low), (right, low), (right, top), (left, top))


def proposal(kind, outline, confidence=0.5):
    xs, ys = zip(*outline, strict=True)
    at = sum(xs) / len(xs), sum(ys) / len(ys)
    return Mark(kind, at, outline, confidence, -1.0, 1.0, 0.1, "")


def floor(*marks, decoys=()):
    none = np.zeros((1, 1), np.float32)
    return MoppedFloor(0, 0.01, 4.0, 4.0, none, none, marks, decoys)


LAP = TrueMark("lap line", (box(0, 1.9, 4, 2.1),), (((0.0, 2.0), (4.0, 2.0)),), -3.0)
CRESCENT = TrueMark("missed crescent", (box(1, 3, 1.4, 3.1),), (), 3.0)


@pytest.mark.parametrize(("length", "found"), [(1.2, False), (1.8, True)])
def test_a_lap_is_found_along_two_fifths_of_its_length(length, found):
    sought, _ = matched(floor(LAP), SHEET, [proposal("lap line", box(1, 1.95, 1 + length, 2.05))])
    assert sought[0].found is found


def test_two_short_pieces_of_a_lap_count_together():
    pieces = [proposal("lap line", box(at, 1.95, at + 0.8, 2.05)) for at in (0.5, 2.5)]
    assert matched(floor(LAP), SHEET, pieces)[0][0].found


def test_a_lap_beside_is_not_found_and_is_a_false_alarm():
    sought, told = matched(floor(LAP), SHEET, [proposal("lap line", box(0, 2.4, 4, 2.5))])
    assert not sought[0].found
    assert not told[0].met


def test_the_whole_sheet_finds_nothing():
    sought, told = matched(floor(LAP, CRESCENT), SHEET, [proposal("lap line", box(0, 0, 4, 4))])
    assert not any(one.found for one in sought)
    assert not told[0].met


def test_a_crescent_is_found_under_another_name_and_named_by_its_own():
    by_other = matched(floor(CRESCENT), SHEET, [proposal("light patch", box(1, 3, 1.4, 3.1))])
    assert by_other[0][0].found
    assert by_other[0][0].called == ("light patch",)
    assert by_other[1][0].met == "missed crescent"


def test_what_the_sheet_does_not_show_is_not_sought():
    shown = SHEET.floor.copy()
    shown[:150] = False
    hidden = Sheet(SHEET.lab, shown, 0.01, 0.0, 4.0)
    sought, _ = matched(floor(CRESCENT), hidden, [])
    assert not sought[0].seen


def test_cracks_are_apart():
    crack = Decoy("crack", ((0.0, 1.0), (4.0, 1.0)), 0.002)
    marks = [proposal(kind, box(1, 0.98, 2, 1.02)) for kind in ("crack", "lap line")]
    _, told = matched(floor(decoys=(crack,)), SHEET, marks)
    assert [(one.kind, one.met, one.on_line) for one in told] == [
        ("lap line", "", True),
        ("crack", "", True),
    ]


def test_an_outline_that_goes_out_and_back_along_itself_is_its_area_alone():
    """Seed 5,000,037: lines left over beside the areas of two such outlines could not be laid on
    each other."""
    spiked = ((1.0, 1.0), (2.0, 1.0), (2.0, 2.0), (3.0, 3.0), (2.0, 2.0), (1.0, 2.0))
    assert outline_of(spiked).equals(Polygon(box(1, 1, 2, 2)))
    assert 0 < outline_of(((1.0, 1.0), (2.0, 1.0), (3.0, 1.0))).area < 0.03
