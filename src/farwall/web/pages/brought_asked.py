"""What only a person can say before a drawing becomes a house: which storey, how long its unit is.

A job is one storey. A drawing with several, or without a scale, is kept as it came, drawn as it was
read, and asked about on a page of its own; each further storey is brought from there too.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass
from farwall.web.pages.brought_stated import stated_rows
from farwall.web.pages.repairs import UNITS
from farwall.web.pages.typed_lengths import length_of
from farwall.web.words import said

if TYPE_CHECKING:
    from farwall.facts.reading import Reading

Json = dict[str, Any]
BROUGHT = "brought"
"""Kind of document: a drawing that is asked about, `file`, `name`, `picture` and what is asked."""
_MOST_ROOMS = 40
_LONGEST_M = 400.0
"""No floor that is sprayed by a crew is longer. Rank: guess."""


@dataclass(frozen=True)
class Said:
    """What a person said: the storey's id, metres a unit; empty where nothing was asked."""

    storey: str = ""
    scale_m_per_unit: float | None = None


def asked_of(reading: Reading) -> Json | None:
    """What is asked of this reading: storeys to choose from, a scale; None where nothing is."""
    storeys = _storeys(reading)
    no_scale = reading.scale_m_per_unit is None and bool(reading.floor.rooms)
    if len(storeys) < 2 and not no_scale:
        return None
    notes = [note.what for note in (*reading.asks, *reading.left)][:12]
    found: Json = {"storeys": storeys, "scale": no_scale, "notes": notes}
    found["stated"] = stated_rows(reading)
    if no_scale:
        found["measures"] = _measures(reading)
    return found


def _storeys(reading: Reading) -> list[Json]:
    """The storeys that have rooms; areas are None without a scale."""
    found = []
    for one in reading.storeys:
        rooms = [room for room in reading.floor.rooms if room.storey == one.id]
        area = sum(room.polygon.shape.area for room in rooms)
        if rooms:
            known = reading.scale_m_per_unit is not None
            found.append({
                "id": one.id, "name": one.name or one.id, "elevation_m": one.elevation_m,
                "rooms": len(rooms), "area_m2": round(area, 2) if known else None,
            })  # fmt: skip
    return found


def _measures(reading: Reading) -> list[Json]:
    """What can be measured with a tape, in units of the drawing; empty where they are not known."""
    drawn_m = reading.shapes_m_per_unit
    if drawn_m is None:
        return []
    found: list[Json] = []
    bounds = [room.polygon.shape.bounds for room in reading.floor.rooms]
    west, south = min(b[0] for b in bounds), min(b[1] for b in bounds)
    east, north = max(b[2] for b in bounds), max(b[3] for b in bounds)
    spans = [("", east - west, north - south)]
    spans += [
        (room.label, b[2] - b[0], b[3] - b[1])
        for room, b in zip(reading.floor.rooms[:_MOST_ROOMS], bounds, strict=False)
    ]
    for name, across, up in spans:
        found += [
            {"room": name, "way": "across", "units": across / drawn_m},
            {"room": name, "way": "up", "units": up / drawn_m},
        ]
    return [one for one in found if one["units"] > 0]


def said_of(asked: Json, told: Mapping[str, str], *, us: bool = True) -> Said:
    """What the form says, in the order of the questions. Raises Refused with all that lacks."""
    mistakes = []
    storeys = [one["id"] for one in asked["storeys"]]
    storey = told.get("storey", "")
    if len(storeys) > 1 and storey not in storeys:
        mistakes.append(Mistake("", said("brought-no-storey")))
    scale = None
    if asked["scale"]:
        try:
            scale = _scale(asked, told, us=us)
        except Refused as error:
            mistakes += error.mistakes
    if mistakes:
        raise Refused(*mistakes)
    return Said(storey if len(storeys) > 1 else "", scale)


def _scale(asked: Json, told: Mapping[str, str], *, us: bool) -> float:
    """Metres a unit: by a measured length where one is typed, else by the unit chosen."""
    typed = told.get("length", "").strip()
    if typed:
        length = length_of(typed, us=us)
        measures, place = asked.get("measures") or [], told.get("measure", "")
        number = int(place) if place.isdecimal() and len(place) < 4 else -1
        if length is None or not 0.1 <= length <= _LONGEST_M:
            raise Refused(Mistake("", said("brought-no-length", text=typed[:60])))
        if not 0 <= number < len(measures):
            raise Refused(Mistake("", said("brought-no-measure")))
        return length / float(measures[number]["units"])
    if told.get("unit", "") not in UNITS:
        raise Refused(Mistake("", said("brought-no-scale")))
    return UNITS[told["unit"]]


def storey_id(base: str, asked: Json, storey: str) -> str:
    """The id of the house that one storey of a drawing becomes: the drawing's and the storey's."""
    from farwall.readers.room_names import slug

    name = next((one["name"] for one in asked["storeys"] if one["id"] == storey), "")
    return "-".join(filter(None, (base, slug(name or storey))))[:60] if storey else base
