"""The kernel's own filter of system calls, laid on this process for good (Linux, 64 bit).

What is forbidden fails with "not permitted" and does not kill, so that a library which only tries
something carries on without it. Calls newer than the table are answered with "no such call".
Source: seccomp(2); the kernel's `Documentation/userspace-api/seccomp_filter.rst`; `linux/filter.h`.
"""

from __future__ import annotations

import ctypes
import os
import platform
import struct
import sys

from farwall.readers.apart.calls import ARCHES, ASKED, DENIED, FROM_HERE_NEW, NEW_ALLOWED

_LOAD, _EQUAL, _AT_LEAST, _ANY_BIT, _RETURN = 0x20, 0x15, 0x35, 0x45, 0x06
_ALLOW, _KILL, _ERRNO = 0x7FFF0000, 0x80000000, 0x00050000
_NOT_PERMITTED, _NO_SUCH_CALL = _ERRNO | 1, _ERRNO | 38
_NR, _ARCH, _ARGUMENTS = 0, 4, 16  # offsets in struct seccomp_data
_X32 = 0x40000000
_FOR_WRITING = 0o1 | 0o2 | 0o100 | 0o1000  # O_WRONLY, O_RDWR, O_CREAT, O_TRUNC
_THREAD = 0x10000  # CLONE_THREAD
_NO_NEW_PRIVILEGES, _SET_SECCOMP, _MODE_FILTER = 38, 22, 2  # of prctl


def filter_calls() -> bool:
    """Lay the filter on this process; False where the system has none of this kind.

    To be called while there is one thread; threads and processes begun later inherit it.
    """
    arch = machine()
    if arch is None:
        return False
    program = program_of(arch, os.getpid())
    code = ctypes.create_string_buffer(program)
    libc = ctypes.CDLL(None, use_errno=True)

    class Program(ctypes.Structure):
        _fields_ = (("length", ctypes.c_ushort), ("filter", ctypes.c_void_p))

    whole = Program(len(program) // 8, ctypes.addressof(code))
    if libc.prctl(_NO_NEW_PRIVILEGES, 1, 0, 0, 0) != 0:
        return False
    return bool(libc.prctl(_SET_SECCOMP, _MODE_FILTER, ctypes.byref(whole), 0, 0) == 0)


def machine() -> str | None:
    """The processor by the name of the table, None where none is known for it."""
    name = platform.machine()
    known = sys.platform == "linux" and name in ARCHES and struct.calcsize("P") == 8
    return name if known and sys.byteorder == "little" else None


def program_of(arch: str, pid: int) -> bytes:
    """The filter's instructions, 8 bytes each, for a process of this number."""
    column = list(ARCHES).index(arch)
    lines = [
        _step(_LOAD, _ARCH),
        _step(_EQUAL, ARCHES[arch], 1, 0),
        _step(_RETURN, _KILL),
        _step(_LOAD, _NR),
    ]
    if arch == "x86_64":
        lines += [_step(_AT_LEAST, _X32, 0, 1), _step(_RETURN, _NOT_PERMITTED)]
    for number in NEW_ALLOWED.values():
        lines += [_step(_EQUAL, number, 0, 1), _step(_RETURN, _ALLOW)]
    lines += [_step(_AT_LEAST, FROM_HERE_NEW, 0, 1), _step(_RETURN, _NO_SUCH_CALL)]
    for name, numbers in ASKED.items():
        if numbers[column]:
            lines += _asked(name, numbers[column], pid)
    for numbers in DENIED.values():
        if numbers[column]:
            lines += [_step(_EQUAL, numbers[column], 0, 1), _step(_RETURN, _NOT_PERMITTED)]
    lines.append(_step(_RETURN, _ALLOW))
    return b"".join(lines)


def _asked(name: str, number: int, pid: int) -> list[bytes]:
    """A call that is allowed or not by its arguments."""
    yes, no = _step(_RETURN, _ALLOW), _step(_RETURN, _NOT_PERMITTED)
    if name in ("open", "openat"):  # to read, and nothing else
        flags = _argument(1 if name == "open" else 2)
        body = [flags, _step(_ANY_BIT, _FOR_WRITING, 0, 1), no, yes]
    elif name == "clone":  # a thread, never a process
        body = [_argument(0), _step(_ANY_BIT, _THREAD, 0, 1), yes, no]
    elif name == "tgkill":  # to end itself
        body = [_argument(0), _step(_EQUAL, pid, 0, 1), yes, no]
    else:  # prlimit64: to ask for a limit, never to set one
        asks = [_argument(2), _step(_EQUAL, 0, 1, 0), no]
        body = [*asks, _argument(2, upper=True), _step(_EQUAL, 0, 1, 0), no, yes]
    return [_step(_EQUAL, number, 0, len(body)), *body]


def _argument(index: int, *, upper: bool = False) -> bytes:
    return _step(_LOAD, _ARGUMENTS + 8 * index + (4 if upper else 0))


def _step(code: int, value: int, if_true: int = 0, if_false: int = 0) -> bytes:
    return struct.pack("<HBBI", code, if_true, if_false, value)
