"""An authority of our own, so that a phone trusts this machine on the local network.

It can vouch for nothing but local names and addresses: its certificate says so (name constraints
[rfc5280, 4.2.1.10]), so that a phone that trusts it is no easier to fool about any other site. Keys
lie in the book's folder, in files that only their owner reads.
"""

from __future__ import annotations

import ipaddress
import os
import socket
from collections.abc import Sequence
from datetime import datetime, timedelta
from pathlib import Path

import trustme
from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.oid import NameOID

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

FOLDER = "authority"
PUBLIC, KEY, HERE = "authority.crt", "authority-key.pem", "here.pem"
AUTHORITY_DAYS = 5 * 365
HERE_DAYS = 397
"""A phone takes no certificate of a server that lives much longer than this. Rank: from memory."""
_RENEW_DAYS = 30
_LOCAL = ("localhost", "local", "lan", "home.arpa", "internal")
_NETWORKS = (
    "127.0.0.0/8", "10.0.0.0/8", "172.16.0.0/12", "192.168.0.0/16", "169.254.0.0/16",
    "192.0.2.0/24", "::1/128", "fc00::/7", "fe80::/10",
)  # fmt: skip
"""Loopback, private and link-local networks, and the one that examples are written with."""


@dataclass(frozen=True)
class Authority:
    """The files of an authority, and what a phone's owner compares."""

    folder: Path
    fingerprint: str
    """SHA-256 of the certificate in pairs of hexadecimal digits, as phones show it."""

    @property
    def public(self) -> Path:
        """The part that goes onto a phone."""
        return self.folder / PUBLIC


def authority_of(book: Path, now: datetime, *, name: str = "") -> Authority:
    """The authority of the book in this folder, made when there is none.

    Raises Refused where its folder cannot be written or what lies there is none.
    """
    folder = book / FOLDER
    if not (folder / KEY).exists() or not (folder / PUBLIC).exists():
        _make(folder, now, name or socket.gethostname())
    return _read(folder)


def known_authority(book: Path) -> Authority | None:
    """The same where it was made before. Raises Refused."""
    folder = book / FOLDER
    return _read(folder) if (folder / PUBLIC).exists() else None


def certificate_here(
    book: Path, names: Sequence[str], now: datetime
) -> tuple[Path, tuple[str, ...]]:
    """A file with this machine's key and certificate, and the names that it is for.

    Made anew when it lacks one of `names` or ends within a month. Names that are not local are
    left out: the authority may not vouch for them. Raises Refused when none is left.
    """
    authority = authority_of(book, now)
    good = tuple(dict.fromkeys(one for one in names if is_local(one)))
    if not good:
        what = f"none of these is a local name: {', '.join(names)}."
        raise Refused(Mistake("names", what, "Say one such as 192.168.0.9 or desk.local."))
    path = authority.folder / HERE
    if not path.exists() or not _still_good(path, good, now):
        issuer = trustme.CA.from_pem(
            authority.public.read_bytes(), (authority.folder / KEY).read_bytes()
        )
        made = issuer.issue_cert(
            *good,
            common_name=good[0],
            organization_name="Farwall",
            not_before=now - timedelta(days=1),
            not_after=now + timedelta(days=HERE_DAYS),
        )
        whole = made.private_key_pem.bytes() + b"".join(p.bytes() for p in made.cert_chain_pems)
        _write(path, whole, private=True)
    return path, good


def is_local(name: str) -> bool:
    """Whether the authority may vouch for a name or address."""
    try:
        address = ipaddress.ip_address(name)
    except ValueError:
        plain = name.lower()
        return plain == "localhost" or any(plain.endswith(f".{one}") for one in _LOCAL)
    networks = [ipaddress.ip_network(one) for one in _NETWORKS]
    return any(address.version == net.version and address in net for net in networks)


def _make(folder: Path, now: datetime, name: str) -> None:
    key = ec.generate_private_key(ec.SECP256R1())
    title = x509.Name([
        x509.NameAttribute(NameOID.ORGANIZATION_NAME, "Farwall"),
        x509.NameAttribute(NameOID.COMMON_NAME, f"Farwall authority of {name}"[:64]),
    ])  # fmt: skip
    allowed: list[x509.GeneralName] = [x509.DNSName(one) for one in _LOCAL]
    allowed += [x509.IPAddress(ipaddress.ip_network(one)) for one in _NETWORKS]
    may = x509.KeyUsage(
        digital_signature=False, content_commitment=False, key_encipherment=False,
        data_encipherment=False, key_agreement=False, key_cert_sign=True, crl_sign=True,
        encipher_only=False, decipher_only=False,
    )  # fmt: skip
    made = (
        x509.CertificateBuilder()
        .subject_name(title)
        .issuer_name(title)
        .public_key(key.public_key())
        .serial_number(x509.random_serial_number())
        .not_valid_before(now - timedelta(days=1))
        .not_valid_after(now + timedelta(days=AUTHORITY_DAYS))
        .add_extension(x509.BasicConstraints(ca=True, path_length=0), critical=True)
        .add_extension(x509.NameConstraints(allowed, None), critical=True)
        .add_extension(may, critical=True)
        .add_extension(x509.SubjectKeyIdentifier.from_public_key(key.public_key()), critical=False)
        .sign(key, hashes.SHA256())
    )
    pem = serialization.Encoding.PEM
    secret = key.private_bytes(pem, serialization.PrivateFormat.PKCS8, serialization.NoEncryption())
    _write(folder / KEY, secret, private=True)
    _write(folder / PUBLIC, made.public_bytes(pem), private=False)


def _read(folder: Path) -> Authority:
    try:
        made = x509.load_pem_x509_certificate((folder / PUBLIC).read_bytes())
    except (OSError, ValueError) as error:
        remedy = f"Move {folder.name}/ away and make another."
        raise Refused(Mistake(PUBLIC, "this is no certificate.", remedy)) from error
    return Authority(folder, made.fingerprint(hashes.SHA256()).hex(":").upper())


def _still_good(path: Path, names: Sequence[str], now: datetime) -> bool:
    """Whether a certificate is for all these names for a month to come."""
    try:
        made = x509.load_pem_x509_certificates(path.read_bytes())[0]
        told = made.extensions.get_extension_for_class(x509.SubjectAlternativeName).value
    except (ValueError, IndexError, x509.ExtensionNotFound):
        return False
    known = {str(one) for one in told.get_values_for_type(x509.IPAddress)}
    known |= set(told.get_values_for_type(x509.DNSName))
    return set(names) <= known and made.not_valid_after_utc > now + timedelta(days=_RENEW_DAYS)


def _write(path: Path, content: bytes, *, private: bool) -> None:
    """Whole or not at all; a private file is never readable by others, not even for a moment."""
    try:
        path.parent.mkdir(parents=True, exist_ok=True, mode=0o700)
        beside = path.with_suffix(".part")
        beside.unlink(missing_ok=True)
        flags = os.O_WRONLY | os.O_CREAT | os.O_EXCL
        with os.fdopen(os.open(beside, flags, 0o600 if private else 0o644), "wb") as file:
            file.write(content)
        beside.replace(path)
    except OSError as error:
        what = f"it cannot be written ({error.strerror})."
        raise Refused(Mistake(path.name, what, "May this user write there?")) from error
