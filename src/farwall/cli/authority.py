"""`farwall authority`: a certificate that phones on the local network can be made to trust."""

from __future__ import annotations

import argparse
import json
import sys
from datetime import UTC, datetime
from pathlib import Path

_DONE = 0
_STEPS = (
    "1. On this machine: farwall serve --host 0.0.0.0 --local-certificate",
    "2. On the phone, in the same network: open https://{address}:8750/authority.crt",
    "   (it warns, for it does not know this machine yet), or send the file over by cable or mail.",
    "3. iOS: Settings, Profile Downloaded, Install; then Settings, General, About, Certificate",
    "   Trust Settings: switch it on. Android: Settings, Security, Encryption and credentials,",
    "   Install a certificate, CA certificate. Words differ from phone to phone.",
    "4. Before you tap Install, compare the SHA-256 fingerprint that the phone shows:",
    "   {fingerprint}",
    "5. Open https://{address}:8750/slab/ID#KEY: no warning any more, and it opens without signal.",
)


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall authority` takes."""
    parser.description = (
        "Makes, once, an authority of your own and a certificate for this machine's local names "
        "and addresses, in the book's folder, and prints how a phone is made to trust it."
    )
    parser.add_argument("--book", metavar="ADDRESS", help="the job book (default: the usual place)")
    parser.add_argument(
        "--name", metavar="NAME", action="append", default=[],
        help="a further local name or address of this machine; may be said again",
    )  # fmt: skip
    parser.add_argument("--json", action="store_true", help="files, fingerprint and names as JSON")


def run(options: argparse.Namespace) -> int:
    """Make what is missing and say what to do. Raises Refused."""
    from farwall.store.book import Book
    from farwall.web.addresses import addresses, names_here
    from farwall.web.authority import authority_of, certificate_here

    now = datetime.now(UTC)
    with Book.open(options.book) as book:
        folder = Path(book.where.files).parent
    authority = authority_of(folder, now)
    certificate, names = certificate_here(folder, (*options.name, *names_here()), now)
    if options.json:
        told = {
            "authority": str(authority.public), "fingerprint_sha256": authority.fingerprint,
            "certificate": str(certificate), "names": list(names),
        }  # fmt: skip
        print(json.dumps(told, indent=2))
        return _DONE
    address = next(iter((*options.name, *addresses())), "127.0.0.1")
    shown = f"[{address}]" if ":" in address else address
    print(f"The authority's public part: {authority.public}")
    print(f"This machine is known as: {', '.join(names)}")
    for line in _STEPS:
        print(line.format(address=shown, fingerprint=authority.fingerprint))
    print(
        "Whoever has the key in that folder can pose as this machine to phones that trust it.\n"
        "It vouches for local names only. Take it off a phone that no longer works for you.",
        file=sys.stderr,
    )
    return _DONE
