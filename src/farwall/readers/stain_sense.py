"""Whether what a job says of its stains agrees with itself and with acid that is added to them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from farwall.errors import Mistake
from farwall.facts.contents import CHROMATES, OXIDISERS
from farwall.mix.batch import no_added_acid
from farwall.readers.json_text import Place, place_text

Row = tuple[Place, Mapping[str, object]]
MOST_PERCENT = 100.0


def stain_mistakes(raw: Mapping[str, object]) -> Iterator[Mistake]:
    """Ends of a share the wrong way round, a sheet that contradicts itself, forbidden acid."""
    for place, row in _rows(raw, "stains"):
        yield from _ends(place, row, "hcl_percent_low", "hcl_percent_high", "acid")
        yield from _contradictions(place, row)
        yield from _too_much(place, row)
    yield from _forbidden(raw)


def _ends(
    place: Place, row: Mapping[str, object], low: str, high: str, name: str
) -> Iterator[Mistake]:
    least, most = row.get(low), row.get(high)
    if isinstance(least, int | float) and isinstance(most, int | float) and least > most:
        said = f"The low share of {name} ({least:g} %) is above the high one ({most:g} %)."
        yield Mistake(place_text(place), said, "Read the sheet again; swap them.")


def _contradictions(place: Place, row: Mapping[str, object]) -> Iterator[Mistake]:
    """Told to hold no oxidiser, and one is listed; the same of chromate: `discharge_sense`."""
    listed = _listed(row) & OXIDISERS
    if row.get("oxidiser") is False and listed:
        said = f"It is told to hold none, and {min(listed)} is listed in it."
        yield Mistake(place_text((*place, "oxidiser")), said, "Read section 3 of its sheet again.")


def _too_much(place: Place, row: Mapping[str, object]) -> Iterator[Mistake]:
    least = [
        row.get("hcl_percent_low"),
        *(c.get("mass_percent_low") for _, c in _rows(row, "contents")),
    ]
    whole = sum(share for share in least if isinstance(share, int | float))
    if whole > MOST_PERCENT:
        said = f"The low shares of what is in it come to {whole:g} %, more than there is."
        yield Mistake(place_text(place), said, "Read section 3 of its sheet again.")


def _forbidden(raw: Mapping[str, object]) -> Iterator[Mistake]:
    """Added acid where the sheet names chromate or another oxidiser."""
    stains = {str(row.get("id")): row for _, row in _rows(raw, "stains")}
    for place, coat in _rows(raw, "coats"):
        acid, stain = coat.get("added_acid_fl_oz_per_gal"), stains.get(str(coat.get("stain")))
        if stain is not None and isinstance(acid, int | float) and acid > 0:
            yield from no_added_acid(
                place_text(place),
                chromate=_holds(stain, "chromate", CHROMATES),
                oxidiser=_holds(stain, "oxidiser", OXIDISERS),
            )


def _holds(row: Mapping[str, object], key: str, kind: frozenset[str]) -> bool:
    return row.get(key) is True or bool(_listed(row) & kind)


def _listed(row: Mapping[str, object]) -> set[str]:
    return {str(content.get("substance")) for _, content in _rows(row, "contents")}


def _rows(raw: Mapping[str, object], key: str) -> list[Row]:
    found = raw.get(key)
    if not isinstance(found, list):
        return []
    return [((key, n), item) for n, item in enumerate(found) if isinstance(item, dict)]
