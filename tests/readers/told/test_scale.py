"""A reading that asks for its scale gives no metres."""

from farwall.facts.reading import Note, Reading
from farwall.floor.nouns import Floor
from farwall.readers.told.scale import honest_about_scale, unit_named


def reading(*codes: str) -> Reading:
    asks = tuple(Note(code, code) for code in codes)
    return Reading("gbXML", "m", "", 1.0, Floor(()), asks=asks)


def test_metres_are_null_while_the_scale_is_asked() -> None:
    asked = honest_about_scale(reading("way-out", "scale"))
    assert (asked.scale_m_per_unit, asked.length_unit) == (None, "")
    assert honest_about_scale(reading("way-out")) == reading("way-out")


def test_units_have_their_names() -> None:
    assert [unit_named(m) for m in (1.0, 0.3048, 0.0254, 0.001, 0.01, 0.5)] == [
        "m", "ft", "in", "mm", "cm", "",
    ]  # fmt: skip
