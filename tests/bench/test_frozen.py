"""The floors of the bench are frozen: who changes one changes a digest here, and has to say why."""

import hashlib

import pytest
import rfc8785

from farwall.bench.generator import house_of
from farwall.bench.houses import houses
from farwall.bench.nouns import shape_case
from farwall.bench.shapes import SHAPES
from farwall.facts.job import Job
from farwall.facts.plain import plain

SHAPES_DIGEST = "c7d02d97b7b7348cdad63d13f9bc7ada7040e8f44853d325f95b29add5fde79e"
HOUSES_DIGEST = "656a9c2c0fdf83c7011f12b6cd14a2e9a8b880c1203be39246da0c4d57872ebe"
GROWN_DIGEST = "e2d010e3a252e0af2a6f925fde912af0e779815fa037bcd28dd0d7f0b91830f4"
GROWN = [(3, 1), (5, 7), (10, 7), (15, 2), (20, 7), (29, 3), (50, 7), (100, 7), (200, 7)]

WHY = "a frozen floor has changed: its figures can no longer be laid beside those of before"


LATER = {
    "": "builder choices customer discharge emergency firm materials morning place readiness "
    "revision sealer seen site supplies washing watch workers",
    "prices": "call_backs offers rates taxes terms",
    "survey": "acid_before bare_sand_percent burnished colour_wanted covering cracks_accepted "
    "efflorescence film ground_frozen hidden mix moisture patched patches pours sample_scrub "
    "sample_signed sheet_slab_age_days slab_ph slab_thickness_m tile_kg_m2_h trades waste",
    "wishes": "bands bands_in language paper",
}
"""Facts that jobs learned to say after the freeze: left out while they say nothing."""
LATER_OF = {
    "stains": {"oxidiser": None, "contents": [], "sheet_read": "", "washed_off_percent": None},
    "coats": {"not_before": None},
    "samples": {
        "stain": None, "cut": None, "over": None, "area_m2": None, "laid_ml": None,
        "sprayer_before_kg": None, "sprayer_after_kg": None, "dry_min": None, "dwell_h": None,
        "scrubs": None, "before_ph": None, "after_ph": None, "rag": None, "sealer": "", "looks": [],
        "approved_by": "", "approved_on": "",
    },
}  # fmt: skip


def said(job):
    told, silent = plain(job), plain(Job(1, job.floor, job.exits))
    for noun, keys in LATER.items():
        here, nothing = (told, silent) if not noun else (told[noun], silent[noun])
        for key in keys.split():
            if here[key] == nothing[key]:
                del here[key]
    for each, later in LATER_OF.items():
        for one in told[each]:
            for key, nothing in later.items():
                if one[key] == nothing:
                    del one[key]
    return told


def digest(cases):
    """SHA-256 of the canonical JSON (RFC 8785) of the jobs by their names."""
    return hashlib.sha256(rfc8785.dumps([[one.name, said(one.job)] for one in cases])).hexdigest()


def shapes():
    return [shape_case(one) for one in SHAPES.values()]


@pytest.mark.parametrize(
    ("cases", "frozen"),
    [
        (shapes, SHAPES_DIGEST),
        (houses, HOUSES_DIGEST),
        (lambda: [house_of(rooms, seed) for rooms, seed in GROWN], GROWN_DIGEST),
    ],
    ids=["shapes", "houses", "generator"],
)
def test_the_recorded_digest_holds(cases, frozen):
    assert digest(cases()) == frozen, WHY


def test_the_digest_would_see_a_millimetre_and_a_tool():
    one = house_of(5, 7)
    other = plain(one.job)
    first = rfc8785.dumps(other)
    other["floor"]["rooms"][0]["polygon"]["coordinates"][0][0][0] += 0.001
    assert rfc8785.dumps(other) != first
    assert digest([one]) != digest([house_of(5, 8)])
