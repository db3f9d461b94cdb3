"""The words of `farwall serve` that make it answer over https, and the files that they name."""

from __future__ import annotations

import argparse
import ssl
from datetime import UTC, datetime
from pathlib import Path

from farwall.errors import Mistake, Refused


def arguments(parser: argparse.ArgumentParser) -> None:
    """--certificate with --key, or --local-certificate."""
    https = parser.add_argument_group(
        "https", "without it a phone keeps no page without signal, and others can read what is sent"
    )
    https.add_argument(
        "--certificate", type=Path, metavar="FILE", help="a certificate with its chain, PEM"
    )
    https.add_argument("--key", type=Path, metavar="FILE", help="its key, PEM, without a password")
    https.add_argument(
        "--local-certificate", action="store_true",
        help="one of the book's own authority: see `farwall authority`",
    )  # fmt: skip


def certificate_of(options: argparse.Namespace, book: Path) -> dict[str, str]:
    """What the server is to be begun with; empty for plain http. Raises Refused.

    book: the folder of the book, where the authority lies.
    """
    if options.local_certificate and (options.certificate or options.key):
        what = "--local-certificate is a certificate already."
        raise Refused(Mistake("--certificate", what, "Say one of the two."))
    if options.local_certificate:
        from farwall.web.addresses import names_here
        from farwall.web.authority import certificate_here

        names = (*_told(options.host), *names_here())
        path, _ = certificate_here(book, names, datetime.now(UTC))
        return {"ssl_certfile": str(path), "ssl_keyfile": str(path)}
    if not options.certificate and not options.key:
        return {}
    if not options.certificate or not options.key:
        raise Refused(Mistake("--certificate", "it needs --key, and --key it.", "Say both."))
    _looked_at(options.certificate, options.key)
    return {"ssl_certfile": str(options.certificate), "ssl_keyfile": str(options.key)}


def _told(host: str) -> tuple[str, ...]:
    """The host as a name that a certificate may be for."""
    return () if host in {"0.0.0.0", "::", ""} else (host,)


def _looked_at(certificate: Path, key: Path) -> None:
    """Raises Refused where the two cannot be used together."""
    for path in (certificate, key):
        if not path.is_file():
            raise Refused(Mistake(str(path), "there is no such file.", "Say where it lies."))
    try:
        ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER).load_cert_chain(
            certificate, key, password=lambda: ""
        )
    except (ssl.SSLError, OSError, ValueError) as error:
        what = f"it does not go with {key}, or is no PEM ({error})."
        remedy = "Name the certificate with its chain, and its key without a password."
        raise Refused(Mistake(str(certificate), what, remedy)) from error
