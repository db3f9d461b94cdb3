"""Room names as drawings letter them, written out as people say them.

The abbreviations are common practice on US plans (from memory, no source).
"""

from __future__ import annotations

import re
import unicodedata

_SHORT = {
    "UTIL": "utility", "TOIL": "toilet", "MSTR": "master", "MAST": "master",
    "WIC": "walk-in closet",
    "CLO": "closet", "CLOS": "closet", "CL": "closet", "BDRM": "bedroom", "BDR": "bedroom",
    "BR": "bedroom", "LIV": "living", "DIN": "dining", "KIT": "kitchen", "LAUN": "laundry",
    "LNDRY": "laundry", "RM": "room", "PWDR": "powder", "PDR": "powder", "GAR": "garage",
    "FAM": "family", "ENT": "entry", "MECH": "mechanical", "STOR": "storage", "PAN": "pantry",
    "LIN": "linen", "BTH": "bath", "GRT": "great", "COV": "covered", "HALLWAY": "hall",
}  # fmt: skip
_OUTDOORS = {
    "DECK", "PORCH", "PATIO", "BALCONY", "TERRACE", "DRIVEWAY", "DRIVE", "VERANDA", "VERANDAH",
    "LANAI", "STOOP", "YARD", "CARPORT", "PERGOLA", "BREEZEWAY", "TERRASSE", "BALKON", "SIDEWALK",
    "WALKWAY", "GARDEN",
}  # fmt: skip
_ROOMS = {
    "BATH", "BATHROOM", "BEDROOM", "BED", "KITCHEN", "HALL", "ENTRY", "FOYER", "GARAGE", "PANTRY",
    "CLOSET", "UTILITY", "LAUNDRY", "LIVING", "DINING", "GREAT", "FAMILY", "OFFICE", "STUDY", "DEN",
    "TOILET", "POWDER", "MASTER", "LINEN", "STORAGE", "MUD", "MUDROOM", "ROOM", "NOOK", "LOFT",
    "MECHANICAL", "SHOP", "WORKSHOP", "CORRIDOR", "LOBBY", "WC", "WALK-IN", "LIBRARY", "GUEST",
    "SUITE", "PLAYROOM", "STAIR", "STAIRS", "VESTIBULE", "SHOWER", "SAUNA", "CELLAR", "ATTIC",
}  # fmt: skip


def written_out(text: str) -> str:
    """A name in sentence case with its abbreviations written out: `MSTR. BATH` is `Master bath`."""
    text = re.sub(r"\bW\.?\s?I\.?\s?C\.?(?=\W|$)", "WIC", text.strip())
    words = [_word(word) for word in text.split()]
    name = " ".join(words).strip(" .:-")
    return name[:1].upper() + name[1:]


def is_outdoors(name: str) -> bool:
    """Whether a name tells of a slab outside the house: a deck, a porch, a drive."""
    return bool(_tokens(name) & _OUTDOORS)


def is_room_word(name: str) -> bool:
    """Whether a name holds a word that rooms are called by."""
    return bool(_tokens(name) & (_ROOMS | _OUTDOORS))


def is_for_shelves(name: str) -> bool:
    """Whether casework in a room of this name is rather a shelf: closets, pantries, stores."""
    return not name or bool(_tokens(name) & {"CLOSET", "PANTRY", "LINEN", "STORAGE", "WALK-IN"})


def slug(name: str) -> str:
    """The name as an id: small letters, digits, hyphens."""
    plain = unicodedata.normalize("NFKD", name).encode("ascii", "ignore").decode()
    return re.sub(r"[^a-z0-9]+", "-", plain.lower()).strip("-")[:60]


class Ids:
    """Hands out ids, the second of a kind with `-2` behind it."""

    def __init__(self) -> None:
        self._taken: set[str] = set()

    def take(self, wish: str) -> str:
        """The wish itself, or the wish with the first free number."""
        base, number, found = wish or "room", 1, wish or "room"
        while found in self._taken:
            number += 1
            found = f"{base}-{number}"
        self._taken.add(found)
        return found


def _tokens(name: str) -> set[str]:
    return {token for token in re.split(r"[^A-Z-]+", written_out(name).upper()) if token}


def _word(word: str) -> str:
    bare = word.strip(".,:").upper()
    if bare in _SHORT:
        return _SHORT[bare]
    return word.lower() if word.isupper() and len(word) > 2 else word
