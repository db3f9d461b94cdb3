"""A log that grows by taps, doubled sendings, strikes and late comers, against a plain model."""

from __future__ import annotations

from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import Bundle, RuleBasedStateMachine, invariant, rule
from tests.job.story.entries import Log
from tests.midday import day_of

from farwall.job.story import story

PLAN = day_of("quince-street")
FIELDS = [field for field in PLAN.fields if field.coat == "first"]


class Growing(RuleBasedStateMachine):
    """The model: ids with what they say, and strikes; what counts is worked out from scratch."""

    entries = Bundle("entries")

    def __init__(self):
        super().__init__()
        self.log = Log(PLAN)
        self.sent = []
        self.said = {}  # id -> (word, value)
        self.minute = 0.0

    def tap(self, word, value, **about):
        self.minute += 1.0
        made = self.log(word, self.minute, **about)
        self.sent.append(made)
        self.said[made.entry.id] = (word, value)
        return made

    @rule(target=entries, number=st.integers(0, len(FIELDS) - 1))
    def field(self, number):
        return self.tap("field-done", FIELDS[number].id, field=FIELDS[number].id)

    @rule(target=entries, number=st.integers(0, len(FIELDS) - 1), band=st.integers(0, 17))
    def band(self, number, band):
        bands = FIELDS[number].bands
        name = bands[min(band, len(bands) - 1)].id
        return self.tap("band-done", name, band=name)

    @rule(target=entries, litres=st.integers(1, 40))
    def mixed(self, litres):
        return self.tap("mixed", litres, coat="first", litres=litres)

    @rule(target=entries, struck=entries)
    def strike(self, struck):
        return self.tap("struck", struck.entry.id, entry=struck.entry.id)

    @rule(again=entries, place=st.integers(0, 100))
    def sent_again(self, again, place):
        self.sent.insert(place % (len(self.sent) + 1), again)

    def stands(self, name):
        strikes = [
            i for i, (word, value) in self.said.items() if word == "struck" and value == name
        ]
        return not any(self.stands(one) for one in strikes)

    @invariant()
    def the_story_is_that_of_the_model(self):
        told = story(PLAN, self.sent[::-1])
        standing = {name: said for name, said in self.said.items() if self.stands(name)}
        assert {one.id for one in told.happened} == set(standing)
        assert {one.id for one in told.struck} == set(self.said) - set(standing)
        done, mixed = set(), 0
        for word, value in standing.values():
            for field in FIELDS:
                ids = [band.id for band in field.bands]
                if word == "field-done" and field.id == value:
                    done.update(ids)
                if word == "band-done" and value in ids:
                    done.update(ids[: ids.index(value) + 1])
            mixed += value if word == "mixed" else 0
        assert set(told.done()) == done
        coat = told.coat("first")
        assert ((coat.mixed_l or 0) if coat else 0) == mixed


Growing.TestCase.settings = settings(max_examples=25, stateful_step_count=25, deadline=None)
TestGrowing = Growing.TestCase
