"""A stranger's photo read for its colours by a process of its own."""

from __future__ import annotations

from typing import TYPE_CHECKING

from farwall.readers.apart.start import asked, broke

if TYPE_CHECKING:
    from farwall.facts.photo_shown import PhotoShown
    from farwall.readers.colour_photo.found import Values
    from farwall.readers.colour_photo.nouns import ColourPhoto


def read_colour_apart(
    content: bytes, *, name: str = "", own_values: Values | None = None
) -> ColourPhoto:
    """As `read_colour_photo`, its colours rounded to hundredths; `name` words a refusal.

    Raises Refused, also where the reader breaks off, takes too long or too much memory.
    """
    told = None if own_values is None else {key: list(lab) for key, lab in own_values.items()}
    found = asked(content, name, None, "colours", told)
    from farwall.readers.colour_photo.packed import PackedPhoto, unpacked

    if not isinstance(found, PackedPhoto):
        raise broke("unsound answer")
    try:
        return unpacked(found)
    except ValueError as error:
        raise broke("unsound answer") from error


def photo_shown_apart(
    content: bytes, *, name: str = "", own_values: Values | None = None
) -> PhotoShown:
    """The photo as a small picture of its corrected colours, decoded by a process of its own.

    Raises Refused as above.
    """
    from farwall.readers.colour_photo.shown import photo_shown

    return photo_shown(read_colour_apart(content, name=name, own_values=own_values))
