"""Takes the plain straight lines out of a text DXF by the thousand, before the library opens it.

Most of a large drawing is LINE and LWPOLYLINE. What is taken out here has nothing but points, a
layer and a line type; whatever has more (bulges, another plane, the paper's mark) is left in the
file for the library. Hatches and lines with spoilt coordinates are only counted.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import field
from itertools import pairwise
from typing import NamedTuple

from farwall.nouns import dataclass

FARTHEST = 1e11
"""Coordinates beyond are no drawing's."""
_DROPPED = {b"HATCH", b"MPOLYGON", b"POINT", b"WIPEOUT", b"IMAGE", b"SOLID3D", b"3DSOLID", b"BODY",
            b"ACAD_PROXY_ENTITY"}  # fmt: skip
_NOT_PLAIN = {b"42", b"40", b"41", b"43", b"210", b"220", b"230", b"39"}
_ENDS = {b"8", b"10", b"20", b"11", b"21"}
OWN = b"FARWALL"
"""Entities that carry our own marks are read by these."""
_MODEL = {"*model_space", "$model_space"}
_STEPS = {b"SECTION", b"BLOCK", b"ENDSEC", b"ENDBLK"}
_DRAWN = {b"ENTITIES", b"BLOCKS"}
_HELD = 8e6
"""Beyond, a float holds no ninth decimal: 8e6 * 1e9 is the last below 2 to the 53."""


class Loose(NamedTuple):
    """A straight line or a run of them, its layer and line type as the bytes in the file."""

    layer: bytes
    linetype: bytes
    points: tuple[tuple[float, float], ...]
    closed: bool = False


@dataclass
class Bulk:
    """What was taken out, by the lower-case name of the block it is in (`""`: the model space)."""

    rest: bytes
    lines: dict[str, list[Loose]] = field(default_factory=dict)
    dropped: Counter[str] = field(default_factory=Counter)
    """What was not looked at in the model space, by kind."""
    spoilt: Counter[str] = field(default_factory=Counter)
    """Lines without two sound points, by kind."""

    @property
    def count(self) -> int:
        """How many lines and runs were taken out."""
        return sum(map(len, self.lines.values()))


def taken_out(data: bytes) -> Bulk:
    """The file without its plain lines; the bytes as they came where they are not text tags."""
    lines = data.replace(b"\r\n", b"\n").split(b"\n")
    codes = list(map(_Codes().__getitem__, lines[0::2]))
    values = lines[1::2]
    del codes[len(values) :]
    starts = [i for i, code in enumerate(codes) if code == b"0"]
    if not starts or starts[0] > 2000 or not all(map(bytes.isdigit, codes[:200])):
        return Bulk(data)
    return _Taking(lines, codes, values).run([*starts, len(codes)])


class _Codes(dict[bytes, bytes]):
    """Codes by what stands in the file; one object for each, so that it is hashed once."""

    def __missing__(self, raw: bytes) -> bytes:
        code = raw.strip()
        code = self.setdefault(code, code)
        self[raw] = code
        return code


class _Taking:
    """Goes through the entities once; `kept` are the spans of tags that stay in the file."""

    def __init__(self, lines: list[bytes], codes: list[bytes], values: list[bytes]) -> None:
        self.lines, self.codes, self.values = lines, codes, values
        self.section, self.block = b"", ""
        self.found: dict[str, list[Loose]] = {}
        self.dropped: Counter[str] = Counter()
        self.spoilt: Counter[str] = Counter()
        self._shapes: dict[tuple[bytes, ...], list[int] | None] = {}

    def run(self, starts: Sequence[int]) -> Bulk:
        gone: list[tuple[int, int]] = []
        for start, end in pairwise(starts):
            kind = self.values[start].strip()
            if kind in _STEPS:
                self._step_in(kind, start, end)
            elif self.section in _DRAWN and self._take(kind, start, end):
                gone.append((start, end))
        if not gone:
            return Bulk(b"\n".join(self.lines))
        return Bulk(self._rest(gone), self.found, self.dropped, self.spoilt)

    def _step_in(self, kind: bytes, start: int, end: int) -> None:
        name = self._value(b"2", start, end)
        if kind == b"SECTION":
            self.section, self.block = name, ""
        elif kind == b"BLOCK":
            self.block = name.decode("utf-8", "replace").lower()
            self.block = "" if self.block in _MODEL else self.block
        elif kind == b"ENDBLK":
            self.block = "\0"
        else:
            self.section = b""

    def _value(self, code: bytes, start: int, end: int) -> bytes:
        for place in range(start + 1, end):
            if self.codes[place] == code:
                return self.values[place].strip()
        return b""

    def _take(self, kind: bytes, start: int, end: int) -> bool:
        if kind in _DROPPED:
            self.dropped[kind.decode("ascii", "replace")] += not self.block
            return True
        if kind not in {b"LINE", b"LWPOLYLINE"}:
            return False
        if kind == b"LINE" and (plain := self._plain(start, end)) is not None:
            return self._straight([self.values[start + place] for place in plain])
        codes = self.codes[start + 1 : end]
        tags = dict(zip(codes, self.values[start + 1 : end], strict=True))
        if tags.get(b"67", b"0").strip() != b"0" or tags.get(b"1001", b"").strip() == OWN:
            return False
        try:
            points = _line(tags) if kind == b"LINE" else self._run(tags, start, end)
            closed = kind == b"LWPOLYLINE" and int(tags.get(b"70") or 0) & 1 == 1
        except (KeyError, ValueError):  # one spoilt line must not cost the whole drawing
            self.spoilt[kind.decode()] += 1
            return True
        if points is None:
            return False
        if tags.get(b"60", b"0").strip() == b"0":
            one = Loose(tags.get(b"8", b"0").strip(), tags.get(b"6", b"").strip(), points, closed)
            self.found.setdefault(self.block, []).append(one)
        return True

    def _plain(self, start: int, end: int) -> list[int] | None:
        """How far behind its start the ends, the layer and the line type of a LINE stand that has
        nothing else to be looked at. Most lines have the same codes, looked through once."""
        codes = tuple(self.codes[start:end])
        if codes not in self._shapes:
            at = {code: place for place, code in enumerate(codes) if place}
            plain = at.keys() >= _ENDS and not at.keys() & {b"60", b"67", b"1001"}
            order = (b"10", b"20", b"11", b"21", b"8", b"6")
            self._shapes[codes] = [at[code] for code in order if code in at] if plain else None
        return self._shapes[codes]

    def _straight(self, told: list[bytes]) -> bool:
        x0, y0, x1, y1, layer, *linetype = told
        try:
            points = _checked(float(x0), float(y0)), _checked(float(x1), float(y1))
        except ValueError:  # one spoilt line must not cost the whole drawing
            self.spoilt["LINE"] += 1
            return True
        one = Loose(layer.strip(), linetype[0].strip() if linetype else b"", points)
        self.found.setdefault(self.block, []).append(one)
        return True

    def _run(
        self, tags: dict[bytes, bytes], start: int, end: int
    ) -> tuple[tuple[float, float], ...] | None:
        if any(code in tags and float(tags[code]) != 0.0 for code in _NOT_PLAIN - {b"230"}):
            return None
        if b"42" in tags or float(tags.get(b"230", b"1")) != 1.0:
            return None
        pairs = range(start + 1, end)
        across = [float(self.values[i]) for i in pairs if self.codes[i] == b"10"]
        up = [float(self.values[i]) for i in pairs if self.codes[i] == b"20"]
        if len(across) != len(up) or not 2 <= len(across) <= 10_000:
            return None
        return tuple(_checked(x, y) for x, y in zip(across, up, strict=True))

    def _rest(self, gone: Sequence[tuple[int, int]]) -> bytes:
        kept, last = [], 0
        for start, end in gone:
            kept += self.lines[2 * last : 2 * start]
            last = end
        kept += self.lines[2 * last :]
        return b"\n".join(kept)


def _line(tags: dict[bytes, bytes]) -> tuple[tuple[float, float], ...]:
    return (
        _checked(float(tags[b"10"]), float(tags[b"20"])),
        _checked(float(tags[b"11"]), float(tags[b"21"])),
    )


def _checked(x: float, y: float) -> tuple[float, float]:
    if not (-FARTHEST <= x <= FARTHEST and -FARTHEST <= y <= FARTHEST):
        raise ValueError("a point lies beyond any sheet")
    return tidied(x), tidied(y)


def tidied(value: float) -> float:
    """A finite coordinate to nine decimals, never -0.0; `round` takes four times as long."""
    return round(value * 1e9) / 1e9 if -_HELD < value < _HELD else value
