"""What this device is called: told, or a name made once for each home and kept there.

The log counts the entries of each device and the book keeps how far its clock is off, so two
laptops must not share a name. It lies in `$XDG_STATE_HOME/farwall/device`, else
`~/.local/state/farwall/device`.
"""

from __future__ import annotations

import os
import secrets
import tempfile
from collections.abc import Callable
from pathlib import Path

DEVICE = "FARWALL_DEVICE"
"""What is set here in the environment is the name."""
_LONGEST = 200


def device_name(told: str | None = None, *, some_hex: Callable[[], str] | None = None) -> str:
    """The name told, else that of FARWALL_DEVICE, else the one kept in this home.

    some_hex: six letters of a new name, for tests. A home that cannot be written gets a new name
    at each call: its entries keep their order by their clock alone.
    """
    if name := told or os.environ.get(DEVICE):
        return name
    path = _path()
    if path is None:
        return _new(some_hex)
    return _kept(path) or _make(path, _new(some_hex))


def _new(some_hex: Callable[[], str] | None) -> str:
    return f"desk-{some_hex() if some_hex else secrets.token_hex(3)}"


def _kept(path: Path) -> str:
    """The name kept there; empty when there is none that can be read."""
    try:
        name = path.read_text(encoding="utf-8").strip()
    except (OSError, ValueError):
        return ""
    return name if name.isprintable() and len(name) <= _LONGEST else ""


def _make(path: Path, name: str) -> str:
    """Keep a name, whole or not at all; of two programs that make one at once the first wins."""
    try:
        path.parent.mkdir(parents=True, exist_ok=True, mode=0o700)
        handle, aside = tempfile.mkstemp(dir=path.parent, prefix=".device-")
        try:
            with os.fdopen(handle, "w", encoding="utf-8") as out:
                out.write(f"{name}\n")
                out.flush()
                os.fsync(out.fileno())
            if path.exists() and not _kept(path):
                Path(aside).replace(path)  # what lies there is no name
            else:
                os.link(aside, path)
        finally:
            Path(aside).unlink(missing_ok=True)
    except OSError:
        return _kept(path) or name
    return name


def _path() -> Path | None:
    """Where the name is kept; None where nobody has a home."""
    told = Path(os.environ.get("XDG_STATE_HOME", ""))
    if not told.is_absolute():  # the XDG base directory specification asks to pass it over
        try:
            told = Path.home() / ".local/state"
        except RuntimeError:
            return None
    return told / "farwall" / "device"
