"""Words of a moment of the plan."""

from __future__ import annotations

WORDS = {
    "now-no-field": "Nothing is planned to be sprayed",
    "now-all-sprayed": "All is sprayed: coat {n} dries",
    "now-coat-dries": "Wait: coat {n} dries",
    "now-cannot": "{rooms}: not to be sprayed as things stand",
    "now-band": "{rooms}, band {band} of {bands}",
    "now-refill": "Full tank for {rooms}",
    "now-walk": "{rooms}: to the next band",
    "now-before": "On to {rooms}",
    "now-edge": "The live edge is {age} of {lives} min old.",
    "now-edge-dead": "The edge is {age} min old and lives {lives} to be safe: too late.",
    "now-no-edge": "No live edge.",
    "now-tank": "{tank} in the tank.",
    "now-share": "Coat {n}: {share} % sprayed.",
    "next-coat": "{at}: the next coat, from {rooms}.",
    "next-field": "{at}: {rooms}.",
    "next-end": "{at}: coat {n} is sprayed.",
    "next-swap": "{at}: the helper swaps in a full tank, {litres}, {minutes} min.",
    "next-refill": "{at}: refill {litres}, {minutes} min.",
    "wait": "{name} from {low} to {high}, most likely {likely}.",
    "wait-open": "{name} from {low} on, most likely {likely}, open end.",
    "wait-never": "{name}: not in these conditions.",
    "floor-edge": "live edge {age} min",
    "floor-way-out": "way out",
    "floor-way-on": "this way out",
}
