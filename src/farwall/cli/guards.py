"""`farwall read --guards`: which walls stand around a reader on this machine, tried just now."""

from __future__ import annotations

import argparse
from collections.abc import Sequence

_WALLS = {
    "limits": "limits of the system on time, memory, files",
    "powers": "a superuser's powers given up",
    "landlock": "Landlock: no file but Python's own",
    "seccomp": "a filter of system calls",
    "hook": "Python's audit hook",
}


class Guards(argparse.Action):
    """Prints them and ends, as `--version` does."""

    def __call__(
        self,
        parser: argparse.ArgumentParser,
        _namespace: argparse.Namespace,
        _values: str | Sequence[object] | None,
        _option: str | None = None,
    ) -> None:
        """Ends the program with 0, or 1 where something forbidden did not fail."""
        from farwall.readers.apart.start import guards

        found = guards()
        print(guards_told(found))
        parser.exit(0 if all(found["holds"].values()) else 1)


def guards_told(found: dict[str, dict[str, bool]]) -> str:
    """What `start.guards` found, for a person."""
    from farwall.readers.apart import limits

    each = f"{limits.CPU_S} s of processor time, {limits.WALL_S} s by the clock"
    each += f" and {limits.MEMORY_BYTES / 1e9:g} GB"
    lines = [f"Every file is read by a process of its own, given {each}.", ""]
    lines += ["Walls on this machine:"]
    lines += [f"  {_mark(found['guards'][wall])}  {words}" for wall, words in _WALLS.items()]
    lines += ["", "Tried from inside just now:"]
    lines += [f"  {_mark(holds)}  {what}" for what, holds in found["holds"].items()]
    return "\n".join(lines)


def _mark(holds: bool) -> str:  # noqa: FBT001 - one thing and whether it holds
    return "holds" if holds else "  no "
