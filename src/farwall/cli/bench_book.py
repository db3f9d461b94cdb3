"""`farwall bench book`: writers killed, power cut, a large book timed."""

from __future__ import annotations

import json
import tempfile
from dataclasses import asdict
from pathlib import Path
from typing import TYPE_CHECKING

from farwall.errors import Mistake, Refused

if TYPE_CHECKING:
    from farwall.bench.book_kills import Kills

_DONE, _WRONG = 0, 1
_JOBS, _ENTRIES = 5_000, 1_000_000


def run_book(*, kills: int, cuts: int, size: bool, as_json: bool) -> int:
    """Run the trials asked for; 1 when a book was not whole or lost what it had acknowledged."""
    if not (kills or cuts or size):
        remedy = "Say --kills N, --power N or --size."
        raise Refused(Mistake("bench book", "no trial was named.", remedy))
    document: dict[str, object] = {}
    wrong: list[str] = []
    if kills:
        found = _kills(kills, quiet=as_json)
        document["kills"] = [asdict(one) for one in found]
        wrong += [f"{one.store}, {what}" for one in found for what in one.wrong]
    if cuts:
        from farwall.bench.book_power import cut_power

        power = cut_power(cuts)
        document["power"] = asdict(power)
        wrong += power.wrong
        if not as_json:
            print(
                f"power: {power.cuts} cuts into {power.calls} calls ({power.syncs} syncs) of a "
                f"writer; {power.lost} writes lost, {power.torn} torn; {len(power.wrong)} wrong"
            )
    if size:
        document["size"] = _size(quiet=as_json)
    if as_json:
        print(json.dumps({**document, "wrong": wrong}, ensure_ascii=False))
    else:
        print("\n".join(f"WRONG {one}" for one in wrong) or "Nothing acknowledged was lost.")
    return _WRONG if wrong else _DONE


def _kills(kills: int, *, quiet: bool) -> list[Kills]:
    """Half in each store; without a server all in SQLite, and said so."""
    from farwall.bench.book_kills import kill_postgres, kill_sqlite
    from farwall.bench.book_postgres import NoServer

    found = [kill_sqlite(kills - kills // 2)]
    try:
        found.append(kill_postgres(kills // 2))
    except NoServer as why:
        if not quiet:
            print(f"SKIPPED the kills over PostgreSQL: {why}")
    for one in found:
        if not quiet:
            print(
                f"{one.store}: {one.kills} kills, {one.before_any} of them before anything was "
                f"said, {one.crashes} crashes of the server; {one.acknowledged} entries "
                f"acknowledged, {one.kept_unsaid} kept that were not said; {len(one.wrong)} wrong"
            )
    return found


def _size(*, quiet: bool) -> dict[str, object]:
    from farwall.bench.book_size import measure_size
    from farwall.bench.houses import houses
    from farwall.readers.job_json import job_to_dict

    facts = job_to_dict(max((one.job for one in houses()), key=lambda job: len(job.floor.rooms)))
    with tempfile.TemporaryDirectory(prefix="farwall-size-") as folder:
        found = asdict(
            measure_size(Path(folder) / "book", jobs=_JOBS, entries=_ENTRIES, facts=facts)
        )
    if not quiet:
        for name, value in found.items():
            print(
                f"{name:<14} {value:,.4g}" if isinstance(value, float) else f"{name:<14} {value:,}"
            )
    return found
