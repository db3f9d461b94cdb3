"""What is sprayed, and when: bands told done, those before them in their field with them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import field

from farwall.facts.numbered import numbered
from farwall.facts.plan import Band, Field, Plan
from farwall.job.so_far_sense import whole_fields
from farwall.job.story.doubled import SAME_MIN
from farwall.job.story.noun import Happened, Sprayed
from farwall.nouns import dataclass


@dataclass
class Spraying:
    """The floor while a log is gone through: fed one thing at a time, in order."""

    plan: Plan
    done: dict[str, Sprayed] = field(default_factory=dict)
    started: dict[str, float] = field(default_factory=dict)
    coat: str = ""
    """The coat in hand: that of the last thing that named one."""
    contradictions: list[str] = field(default_factory=list)

    def __post_init__(self) -> None:
        self.fields: dict[str, Field] = {one.id: one for one in whole_fields(self.plan)}
        self.owner: dict[str, Field] = {
            band.id: one for one in self.fields.values() for band in one.bands
        }
        self._last: dict[int, float] = {}
        self._by: dict[str, Happened] = {}
        """Which entry told the end of a band, or the beginning of a field."""

    @property
    def floor_coat(self) -> str:
        """The coat that lies on the floor: the one in hand once it is sprayed, be it a little, else
        that of the last band done; the first where none is. A batch of the next lies in its tub."""
        coats = [self.owner[name].coat for name in self.done]
        last = coats[-1] if coats else self.plan.inputs.coats[0].id
        return self.coat if self.coat in coats else last

    def feed(self, one: Happened) -> None:
        """Take what happened into account."""
        if one.word == "field-started":
            self._started(one)
        elif one.word == "band-done":
            self._band_done(one)
        elif one.word == "field-done":
            self._field_done(one)
        elif one.word == "coat-done":
            self._coat_done(one)
        elif one.word in {"stopped", "feathered"}:  # what comes next is begun after it
            self._last = {hand: max(last, one.at_min) for hand, last in self._last.items()}
        elif one.word in {"mixed", "day-started"} and one.text("coat"):
            self.coat = one.text("coat")

    def _started(self, one: Happened) -> None:
        found = self._field(one)
        if found is None:
            return
        self.coat = found.coat
        if found.id not in self.started and all(band.id in self.done for band in found.bands):
            self.contradictions.append(
                f"Field {numbered(self.plan, found.id)} is told to be begun after it was done."
            )
            return
        if found.id in self.started:
            if self._both(found.id, one):
                return
            self.contradictions.append(
                f"Field {numbered(self.plan, found.id)} is told to be begun twice."
            )
            return
        self.started[found.id] = one.at_min
        self._by[found.id] = one

    def _band_done(self, one: Happened) -> None:
        name = one.text("band")
        own = self.owner.get(name)
        if own is None:
            self.contradictions.append(f"The plan has no band {name}; it is passed over.")
            return
        self.coat = own.coat
        if name in self.done:
            if self.done[name].told and not self._both(name, one):
                self.contradictions.append(
                    f"Band {numbered(self.plan, name)} is told to be done twice."
                )
            return
        at = next(number for number, band in enumerate(own.bands) if band.id == name)
        hand = own.bands[at].sprayer
        before = [band for band in own.bands[: at + 1] if band.sprayer == hand]
        self._lay(before, one.at_min, told={name})
        self._by[name] = one

    def _field_done(self, one: Happened) -> None:
        found = self._field(one)
        if found is None:
            return
        self.coat = found.coat
        if all(band.id in self.done for band in found.bands):
            return
        self._lay(found.bands, one.at_min, told={found.bands[-1].id})
        self._by[found.bands[-1].id] = one

    def _both(self, name: str, one: Happened) -> bool:
        """Whether another phone told the same just before: two tapped, and nothing is odd."""
        first = self._by[name]
        return one.device != first.device and one.at_min - first.at_min < SAME_MIN

    def _coat_done(self, one: Happened) -> None:
        coat = one.text("coat")
        own = [each for each in self.plan.fields if each.coat == coat]
        if not own:
            self.contradictions.append(f"The plan has no coat {coat}; it is passed over.")
            return
        self.coat = coat
        self._lay_between(own, one.at_min)
        bands = sorted((b for each in own for b in each.bands), key=lambda b: b.start_min)
        self._lay(bands, one.at_min, told=set())

    def _lay_between(self, own: Sequence[Field], at_min: float) -> None:
        """Fields of which nothing was entered, though one planned later was: they lie before it.

        As long as planned, or as there was room behind the one before.
        """
        order = sorted(own, key=lambda each: each.start_min)
        for at, own_one in enumerate(order):
            if any(band.id in self.done for band in own_one.bands):
                continue
            later = self._done_of(order[at + 1 :])
            if not later:
                return
            ends = min(at_min, *(one.start_min for one in later))
            lasts = max(own_one.end_min - own_one.start_min, 1e-9)
            earlier = [one.end_min for one in self._done_of(order[:at])]
            begins = min(max([ends - lasts, *earlier]), ends)
            scale = (ends - begins) / lasts
            for band in own_one.bands:
                start, end = (
                    round(begins + (minute - own_one.start_min) * scale, 4)
                    for minute in (band.start_min, band.end_min)
                )
                self.done[band.id] = Sprayed(band.id, start, end, told=False)

    def _done_of(self, fields: Sequence[Field]) -> list[Sprayed]:
        return [self.done[b.id] for each in fields for b in each.bands if b.id in self.done]

    def _field(self, one: Happened) -> Field | None:
        name = one.text("field")
        if name not in self.fields:
            self.contradictions.append(f"The plan has no field {name}; it is passed over.")
        return self.fields.get(name)

    def _lay(self, bands: Sequence[Band], at_min: float, *, told: set[str]) -> None:
        """The bands not yet done end at `at_min`, those between as the plan has them apart."""
        missing = [band for band in bands if band.id not in self.done]
        if not missing:
            return
        for hand in sorted({band.sprayer for band in missing}):
            self._lay_one([b for b in missing if b.sprayer == hand], at_min, told, hand)

    def _lay_one(self, missing: Sequence[Band], at_min: float, told: set[str], hand: int) -> None:
        planned_from, true_from = self._since(missing, at_min, hand)
        lasts = max(missing[-1].end_min - planned_from, 1e-9)
        scale = max(at_min - true_from, 0.0) / lasts
        for band in missing:
            start = true_from + (band.start_min - planned_from) * scale
            end = true_from + (band.end_min - planned_from) * scale
            self.done[band.id] = Sprayed(
                band.id, round(start, 4), round(end, 4), band.id in told
            )  # fmt: skip
        self._last[hand] = max(at_min, true_from)

    def _since(self, missing: Sequence[Band], at_min: float, hand: int) -> tuple[float, float]:
        """The planned minute and the true one from which the missing bands are laid."""
        own = self.owner[missing[0].id]
        last = self._last.get(hand)
        earlier = [b for b in own.bands if b.id in self.done and b.sprayer == hand]
        if earlier and last is not None:
            return earlier[-1].end_min, min(last, at_min)
        planned = missing[0].start_min
        lasts = missing[-1].end_min - planned
        begun = self.started.get(own.id)
        floor = [one for one in (last, begun) if one is not None]
        if begun is not None:
            return own.start_min, min(max(floor), at_min)
        return planned, min(max([at_min - lasts, *floor]), at_min)
