"""The gate: may these be poured together, in this order, in this vessel? Pure.

Three looks, each of which can refuse:
1. every rule of danger, of spoiling, of order and vessel whose traits are there;
2. every two things must be named by a rule that lets them meet: what no rule names is refused;
3. every thing that is poured must be named by a rule that lets it stand in the vessel.

All rules ask for traits that are there, none for traits that are missing. So one more thing poured
in, one more trait told, can refuse what was allowed and never allow what was refused.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import combinations, permutations

from farwall.acid.pouring.allowing_rules import STANDS, TOGETHER
from farwall.acid.pouring.danger_rules import DANGERS
from farwall.acid.pouring.nouns import WORDS, Fired, Has, Met, Rule, Thing, Trait, Verdict, Vessel
from farwall.acid.pouring.place_rules import CAUTIONS, PLACES
from farwall.acid.pouring.spoil_rules import SPOILS
from farwall.evidence import Rank

REFUSING = (*DANGERS, *SPOILS, *PLACES)
RULES = (*REFUSING, *CAUTIONS, *TOGETHER, *STANDS)
"""Every rule, for the page that lists them."""

NOT_NAMED = "Nothing says that these two go together. What is not known to be safe is refused."
NOT_THERE = "Nothing says that it may stand there. What is not known to be safe is refused."
ASK_SHEETS = "Read both sheets; enter what they allow by name, or keep them apart."
OTHER_VESSEL = "An open plastic tub, or what its own sheet names."
FORBIDDEN = "Its own sheet forbids it."
BY_NAME = "Its own sheet allows it by name."
SAME = "It is one and the same."
NOTHING = "Nothing is poured."

VAGUE = frozenset({
    "not named", "not there", "strong and not read", "oxidiser not told", "sheet not read",
})  # fmt: skip
"""Rules that tell what is not known; told after those that tell what happens."""


def may_pour(things: Sequence[Thing], vessel: Vessel = "open tub") -> Verdict:
    """The verdict on things in the order in which they are poured, the first stands there.

    What was left from before comes first whatever its place. The word is the strictest of all
    rules that fired; `fired` is the proof, the strictest first. Nothing at all is refused: a gate
    that was asked nothing has allowed nothing.
    """
    inside = sorted(things, key=lambda thing: not thing.left)
    found = [
        *_met(REFUSING, inside, vessel),
        *_forbidden(inside),
        *_met(CAUTIONS, inside, vessel),
        *_together(inside, vessel),
        *_standing(inside, vessel),
    ]
    if all(thing.left for thing in inside):
        found.append(Fired("nothing", "refused", NOTHING, "", (), "", Rank.PRACTICE.value))
    ordered = sorted(_told(found), key=lambda one: (-WORDS.index(one.word), one.rule in VAGUE))
    return Verdict(
        word=ordered[0].word,
        things=tuple(thing.name for thing in inside),
        vessel=vessel,
        fired=tuple(ordered),
    )


def _met(rules: Sequence[Rule], inside: Sequence[Thing], vessel: Vessel) -> Iterator[Fired]:
    for rule in rules:
        if rule.vessels and vessel not in rule.vessels:
            continue
        for chosen in _choices(rule, inside):
            if not (rule.unless_sampled and _sampled(*chosen)):
                yield _fired(rule, chosen)


def fired_by(rule: Rule, inside: Sequence[Thing]) -> Iterator[Fired]:
    """Each time that one rule fires on these, whatever the vessel."""
    for chosen in _choices(rule, inside):
        yield _fired(rule, chosen)


def _choices(rule: Rule, inside: Sequence[Thing]) -> Iterator[tuple[Thing, ...]]:
    """Things that meet a rule: one for each of its sets, no two of the same stuff."""
    there = frozenset[Trait]().union(*(one.traits for one in inside))
    if any(need.isdisjoint(there) for need in rule.meets):
        return  # most rules, at once
    seen: set[frozenset[int]] = set()
    for places in permutations(range(len(inside)), len(rule.meets)):
        chosen = tuple(inside[n] for n in places)
        if len({one.stuff for one in chosen}) < len(chosen) or frozenset(places) in seen:
            continue
        if rule.vessels and len(chosen) == 1 and chosen[0].left:
            continue  # a film left in a vessel is not what is kept in it
        if rule.in_turn and not _in_turn(rule, chosen, places):
            continue
        if all(one.traits & need for one, need in zip(chosen, rule.meets, strict=True)):
            seen.add(frozenset(places))
            yield chosen


def _in_turn(rule: Rule, chosen: Sequence[Thing], places: Sequence[int]) -> bool:
    """Whether the first was poured after the second; a film splashes nothing, and may spoil."""
    if chosen[0].left or (chosen[1].left and not rule.films_too):
        return False
    return places[0] > places[1]


def _sampled(one: Thing, other: Thing) -> bool:
    return other.id in one.sampled_with or one.id in other.sampled_with


def _forbidden(inside: Sequence[Thing]) -> Iterator[Fired]:
    for one, other in combinations(inside, 2):
        for told, against in ((one, other), (other, one)):
            if against.kind in told.never_with:
                yield _plain("forbidden by its sheet", "refused", FORBIDDEN, (told, against))


def _together(inside: Sequence[Thing], vessel: Vessel) -> Iterator[Fired]:
    for one, other in combinations(inside, 2):
        if one.stuff == other.stuff:
            yield _plain("the same", "allowed", SAME, (one, other))
        else:
            found = [*_met_by_two(one, other, vessel)]
            yield from found or [
                _plain("not named", "refused", NOT_NAMED, (one, other), ASK_SHEETS)
            ]


def _met_by_two(one: Thing, other: Thing, vessel: Vessel) -> Iterator[Fired]:
    if other.kind in one.may_with or one.kind in other.may_with:
        yield _plain("allowed by its sheet", "allowed", BY_NAME, (one, other))
    for rule in TOGETHER:
        if rule.vessels and vessel not in rule.vessels:
            continue
        if rule.unless_sampled and not _sampled(one, other):
            continue
        for chosen in _choices(rule, (one, other)):
            yield _fired(rule, chosen)


def _standing(inside: Sequence[Thing], vessel: Vessel) -> Iterator[Fired]:
    for thing in inside:
        if thing.left:
            continue
        found = [*_met(STANDS, (thing,), vessel)]
        yield from found or [_plain("not there", "refused", NOT_THERE, (thing,), OTHER_VESSEL)]


def _fired(rule: Rule, chosen: Sequence[Thing]) -> Fired:
    met = tuple(
        _met_as(one, has)
        for one, need in zip(chosen, rule.meets, strict=True)
        for has in one.has
        if has.trait in need
    )
    return Fired(rule.id, rule.word, rule.what, rule.instead, met, rule.source, rule.rank.value)


def _met_as(thing: Thing, has: Has) -> Met:
    return Met(thing.name, has.trait, has.because, has.source, has.rank.value)


def _plain(name: str, word: str, what: str, things: Sequence[Thing], instead: str = "") -> Fired:
    """A rule that looks at names and sheets, not at traits."""
    met = tuple(
        Met(one.name, "", f"it is {one.kind}", "told in the job", Rank.MEASURED.value)
        for one in things
    )
    return Fired(name, word, what, instead, met, "common-practice", Rank.PRACTICE.value)  # type: ignore[arg-type]


def _told(found: Sequence[Fired]) -> list[Fired]:
    """Each rule once for the same things; what nothing names is left out where a rule refuses it.

    A rule about one thing is told once for all things that it is true of.
    """
    by_key: dict[tuple[str, frozenset[str]], Fired] = {}
    for one in found:
        alone = len({met.name for met in one.met}) == 1
        key = (one.rule, frozenset() if alone else _names(one))
        if alone and key in by_key:
            met = tuple(dict.fromkeys((*by_key[key].met, *one.met)))
            by_key[key] = replace(by_key[key], met=met)
        else:
            by_key.setdefault(key, one)
    refused = [
        _names(one) for one in by_key.values() if one.word == "refused" and one.rule not in VAGUE
    ]
    return [
        one
        for one in by_key.values()
        if one.rule not in {"not named", "not there"} or not any(r <= _names(one) for r in refused)
    ]


def _names(one: Fired) -> frozenset[str]:
    return frozenset(met.name for met in one.met)
