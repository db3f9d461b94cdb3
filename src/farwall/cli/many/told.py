"""How far the many are, on one line, and what came of them at the end."""

from __future__ import annotations

import sys
import time
from collections import Counter
from collections.abc import Sequence
from typing import TextIO

from farwall.cli.many.nouns import Outcome, State

_WORDS: dict[State, str] = {
    "planned": "planned",
    "no": "planned, and the answer is no",
    "refused": "refused: the job file has mistakes",
    "failed": "failed in Farwall: a defect of ours",
    "lost": "lost: their worker died or ran over time",
}
_SHOWN = 20
_BAR = 24


class Progress:
    """One line on a terminal that fills as jobs are done; elsewhere a line now and then."""

    def __init__(self, total: int, *, out: TextIO | None = None) -> None:
        self._total, self._out = total, out or sys.stderr
        self._done, self._began, self._last = 0, time.monotonic(), 0.0
        self._live = self._out.isatty()

    def one_more(self) -> None:
        """Another job is done."""
        self._done += 1
        now = time.monotonic()
        every_s = 0.2 if self._live else 30.0
        if self._done < self._total and now - self._last < every_s:
            return
        self._last = now
        line = self.line(now - self._began)
        self._out.write(f"\r{line:<70}" if self._live else f"{line}\n")
        self._out.flush()

    def line(self, passed_s: float) -> str:
        """Done, of how many, and how long the rest will take at this pace."""
        share = self._done / self._total
        bar = ("=" * round(_BAR * share)).ljust(_BAR, ".")
        left_s = passed_s / self._done * (self._total - self._done) if self._done else 0.0
        rest = "" if self._done == self._total else f", about {_lasting(left_s)} left"
        return f"[{bar}] {self._done} of {_jobs(self._total)}{rest}"

    def end(self) -> None:
        """Leave the line."""
        if self._live:
            self._out.write("\n")


def said(outcomes: Sequence[Outcome], *, before: int, seconds: float, folder: str) -> str:
    """How many of each state, and why for those that did not go through."""
    counts = Counter(one.state for one in outcomes)
    done = f"{_jobs(len(outcomes))} in {_lasting(seconds)}"
    if before:
        done += f", {before} of them as planned before"
    lines = [f"{done}:"]
    lines += [f"  {counts[one]:>6}  {what}" for one, what in _WORDS.items() if counts[one]]
    bad = [one for one in outcomes if one.state != "planned"]
    for one in bad[:_SHOWN]:
        why, rest = " ".join(one.why[:2]), len(one.why) - 2
        lines.append(f"{one.id}: {one.state}. {why}" + (f" (and {rest} more)" if rest > 0 else ""))
    if len(bad) > _SHOWN:
        lines.append(f"… and {len(bad) - _SHOWN} more.")
    lines.append(f"Plans and outcomes.jsonl are in {folder}.")
    return "\n".join(lines)


def stopped(done: int, total: int, *, folder: str) -> str:
    """After Ctrl-C: what is kept, and how to go on."""
    return (
        f"\nStopped: {done} of {_jobs(total)} done and kept in {folder}. "
        "The same command again goes on from there."
    )


def _jobs(count: int) -> str:
    return f"{count} job{'s' * (count != 1)}"


def _lasting(seconds: float) -> str:
    if seconds < 90:
        return f"{seconds:.0f} s"
    if seconds < 5400:
        return f"{seconds / 60:.0f} min"
    return f"{seconds / 3600:.1f} h"
