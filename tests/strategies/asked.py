"""What is asked before a price, the day before and in the morning: sound answers of all kinds."""

from __future__ import annotations

from dataclasses import replace

from hypothesis import strategies as st

from farwall.facts.checks import Morning, Readiness, Watch
from farwall.facts.job import Job
from farwall.facts.sealer import Sealer
from farwall.facts.slab import Choices, Hidden, MixTicket, MoistureTest, Patch

_yes_or_no = st.one_of(st.none(), st.booleans())
_percent = st.one_of(st.none(), st.floats(0, 100))
_readings = st.sampled_from(
    [
        MoistureTest("meter", meter="islands"),
        MoistureTest("F1869", vapour_ug_m2_s=150.0),
        MoistureTest("F2170", slab_rh_percent=80.0),
        MoistureTest("D4263", sheet="damp"),
    ]
)


@st.composite
def asked(draw: st.DrawFn, job: Job) -> Job:
    """The job with some of the questions answered."""
    room = job.floor.rooms[0].id
    patches = draw(st.sampled_from([(), (Patch("old trench", room, "trench", 40.0, 9.0),)]))
    survey = replace(
        job.survey,
        slab_age_days=draw(st.one_of(st.none(), st.floats(0, 400))),
        film=draw(st.sampled_from([None, "nothing", "removed", "cure", "paint"])),
        covering=draw(st.sampled_from([None, "bare", "glue", "overlay"])),
        acid_before=draw(st.sampled_from([None, "nowhere", "part", "whole"])),
        burnished=draw(st.sampled_from([None, "nowhere", "part", "whole"])),
        mix=MixTicket(draw(_percent), draw(_percent), draw(_yes_or_no), 300.0),
        pours=draw(st.sampled_from([None, 1, 2])),
        patches=patches,
        moisture=tuple(draw(st.lists(_readings, max_size=3))),
        slab_ph=draw(st.one_of(st.none(), st.floats(0, 14))),
        hidden=Hidden(draw(_yes_or_no), draw(_yes_or_no), draw(_yes_or_no)),
        waste=draw(st.sampled_from([None, "drums", "septic", "sewer in writing"])),
    )
    return replace(
        job,
        survey=survey,
        choices=Choices(most_fly_ash_percent=draw(_percent), probe_wait_h=24),
        readiness=Readiness(draw(_yes_or_no), draw(st.sampled_from([None, 1, 2]))),
        morning=Morning(draw(_yes_or_no), draw(_yes_or_no), eyewash=draw(_yes_or_no)),
        watch=Watch(fizz=draw(_yes_or_no), rinse_ph=7.0, poured=("water",)),
        sealer=Sealer("water acrylic", least_slab_c=10.0, recoat_from_h=2.0, recoat_to_h=4.0),
    )
