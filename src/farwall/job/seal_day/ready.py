"""Whether the floor under a sealer is dry and clean: what was tried, what stands against it."""

from __future__ import annotations

from farwall.evidence import Rank
from farwall.facts.job import Job
from farwall.job.go.moisture_rules import RULES as DAMP
from farwall.job.go.watch_rules import LEAST_PH
from farwall.nouns import dataclass

MOST_PH = 9.0
"""A rinsed floor above is not rinsed of its neutraliser, or drifts: common practice, no source."""
_RULES = ("vapour (F1869)", "slab humidity (F2170)", "plastic sheet (D4263)", "meter", "salts")


@dataclass(frozen=True)
class Reason:
    """Something that stands against sealing (`no`), comes first (`go with`) or is open (`ask`)."""

    code: str
    word: str
    what: str
    change: str
    rank: str
    source: str


def reasons_of(job: Job) -> tuple[Reason, ...]:
    """Moisture, salts, pH and rag, the ones that say no first; in order ones are left out."""
    found = [*_rinsed(job), *_damp(job)]
    return tuple(sorted(found, key=lambda one: ("no", "ask", "go with").index(one.word)))


def _rinsed(job: Job) -> list[Reason]:
    """pH and rag after the last rinse: whether the stain is neutralised and its residue gone."""
    sealer, ph, rag = job.sealer, job.watch.rinse_ph, job.watch.rag
    low = LEAST_PH if sealer.least_ph is None else sealer.least_ph
    high = MOST_PH if sealer.most_ph is None else sealer.most_ph
    by = "the sealer's sheet" if sealer.least_ph is not None or sealer.most_ph is not None else ""
    found = []
    if ph is None:
        found.append(
            _reason(
                "pH", "ask", "Nobody told the pH of the rinsed floor: is the stain neutralised?",
                "Two readings in every 500 ft² (46 m²) right after the last rinse; "
                "watch.rinse_ph.", "astm-d4262, common-practice",
            )
        )  # fmt: skip
    elif ph < low:
        found.append(
            _reason(
                "not neutralised", "no",
                f"The stain is not neutralised: the floor reads pH {ph:g}, below {low:g}. "
                "No sealer holds on it.",
                "Neutralise and scrub again, not only another rinse; then pH and rag again.",
                by or "trade-press, astm-d4262",
            )
        )  # fmt: skip
    elif ph > high:
        found.append(
            _reason(
                "pH", "no",
                f"The floor reads pH {ph:g}, above {high:g}: neutraliser or lime is left on it.",
                "Rinse with changed water and vacuum it up; then pH again.",
                by or "common-practice",
            )
        )  # fmt: skip
    if rag == "dirty":
        found.append(
            _reason(
                "residue", "no", "The white rag is dirty: residue breaks the bond.",
                "Another scrub and rinse; then the rag again, in every room.",
                "trade-press, common-practice",
            )
        )  # fmt: skip
    elif rag is None:
        found.append(
            _reason(
                "residue", "ask", "Nobody told what the white rag looks like.",
                "Wipe several ft² (half a m²) firmly in every room; watch.rag.", "common-practice",
            )
        )  # fmt: skip
    return found


def _damp(job: Job) -> list[Reason]:
    """The moisture tests and salts, by the rules of `farwall go`."""
    found = []
    for rule in DAMP:
        if rule.id not in _RULES:
            continue
        says = rule.look(job)
        if says is not None and says.verdict != "go":
            word = "no" if says.verdict == "no" else "go with"
            found.append(
                Reason(rule.id, word, says.reason, says.change, rule.rank.value, rule.source)
            )
    if not job.survey.moisture:
        found.append(
            _reason(
                "moisture", "ask", "No moisture test was told: is the slab dry enough for a film?",
                "`farwall go` lists the tests to do.", "astm-f2170, astm-f1869",
            )
        )  # fmt: skip
    return found


def _reason(code: str, word: str, what: str, change: str, source: str) -> Reason:
    return Reason(code, word, what, change, Rank.PRACTICE.value, source)
