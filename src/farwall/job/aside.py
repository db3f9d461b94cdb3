"""A house set aside and brought back: entries of its log like any other, so that nothing is erased.

[The decision](docs/decisions/0024-a-house-set-aside.md) says why it is no removal.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import TYPE_CHECKING

from farwall.facts.log import Entry, Kept
from farwall.facts.log_words import SET_ASIDE
from farwall.facts.plain import Plain
from farwall.job.story.order import in_order
from farwall.nouns import dataclass

if TYPE_CHECKING:
    from farwall.job.live.say import Over
    from farwall.job.story.noun import Story


@dataclass(frozen=True)
class Hand:
    """Who enters it, on which device, when by its clock (ISO 8601 with offset); makes new ids."""

    who: str
    device: str
    at: str
    new_id: Callable[[], str]


def of_the_floor(kept: Iterable[Kept]) -> tuple[Kept, ...]:
    """The entries that tell of the floor: all but those that set aside, and strikes of these.

    A house set aside at a desk weeks before its day is not begun by that.
    """
    told = tuple(kept)
    aside = {one.entry.id for one in told if one.entry.word == SET_ASIDE}
    if not aside:
        return told
    strikes = [one.entry for one in told if one.entry.word == "struck"]
    while more := {one.id for one in strikes if one.about.get("entry") in aside} - aside:
        aside |= more
    return tuple(one for one in told if one.entry.id not in aside)


def standing_aside(kept: Iterable[Kept]) -> tuple[str, ...]:
    """Ids of the entries that set the house aside and are not struck; empty for one in hand."""
    told = tuple(kept)
    if not told:
        return ()
    order = in_order(told, starts_at=told[0].entry.at)
    return tuple(one.id for one in order.happened if one.word == SET_ASIDE)


def over_by(kept: Iterable[Kept], told: Story) -> Over:
    """Whether the log says that nothing is begun any more: the house is handed over or set aside.

    told: the story of the entries that tell of the floor.
    """
    if standing_aside(kept):
        return "set-aside"
    return "handed-over" if told.last("handed-over") is not None else ""


def set_aside(job: str, kept: Iterable[Kept], hand: Hand, *, why: str = "") -> tuple[Entry, ...]:
    """What is entered to set a house aside; nothing where it is aside already."""
    told = tuple(kept)
    if standing_aside(told):
        return ()
    about: dict[str, Plain] = {"why": why} if why else {}
    return (_entry(job, SET_ASIDE, about, hand, _number(told, hand)),)


def bring_back(job: str, kept: Iterable[Kept], hand: Hand) -> tuple[Entry, ...]:
    """What is entered to bring a house back: a strike of all that set it aside."""
    told = tuple(kept)
    first = _number(told, hand)
    return tuple(
        _entry(job, "struck", {"entry": one}, hand, first + n)
        for n, one in enumerate(standing_aside(told))
    )


def _number(kept: tuple[Kept, ...], hand: Hand) -> int:
    """The next number of this device in this log."""
    own = (one.entry.number for one in kept if one.entry.device == hand.device)
    return max(own, default=0) + 1


def _entry(job: str, word: str, about: dict[str, Plain], hand: Hand, number: int) -> Entry:
    return Entry(
        hand.new_id(), job, word, hand.at, who=hand.who, device=hand.device, number=number,
        about=about,
    )  # fmt: skip
