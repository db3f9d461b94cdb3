"""The judge of spoilt files can find fault: each thing that no reader may do is seen."""

import math
from dataclasses import replace

import pytest
from tests.hostile.oracle import Wrong, judged, sound_reading
from tests.hostile.seeds import seeds
from tests.hostile.soundness import keeps_grammar

from farwall.errors import Mistake, Refused
from farwall.facts.reading import Note

SEED = next(seed for seed in seeds() if seed.name == "geojson")
SOUND = sound_reading(SEED)
LESS = replace(
    SOUND, floor=replace(SOUND.floor, rooms=SOUND.floor.rooms[:1], openings=()), exits=()
)
TORN = SEED.data[:-9]


def test_the_sound_reading_and_a_calm_refusal_pass() -> None:
    assert judged(SEED, SEED.data, SOUND).kind == "read"
    assert judged(SEED, TORN, Refused(Mistake("", "It is torn.", "Send it anew."))).told


@pytest.mark.parametrize(
    ("found", "words"),
    [
        ("KeyError at read.py:3", "broke"),
        (Refused(), "without a sentence"),
        (Refused(Mistake("", " ")), "no calm sentence"),
        (Refused(Mistake("", "ValueError: bad float", "")), "no calm sentence"),
        (Refused(Mistake("", "x" * 800, "")), "800 letters"),
        (replace(SOUND, scale_m_per_unit=math.nan), "cannot be sent"),
        (replace(SOUND, left=(Note("", "what"),)), "no calm note"),
        (replace(SOUND, floor=replace(SOUND.floor, rooms=(), openings=()), exits=()), "no word"),
        (replace(SOUND, floor=replace(SOUND.floor, openings=())), "faults"),
        (LESS, "without a word"),
    ],
)
def test_what_no_reader_may_do_is_seen(found, words) -> None:
    with pytest.raises(Wrong, match=words):
        judged(SEED, TORN, found)


def test_less_is_no_fault_with_a_word_or_where_the_file_is_sound() -> None:
    assert judged(SEED, TORN, replace(LESS, left=(Note("torn", "One room was lost."),))).told
    assert not judged(SEED, SEED.data, LESS).told


@pytest.mark.parametrize(
    "seed", [one for one in seeds() if one.name != "walk"], ids=lambda seed: seed.name
)
def test_a_file_that_is_cut_short_keeps_no_grammar(seed) -> None:
    for keep in (len(seed.data) // 3, len(seed.data) - 9):
        assert not keeps_grammar(seed.data[:keep])


@pytest.mark.parametrize(
    ("name", "old", "new"),
    [
        ("dxf", b"EOF", b"EOX"),
        ("dxf", b"AC1015", b"AC1015\nmore"),
        ("geojson", b'"type"', b"type"),
        ("geojson", b"4.0", b"NaN"),
        ("geojson", b"4.0", b"1e999"),
        ("svg", b"</g>", b"</h>"),
        ("ifc", b"#2);", b"#2222);"),
        ("ifc", b"#2=", b"#1="),
        ("pdf", b"endstream", b"endstrean"),
        ("pdf", b"startxref\n", b"startxref\n1"),
        ("png", b"IDAT", b"IDAU"),
    ],
)
def test_a_broken_grammar_is_seen(name, old, new) -> None:
    seed = next(seed for seed in seeds() if seed.name == name)
    assert old in seed.data
    assert not keeps_grammar(seed.data.replace(old, new, 1))
