"""Photos of floors in the book: which the log has, how they were laid, what came of them."""

from __future__ import annotations

import base64
import hashlib
import json
from collections import OrderedDict
from collections.abc import Mapping, Sequence
from dataclasses import asdict, field
from datetime import datetime
from threading import Lock
from typing import TYPE_CHECKING, Any

from farwall.colour.marks.nouns import KnownEdge
from farwall.facts.job import Job
from farwall.job.colour.band_edges import band_edges
from farwall.job.colour.marks import Judged, Photo, Proposed, judged_marks, together
from farwall.job.story.noun import Happened
from farwall.job.story.order import in_order
from farwall.nouns import dataclass
from farwall.readers.floor_photo.nouns import FloorLook, FloorSeen, Ground, ground_of
from farwall.readers.floor_photo.seen import target_from
from farwall.readers.job_json import job_from
from farwall.store.book import Book
from farwall.web.door import Door
from farwall.web.firm import print_values
from farwall.web.pages.shown import Kept

if TYPE_CHECKING:
    from farwall.readers.colour_photo.found import Values

LOOK, SEEN = "floor-look", "floor-seen"
"""Kinds of document: a photo as a page shows it, by its hash; what came of one laid on the plan."""
SAME_LOOK_MIN = 360.0
"""Photos of one room told within so many minutes show one state of the floor. Rank: guess."""
_AS_READ = 2
"""One more whenever a photo laid on the plan comes to something else than before."""
_HELD = 64
Json = dict[str, Any]
Edges = Mapping[str, tuple[KnownEdge, ...]]


@dataclass(frozen=True)
class FloorPhoto:
    """A photo that the log has of a room. points: as it was laid last, empty while it was not."""

    sha: str
    room: str
    at_min: float
    points: str = ""


@dataclass(frozen=True)
class House:
    """A house as its newest facts and its log have it. edges: where bands met, by room."""

    job: Job
    name: str
    photos: tuple[FloorPhoto, ...]
    judged: tuple[Judged, ...]
    edges: Edges = field(default_factory=dict)

    def photo(self, sha: str) -> FloorPhoto | None:
        """The photo with this hash."""
        return next((one for one in self.photos if one.sha == sha), None)

    def beside(self, photo: FloorPhoto) -> tuple[FloorPhoto, ...]:
        """All laid photos of the same look at the same room, this one first."""
        others = [
            one for one in self.photos
            if one.room == photo.room and one.points and one.sha != photo.sha
            and abs(one.at_min - photo.at_min) <= SAME_LOOK_MIN
        ]  # fmt: skip
        return (photo, *others) if photo.points else tuple(others)


class Floors:
    """What is read of floors' photos, kept; safe among threads."""

    def __init__(self, door: Door, plans: Kept) -> None:
        self.book: Book = door.book
        self.plans = plans
        self._kept: OrderedDict[str, FloorSeen] = OrderedDict()
        self._lock = Lock()

    def house(self, job: str) -> House:
        """The house as it stands. Raises NoSuchJob."""
        newest = self.book.versions(job)[-1]
        facts = job_from(self.book.facts(job, newest.version), "The job")
        entries = self.book.entries(job)
        starts = min((one.entry.at for one in entries), key=datetime.fromisoformat, default="")
        happened = in_order(entries, starts_at=starts).happened if entries else ()
        return House(
            facts, newest.name or job, photos_told(happened), judged_marks(happened),
            self._edges(job),
        )  # fmt: skip

    def _edges(self, job: str) -> Edges:
        """Where bands met by room, by the plan and what was logged as sprayed."""
        shown = self.plans.state(job).shown
        if shown is None:
            return {}
        done = shown.went.story.done() if shown.went else {}
        rooms = (room.id for room in shown.plan.inputs.floor.rooms)
        return {room: band_edges(shown.plan, room, done) for room in rooms}

    def look(self, sha: str, name: str = "") -> FloorLook:
        """The photo as a page shows it; read once. Raises Refused."""
        kept = self.book.document(LOOK, sha)
        if kept is not None:
            picture = base64.b64encode(self.book.file(str(kept["file"]))).decode("ascii")
            return FloorLook(picture, kept["width_px"], kept["height_px"], kept["file_px"])
        from farwall.readers.apart.floor_photos import floor_look_of

        found = floor_look_of(self.book.file(sha), name=name)
        self.book.put_document(LOOK, sha, {
            "file": self.book.put_file(base64.b64decode(found.picture_base64)),
            "width_px": found.width_px, "height_px": found.height_px, "file_px": found.file_px,
        })  # fmt: skip
        return found

    def seen(self, house: House, photo: FloorPhoto) -> FloorSeen:
        """The photo on the plan, reckoned once for its points, room, edges and the firm's print.

        Raises Refused.
        """
        values = self._values(photo)
        key, room = _key(house, photo, values)
        with self._lock:
            found = self._kept.get(key)
        if found is None:
            found = self._read(key, photo, room, house.edges.get(photo.room, ()), values)
            with self._lock:
                self._kept[key] = found
                while len(self._kept) > _HELD:
                    self._kept.popitem(last=False)
        return found

    def seen_before(self, house: House, photo: FloorPhoto) -> FloorSeen | None:
        """The same where it was reckoned before; None where it was not."""
        key, _ = _key(house, photo, self._values(photo))
        with self._lock:
            found = self._kept.get(key)
        return found or self._written(key)

    def _values(self, photo: FloorPhoto) -> Values:
        """Of the squares of the firm's own print, where it lies among the points."""
        return print_values(self.book) if target_from(photo.points) is not None else {}

    def _written(self, key: str) -> FloorSeen | None:
        from farwall.readers.apart import wire

        kept = self.book.document(SEEN, key)
        found = wire.answer_in(self.book.file(str(kept["file"]))) if kept is not None else None
        return found if isinstance(found, FloorSeen) else None

    def _read(
        self,
        key: str,
        photo: FloorPhoto,
        room: Ground,
        edges: Sequence[KnownEdge],
        values: Values,
    ) -> FloorSeen:
        from farwall.readers.apart import wire
        from farwall.readers.apart.floor_photos import floor_seen_of

        before = self._written(key)
        if before is not None:
            return before
        found = floor_seen_of(
            self.book.file(photo.sha), points=photo.points, room=room, edges=edges,
            own_values=values or None,
        )  # fmt: skip
        file = self.book.put_file(wire.floor_text(found))
        self.book.put_document(SEEN, key, {"file": file, "photo": photo.sha})
        return found

    def proposed(self, house: House, photos: Sequence[FloorPhoto]) -> tuple[Proposed, ...]:
        """What these photos of one room propose together. Raises Refused."""
        seen = [(one, self.seen(house, one)) for one in photos]
        told = [Photo(one.sha, each.marks, each.saw) for one, each in seen]
        return together(photos[0].room, told) if photos else ()


def _key(house: House, photo: FloorPhoto, values: Values) -> tuple[str, Ground]:
    room = ground_of(house.job.floor, photo.room)
    edges = [asdict(one) for one in house.edges.get(photo.room, ())]
    print_ = [dict(values)] if values else []
    mark = json.dumps(
        [_AS_READ, photo.sha, photo.points, asdict(room), edges, *print_], sort_keys=True
    )
    return hashlib.sha256(mark.encode()).hexdigest(), room


def photos_told(happened: Sequence[Happened]) -> tuple[FloorPhoto, ...]:
    """Photos of rooms in the log, the newest first, each with the points it was laid by last."""
    found: dict[str, FloorPhoto] = {}
    for one in happened:
        sha, room = one.text("file"), one.text("room")
        if one.word in {"photo", "photo-placed"} and sha and room:
            before = found.get(sha)
            at_min = before.at_min if before else one.at_min
            points = one.text("points") or (before.points if before else "")
            found[sha] = FloorPhoto(sha, room, at_min, points)
    return tuple(sorted(found.values(), key=lambda one: -one.at_min))
