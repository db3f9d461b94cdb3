"""The files of a calendar: days.json, the tape, a page for each house, as bytes."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Any

from farwall.facts.job import Job
from farwall.papers.chain.sheet import chain_pdf
from farwall.papers.days_tape import days_tape_svg
from farwall.papers.json_text import json_text
from farwall.phrasebook import Language, speaking

_UNSAFE = re.compile(r"[^\w.-]+")


def days_files(
    told: Mapping[str, Any],
    jobs: Mapping[str, Job],
    *,
    language: Language | None = None,
    screens: str = "",
) -> dict[str, bytes]:
    """File names with their content; `told` is a calendar document.

    jobs: by the id of the house. language: of all pages, without it what each job wishes for.
    screens: address of the house in the firm's book, where there is one house.
    """
    with speaking(language or "en", [str(one["name"]) for one in told["houses"]]):
        tape = days_tape_svg(told)
    files = {
        "days.json": (json_text(dict(told)) + "\n").encode(),
        "days.svg": tape.encode(),
    }
    for house in told["houses"]:
        name = _UNSAFE.sub("-", str(house["id"])).strip("-.") or "house"
        while f"chain-{name}.pdf" in files:
            name += "-2"
        files[f"chain-{name}.pdf"] = chain_pdf(
            told, house, jobs[house["id"]], language=language, screens=screens
        )
    return files
