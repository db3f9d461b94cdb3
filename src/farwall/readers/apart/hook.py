"""What Python itself tells of files, machines and processes is refused, on every system.

A library that follows an address or writes a cache is stopped here. It is no wall against machine
code that was taken over; those are the kernel's filters, where there are any.
"""

from __future__ import annotations

import os
import sys
from collections.abc import Iterable
from pathlib import Path
from typing import Any

_FOR_WRITING = os.O_WRONLY | os.O_RDWR | os.O_CREAT | os.O_TRUNC | os.O_APPEND
_FAMILIES = (
    "socket.", "subprocess.", "shutil.", "tempfile.", "urllib.", "ftplib.", "http.", "imaplib.",
    "poplib.", "smtplib.", "telnetlib.", "webbrowser.", "winreg.", "sqlite3.", "pty.", "syslog.",
)  # fmt: skip
_DEEDS = frozenset({
    "os.system", "os.exec", "os.posix_spawn", "os.spawn", "os.fork", "os.forkpty", "os.startfile",
    "os.remove", "os.rename", "os.mkdir", "os.rmdir", "os.link", "os.symlink", "os.truncate",
    "os.chmod", "os.chown", "os.lockf", "os.kill", "os.killpg", "os.chroot", "os.utime",
    "os.setxattr", "os.removexattr", "os.unshare", "os.setns", "os.chflags", "os.mkfifo",
    "os.mknod", "resource.setrlimit", "resource.prlimit", "signal.pthread_kill",
})  # fmt: skip
_LOOKS = frozenset({"os.listdir", "os.scandir", "os.walk", "glob.glob"})


def refuse_deeds(places: Iterable[Path]) -> None:
    """From now on Python opens files below these places for reading alone, and does no deeds."""
    roots = frozenset(root for place in places for root in (_whole(place), str(place.resolve())))
    below = tuple(root.rstrip(os.sep) + os.sep for root in sorted(roots))

    def inside(place: object) -> bool:
        if place is None or isinstance(place, int):
            return True  # opened already
        try:
            path = _whole(place)
        except (TypeError, ValueError):
            return False
        return path in roots or path.startswith(below)

    def hook(event: str, told: tuple[Any, ...]) -> None:
        if event == "open":
            place, mode, flags = told
            writes = (flags or 0) & _FOR_WRITING or (mode and set("wax+") & set(str(mode)))
            if not isinstance(place, int) and (writes or not inside(place)):
                raise PermissionError(f"a reader opens no files: {place!r}")
        elif event in _LOOKS:
            if not inside(told[0]):
                raise PermissionError(f"a reader looks into no folders: {told[0]!r}")
        elif event in _DEEDS or event.startswith(_FAMILIES):
            raise PermissionError(f"a reader does not do this: {event}")

    sys.addaudithook(hook)


def _whole(place: Any) -> str:
    # Not Path.resolve, which follows links and so asks the system at every import.
    return os.path.abspath(os.fsdecode(place))  # noqa: PTH100
