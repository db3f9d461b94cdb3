"""What a template needs of a form: sentences in pieces, blanks with what stands in them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import field, replace
from typing import Any

from farwall.nouns import dataclass
from farwall.web.pages.forms.asked import NO, YES, Asked, Field, Row
from farwall.web.pages.forms.measures import FEET
from farwall.web.pages.forms.notes import Note, Notes
from farwall.web.pages.forms.nouns import Blank, Part, Sentence
from farwall.web.pages.forms.places import value_at
from farwall.web.pages.forms.told import Slip, name_of, ticked
from farwall.web.pages.forms.windows import WINDS
from farwall.web.words import said, words

_MARK = "\0"


@dataclass(frozen=True)
class Tick:
    """One of several choices that may each be ticked."""

    name: str
    word: str
    set: bool


@dataclass(frozen=True)
class BlankShown:
    """A blank: `options` where it is chosen, `ticks` where several may be, else it is typed.

    timer: `s`, `min` or empty.
    """

    id: str
    name: str
    label: str
    value: str
    unit: str
    size: int
    numeric: bool
    options: tuple[tuple[str, str], ...] = ()
    wrong: str = ""
    timer: str = ""
    moment: bool = False
    day: bool = False
    ticks: tuple[Tick, ...] = ()
    lines: int = 1


@dataclass(frozen=True)
class Piece:
    """Words and the blank after them, either of which may not be there; of: the id they label.

    tail: a comma or a point that belongs to the blank.
    """

    words: str
    of: str
    blank: BlankShown | None = None
    tail: str = ""


@dataclass(frozen=True)
class SentenceShown:
    """A sentence in pieces; key of its help, what stands under it."""

    pieces: tuple[Piece, ...]
    help: str
    notes: tuple[Note, ...]
    wrongs: tuple[tuple[str, str], ...]


@dataclass(frozen=True)
class RowShown:
    """Sentences once: title of the room, name of the tick that takes the row away."""

    title: str
    fresh: bool
    away: str
    sentences: tuple[SentenceShown, ...]


@dataclass(frozen=True)
class PartShown:
    """A part with its rows."""

    key: str
    told: bool
    each: str
    rows: tuple[RowShown, ...]
    title: str = ""


@dataclass(frozen=True)
class FormShown:
    """A form: version of the facts it is of, all that is wrong, its parts."""

    key: str
    version: str
    slips: tuple[Slip, ...]
    parts: tuple[PartShown, ...]


@dataclass(frozen=True)
class _Showing:
    asked: Asked
    notes: Notes
    told: Mapping[str, Any]
    wrong: Mapping[str, str] = field(default_factory=dict)

    def part(self, part: Part) -> PartShown:
        rows = tuple(self._row(part, one) for one in self.asked.rows(part))
        return PartShown(part.key, part.told, part.each, rows, part.title)

    def _row(self, part: Part, row: Row) -> RowShown:
        away = row.away if part.each == "rows" and not row.fresh and not part.fixed else ""
        once = part.each == ""
        sentences = tuple(
            self._sentence(one, row, notes=once) for one in self.asked.sentences(part, row)
        )
        return RowShown(row.title, row.fresh, away, sentences)

    def _sentence(self, sentence: Sentence, row: Row, *, notes: bool) -> SentenceShown:
        fields = {blank.name: row.field(blank) for blank in sentence.blanks}
        blanks = {name: self._blank(one, fresh=row.fresh) for name, one in fields.items()}
        wrongs = tuple(
            (_id(one.name), self.wrong[one.name])
            for one in fields.values()
            if one.name in self.wrong
        )
        told = self.notes.of(sentence) if notes else ()
        return SentenceShown(_pieces(sentence.key, blanks), sentence.help, told, wrongs)

    def _blank(self, one: Field, *, fresh: bool) -> BlankShown:
        hint, units = one.hint, self.asked.units
        number = hint.kind in {"number", "whole"}
        unit_key = one.measure.scale(units).unit if number else ""
        unit = said(unit_key) if unit_key else ""
        label = name_of(one) + (f", {unit}" if unit else "")
        typed = self.told.get(one.name)
        value = typed if isinstance(typed, str) else self.asked.text(one)
        timer = str(one.path[-1]).rpartition("_")[2] if one.blank.timer else ""
        return BlankShown(
            _id(one.name), one.name, label, value, unit, one.blank.size, number,
            self._options(one, fresh=fresh), self.wrong.get(one.name, ""), timer,
            hint.kind == "moment", one.blank.day, self._ticks(one), one.blank.lines,
        )  # fmt: skip

    def _ticks(self, one: Field) -> tuple[Tick, ...]:
        ids = self.asked.ticks(one)
        if one.hint.kind != "several" and not ids:
            return ()
        choices, stem = tuple(ids) or one.hint.choices, pick_of(one.blank)
        held = value_at(self.asked.held, one.path) or ()
        typed = one.name in self.told
        chosen = ticked(self.told, one.name, choices) if typed else list(held)
        return tuple(
            Tick(
                f"{one.name}.{choice}",
                ids.get(choice) or said(f"{stem}-{str(choice).replace(' ', '-')}"),
                choice in chosen,
            )
            for choice in choices
        )  # fmt: skip

    def _options(self, one: Field, *, fresh: bool) -> tuple[tuple[str, str], ...]:
        blank, hint = one.blank, one.hint
        if blank.of and not self.asked.ticks(one):
            known = self.asked.choices(blank.of)
            return (("", said(f"none-{blank.pick or blank.of}")), *known)
        if hint.kind not in {"choice", "yes-no"}:
            return ()
        values = [YES if v is True else NO if v is False else str(v) for v in hint.choices]
        stem = pick_of(blank)
        found = [(value, said(f"{stem}-{value.replace(' ', '-')}")) for value in values]
        empty = said(f"{stem}-" if f"{stem}-" in words("en") else "not-known")
        return (("", empty), *found) if hint.may_be_empty or fresh else tuple(found)


def window_asked(asked: Asked, told: Mapping[str, Any], slips: Sequence[Slip]) -> SentenceShown:
    """The sentence of one more window: room, the way it looks, its width."""
    unit = said(FEET.scale(asked.units).unit)
    winds = tuple((one, said(f"way-{one}")) for one in WINDS)
    rooms = tuple(asked.choices("rooms"))
    wrong = {one.name: one.what for one in slips}

    def blank(name: str, label: str, options: tuple[tuple[str, str], ...] = ()) -> BlankShown:
        full, typed = f"window.{name}", told.get(f"window.{name}")
        value = typed if isinstance(typed, str) else options[0][0] if options else ""
        shown_unit = "" if options else unit
        return BlankShown(
            _id(full), full, label, value, shown_unit, 6, not options, options,
            wrong.get(full, ""),
        )  # fmt: skip

    blanks = {
        "room": blank("room", said("name-room"), rooms),
        "faces": blank("faces", said("name-faces"), winds),
        "width": blank("width", f"{said('name-window-wide')}, {unit}"),
    }
    wrongs = tuple((one.id, one.wrong) for one in blanks.values() if one.wrong)
    return SentenceShown(_pieces("window-new-told", blanks), "", (), wrongs)


def _pieces(key: str, blanks: Mapping[str, BlankShown]) -> tuple[Piece, ...]:
    """The words of a key cut at its blanks."""
    parts = said(key, **{name: f"{_MARK}{name}{_MARK}" for name in blanks}).split(_MARK)
    texts, names = parts[::2], parts[1::2]
    pieces: list[Piece] = []
    for n, text in enumerate(texts):
        tail, rest = _tail(text) if n else ("", text)
        if tail:
            pieces[-1] = replace(pieces[-1], tail=tail)
        if n < len(names):
            shown = blanks[names[n]]
            pieces.append(Piece(rest.strip(), "" if shown.ticks else shown.id, shown))
        elif rest.strip():
            pieces.append(Piece(rest.strip(), blanks[names[-1]].id if names else ""))
    return tuple(pieces)


def _tail(text: str) -> tuple[str, str]:
    """The marks that a text begins with, and the rest."""
    rest = text.lstrip(".,;:)")
    return text[: len(text) - len(rest)], rest


def pick_of(blank: Blank) -> str:
    """The stem of the words of its choices."""
    return blank.pick or f"pick-{blank.path[-1]}"


def _id(name: str) -> str:
    return "b-" + "".join(letter if letter.isalnum() else "-" for letter in name)


def form_shown(
    asked: Asked,
    version: object,
    *,
    notes: Notes,
    told: Mapping[str, Any] | None = None,
    slips: Sequence[Slip] = (),
) -> FormShown:
    """The form as it stands, or as it was typed with what is wrong with it."""
    wrong: dict[str, str] = {}
    for one in slips:
        if one.name:
            wrong[one.name] = f"{wrong[one.name]} {one.what}" if one.name in wrong else one.what
    showing = _Showing(asked, notes, told or {}, wrong)
    parts = tuple(showing.part(part) for part in asked.form.parts)
    return FormShown(asked.form.key, str(version), tuple(slips), parts)


def link_of(slip: Slip) -> str:
    """The id of the blank that a mistake is beside; empty for one of none."""
    return _id(slip.name) if slip.name else ""
