"""What a moved wall does, while it is moved: the quick preview, in a process of its own.

The last full plan of a house is made once and kept there; plain values in, plain values out. One
question runs at a time: of those that wait for a house, only the newest is asked.
"""

from __future__ import annotations

import asyncio
import gc
from collections import OrderedDict
from collections.abc import Callable
from concurrent.futures import Executor, Future
from dataclasses import field
from typing import TYPE_CHECKING, Any

from farwall.errors import FarwallError, mistakes_of
from farwall.nouns import dataclass
from farwall.web.hands import one_process

if TYPE_CHECKING:
    from farwall.job.preview import Kept

Json = dict[str, Any]
RELAID_M2 = 4.0
"""Floor that is swept anew while a wall moves: a quarter of what the preview allows itself, so that
nineteen answers of twenty keep within 100 ms of the processor (docs/drawing.md has the figures);
the rest is guessed, and weighed older."""
_HELD = 3
_kept: OrderedDict[tuple[str, int], Kept] = OrderedDict()
"""Of this process: the last full plans."""


def is_kept(job: str, version: int) -> bool:
    """Whether this process has the full plan of a version."""
    return (job, version) in _kept


def keep_plan(job: str, version: int, facts: Json) -> list[str]:
    """Make and keep the full plan of a version; why there is none. Never raises for the facts."""
    if is_kept(job, version):
        return []
    from farwall.job.preview import keep, preview
    from farwall.readers.job_json import job_from

    try:
        kept = keep(job_from(facts, f"The job {job}"))
        preview(kept, kept.job.floor)  # what is imported on first use is no part of a drag
    except FarwallError as error:
        return mistakes_of(error)
    _kept[job, version] = kept
    while len(_kept) > _HELD:
        _kept.popitem(last=False)
    _set_aside()
    return []


def _set_aside() -> None:
    """Have what lives on left out of the search for garbage, which else takes 0.1 s of a drag."""
    gc.unfreeze()
    gc.collect()
    gc.freeze()


def previewed(job: str, version: int, drawn: Json, moving: bool) -> Json | None:  # noqa: FBT001
    """The preview of a drawn floor as plain values; None where the full plan is not kept here."""
    kept = _kept.get((job, version))
    if kept is None:
        return None
    from shapely.errors import ShapelyError

    from farwall.job.preview import preview
    from farwall.readers.job_json import adapter

    part = {"version": 1, "floor": {k: v for k, v in drawn.items() if k != "exits"},
            "exits": drawn["exits"]}  # fmt: skip
    try:
        floor = adapter().validate_python(part).floor
        found = preview(kept, floor, relaid_m2=RELAID_M2 if moving else float("inf"))
    except FarwallError as error:
        return {"no": mistakes_of(error), "fields": []}
    except (
        ValueError,
        ShapelyError,
    ) as error:  # what is being drawn need not be a floor at every moment
        return {"no": [str(error).splitlines()[0][:200]], "fields": []}
    low = {one.id: one.open_time_min.low for one in kept.plan.fields}
    fields = [
        {
            "rooms": list(one.rooms), "verdict": one.verdict, "age_min": one.peak_age_min,
            "safe_min": one.safe_age_min, "spare_min": one.margin_min, "how": one.how,
            "low_min": low[one.id],
        }
        for one in found.fields
    ]  # fmt: skip
    return {"no": [], "fits": found.fits, "fields": fields}


@dataclass
class Previews:
    """The previews of a door. make_hands: who reckons them."""

    make_hands: Callable[[], Executor] = one_process
    _hands: Executor | None = None
    _keeping: dict[tuple[str, int], Future[list[str]]] = field(default_factory=dict)
    _no: OrderedDict[tuple[str, int], list[str]] = field(default_factory=OrderedDict)
    _newest: dict[str, object] = field(default_factory=dict)
    _running: asyncio.Lock = field(default_factory=asyncio.Lock)

    @property
    def hands(self) -> Executor:
        """Begun when first needed."""
        if self._hands is None:
            self._hands = self.make_hands()
        return self._hands

    def keep_soon(self, job: str, version: int, facts: Json) -> None:
        """Begin the full plan of a version, where it was not begun."""
        key = (job, version)
        if key in self._keeping or key in self._no:
            return
        work = self._keeping[key] = self.hands.submit(keep_plan, job, version, facts)
        work.add_done_callback(lambda done: self._done(key, done))

    def _done(self, key: tuple[str, int], done: Future[list[str]]) -> None:
        self._keeping.pop(key, None)
        if not done.cancelled() and done.exception() is None and done.result():
            self._no[key] = done.result()
            while len(self._no) > _HELD:
                self._no.popitem(last=False)

    async def ask(self, job: str, version: int, drawn: Json, *, moving: bool) -> Json | None:
        """The preview of a floor, or `passed` where a newer question came meanwhile.

        `waiting`: the full plan that it needs is being made; `no`: why there is none; None: it
        has to be made first.
        """
        key = (job, version)
        if key in self._no:
            return {"no": self._no[key], "fields": []}
        if key in self._keeping:
            return {"waiting": True}
        mine = self._newest[job] = object()
        async with self._running:
            if self._newest.get(job) is not mine:
                return {"passed": True}
            loop = asyncio.get_running_loop()
            found = await loop.run_in_executor(self.hands, previewed, job, version, drawn, moving)
            if self._newest.get(job) is mine:
                del self._newest[job]
        return found

    def close(self) -> None:
        """Let the hands go."""
        if self._hands is not None:
            self._hands.shutdown(cancel_futures=True)
