"""How long each person wore a respirator, by day, and how long the pair of cartridges on now.

Minutes are those between on and off as entered; never counted twice, whatever was entered twice.
What was forgotten is told in words and taken at the safe end. Pure.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import field
from datetime import datetime, timedelta

from farwall.acid.may import called, is_called
from farwall.facts.workers import Worker
from farwall.job.story.noun import Happened, Story
from farwall.nouns import dataclass

LONGEST_ON_MIN = 720.0
"""Nobody wears one for longer in one go: past that the entry of taking it off was forgotten. A
guess."""
SPRAYER = "sprayer"
"""Who sprays, where the one who entered it gave no name; counts where one person only sprays."""
Spell = tuple[float, float]
_WORDS = ("respirator-on", "respirator-off", "cartridge-changed")


@dataclass(frozen=True)
class Wearing:
    """A person's respirator so far. Minutes of the plan; days by the clock of the house.

    spells: disjoint and rising, the last one up to now where it is `on`. minutes_by_day: of the
    days on which it was worn. pair_min: breathed through the pair on now, in this log alone;
    pair_since_min: when that came on, None for the morning's; pair_limit_min: told with it.
    """

    person: str
    spells: tuple[Spell, ...]
    on: bool
    minutes_by_day: tuple[tuple[str, float], ...]
    pair_min: float
    pair_since_min: float | None = None
    pair_limit_min: float | None = None

    @property
    def minutes(self) -> float:
        """All of it."""
        return sum(end - begin for begin, end in self.spells)


@dataclass
class _Account:
    person: str
    spells: list[Spell] = field(default_factory=list)
    begun: float | None = None
    changed: float | None = None
    limit: float | None = None


def wearing(
    story: Story, *, at_min: float | None = None, workers: Sequence[Worker] = ()
) -> tuple[tuple[Wearing, ...], tuple[str, ...]]:
    """Everybody who is entered, in the order in which they came, and what cannot be so.

    at_min: now; the last thing that happened where it is left out.
    """
    now = story.ends_min if at_min is None else max(at_min, story.ends_min)
    accounts: dict[str, _Account] = {}
    odd: list[str] = []
    for one in story.of(*_WORDS):
        name = person_of(one.text("person"), workers)
        account = accounts.setdefault(name.casefold(), _Account(name))
        odd += _feed(account, one)
    made = tuple(_told(one, now, story.starts_at) for one in accounts.values())
    return made, tuple(dict.fromkeys(odd))


def person_of(text: str, workers: Sequence[Worker]) -> str:
    """What a person is called who is entered so; as it stands where nobody is told of that name."""
    known = next((one for one in workers if is_called(one, text)), None)
    if known is None and text.strip().casefold() == SPRAYER:
        sprayers = [one for one in workers if "sprays" in one.duties]
        known = sprayers[0] if len(sprayers) == 1 else None
    return called(known) if known is not None else text.strip()


def said_of(person: str) -> str:
    """A person inside a sentence: by name, else as who sprays."""
    return f"the {SPRAYER}" if person.casefold() == SPRAYER else person


def _feed(account: _Account, one: Happened) -> Iterator[str]:
    """Take an entry into account; what cannot be so is given back."""
    if one.word == "cartridge-changed":
        account.changed, account.limit = one.at_min, one.number("change_after_min")
        return
    begun, whom = account.begun, said_of(account.person)
    if begun is not None and one.at_min - begun > LONGEST_ON_MIN:
        account.spells.append((begun, begun + LONGEST_ON_MIN))
        account.begun = None
        hours = LONGEST_ON_MIN / 60
        yield (
            f"The respirator of {whom} is told to be on for longer than {hours:.0f} h; "
            f"{hours:.0f} h are counted."
        )
        if one.word == "respirator-off":
            return
        begun = None
    if one.word == "respirator-on":
        if begun is not None:
            yield f"The respirator of {whom} is told to be on twice; the first counts."
            return
        account.begun = one.at_min
    elif begun is None:
        yield f"The respirator of {whom} is told to be off, and was not on."
    else:
        account.spells.append((begun, one.at_min))
        account.begun = None


def _told(account: _Account, now: float, starts_at: str) -> Wearing:
    spells, begun = list(account.spells), account.begun
    on = begun is not None and now - begun <= LONGEST_ON_MIN
    if begun is not None:
        spells.append((begun, min(now, begun + LONGEST_ON_MIN)))
    since = account.changed
    first = spells[0][0] if since is None and spells else since or 0.0
    pair = sum(max(end - max(begin, first), 0.0) for begin, end in spells)
    return Wearing(
        person=account.person,
        spells=tuple(spells),
        on=on,
        minutes_by_day=tuple(_by_day(spells, starts_at).items()),
        pair_min=round(pair, 2),
        pair_since_min=since,
        pair_limit_min=account.limit,
    )


def _by_day(spells: Sequence[Spell], starts_at: str) -> dict[str, float]:
    """Minutes by the day of the house, a spell over midnight parted there."""
    found: dict[str, float] = {}
    start = datetime.fromisoformat(starts_at)
    for begin, end in spells:
        at = begin
        while at < end:
            moment = start + timedelta(minutes=at)
            midnight = moment.replace(hour=0, minute=0, second=0, microsecond=0) + timedelta(days=1)
            until = min(end, (midnight - start).total_seconds() / 60)
            day = moment.date().isoformat()
            found[day] = found.get(day, 0.0) + until - at
            at = until
    return {day: round(minutes, 2) for day, minutes in found.items()}
