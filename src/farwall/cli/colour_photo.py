"""The part of `farwall colour look` that reads the photo's colours."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING, Any

from farwall.errors import Mistake, Refused

if TYPE_CHECKING:
    from farwall.readers.colour_photo.found import Values
    from farwall.readers.colour_photo.nouns import ColourPhoto

_FIGURES = 2


def photo_arguments(parser: argparse.ArgumentParser) -> None:
    """The words for the colours of a photo."""
    parser.add_argument(
        "--values", metavar="FILE",
        help="Lab of the target's squares, as CSV (patch,L,a,b) or JSON; or a published set of the "
        "24 patches: after-2014, average-of-30, 2005",
    )  # fmt: skip
    parser.add_argument(
        "--print-values", metavar="FILE", type=Path,
        help="write what the 24 patches say of our own sheet lying beside them, for --values",
    )  # fmt: skip
    parser.add_argument(
        "--spot", metavar="x,y,x,y",
        help="tell the colour within: two corners of a box, or more of a polygon, in pixels of the "
        "file as it is shown",
    )  # fmt: skip


def looked(options: argparse.Namespace) -> dict[str, Any]:
    """What is told of the photo, as JSON holds it. Raises Refused with what is wrong."""
    from farwall.readers.apart.colours import read_colour_apart

    spot = None if options.spot is None else corners_told(options.spot)
    values = None if options.values is None else values_told(options.values)
    content = options.photo.read_bytes()
    photo = read_colour_apart(content, name=options.photo.name, own_values=values)
    if options.print_values is not None:
        _write_print(options.print_values, photo)
    return {**photo_told(photo), **({} if spot is None else {"spot": spot_told(photo, spot)})}


def _write_print(path: Path, photo: ColourPhoto) -> None:
    """The squares of the print as a table. Raises Refused where no print lies beside a target."""
    if not photo.print_seen:
        what = "Our own sheet does not lie beside the 24 patches in this photo."
        raise Refused(Mistake("--print-values", what, "Take both in one photo, in one light."))
    rows = (",".join((p.name, *(f"{v:.2f}" for v in p.seen_lab))) for p in photo.print_seen)
    path.write_text("\n".join(("patch,L,a,b", *rows)) + "\n", encoding="utf-8")


def values_told(told: str) -> Values:
    """Values of a file, or a published set by its name. Raises Refused."""
    from farwall.readers.colour_photo.values import published, values_in

    known = published(told)
    if known is not None:
        return known
    path = Path(told)
    try:
        return values_in(path.read_bytes())
    except OSError as error:
        raise Refused(Mistake("--values", f"{told} cannot be opened.", "Name a file.")) from error


def corners_told(text: str) -> tuple[tuple[float, float], ...]:
    """Corners of a polygon in pixels of the file; two are those of a box. Raises Refused."""
    try:
        found = [float(one) for one in text.split(",")]
    except ValueError:
        found = []
    if len(found) < 4 or len(found) % 2 or not all(abs(one) < 1e6 for one in found):
        what = f"“{text[:60]}” is not two or more places with commas between."
        raise Refused(Mistake("--spot", what, "Write x,y,x,y in pixels of the file."))
    places = tuple(zip(found[::2], found[1::2], strict=True))
    if len(places) > 2:
        return places
    (x1, y1), (x2, y2) = places
    return ((x1, y1), (x2, y1), (x2, y2), (x1, y2))


def spot_told(photo: ColourPhoto, corners: tuple[tuple[float, float], ...]) -> dict[str, Any]:
    """The colour of a spot."""
    from farwall.readers.colour_photo.spot import spot_of

    scale = photo.file_px
    spot = spot_of(photo, tuple((x / scale, y / scale) for x, y in corners))
    return {
        "lab": _short(spot.lab), "spread_lightness": round(spot.spread_lightness, _FIGURES),
        "error_de": None if spot.error_de is None else round(spot.error_de, _FIGURES),
        "rank": photo.rank.value, "warnings": list(spot.warnings),
    }  # fmt: skip


def photo_told(photo: ColourPhoto) -> dict[str, Any]:
    """The target and what spoils the photo."""
    target = photo.target
    return {
        "rank": photo.rank.value,
        "taken_at": photo.taken_at,
        "warnings": list(photo.warnings),
        "target": None if target is None else {
            "name": target.name, "correction": target.correction,
            "error_de": round(target.error_de, _FIGURES),
            "worst_de": round(target.worst_de, _FIGURES),
            "corners": [[round(one * photo.file_px, 1) for one in at] for at in target.corners_px],
            "size_mm": None if target.size_mm is None else list(target.size_mm),
            "warnings": list(target.warnings),
            "patches": [
                {"name": one.name, "own_lab": _short(one.own_lab), "seen_lab": _short(one.seen_lab)}
                for one in target.patches
            ],
        },
    }  # fmt: skip


def _short(lab: tuple[float, float, float]) -> list[float]:
    return [round(one, _FIGURES) for one in lab]


def lines(found: dict[str, Any]) -> list[str]:
    """The same in words."""
    target, spot = found["target"], found.get("spot")
    told = []
    if target is not None:
        told.append(
            f"{target['name']}, corrected by {_BY[target['correction']]}: squares left out of it "
            f"are {target['error_de']:.2f} off (CIEDE2000, median), the worst "
            f"{target['worst_de']:.2f}."
        )
        told += target["warnings"]
    told += found["warnings"]
    if spot is not None:
        lightness, a, b = spot["lab"]
        error = "" if spot["error_de"] is None else f", about {spot['error_de']:.1f} off"
        told.append(
            f"The spot: L {lightness:.1f}, a {a:.1f}, b {b:.1f} (D50{error}); "
            f"lightness within it varies by {spot['spread_lightness']:.1f}. {spot['rank']}."
        )
        told += spot["warnings"]
    else:
        told.append(f"Colours of this photo: {found['rank']}.")
    return told


_BY = {
    "grey": "its greys", "linear": "3 × 3 numbers", "root polynomial": "roots of its channels",
}  # fmt: skip
