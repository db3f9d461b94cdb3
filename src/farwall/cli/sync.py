"""`farwall sync DIR… --to ADDRESS`: send what was logged without signal, fetch what others did."""

from __future__ import annotations

import argparse
import json
import os
from collections.abc import Sequence
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any

from farwall.cli.sync_files import fetch, send
from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

if TYPE_CHECKING:
    from farwall.cli.log_file import LogFile
    from farwall.cli.sync_client import Door
    from farwall.web.phone import Phone

_DONE, _NO = 0, 1


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall sync` takes."""
    parser.add_argument(
        "folders", metavar="DIR", type=Path, nargs="+", help="folders with a log in them"
    )
    parser.add_argument("--to", metavar="ADDRESS", required=True, help="where `farwall serve` is")
    parser.add_argument("--key", help="the key it printed (default: FARWALL_KEY)")
    parser.add_argument("--device", help="what this device is called (default: this home's)")
    parser.add_argument("--json", action="store_true", help="one JSON document on stdout")


@dataclass(frozen=True)
class Synced:
    """What became of one folder: entries sent, had already, turned away, and fetched.

    lacking: photos that entries name and that are neither here nor in the book.
    """

    folder: str
    job: str
    sent: int
    known: int
    fetched: int
    waiting: int
    turned: dict[str, tuple[str, ...]]
    photos_sent: int = 0
    photos_fetched: int = 0
    lacking: tuple[str, ...] = ()


def run(options: argparse.Namespace) -> int:
    """Sync each folder; 1 when something was turned away."""
    from farwall.cli.device import device_name
    from farwall.cli.sync_client import Door

    key = options.key or os.environ.get("FARWALL_KEY", "")
    if not key:
        raise Refused(Mistake("--key", "the book asks for its key.", "`farwall serve` prints it."))
    door = Door(options.to, key)
    device = device_name(options.device)
    found = [_synced(folder, door, device) for folder in options.folders]
    if options.json:
        print(json.dumps([vars(one) for one in found], ensure_ascii=False))
    else:
        print("\n".join(line for one in found for line in _said(one)))
    return _NO if any(one.turned for one in found) else _DONE


def _synced(folder: Path, door: Door, device: str) -> Synced:
    from farwall.cli.log_place import place_of
    from farwall.cli.sync_state import phone_of, read, state_of, write

    place = place_of(str(folder), job_file=None, book=None)
    log: Any = place.log
    state = read(folder)
    phone = phone_of(state, log.entries(), device=device)
    _insist_on_job(door, folder, place.job_id)
    phone = _asked(door, phone)
    sent = known = photos = 0
    today = [one for one, _ in phone.kept.values()] if state.asked_on != _today() else []
    photos += send(door, log.files, today).count
    pulled = state.pulled
    offered: set[str] = set()
    while batch := [one for one in _to_offer(phone) if one.id not in offered]:
        offered |= {one.id for one in batch}
        before = send(door, log.files, batch)
        photos += before.count
        batch = [one for one in batch if one.id not in before.held]
        phone = replace(phone, turned={**phone.turned, **before.held})
        answer = door.send("/api/entries", _offer(phone, batch))
        if answer["places"] < phone.places:
            pulled, offered = 0, set()  # an older book was put back: all that it lost goes again
        phone = _answered(phone, answer)
        sent, known = sent + len(answer["new"]), known + len(answer["known"])
        write(folder, state_of(phone, state, pulled=pulled))
    fetched, pulled, phone = _fetched(door, log, place.job_id, phone, pulled)
    write(folder, state_of(phone, state, pulled=pulled))
    here = [one.entry for one in log.entries()]
    came, lacking = fetch(door, log.files, here)
    return Synced(
        str(folder), place.job_id, sent, known, fetched, len(phone.waiting), dict(phone.turned),
        photos, came, lacking,
    )  # fmt: skip


def _insist_on_job(door: Door, folder: Path, job: str) -> None:
    """Give the book the job's facts where it does not have the job yet and they lie here."""
    from urllib.parse import quote

    facts = folder / "job.json"
    if facts.exists() and door.get(f"/api/jobs/{quote(job, safe='')}") is None:
        body = {"facts": json.loads(facts.read_text(encoding="utf-8")), "who": "", "name": job}
        door.send(f"/api/jobs/{quote(job, safe='')}/facts", body, method="PUT")


def _asked(door: Door, phone: Phone) -> Phone:
    from farwall.web.phone import to_ask, told

    ids = to_ask(phone, _today())
    if not ids:
        return phone
    answer = door.send("/api/have", {"ids": list(ids)})
    return told(phone, missing=answer["missing"], today=_today())


def _to_offer(phone: Phone) -> Sequence[Any]:
    from farwall.web.phone import to_offer

    return to_offer(phone)


def _offer(phone: Phone, batch: Sequence[Any]) -> dict[str, Any]:
    from farwall.readers.log_json import entry_to_dict

    sent_at = datetime.now(UTC).isoformat(timespec="milliseconds")
    return {
        "device": phone.device, "era": 0, "sent_at": sent_at,
        "entries": [entry_to_dict(one) for one in batch],
    }  # fmt: skip


def _answered(phone: Phone, answer: dict[str, Any]) -> Phone:
    from farwall.web.phone import answered

    turned = {one["id"]: tuple(one["why"]) for one in answer["turned"]}
    taken = (*answer["new"], *answer["known"])
    return answered(phone, taken=taken, turned=turned, places=answer["places"], today=_today())


def _fetched(
    door: Door, log: LogFile, job: str, phone: Phone, pulled: int
) -> tuple[int, int, Phone]:
    """What others logged, added to the file; how many, up to which place."""
    from urllib.parse import quote

    from farwall.readers.kept_json import kept_from

    answer = door.get(f"/api/jobs/{quote(job, safe='')}/entries?after={pulled}")
    told = (answer or {"entries": []})["entries"]
    kept = [kept_from(one) for one in told]
    added = log.take_in(kept)
    days = {**phone.kept, **{one.entry.id: (one.entry, _today()) for one in added}}
    return len(added), max([pulled, *(one.place for one in kept)]), replace(phone, kept=days)


def _said(one: Synced) -> list[str]:
    counts = f"{one.sent} sent, {one.known} the book had already, {one.fetched} fetched"
    if one.photos_sent or one.photos_fetched:
        counts += f"; photos: {one.photos_sent} sent, {one.photos_fetched} fetched"
    lines = [f"{one.folder} ({one.job}): {counts}, {one.waiting} waiting."]
    lines += [f"  photo {sha[:12]}… is neither here nor in the book." for sha in one.lacking]
    lines += [f"  {name[-8:]} was not kept: {why[0]}" for name, why in one.turned.items()]
    return lines


def _today() -> str:
    return datetime.now(UTC).date().isoformat()
