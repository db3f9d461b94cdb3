"""What `farwall read` takes for a photo or a scan: corners, paper, scale, a known length."""

from __future__ import annotations

import argparse

from farwall.errors import Mistake, Refused
from farwall.readers.hints import Hints, KnownLength
from farwall.readers.photo.papers import paper_mm
from farwall.readers.photo.ratio import m_per_mm
from farwall.readers.sizes import length_m

_FOUR = "x,y,x,y,x,y,x,y"


def photo_arguments(parser: argparse.ArgumentParser) -> None:
    """The words for a photo or a scan."""
    photo = parser.add_argument_group("for a photo or a scan")
    photo.add_argument(
        "--corners", metavar=_FOUR,
        help="the sheet's four corners in pixels, clockwise from its upper left",
    )  # fmt: skip
    photo.add_argument("--paper", metavar="SIZE", help="the sheet: ARCH-D, A3, Letter, 36x24in")
    photo.add_argument("--drawn", metavar="SCALE", help="the scale printed on it: 1:50, 1/4in")
    photo.add_argument(
        "--length", metavar="x,y,x,y,LENGTH",
        help="two places in pixels and how far apart they are: 410,900,2210,900,4.2m",
    )  # fmt: skip


def hints_told(options: argparse.Namespace) -> Hints:
    """What was told of a photo. Raises Refused with every mistake."""
    mistakes: list[Mistake] = []

    def of(text: str | None, read: object) -> object:
        if text is None:
            return None
        try:
            return read(text)  # type: ignore[operator]
        except Refused as refusal:
            mistakes.extend(refusal.mistakes)
            return None

    corners = of(options.corners, _corners) or ()
    paper, ratio = of(options.paper, paper_mm), of(options.drawn, m_per_mm)
    length = of(options.length, _length)
    if ratio is not None and (options.scale is not None or length is not None):
        what = "The scale is told twice."
        mistakes.append(Mistake("--drawn", what, "Give one of --drawn, --length and --scale."))
    if ratio is not None and paper is None and not mistakes:
        what = "A printed scale measures paper, and the size of the sheet is not told."
        mistakes.append(Mistake("--drawn", what, "Tell it too: --paper ARCH-D."))
    if mistakes:
        raise Refused(*mistakes)
    return Hints(
        scale_m_per_unit=ratio,  # type: ignore[arg-type]
        corners=corners,  # type: ignore[arg-type]
        paper_mm=paper,  # type: ignore[arg-type]
        length=length,  # type: ignore[arg-type]
        floors=options.floors or "polygon",
    )


def _numbers(option: str, text: str, count: int) -> list[float]:
    try:
        found = [float(part) for part in text.split(",")]
    except ValueError:
        found = []
    if len(found) != count or not all(abs(value) < 1e6 for value in found):
        what = f"“{text[:60]}” is not {count} numbers with commas between."
        raise Refused(Mistake(option, what, "Count pixels from the picture's upper left."))
    return found


def _corners(text: str) -> tuple[tuple[float, float], ...]:
    values = _numbers("--corners", text, 8)
    return tuple((values[k], values[k + 1]) for k in range(0, 8, 2))


def _length(text: str) -> KnownLength:
    *places, said = text.split(",", 4)
    x1, y1, x2, y2 = _numbers("--length", ",".join(places), 4)
    metres = length_m(said)
    if metres is None or not 0.1 <= metres <= 500:
        what = f"“{said[:40]}” is no length with its unit, from 0.1 to 500 m."
        raise Refused(Mistake("--length", what, "Write 4.2m, 13'9\" or 4200mm."))
    return KnownLength((x1, y1), (x2, y2), metres)
