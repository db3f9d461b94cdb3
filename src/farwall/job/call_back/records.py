"""What the job's own log, facts and plan say of a room: signs that were measured. Pure."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cached_property

from farwall.air.sealers import SealerLimits, apart_words, limits_of, wanted_words
from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.job.call_back.noun import Sign
from farwall.job.rinses import Rinses
from farwall.job.seal_day.ready import reasons_of
from farwall.job.story.coat_air import CoatAir, coat_air
from farwall.job.story.noun import Happened, Story
from farwall.nouns import dataclass
from farwall.units import f_from_c

FEW_RINSES = 3
"""Three rinses at the least [common practice, no source]."""
THICK, THIN = 1.3, 0.7
"""Sealer laid against its label, above and below which it speaks: a guess."""
MUCH = 1.15
"""Stain laid against the plan: more than its allowance [common practice, no source]."""
_DRY = ("seen", "It was looked at and dry before the first coat of sealer.")
_NOT_DRY = ("not seen", "Nobody entered that it was dry before the first coat of sealer.")
_DAMP = ("vapour (F1869)", "slab humidity (F2170)", "plastic sheet (D4263)", "meter", "salts")


@dataclass(frozen=True)
class RoomRecords:
    """The records of one room; an empty `room` is the whole house, its worst room counting."""

    job: Job
    plan: Plan
    story: Story
    room: str

    def signs(self) -> tuple[Sign, ...]:
        """Every sign that the records give; a kind that they do not hold gives none."""
        return tuple(
            one
            for found in (self._rinsed(), self._sealed(), self._laid(), self._slab())
            for one in found
        )

    @cached_property
    def _rooms(self) -> tuple[str, ...]:
        return (self.room,) if self.room else tuple(one.id for one in self.job.floor.rooms)

    def _rinsed(self) -> Iterator[Sign]:
        rinses = Rinses(self.job, self.plan, self.story)
        rounds = {room: rinses.rounds(room) for room in self._rooms if rinses.rounds(room)}
        if not rounds:
            return
        low, high = rinses.wanted.window
        phs = [one for each in rounds.values() for one in each[-1].phs]
        if phs:
            worst = max(phs, key=lambda one: max(low - one, one - high))
            value = "low" if worst < low else "high" if worst > high else "in"
            yield _sign("ph", value,
                        f"Last pH {worst:g}; {low:g} to {high:g} passes.")  # fmt: skip
        rags = [each[-1].rag for each in rounds.values() if each[-1].rag]
        if rags:
            dirty = [one for one in rags if one != "clean"]
            yield _sign("rag", "dirty" if dirty else "clean",
                        f"The last white rag was {(dirty or rags)[0]}.")  # fmt: skip
        powders = [each[-1].powder for each in rounds.values() if each[-1].powder is not None]
        if powders:
            seen = any(powders)
            yield _sign("powder", "seen" if seen else "none",
                        "The dry glove brought up powder." if seen
                        else "The dry glove brought up no powder.")  # fmt: skip
        least = min(len(each) for each in rounds.values())
        yield _sign("rinses", "few" if least < FEW_RINSES else "enough",
                    f"Rinses in the log: {least}.")  # fmt: skip

    @cached_property
    def _coats(self) -> tuple[Happened, ...]:
        return tuple(
            one
            for one in self.story.of("sealed")
            if not self.room or one.text("room") in {"", self.room}
        )

    def _sealed(self) -> Iterator[Sign]:
        if not self._coats:
            return
        limits = limits_of(self.job.sealer)
        airs = [coat_air(self.story.readings, one, room=self.room) for one in self._coats]
        yield from _sealing_air(airs, limits, us=self.job.wishes.units == "us")
        dried = [
            one for one in self.story.of("dry")
            if one.text("clock") in {"dry-down", "seal"}
            and (not self.room or one.text("room") in {"", self.room})
            and one.at_min <= self._coats[0].at_min
        ]  # fmt: skip
        yield _sign("dried", *(_DRY if dried else _NOT_DRY))
        yield from self._sealer_litres()

    def _sealer_litres(self) -> Iterator[Sign]:
        wanted = self.job.sealer.m2_per_l
        areas = Rinses(self.job, self.plan, self.story).areas
        shares = []
        for one in self._coats:
            litres, room = one.number("litres"), one.text("room")
            floor_m2 = areas.get(room, 0.0) if room else sum(areas.values())
            if wanted and litres and floor_m2 > 0:
                shares.append(litres / floor_m2 * wanted)
        if not shares:
            return
        worst = max(shares, key=lambda one: abs(one - 1.0))
        value = "thick" if worst > THICK else "thin" if worst < THIN else "usual"
        yield _sign("sealer", value, f"Sealer laid: {worst * 100:.0f} % of what its label has.")

    def _laid(self) -> Iterator[Sign]:
        """Stain against the plan in the fields of the room; floor finish in the hours."""
        fields = {one.id for one in self.plan.fields if set(one.rooms) & set(self._rooms)}
        shares = [
            field.used_l / field.planned_l
            for coat in self.story.coats for field in coat.fields
            if field.field in fields and field.used_l is not None and field.planned_l > 0
        ]  # fmt: skip
        if shares:
            most = max(shares)
            yield _sign("stain", "much" if most > MUCH else "as planned",
                        f"Stain laid: {most * 100:.0f} % of what the plan had.")  # fmt: skip
        tasks = {one.text("task") for one in self.story.of("hours")}
        if "finish" in tasks:
            yield _sign("finish", "laid", "Hours of laying floor finish are in the log.")
        elif tasks and self.story.last("handed-over") is not None:
            yield _sign("finish", "none", "No hours of laying floor finish are in the log.")

    def _slab(self) -> Iterator[Sign]:
        """Moisture tests and salts of the survey; copper in a sheet of a stain."""
        damp = [one for one in reasons_of(self.job) if one.code in _DAMP]
        against = [one for one in damp if one.word in {"no", "go with"}]
        if against:
            yield _sign("damp", "damp", against[0].what)
        elif self.job.survey.moisture and not damp:
            yield _sign("damp", "dry", "Moisture tests before sealing had nothing against it.")
        contents = [one.substance for stain in self.job.stains for one in stain.contents]
        if any(one.startswith("copper") for one in contents):
            yield _sign("copper", "yes", "A stain of this floor has copper in its sheet.")
        elif contents and all(stain.contents for stain in self.job.stains):
            yield _sign("copper", "no", "No sheet of its stains names copper.")


def _sealing_air(airs: list[CoatAir], limits: SealerLimits, *, us: bool) -> Iterator[Sign]:
    """Margin over the dew point, slab and humidity at the worst of the coats."""
    margins = [one.margin_k for one in airs if one.margin_k is not None]
    if margins:
        least = min(margins)
        near, wanted = apart_words(least, us=us), wanted_words(limits.least_margin_k, least, us=us)
        yield _sign("margin", "small" if least < limits.least_margin_k else "enough",
                    f"At sealing the slab was {near} above the dew point; "
                    f"a sealer wants {wanted}.")  # fmt: skip
    known = [one.slab_c for one in airs if one.slab_c is not None]
    if known:
        yield _sign("slab", "cold" if min(known) < limits.least_slab_c - 0.05 else "warm",
                    f"At sealing the slab was at {_degrees(min(known), us=us)}; at least "
                    f"{_degrees(limits.least_slab_c, us=us)} are wanted.")  # fmt: skip
    humid = [one.rh_percent for one in airs if one.rh_percent is not None]
    if humid:
        yield _sign("air", "damp" if max(humid) > limits.most_rh_percent else "dry",
                    f"At sealing the air was at {max(humid):.0f} %; at most "
                    f"{limits.most_rh_percent:.0f} % are borne.")  # fmt: skip


def _degrees(value_c: float, *, us: bool) -> str:
    return f"{f_from_c(value_c):.0f} °F" if us else f"{value_c:.0f} °C"


def _sign(kind: str, value: str, told: str) -> Sign:
    return Sign(kind, value, told, measured=True)
