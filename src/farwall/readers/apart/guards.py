"""Which walls stand around a reader on this system; tried from inside, not believed."""

from __future__ import annotations

import os
from collections.abc import Callable
from dataclasses import asdict
from pathlib import Path

from farwall.nouns import dataclass
from farwall.readers.apart.limits import MEMORY_BYTES


@dataclass(frozen=True)
class Guards:
    """What took hold: limits of the system · powers given up · Landlock · seccomp · audit hook."""

    limits: bool
    powers: bool
    landlock: bool
    seccomp: bool
    hook: bool


def tried(guards: Guards) -> dict[str, dict[str, bool]]:
    """What took hold, and of each forbidden thing whether it failed when it was tried here.

    To be called in a process that is shut in, which ends afterwards.
    """
    tries: dict[str, Callable[[], object]] = {
        "no file outside": lambda: Path(os.sep, "etc", "passwd").read_bytes(),
        "no folder outside": lambda: list(Path(os.sep).iterdir()),
        "nothing written": lambda: Path(os.sep, "tmp", "farwall-reader").write_bytes(b"x"),
        "no network": _network,
        "no other program": lambda: os.execv(os.sep + "bin/true", ["true"]),
        "no other process": _fork,
        "no more memory": lambda: len(bytearray(MEMORY_BYTES)),
    }
    return {"guards": asdict(guards), "holds": {name: _fails(one) for name, one in tries.items()}}


def _fails(deed: Callable[[], object]) -> bool:
    try:
        deed()
    except (OSError, MemoryError):
        return True
    return False


def _network() -> None:
    import socket

    socket.socket(socket.AF_INET, socket.SOCK_STREAM).close()


def _fork() -> None:
    if os.fork() == 0:
        os._exit(0)
