"""What on this slab makes a call-back likelier: only what a rule with a rank found."""

from __future__ import annotations

from farwall.job.colour.told import survey_told
from farwall.job.go import go_or_no_go
from farwall.job.office.ground import OfficeGround

BY_RULE = {
    "tight slab": "colour", "drop seconds": "colour", "burnished slab": "colour",
    "patches": "colour", "pours": "colour", "bare sand": "colour", "signed sample": "colour",
    "colour wished for": "colour", "sample": "residue", "past acid": "residue",
    "moisture": "moisture", "meter": "moisture", "salts": "moisture",
    "vapour (F1869)": "moisture", "slab humidity (F2170)": "moisture",
    "plastic sheet (D4263)": "moisture",
}  # fmt: skip
"""Rules of go or no-go, and the kind of call-back that each speaks of. That the chance then goes
from the usual figure towards its high end is a guess."""


def raised(ground: OfficeGround) -> dict[str, str]:
    """By kind of call-back, the reason of the weightiest rule that speaks for more."""
    found: dict[str, str] = {}
    job = survey_told(ground.job, ground.kept)
    for one in go_or_no_go(job).findings:
        cause = BY_RULE.get(one.rule)
        against = one.verdict in {"no", "go with"}
        if one.rule == "signed sample":
            against = job.survey.sample_signed is False
        if cause and against and one.stage == "survey":
            found.setdefault(cause, one.reason)
    return found
