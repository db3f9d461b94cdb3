"""What stands under a sentence: the default that stands in and its rank, what it would change, and
what go or no-go says of it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from functools import cached_property

from farwall.air.clocks import Timed, open_time
from farwall.air.conditions import Conditions
from farwall.errors import FarwallError
from farwall.evidence import Rank, rank_words
from farwall.facts import default_table as table
from farwall.facts.default_table import Default
from farwall.facts.defaults import settle
from farwall.facts.go import Finding, Go
from farwall.facts.job import Job
from farwall.facts.plan import Ground
from farwall.facts.settled import SettledJob
from farwall.nouns import dataclass
from farwall.papers.grounds import ground_value
from farwall.phrasebook import told
from farwall.web.pages.forms.nouns import Sentence
from farwall.web.pages.speaking import speaking_here
from farwall.web.words import said

DEFAULTS: dict[str, Default] = {
    one.name: one
    for one in (
        *table.TOOLS.values(), table.SLAB_C, table.AIR_C, table.RH_PERCENT, table.AIR_SPEED_M_S,
        table.DROP_S, table.SILL_M, table.WINDOW_HEIGHT_M, table.REVEAL_M,
        table.CERTAINTY_PERCENT,
    )
}  # fmt: skip
_OF_CONDITIONS = {
    "survey.slab_c": "surface_c", "survey.air_c": "air_c", "survey.rh_percent": "rh_percent",
    "survey.air_speed_m_s": "air_speed_m_s",
}  # fmt: skip


@dataclass(frozen=True)
class Note:
    """A line under a sentence. kind: soft, or the word of go or no-go (`no`, `ask`, …)."""

    words: str
    kind: str = "soft"


class Notes:
    """The lines for a job. go: None where the screen tells nothing of it."""

    def __init__(self, job: Job, go: Go | None = None) -> None:
        self.job = job
        self.findings = {one.rule: one for one in (go.findings if go is not None else ())}

    @cached_property
    def settled(self) -> SettledJob:
        """The job with its gaps filled."""
        return settle(self.job)

    @cached_property
    def grounds(self) -> dict[str, Ground]:
        """What each figure rests on, by its name."""
        return {one.name: one for one in self.settled.grounds}

    def of(self, sentence: Sentence) -> tuple[Note, ...]:
        """The lines under a sentence."""
        with speaking_here(self.job):
            return self._of(sentence)

    def _of(self, sentence: Sentence) -> tuple[Note, ...]:
        found = [Note(one) for name in sentence.stands_in for one in self._stands_in(name)]
        if sentence.effect:
            found.append(Note(said(sentence.effect)))
        finding = self.findings.get(sentence.rule)
        return (*found, *([] if finding is None else [_found(finding)]))

    def _stands_in(self, name: str) -> Iterator[str]:
        default = DEFAULTS[name]
        usual = Ground(name, f"{default.usual:.12g}", default.unit, default.rank.value,
                       default.source)  # fmt: skip
        units = self.job.wishes.units
        ground = self.grounds.get(name, usual)
        what = said(f"stands-{name.rpartition('.')[2]}")
        if ground.rank == Rank.MEASURED:
            value, rank = ground_value(usual, units), told(rank_words(usual.rank, usual.source))
            line = said("note-told", what=what, value=value, rank=rank)
        else:
            value, rank = ground_value(ground, units), told(rank_words(ground.rank, ground.source))
            key = "note-default" if self._told(name) is None else "note-usual"
            line = said(key, what=what, value=value, rank=rank)
        ends = self._over(name, default)
        if ends is None:
            yield line
            return
        low, high = (
            ground_value(replace(usual, value=f"{end:.12g}"), units)
            for end in (default.low, default.high)
        )
        effect = said("effect-open", low=low, high=high, first=f"{ends[0]:.1f}",
                      last=f"{ends[1]:.1f}")  # fmt: skip
        yield f"{line} {effect}"

    def _told(self, name: str) -> object:
        """What the facts say of it; None where nothing."""
        found: object = self.job
        for step in name.split("."):
            found = getattr(found, step, None)
        return found

    def _over(self, name: str, default: Default) -> tuple[float, float] | None:
        """Likely minutes that an edge lives at the low and the high end of a default."""
        if default.low is None or default.high is None:
            return None
        try:
            low, high = self._lives(name, default.low), self._lives(name, default.high)
        except FarwallError:  # a slab too cold or too warm for any clock
            return None
        return None if low is None or high is None else (low, high)

    def _lives(self, name: str, value: float) -> float | None:
        survey, coat = self.settled.survey, self.settled.coats[0]
        if name not in _OF_CONDITIONS and name != "survey.drop_s":
            return None
        now = {
            "surface_c": survey.slab_c, "air_c": survey.air_c, "rh_percent": survey.rh_percent,
            "air_speed_m_s": survey.air_speed_m_s,
        }  # fmt: skip
        drop_s = value if name == "survey.drop_s" else survey.drop_s
        if name in _OF_CONDITIONS:
            now[_OF_CONDITIONS[name]] = value
        sample, timed = coat.sample, None
        if sample is not None and sample.sheen_loss_min is not None:
            then = Conditions(
                surface_c=_or(sample.slab_c, survey.slab_c),
                air_c=_or(sample.air_c, survey.air_c),
                rh_percent=_or(sample.rh_percent, survey.rh_percent),
                air_speed_m_s=_or(sample.air_speed_m_s, survey.air_speed_m_s),
            )
            drop_then = _or(sample.drop_s, survey.drop_s)
            timed = Timed(sample.sheen_loss_min, then, sample.m2_per_l, drop_then)
        span = open_time(Conditions(**now), m2_per_l=coat.m2_per_l, drop_s=drop_s, timed=timed)
        return span.likely


def _or(told: float | None, other: float) -> float:
    return other if told is None else told


def _found(one: Finding) -> Note:
    why = told(one.reason)
    if one.verdict != "go" and one.change:
        why = f"{why} {told(one.change)}"
    word = said(f"go-{one.verdict.replace(' ', '-')}")
    return Note(f"{word} {why}", one.verdict)
