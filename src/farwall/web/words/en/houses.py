"""Words of the list of houses."""

from __future__ import annotations

WORDS = {
    "houses": "Houses",
    "houses-none": "This book has no house yet.",
    "houses-older": "Older houses",
    "houses-newest": "Newest houses",
    "sample-title": "Take the sample house",
    "sample-told": "An invented house of ten rooms, put into the book and planned: some ten "
    "seconds.",
    "sample": "Take the sample house",
    "bring-title": "Bring a house",
    "bring-told": "A job.json, or a drawing or building model of the floor (DXF, PDF, SVG, IFC, "
    "gbXML, IndoorGML, GeoJSON), or a photo of a plan, up to {most} MB.",
    "bring-file": "File",
    "bring-replace": "It may be in the book already: then these are its new facts, the "
    "old ones stay",
    "bring": "Bring it",
    "bring-refused": "Nothing was kept:",
    "bring-no-file": "No file was chosen. Choose one and bring it again.",
    "bring-known": "{name} is in the book already. Tick the box under the file to give it these "
    "new facts, and bring it again; for another house change its id in the file, {id}.",
    "line-planned": "set for {day}",
    "line-day-open": "no day set yet",
    "line-rooms": "{rooms} rooms, {area}",
    "line-room": "1 room, {area}",
    "line-not-planned": "not planned yet",
    "line-older-plan": "its facts have changed since it was planned",
    "line-no": "it cannot be planned as its facts stand",
    "line-tight": "{room} is tight, {spare} min to spare",
    "line-fits": "every edge has {spare} min or more to spare",
    "line-refused": "{rooms} cannot be done as things stand",
    "line-late": "an edge dies in {room}, {late} min too late",
    "line-closed": "handed over",
    "line-entries": "{n} entries in its log",
    "line-entry": "1 entry in its log",
}
