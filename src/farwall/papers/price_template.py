"""An empty price list to be filled in: plain columns, a row for each thing that is bought."""

from __future__ import annotations

import csv
import io

from farwall.papers.workbook import SheetTable, workbook

HEADS = (
    "what", "colour", "name", "size", "price", "seller", "lot", "in stock", "delivery",
    "free from", "days", "currency", "as of",
)  # fmt: skip
_ROWS = (
    ("stain", "as the job names it", "", "1 gal"), ("stain", "as the job names it", "", "5 gal"),
    ("sealer", "", "", "5 gal"), ("floor finish", "", "", "1 gal"),
    ("cleaner", "", "", "1 gal"), ("bicarbonate", "", "", "12 lb"),
    ("masking tape", "", "", "180 ft"), ("masking film", "", "", "100 ft"),
    ("masking paper", "", "", "180 ft"), ("cling film", "", "for jambs", "each"),
    ("gloves", "", "pairs", "each"), ("suit", "", "", "each"), ("goggles", "", "", "each"),
    ("cartridges", "", "pairs", "each"), ("boots", "", "pairs", "each"),
    ("pads", "", "", "each"), ("rags", "", "white", "pack of 25"),
    ("pH strips", "", "", "pack of 100"), ("bags", "", "contractor", "box of 20"),
    ("mops", "", "mop heads", "each"), ("drums", "", "55 gal", "each"),
    ("sprayer", "", "acid-proof", "each"), ("spill kit", "", "", "each"),
    ("towels", "", "for dams", "each"), ("plugs", "", "for drains", "each"),
)  # fmt: skip
_WIDTHS = (16, 20, 16, 14, 10, 18, 10, 10, 10, 10, 8, 10, 12)


def price_template(suffix: str) -> bytes:
    """The empty list as `xlsx` or `csv`. Raises KeyError for another."""
    rows = tuple(row + ("",) * (len(HEADS) - len(row)) for row in _ROWS)
    if suffix == "xlsx":
        return workbook([SheetTable("prices", HEADS, rows, _WIDTHS)], title="Price list")
    if suffix != "csv":
        raise KeyError(suffix)
    made = io.StringIO(newline="")
    writer = csv.writer(made, lineterminator="\r\n")
    writer.writerow(HEADS)
    writer.writerows(rows)
    return made.getvalue().encode("utf-8-sig")
