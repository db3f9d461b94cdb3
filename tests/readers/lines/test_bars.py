"""Drawn bars: found by numbers at their ticks and a unit, never without."""

import pytest

from farwall.readers.lines.bars import find_bars, without
from farwall.readers.lines.sheet import Role, Sheet, Stroke, Words


def bar(
    numbers: dict[float, str],
    ticks: tuple[float, ...] | None = None,
    *,
    unit: str = "",
    turned: int = 0,
    high: float = 1.0,
) -> Sheet:
    """Numbers at places along the page, ticks above them, a unit aside."""

    def at(x: float, y: float) -> tuple[float, float]:
        return (x, y) if turned == 0 else (-y, x)

    words = [Words(text, at(x, 0.0), high, float(turned), "") for x, text in numbers.items()]
    if unit:
        words.append(Words(unit, at(max(numbers) + 5, 0.0), high, float(turned), ""))
    places = ticks if ticks is not None else tuple(numbers)
    strokes = [Stroke(at(x, 1.5), at(x, 2.5), "", Role.OTHER) for x in places]
    if places:
        strokes.append(Stroke(at(min(places), 2), at(max(places), 2), "", Role.OTHER))
    return Sheet(strokes=tuple(strokes), words=tuple(words))


@pytest.mark.parametrize("turned", [0, 90])
def test_a_bar_tells_its_scale(turned: int) -> None:
    sheet = bar({0: "0", 10: "1", 20: "2", 50: "5 m"}, turned=turned)
    [found] = find_bars(sheet)
    assert found.m_per_unit == pytest.approx(0.1)
    assert found.source == "the drawn bar 0-1-2-5 metres"
    assert without(sheet.strokes, [found]) == ()


def test_a_unit_may_stand_aside() -> None:
    [found] = find_bars(bar({0: "0", 16: "16", 32: "32"}, unit="FEET"))
    assert found.m_per_unit == pytest.approx(0.3048)


def test_the_ticks_are_measured_and_not_the_lettering() -> None:
    [found] = find_bars(bar({0.6: "0", 10.4: "5", 20.5: "10 m"}, (0, 10, 20)))
    assert found.m_per_unit == pytest.approx(0.5)


@pytest.mark.parametrize(
    "sheet",
    [
        bar({0: "0", 10: "1", 20: "2"}),  # no unit: perhaps the numbers of axes
        bar({10: "1", 20: "2", 30: "3 m"}),  # does not begin at nought
        bar({0: "0", 10: "1", 20: "5 m"}),  # its numbers do not stand where they say
        bar({0: "0", 10: "1", 20: "2 m"}, ()),  # nothing is drawn
        bar({0: "0", 10: "5", 20: "10 m"}, (0, 20)),  # a number without its tick
    ],
)
def test_what_is_no_bar(sheet: Sheet) -> None:
    assert find_bars(sheet) == []


def test_walls_beside_a_bar_stay() -> None:
    sheet = bar({0: "0", 10: "1", 20: "2 m"})
    wall = Stroke((-50.0, 3.0), (50.0, 3.0), "", Role.OTHER)
    bars = find_bars(Sheet(strokes=(*sheet.strokes, wall), words=sheet.words))
    assert without((*sheet.strokes, wall), bars) == (wall,)
