"""Notes of what came of each job, a line each, kept as they come: who stops may go on."""

from __future__ import annotations

import json
import os
from collections.abc import Iterable, Mapping
from dataclasses import asdict
from pathlib import Path
from typing import Any

from farwall.cli.many.nouns import Outcome

NAME = "outcomes.jsonl"


def add(folder: Path, outcome: Outcome) -> None:
    """Write one line and have it reach the disk before going on."""
    text = json.dumps(_told(outcome), ensure_ascii=False) + "\n"
    with (folder / NAME).open("ab") as file:
        if file.tell() and not _ends_a_line(folder / NAME):
            file.write(b"\n")  # a last line cut short by a dead battery stays one line
        file.write(text.encode())
        file.flush()
        os.fsync(file.fileno())


def read(folder: Path) -> dict[str, Outcome]:
    """The newest outcome of each job; lines that cannot be read are passed over."""
    found: dict[str, Outcome] = {}
    try:
        lines = (folder / NAME).read_text(encoding="utf-8", errors="replace").split("\n")
    except FileNotFoundError:
        return {}
    for line in lines:
        try:
            told = json.loads(line)
            outcome = Outcome(**{**told, "why": tuple(told["why"])})
        except (ValueError, TypeError, KeyError):
            continue
        found[outcome.id] = outcome
    return found


def still_good(outcome: Outcome | None, made_from: str, folder: Path) -> bool:
    """Whether a job need not be planned again: made from the same, and its plan is still there.

    What was lost or failed is tried again.
    """
    if outcome is None or outcome.made_from != made_from or outcome.state in {"lost", "failed"}:
        return False
    written = outcome.fields > 0
    return not written or (folder / outcome.id / "plan.json").is_file()


def whole(folder: Path, outcomes: Iterable[Outcome]) -> None:
    """The same notes in order of the jobs, one line each, written at the end in one rename."""
    aside = folder / f".{NAME}.new"
    lines = [json.dumps(_told(one), ensure_ascii=False) + "\n" for one in outcomes]
    with aside.open("w", encoding="utf-8") as file:
        file.writelines(lines)
        file.flush()
        os.fsync(file.fileno())
    aside.replace(folder / NAME)


def _told(outcome: Outcome) -> Mapping[str, Any]:
    return {key: value for key, value in asdict(outcome).items() if key != "files"}


def _ends_a_line(path: Path) -> bool:
    with path.open("rb") as file:
        file.seek(-1, os.SEEK_END)
        return file.read(1) == b"\n"
