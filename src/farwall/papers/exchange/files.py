"""The three files of an exported floor, as bytes."""

from __future__ import annotations

from typing import Any

from farwall.errors import Refused
from farwall.facts.plan import Plan
from farwall.facts.reading import Reading
from farwall.floor.faults import faults_of
from farwall.job.exchange import collection_of
from farwall.papers.exchange.dxf import dxf_bytes
from farwall.papers.exchange.svg import svg_bytes
from farwall.papers.json_text import json_text

GEOJSON, DXF, SVG = "floor.geojson", "floor.dxf", "floor-layers.svg"
"""Not floor.svg: so the picture of a plan is called, and both may lie in one folder."""


def exchange_files(
    reading: Reading, *, name: str = "", plan: Plan | None = None
) -> dict[str, bytes]:
    """File names with their content. Raises Refused without a scale, and with
    all faults of a floor that is not sound."""
    faults = faults_of(reading.floor, reading.exits)
    if faults:
        about = "This floor is not sound yet, and would not be read back as it is."
        raise Refused(*faults, about=about)
    collection = collection_of(reading, name=name, plan=plan)
    return {
        GEOJSON: geojson_bytes(collection),
        DXF: dxf_bytes(collection),
        SVG: svg_bytes(collection),
    }


def geojson_bytes(collection: dict[str, Any]) -> bytes:
    """The collection as a GeoJSON file in UTF-8."""
    return (json_text(collection) + "\n").encode("utf-8", "replace")
