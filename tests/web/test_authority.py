"""The authority vouches for local names alone, keeps its keys to itself, and renews in time."""

from __future__ import annotations

import ssl
from datetime import UTC, datetime, timedelta

import pytest
from cryptography import x509

from farwall.errors import Refused
from farwall.web.addresses import addresses, names_here
from farwall.web.authority import (
    KEY,
    authority_of,
    certificate_here,
    is_local,
    known_authority,
)

NOW = datetime(2026, 11, 26, 12, tzinfo=UTC)
NAMES = ("192.168.0.9", "desk.local", "localhost")


def names_of(path):
    made = x509.load_pem_x509_certificates(path.read_bytes())[0]
    told = made.extensions.get_extension_for_class(x509.SubjectAlternativeName).value
    return {
        *map(str, told.get_values_for_type(x509.IPAddress)),
        *told.get_values_for_type(x509.DNSName),
    }


def test_it_is_made_once_and_known_after(tmp_path):
    assert known_authority(tmp_path) is None
    first = authority_of(tmp_path, NOW)
    assert authority_of(tmp_path, NOW + timedelta(days=9)) == first
    assert known_authority(tmp_path) == first
    assert len(first.fingerprint.split(":")) == 32


def test_keys_are_read_by_their_owner_alone(tmp_path):
    path, _ = certificate_here(tmp_path, NAMES, NOW)
    authority = authority_of(tmp_path, NOW)
    assert (authority.folder / KEY).stat().st_mode & 0o777 == 0o600
    assert path.stat().st_mode & 0o777 == 0o600
    assert authority.folder.stat().st_mode & 0o777 == 0o700
    assert b"PRIVATE" not in authority.public.read_bytes()


def test_the_certificate_is_for_the_names_and_the_server_can_be_begun_with_it(tmp_path):
    path, names = certificate_here(tmp_path, (*NAMES, "example.com", "203.0.113.5"), NOW)
    assert set(names) == names_of(path) == set(NAMES)
    ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER).load_cert_chain(path)


def test_it_is_made_anew_for_a_new_name_or_when_it_ends_within_a_month(tmp_path):
    path, _ = certificate_here(tmp_path, NAMES, NOW)
    first = path.read_bytes()
    certificate_here(tmp_path, NAMES[:1], NOW + timedelta(days=300))
    assert path.read_bytes() == first
    certificate_here(tmp_path, (*NAMES, "10.0.0.7"), NOW)
    second = path.read_bytes()
    assert second != first
    certificate_here(tmp_path, NAMES, NOW + timedelta(days=380))
    assert path.read_bytes() != second


def test_it_may_vouch_for_nothing_that_is_not_local(tmp_path):
    made = x509.load_pem_x509_certificate(authority_of(tmp_path, NOW).public.read_bytes())
    may = made.extensions.get_extension_for_class(x509.NameConstraints)
    assert may.critical
    assert {one.value for one in may.value.permitted_subtrees if isinstance(one, x509.DNSName)} == {
        "localhost", "local", "lan", "home.arpa", "internal",
    }  # fmt: skip
    assert made.extensions.get_extension_for_class(x509.BasicConstraints).value.path_length == 0
    with pytest.raises(Refused):
        certificate_here(tmp_path, ("example.com",), NOW)


@pytest.mark.parametrize(
    ("name", "local"),
    [
        ("192.168.4.4", True), ("10.1.2.3", True), ("172.31.0.1", True), ("172.32.0.1", False),
        ("8.8.8.8", False), ("fd00::2", True), ("2001:db8::1", False), ("desk.local", True),
        ("localhost", True), ("desk", False), ("local.example", False), ("evil-local", False),
    ],
)  # fmt: skip
def test_what_is_local(name, local):
    assert is_local(name) is local


def test_what_is_no_certificate_is_refused(tmp_path):
    folder = authority_of(tmp_path, NOW).folder
    (folder / "authority.crt").write_text("no")
    with pytest.raises(Refused):
        known_authority(tmp_path)


def test_this_machine_is_called_something():
    assert {"127.0.0.1", "localhost"} <= set(names_here())
    assert not any(one.startswith("127.") for one in addresses())
