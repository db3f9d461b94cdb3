"""The files of a calendar: days.json, the tape, a page for each house, as bytes."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Any

from farwall.papers.chain.sheet import chain_pdf
from farwall.papers.days_tape import days_tape_svg
from farwall.papers.json_text import json_text
from farwall.papers.wall_clock import Units

_UNSAFE = re.compile(r"[^\w.-]+")


def days_files(told: Mapping[str, Any], *, units: Units = "us") -> dict[str, bytes]:
    """File names with their content; `told` is a calendar document."""
    files = {
        "days.json": (json_text(dict(told)) + "\n").encode(),
        "days.svg": days_tape_svg(told).encode(),
    }
    for house in told["houses"]:
        name = _UNSAFE.sub("-", str(house["id"])).strip("-.") or "house"
        while f"chain-{name}.pdf" in files:
            name += "-2"
        files[f"chain-{name}.pdf"] = chain_pdf(told, house, units=units)
    return files
