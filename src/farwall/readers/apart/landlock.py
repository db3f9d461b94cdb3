"""The kernel's own bound on files: this process reads a few folders and nothing else, for good.

Source: landlock(7), `linux/landlock.h`. Kernels before 5.13 have none, and many are built without.
"""

from __future__ import annotations

import ctypes
import os
import sys
from collections.abc import Iterable
from contextlib import suppress
from pathlib import Path

_CREATE, _ADD, _RESTRICT = 444, 445, 446  # the same numbers on every processor
_ASK_VERSION, _PATH_BENEATH = 1, 1
_READ_FILE, _READ_FOLDER = 1 << 2, 1 << 3
_FILE_BITS = {1: 13, 2: 14, 3: 15, 4: 15, 5: 16}
"""How many kinds of access to files each version knows; later ones know sixteen."""
_NO_NEW_PRIVILEGES = 38


class _Ruleset(ctypes.Structure):
    _fields_ = (("files", ctypes.c_uint64), ("net", ctypes.c_uint64), ("scoped", ctypes.c_uint64))


class _Beneath(ctypes.Structure):
    _pack_ = 1
    _fields_ = (("allowed", ctypes.c_uint64), ("folder", ctypes.c_int32))


def read_only_below(places: Iterable[Path]) -> bool:
    """From now on only these files and folders can be read, and nothing written; else False."""
    if sys.platform != "linux":
        return False
    libc = ctypes.CDLL(None, use_errno=True)
    version = libc.syscall(_CREATE, None, ctypes.c_size_t(0), ctypes.c_uint32(_ASK_VERSION))
    if version < 1:
        return False
    bounds = _Ruleset((1 << _FILE_BITS.get(version, 16)) - 1, 0b11, 0b11)
    size = 8 if version < 4 else 16 if version < 6 else 24  # what the version knows of it
    rules = libc.syscall(_CREATE, ctypes.byref(bounds), ctypes.c_size_t(size), ctypes.c_uint32(0))
    if rules < 0:
        return False
    try:
        for place in places:
            with suppress(OSError):  # not there, so not needed
                _allow(libc, rules, place)
        if libc.prctl(_NO_NEW_PRIVILEGES, 1, 0, 0, 0) != 0:
            return False
        return bool(libc.syscall(_RESTRICT, rules, ctypes.c_uint32(0)) == 0)
    finally:
        os.close(rules)


def _allow(libc: ctypes.CDLL, rules: int, place: Path) -> None:
    opened = os.open(place, os.O_PATH | os.O_CLOEXEC)
    try:
        kinds = _READ_FILE | (_READ_FOLDER if place.is_dir() else 0)
        rule = _Beneath(kinds, opened)
        libc.syscall(_ADD, rules, _PATH_BENEATH, ctypes.byref(rule), ctypes.c_uint32(0))
    finally:
        os.close(opened)
