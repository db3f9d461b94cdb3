"""Passwords: which will do, and how they are kept.

Which will do follows NIST SP 800-63B-4, 3.1.1.2 [nist-800-63b] (section and figures from
secondary texts; the standard itself was not at hand): at least 15 characters where a password
stands alone, at least 64 taken, no rules of composition, no forced change, common and context words
refused. How common is judged here by what is left when the common parts are taken out. Rank: guess.

Kept as Argon2id with the second recommended parameters of RFC 9106, 4: 3 passes over 64 MiB in 4
lanes, 16 bytes of salt, 32 bytes of tag [rfc-9106].
"""

from __future__ import annotations

import threading
import unicodedata
from collections.abc import Sequence
from functools import cache

from argon2 import PasswordHasher, Type
from argon2.exceptions import Argon2Error, InvalidHashError

from farwall.web.people.commonest import PARTS

LEAST, MOST = 15, 256
"""Characters of a password. MOST: our own, so that no hash takes long over megabytes."""
LEAST_LEFT, LEAST_UNLIKE = 8, 5
"""Characters that are left without the common parts; characters that differ. Rank: guess."""
HASHER = PasswordHasher(
    time_cost=3, memory_cost=64 * 1024, parallelism=4, hash_len=32, salt_len=16, type=Type.ID
)
_AT_ONCE = threading.BoundedSemaphore(2)  # 64 MiB each: no crowd at the door takes all memory


def wrong_with(password: str, names: Sequence[str] = ()) -> str:
    """Why a password will not do, as a key of the words: "" when it will.

    names: of the person and of the firm, which a password is not to be made of.
    """
    text = _as_kept(password)
    if len(text) < LEAST:
        return "password-short"
    if len(text) > MOST:
        return "password-long"
    bare = text.casefold()
    parts = [*PARTS, *(part for name in names for part in _parts(name))]
    for part in sorted(parts, key=len, reverse=True):
        bare = bare.replace(part, "")
    left = [one for one in bare if one.isalnum()]
    if len(left) < LEAST_LEFT or len(set(text.casefold())) < LEAST_UNLIKE:
        return "password-common"
    return ""


def kept(password: str) -> str:
    """The slow hash of a password."""
    with _AT_ONCE:
        return HASHER.hash(_as_kept(password))


def fits(password: str, hashed: str) -> bool:
    """Whether it is the password. "" for `hashed` takes as long and never fits."""
    text = _as_kept(password[: MOST * 4])
    with _AT_ONCE:
        try:
            return HASHER.verify(hashed or _nobodys(), text) and bool(hashed)
        except (Argon2Error, InvalidHashError):
            return False


def is_old(hashed: str) -> bool:
    """Whether the hash was made with other parameters than today's."""
    return HASHER.check_needs_rehash(hashed)


@cache
def _nobodys() -> str:
    return HASHER.hash("nobody's password, to take as long as anybody's")


def _as_kept(password: str) -> str:
    """NFKC, as people type one letter in more than one way [uax-15]."""
    return unicodedata.normalize("NFKC", password).encode("utf-8", "replace").decode()


def _parts(name: str) -> list[str]:
    text = unicodedata.normalize("NFKC", name).casefold()
    return [one for one in (text, text.replace(" ", ""), *text.split()) if len(one) > 2]
