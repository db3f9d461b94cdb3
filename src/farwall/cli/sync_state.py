"""What a log's folder knows of the book that it is sent to; kept beside the log, in `sync.json`."""

from __future__ import annotations

import json
import os
from collections.abc import Mapping, Sequence
from dataclasses import field
from pathlib import Path
from typing import Any

from farwall.facts.log import Kept
from farwall.nouns import dataclass
from farwall.web.phone import Phone

NAME = "sync.json"


@dataclass(frozen=True)
class State:
    """kept: days on which ids were acknowledged, or came from the book · pulled: the last place of
    this job that was fetched; the rest as `web.phone.Phone` has it."""

    kept: Mapping[str, str] = field(default_factory=dict)
    turned: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    places: int = 0
    asked_on: str = ""
    pulled: int = 0


def read(folder: Path) -> State:
    """The state there; a new one where there is none, or none that can be read: all is offered."""
    try:
        told: dict[str, Any] = json.loads((folder / NAME).read_text(encoding="utf-8"))
        turned = {str(name): tuple(map(str, why)) for name, why in told["turned"].items()}
        kept = {str(name): str(day) for name, day in told["kept"].items()}
        return State(kept, turned, int(told["places"]), str(told["asked_on"]), int(told["pulled"]))
    except (OSError, ValueError, KeyError, TypeError, AttributeError):
        return State()


def write(folder: Path, state: State) -> None:
    """Replace it in one rename, on the disk before this returns."""
    told = {
        "kept": dict(state.kept), "turned": {k: list(v) for k, v in state.turned.items()},
        "places": state.places, "asked_on": state.asked_on, "pulled": state.pulled,
    }  # fmt: skip
    aside = folder / f".{NAME}.new"
    with aside.open("w", encoding="utf-8") as file:
        json.dump(told, file)
        file.flush()
        os.fsync(file.fileno())
    aside.replace(folder / NAME)


def phone_of(state: State, there: Sequence[Kept], *, device: str) -> Phone:
    """The queue that a log and its state make: what is not acknowledged waits."""
    entries = {one.entry.id: one.entry for one in there}
    return Phone(
        device,
        waiting={name: one for name, one in entries.items() if name not in state.kept},
        turned={name: why for name, why in state.turned.items() if name in entries},
        kept={name: (entries[name], day) for name, day in state.kept.items() if name in entries},
        places=state.places,
        asked_on=state.asked_on,
    )


def state_of(phone: Phone, before: State, *, pulled: int) -> State:
    """The state that a queue leaves; what is older than a month stays known."""
    days = {name: day for name, day in before.kept.items() if name not in phone.waiting}
    days |= {name: day for name, (_, day) in phone.kept.items()}
    return State(days, phone.turned, phone.places, phone.asked_on, pulled)
