"""Lives through a case of the queue, as web/tests/living.ts does."""

from __future__ import annotations

from typing import Any

from farwall.facts.log import Entry
from farwall.web.phone import Phone, answered, forgetting, lost, tapped, to_ask, to_offer, told

Json = dict[str, Any]


def entry(name: str) -> Entry:
    return Entry(name, "quince", "note", "2026-06-08T08:00:00+00:00", about={"text": "x"})


def lived(steps: list[Json]) -> Phone:
    phone = Phone("phone-a")
    for step in steps:
        if step["do"] == "tap":
            phone = tapped(phone, entry(step["id"]))
        elif step["do"] == "answered":
            turned = {name: tuple(why) for name, why in step["turned"].items()}
            phone = answered(phone, taken=step["taken"], turned=turned, places=step["places"],
                             today=step["today"])  # fmt: skip
        elif step["do"] == "told":
            phone = told(phone, missing=step["missing"], today=step["today"])
        elif step["do"] == "lost":
            phone = lost(phone, step["ids"])
        else:
            phone = forgetting(phone, step["today"])
    return phone


def held(phone: Phone, case: Json) -> Json:
    """What a phone holds, in its order, as the cases write it."""
    return {
        "waiting": list(phone.waiting),
        "turned": {name: list(why) for name, why in phone.turned.items()},
        "kept": [[name, day] for name, (_, day) in phone.kept.items()],
        "places": phone.places,
        "offer": [one.id for one in to_offer(phone, most=case["most"])],
        "ask": [list(to_ask(phone, day)) for day in case["asks"]],
    }
