"""What a process has beyond others' (a superuser's powers), given up; and whom it ends with."""

from __future__ import annotations

import ctypes
import os
import signal
import sys

_VERSION = 0x20080522
"""_LINUX_CAPABILITY_VERSION_3 of `linux/capability.h`."""
_LOOK_EVERYWHERE = 1 << 2
"""CAP_DAC_READ_SEARCH stays: Python may lie in a folder that is its owner's alone."""
_END_SIGNAL = 1  # PR_SET_PDEATHSIG


def give_up() -> bool:
    """Keep no power but that of reading what lies in closed folders; False where there are none."""
    if sys.platform != "linux":
        return False
    libc = ctypes.CDLL(None, use_errno=True)
    head = (ctypes.c_uint32 * 2)(_VERSION, 0)
    powers = (ctypes.c_uint32 * 6)()
    if libc.capget(head, powers) != 0:
        return False
    for at in range(6):  # effective, permitted, inheritable; low words, then high
        keep = _LOOK_EVERYWHERE if at in (0, 1) else 0
        powers[at] &= keep
    return bool(libc.capset(head, powers) == 0)


def end_with(parent: int) -> None:
    """End this process when the one that started it ends (Linux)."""
    if sys.platform != "linux":
        return
    ctypes.CDLL(None).prctl(_END_SIGNAL, signal.SIGKILL, 0, 0, 0)
    if os.getppid() != parent:  # it was quicker
        os._exit(1)
