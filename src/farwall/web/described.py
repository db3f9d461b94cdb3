"""The API as OpenAPI tells it: what is sent, what comes back, every answer that says no.

FastAPI knows paths and parameters; bodies are judged by our own readers, which tell all mistakes
at once, and are described here. `farwall schema job` has the whole of a job's facts.
"""

from __future__ import annotations

from typing import Any

from fastapi import FastAPI

from farwall.nouns import dataclass

Json = dict[str, Any]
TEXT: Json = {"type": "string"}
COUNT: Json = {"type": "integer", "minimum": 0}
MOMENT: Json = {"type": "string", "description": "ISO 8601 with offset"}
ANY: Json = {"type": "object"}
FLAG: Json = {"type": "boolean"}


def listed(of: Json) -> Json:
    """A list of such values."""
    return {"type": "array", "items": of}


ROW: Json = {"type": "array"}


def thing(**keys: Json) -> Json:
    """An object with these keys, all there; it may grow."""
    return {"type": "object", "properties": keys, "required": list(keys)}


TROUBLE = thing(error=TEXT, mistakes=listed(TEXT))
"""Every answer that says no: what happened, and all mistakes with what to do next."""
ENTRY = {
    "type": "object",
    "required": ["id", "at", "word"],
    "properties": {"id": TEXT, "job": TEXT, "at": MOMENT, "word": TEXT, "about": ANY},
}
OFFER = {
    "type": "object",
    "required": ["device", "sent_at", "entries"],
    "properties": {
        "device": {"type": "string", "minLength": 1, "maxLength": 200},
        "era": COUNT,
        "sent_at": MOMENT,
        "entries": {"type": "array", "maxItems": 1000},
    },
}
HAVE = {
    "type": "object",
    "required": ["ids"],
    "properties": {"ids": listed(TEXT), "files": listed(TEXT)},
}
FACTS = {
    "type": "object",
    "required": ["facts"],
    "properties": {"facts": ANY, "who": TEXT, "name": TEXT},
}
_LINE = thing(
    id=TEXT,
    number=COUNT,
    name=TEXT,
    versions=COUNT,
    entries=COUNT,
    latest_at=MOMENT,
    closed=FLAG,
    aside=FLAG,
)
_VERSION = thing(version=COUNT, who=TEXT, at=MOMENT, name=TEXT)
_KEPT = thing(place=COUNT, received_at=MOMENT, entry=ANY)
_NOW = {
    "place": COUNT, "now": ANY, "again": ANY, "said": listed(TEXT),
    "rest_upto": {"type": ["integer", "null"]}, "laying_anew": FLAG,
}  # fmt: skip
_TURNED = thing(id=TEXT, why=listed(TEXT))
_FILE = {"type": "string", "contentMediaType": "application/octet-stream"}
_WHY = {
    "400": "It cannot be done.",
    "401": "Neither the book's key nor a device's token was shown.",
    "403": "The device's person may not do this.",
    "404": "The book has no such job.",
    "409": "It cannot be answered as things stand: no plan yet, or none to be had.",
    "413": "Too much at once.",
    "422": "What was sent will not do; every mistake is told.",
    "429": "Too many keys that are none came from this address: wait a minute.",
    "503": "The book cannot be used now: disk full, held by another, damaged.",
}


@dataclass(frozen=True)
class Answered:
    """What an operation gives and takes, and the codes by which it says no."""

    answer: Json
    body: Json | None = None
    no: tuple[str, ...] = ("401", "403", "422", "429", "503")
    content: str = "application/json"
    sent: str = "application/json"


_OPEN = ()
_OF_JOB = ("401", "403", "404", "422", "429", "503")
_OF_PLAN = ("401", "403", "404", "409", "422", "429", "503")
_SENT = ("401", "403", "413", "422", "429", "503")
_SENT_OF_JOB = ("401", "403", "404", "409", "413", "422", "429", "503")
OPERATIONS: dict[str, Answered] = {
    "GET /healthz": Answered(thing(lives=FLAG), no=_OPEN),
    "GET /readyz": Answered(thing(ready=FLAG, wants=listed(TEXT)), no=_OPEN),
    "GET /api/clock": Answered(thing(now=MOMENT), no=_OPEN),
    "GET /api/jobs": Answered(thing(jobs=listed(_LINE), places=COUNT), no=_OF_JOB),
    "GET /api/jobs/{job}": Answered(
        thing(id=TEXT, facts=ANY, versions=listed(_VERSION)), no=_OF_JOB
    ),
    "GET /api/jobs/{job}/entries": Answered(thing(entries=listed(_KEPT)), no=_OF_JOB),
    "GET /api/jobs/{job}/now": Answered(thing(**_NOW), no=_OF_PLAN),
    "GET /api/jobs/{job}/plan": Answered(thing(plan=ANY), no=_OF_PLAN),
    "GET /api/jobs/{job}/rest": Answered(ANY, no=_OF_PLAN),
    "GET /api/jobs/{job}/sheet": Answered(ANY, no=_OF_PLAN),
    "GET /api/jobs/{job}/sheet/rest": Answered(ANY, no=_OF_PLAN),
    "GET /api/jobs/{job}/colour": Answered(
        thing(verdict=TEXT, why=TEXT, stain=TEXT, rooms=listed(TEXT), chance_too_dark=ANY,
              stop=ANY, habit=ANY, standard=ANY, limits=listed(ANY), asks=listed(ANY), said=ANY,
              rank=TEXT, source=TEXT),
        no=_OF_PLAN,
    ),
    "GET /api/jobs/{job}/pours": Answered(
        thing(things=listed(ROW), vessels=listed(ROW), cells=ANY, reasons=listed(ROW)), no=_OF_JOB
    ),
    "GET /api/jobs/{job}/pour": Answered(thing(word=TEXT, reasons=listed(ROW)), no=_OF_JOB),
    "GET /api/jobs/{job}/washing": Answered(thing(place=COUNT, rooms=ANY), no=_OF_PLAN),
    "GET /api/jobs/{job}/sample-day": Answered(
        thing(course=ANY, day=ANY, lasts=listed(ANY), place=COUNT), no=_OF_JOB
    ),
    "POST /api/jobs/{job}/log": Answered(thing(id=TEXT, **_NOW), ENTRY, no=_SENT_OF_JOB),
    "PUT /api/jobs/{job}/facts": Answered(thing(id=TEXT, version=COUNT), FACTS, no=_SENT),
    "POST /api/entries": Answered(
        thing(
            new=listed(TEXT), known=listed(TEXT), turned=listed(_TURNED), places=COUNT,
            received_at=MOMENT,
        ), OFFER, no=_SENT,
    ),
    "POST /api/have": Answered(
        thing(missing=listed(TEXT), missing_files=listed(TEXT), places=COUNT), HAVE, no=_SENT
    ),
    "GET /api/files/{sha}": Answered(_FILE, content="application/octet-stream"),
    "PUT /api/files/{sha}": Answered(
        thing(sha256=TEXT), _FILE, no=_SENT, sent="application/octet-stream"
    ),
}  # fmt: skip
"""Every operation of the API that is promised, by method and template."""


def describe(app: FastAPI) -> None:
    """Have the app tell its API so; pages are no part of it."""
    known = app.openapi

    def openapi() -> Json:
        if app.openapi_schema is None:
            app.openapi_schema = _described(known())
        return app.openapi_schema

    app.openapi = openapi  # type: ignore[method-assign]


def _described(schema: Json) -> Json:
    paths: Json = {}
    for path, operations in schema["paths"].items():
        for method, operation in operations.items():
            found = OPERATIONS.get(f"{method.upper()} {path}")
            if found is not None:
                paths.setdefault(path, {})[method] = operation | _told(found)
    bearer = {"type": "http", "scheme": "bearer", "description": "the key, or a device's token"}
    parts = {"schemas": {"Trouble": TROUBLE}, "securitySchemes": {"bearer": bearer}}
    return {**schema, "paths": paths, "components": parts}


def _told(found: Answered) -> Json:
    trouble = {"application/json": {"schema": {"$ref": "#/components/schemas/Trouble"}}}
    answers: Json = {
        "200": {"description": "Done.", "content": {found.content: {"schema": found.answer}}}
    }
    for code in found.no:
        answers[code] = {"description": _WHY[code], "content": trouble}
    if found.answer.get("required") == ["ready", "wants"]:
        answers["503"] = {**answers["200"], "description": "Something is wanting."}
    told: Json = {"responses": answers, "security": [{"bearer": []}] if found.no else []}
    if found.body is not None:
        told["requestBody"] = {"required": True, "content": {found.sent: {"schema": found.body}}}
    return told
