"""The office side of a job, part by part. Pure."""

from __future__ import annotations

from farwall.job.office.billing.owed import owed_of
from farwall.job.office.buying import buying_of
from farwall.job.office.ground import OfficeGround
from farwall.job.office.hours import hours_of
from farwall.job.office.masking import masked_of
from farwall.job.office.noun import Office
from farwall.job.office.priced import priced_of
from farwall.job.office.quantities import quantities_of


def office_of(ground: OfficeGround) -> Office:
    """Every part for a planned job; what nobody told stands among the warnings of its part."""
    masked = masked_of(ground)
    quantities = quantities_of(ground, masked)
    buying = buying_of(ground, quantities)
    hours = hours_of(ground, masked)
    priced = priced_of(ground, buying, hours, masked)
    return Office(
        job=ground.plan.job,
        inputs_hash=ground.plan.inputs_hash,
        day=ground.day,
        masked=masked,
        quantities=quantities,
        buying=buying,
        hours=hours,
        priced=priced,
        owed=owed_of(ground, priced),
    )
