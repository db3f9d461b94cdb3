"""What lies on the tape: pieces of work, bands, full tanks, what was entered.

Solid is what happened, a bar what is certain, dashed what is planned.
"""

from __future__ import annotations

from dataclasses import field

from farwall.facts.plan import Field
from farwall.nouns import dataclass
from farwall.papers.ink import INK, LINE, PAPER, RAMP, SOFT, WHITE
from farwall.papers.svg import number
from farwall.papers.words import room_names
from farwall.web.pages.course import Course, Piece
from farwall.web.pages.log_words import short_name
from farwall.web.pages.standing import piece_name
from farwall.web.pages.tape_rule import RULE_H, SIZE, Ruled, wide
from farwall.web.pages.went import Went
from farwall.web.words import said

BAR_H, PAD, LABEL_H, THIN_H = 22.0, 9.0, 15.0, 9.0
TOP = RULE_H + PAD
_FILLS = {"done": PAPER, "happened": RAMP[3]}
_BANDS_PX, _FIELDS_PX = 3.0, 40.0


@dataclass
class Labels:
    """Names under the bars: each at its place, none on another, those without room left out."""

    width: float
    rows: int
    free: list[float] = field(init=False)
    placed: list[tuple[float, int, str]] = field(default_factory=list)

    def __post_init__(self) -> None:
        """All rows are free."""
        self.free = [4.0] * self.rows

    @property
    def used(self) -> int:
        """How many rows have a name in them, one at least."""
        return max([0, *(row for _, row, _ in self.placed)]) + 1

    def put(self, x: float, text: str) -> None:
        """Put a name at or right of a place, in the first row with room."""
        for row in range(self.rows):
            left = max(x, self.free[row])
            if left - x < 26 and left + wide(text) < self.width - 4:
                self.placed.append((left, row, text))
                self.free[row] = left + wide(text) + 10
                return


def draw_pieces(
    ruled: Ruled, course: Course, labels: Labels, *, went: Went | None, link: str
) -> None:
    """The row of the work: steps and coats."""
    for piece in course.pieces:
        if not ruled.sees(piece.from_min, max(piece.to_min, piece.from_min + 0.1)):
            continue
        if piece.kind == "sprayed":
            _coat(ruled, course, piece, labels, went=went, link=link)
        else:
            _step(ruled, piece, labels, link=link)


def _step(ruled: Ruled, piece: Piece, labels: Labels, *, link: str) -> None:
    name = piece_name(piece)
    if piece.kind == "done":
        name = said("piece-done", name=name)
    x0, x1 = ruled.x(piece.from_min), ruled.x(piece.to_min)
    with_link(
        ruled, link, (max(piece.from_min, ruled.from_min) + min(piece.to_min, ruled.to_min)) / 2
    )
    ruled.svg.element(
        "rect", x=x0, y=TOP, width=max(x1 - x0, 2), height=BAR_H,
        fill=_FILLS.get(piece.kind, WHITE), stroke=INK, stroke_width=0.9,
        stroke_dasharray=None if piece.kind == "happened" else "4 3",
    )  # fmt: skip
    if wide(name) + 6 < x1 - x0:
        happened = piece.kind == "happened"
        ruled.svg.text(((x0 + x1) / 2, TOP + 15), name, SIZE, bold=happened, cased=happened)
    else:
        labels.put(x0, name)
    end_link(ruled, link)


def _coat(
    ruled: Ruled, course: Course, piece: Piece, labels: Labels, *, went: Went | None, link: str
) -> None:
    x0, x1 = ruled.x(piece.from_min), ruled.x(piece.to_min)
    planned = went is None and piece.number > 1
    until = went.sprayed_until_min if went is not None else piece.from_min
    planned = planned or (went is not None and piece.from_min > went.now_min)
    if (piece.to_min - piece.from_min) * ruled.per_min < _FIELDS_PX:
        _bar(ruled, piece.from_min, piece.to_min, planned=planned, until=until, link=link)
        labels.put(x0, said("piece-coat", n=piece.number))
        return
    for n, one in enumerate(piece.fields, 1):
        _field(ruled, course, one, n, planned=planned, until=until, link=link)
        _refills(ruled, one)
    name = said("piece-coat", n=piece.number)
    labels.put(max(x0, 4.0), name if x0 > 0 or x1 > wide(name) else "")


def _field(
    ruled: Ruled, course: Course, one: Field, n: int, *, planned: bool, until: float, link: str
) -> None:
    if not ruled.sees(one.start_min, one.end_min):
        return
    refused = one.verdict == "cannot"
    _bar(ruled, one.start_min, one.end_min, planned=planned or refused, until=until, link=link)
    x0, x1 = ruled.x(one.start_min), ruled.x(one.end_min)
    rooms = ", ".join(room_names(course.plan, one.rooms))
    bands = [b for b in one.bands if ruled.sees(b.start_min, b.end_min)]
    per_band = (one.end_min - one.start_min) * ruled.per_min / max(len(one.bands), 1)
    if len(one.bands) > 1 and per_band > _BANDS_PX:
        for band in bands[1:] if bands and bands[0] is one.bands[0] else bands:
            x = ruled.x(band.start_min)
            ruled.svg.line([(x, TOP + 1), (x, TOP + BAR_H - 1)],
                           stroke=LINE if planned else PAPER, stroke_width=1.1)  # fmt: skip
    if refused and x1 - x0 > 4:
        ruled.svg.line([(x0, TOP), (x1, TOP + BAR_H)], stroke=INK, stroke_width=1)
    for name in (rooms, str(n)):
        if x1 - x0 > wide(name, bold=True) + 4:
            ruled.svg.text(((x0 + x1) / 2, TOP + 15), name, SIZE, bold=True, cased=True)
            break


def _bar(
    ruled: Ruled, from_min: float, to_min: float, *, planned: bool, until: float, link: str
) -> None:
    x0, x1 = ruled.x(from_min), ruled.x(to_min)
    middle = round((from_min + to_min) / 2, 1)
    with_link(ruled, link, middle)
    thin = x1 - x0 < 4
    ruled.svg.element(
        "rect", x=x0, y=TOP, width=max(x1 - x0, 1.5), height=BAR_H,
        fill=WHITE if planned else RAMP[1], stroke=INK, stroke_width=0.3 if thin else 0.9,
        stroke_dasharray="4 3" if planned and not thin else None,
    )  # fmt: skip
    if until > from_min:
        done = ruled.x(min(until, to_min))
        if done > x0:
            ruled.svg.element("rect", x=x0, y=TOP, width=done - x0, height=BAR_H, fill=RAMP[3],
                              stroke=INK, stroke_width=0.3 if thin else 0.9)  # fmt: skip
    end_link(ruled, link)


def _refills(ruled: Ruled, one: Field) -> None:
    """A small mark above the bars for each full tank."""
    for refill in one.refills:
        if ruled.from_min < refill.at_min < ruled.to_min:
            x = ruled.x(refill.at_min)
            d = f"M{number(x - 3.5)},{number(TOP - 7)}h7l-3.5,6z"
            ruled.svg.element("path", d=d, fill=INK, stroke=WHITE, stroke_width=0.8)


def draw_as_planned(ruled: Ruled, course: Course, first: Course, top: float) -> None:
    """As first planned, thin and dashed: the coats, and what happened otherwise after them."""
    stretches = [(one.start_min, one.end_min) for piece in first.coats for one in piece.fields]
    happened = [one for one in course.pieces if one.kind == "happened"]
    planned = [first.piece(one.key, one.number) for one in happened]
    stretches += [(one.from_min, one.to_min) for one in planned if one is not None]
    for from_min, to_min in stretches:
        if ruled.sees(from_min, to_min):
            x0, x1 = ruled.x(from_min), ruled.x(to_min)
            ruled.svg.element("rect", x=x0, y=top, width=max(x1 - x0, 1), height=THIN_H,
                              fill=WHITE, stroke=SOFT, stroke_width=0.8,
                              stroke_dasharray="3 2")  # fmt: skip


def draw_entered(ruled: Ruled, went: Went, top: float) -> None:
    """A stroke for each thing that was entered, its word beside it where the next leaves room."""
    seen = [one for one in went.story.happened if ruled.from_min < one.at_min < ruled.to_min]
    for n, one in enumerate(seen):
        x = ruled.x(one.at_min)
        ruled.svg.line([(x, top + 2), (x, top + 12)], stroke=INK, stroke_width=1.6)
        name = short_name(one.word)
        after = ruled.x(seen[n + 1].at_min) if n + 1 < len(seen) else ruled.svg.width
        if x + 4 + wide(name) < after - 3:
            ruled.svg.text((x + 4, top + 11), name, SIZE, anchor="start")


def with_link(ruled: Ruled, link: str, minute: float) -> None:
    """Begin a link to a moment, where there are links."""
    if link:
        ruled.svg.raw(f'<a href="{link.replace("&", "&amp;")}{number(minute)}" tabindex="-1">')


def end_link(ruled: Ruled, link: str) -> None:
    """End it."""
    if link:
        ruled.svg.raw("</a>")
