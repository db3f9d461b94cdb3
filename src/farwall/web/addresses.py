"""Under which names and addresses others find this machine."""

from __future__ import annotations

import ipaddress
import socket

_FAR = (("192.0.2.1", socket.AF_INET), ("2001:db8::1", socket.AF_INET6))
"""Addresses of examples [rfc5737, rfc3849]: nothing is sent there, only the way is looked up."""


def addresses() -> tuple[str, ...]:
    """This machine's addresses on its networks, the one that it goes out by first."""
    found: list[str] = []
    for far, family in _FAR:
        try:
            with socket.socket(family, socket.SOCK_DGRAM) as one:
                one.connect((far, 9))
                found.append(str(one.getsockname()[0]))
        except OSError:
            continue
    try:
        told = socket.getaddrinfo(socket.gethostname(), None, type=socket.SOCK_STREAM)
        found += [str(one[4][0]).partition("%")[0] for one in told]
    except OSError:
        pass
    return tuple(one for one in dict.fromkeys(found) if not ipaddress.ip_address(one).is_loopback)


def names_here() -> tuple[str, ...]:
    """All that this machine may be called on the local network, addresses first."""
    own = socket.gethostname().lower()
    short = own.partition(".")[0]
    whole = (own,) if "." in own else ()
    return tuple(
        dict.fromkeys((*addresses(), "127.0.0.1", "::1", "localhost", f"{short}.local", *whole))
    )
