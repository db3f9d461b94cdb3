"""Lettering: freed from its control codes, cut into lines, placed by its middle."""

from __future__ import annotations

import re
from math import cos, isfinite, radians, sin
from typing import Any

from farwall.floor.geometry import Point
from farwall.readers.lines.sheet import Words

_LETTER_WIDTH = 0.65  # of the height: common drawing fonts (from memory); only places a middle
_CODES = re.compile(r"%%[uUoOkK]")


def plain(text: str) -> str:
    """The text as a person reads it."""
    text = _CODES.sub("", text.encode("utf-8", "replace").decode())
    for code, letter in (("%%d", "°"), ("%%D", "°"), ("%%c", "Ø"), ("%%C", "Ø"), ("%%p", "±")):
        text = text.replace(code, letter)
    return re.sub(r"\s+", " ", text).strip()


def lines_of_words(entity: Any, layer: str) -> list[Words]:
    """One `Words` for each line of a TEXT, ATTRIB or MTEXT."""
    return _from_mtext(entity, layer) if entity.dxftype() == "MTEXT" else _from_text(entity, layer)


def stacked_apart(entity: Any) -> str:
    """The text of an MTEXT, a stacked fraction apart from the number before it: `6'-10 1/2"`."""
    from ezdxf.tools.text import plain_mtext

    return str(
        plain_mtext(re.sub(r"(?<=\d)((?:\{|\\[A-Z][^;\\]*;)*\\S)", r" \1", str(entity.text)))
    )


def _from_text(entity: Any, layer: str) -> list[Words]:
    text = plain(str(entity.dxf.get("text", "")))
    if not text:
        return []
    height = _positive(entity.dxf.get("height", 1.0))
    turned = float(entity.dxf.get("rotation", 0.0)) % 360.0
    width = _LETTER_WIDTH * height * len(text) * abs(float(entity.dxf.get("width", 1.0)))
    across, up = int(entity.dxf.get("halign", 0)), int(entity.dxf.get("valign", 0))
    placed = entity.dxf.get("align_point") if (across or up) else None
    point = entity.ocs().to_wcs(placed if placed is not None else entity.dxf.insert)
    if placed is None or across in {3, 5}:
        across, up = 0, 0
        point = entity.ocs().to_wcs(entity.dxf.insert)
    right = {0: width / 2, 1: 0.0, 2: -width / 2, 4: 0.0}.get(across, 0.0)
    rise = 0.0 if across == 4 else {0: height / 2, 1: height / 2, 2: 0.0, 3: -height / 2}.get(up, 0)
    return [Words(text, _moved(point, right, rise, turned), height, turned, layer)]


def _from_mtext(entity: Any, layer: str) -> list[Words]:
    lines = [plain(line) for line in stacked_apart(entity).split("\n")]
    lines = [line for line in lines if line]
    height = _positive(entity.dxf.get("char_height", 1.0))
    turned = float(entity.get_rotation()) % 360.0
    place = int(entity.dxf.get("attachment_point", 1))
    step = height * 5 / 3
    column, row = (place - 1) % 3, (place - 1) // 3
    top = {0: 0.0, 1: (len(lines) - 1) * step / 2 + height / 2}.get(row, len(lines) * step)
    found = []
    for number, line in enumerate(lines):
        width = _LETTER_WIDTH * height * len(line)
        right = (width / 2, 0.0, -width / 2)[column]
        rise = top - height / 2 - number * step
        found.append(
            Words(line, _moved(entity.dxf.insert, right, rise, turned), height, turned, layer)
        )
    return found


def _positive(height: Any) -> float:
    value = float(height)
    return value if isfinite(value) and value > 0 else 1.0


def _moved(point: Any, right: float, rise: float, turned_deg: float) -> Point:
    turn = radians(turned_deg)
    x = float(point[0]) + right * cos(turn) - rise * sin(turn)
    y = float(point[1]) + right * sin(turn) + rise * cos(turn)
    if not (isfinite(x) and isfinite(y)) or max(abs(x), abs(y)) > 1e11:
        raise ValueError("lettering beyond any sheet")
    return x, y
