"""What is left of the mix: tub and tanks from what was mixed, filled, weighed. Pure.

Spraying empties tanks only, filling moves from tub to tank, mixing adds to the tub. What cannot be
told from the entries is unknown and not guessed.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import field

from farwall.facts.numbered import numbered
from farwall.facts.plan import Band, Plan
from farwall.job.story.noun import Happened, Level
from farwall.job.story.spraying import Spraying
from farwall.job.story.whose import two_spray, whose
from farwall.nouns import dataclass

HAIR_L = 0.05
"""A slip of reading a scale is no contradiction. Rank: guess."""
FULLER, MORE_MIXED = 1.2, 2.0
"""A tank filled to its brim holds more than its mark; a coat that takes twice its plan is rather a
slip of the finger (59 for 5.9). Beyond these it is asked about. Rank: guess."""

_HANDS = ("1", "2")


@dataclass
class CoatLitres:
    """The account of one coat: None where it is not known."""

    coat: str
    mixed_l: float = 0.0
    mixed_told: bool = False
    filled_l: float | None = None
    tub_l: float | None = 0.0
    tanks: dict[str, float | None] = field(default_factory=dict)
    levels: list[Level] = field(default_factory=list)
    left_over_l: float | None = None
    tub_look: Level | None = None

    @property
    def tank_l(self) -> float | None:
        """All tanks together."""
        known = [one for one in self.tanks.values() if one is not None]
        return sum(known) if len(known) == len(self.tanks) else None


class Litres:
    """The accounts of all coats while a log is gone through; `spraying` is fed before.

    Where two spray each tank is known apart, and all that is left only where both are. names: whose
    tank is called how.
    """

    def __init__(
        self, plan: Plan, spraying: Spraying, names: Mapping[str, int] | None = None
    ) -> None:
        self._plan = plan
        self._spraying = spraying
        self._two = two_spray(plan)
        self._names = names or {}
        self._slots: dict[str, str] = {}
        """Names of which nobody told whose they are: each is one of the two tanks."""
        self.coats: dict[str, CoatLitres] = {}
        self.contradictions: list[str] = []
        self._bands = 0

    def feed(self, one: Happened) -> None:
        """Take what happened into account."""
        account = self._account(self._coat(one))
        if account is None:
            return
        if len(self._spraying.done) > self._bands:
            new = list(self._spraying.done)[self._bands :]
            self._bands = len(self._spraying.done)
            self._emptied(account, new)
        if one.word == "mixed":
            self._mixed(account, one)
        elif one.word == "filled":
            self._filled(account, one)
        elif one.word == "tank-empty":
            self._holds(account, one, 0.0)
        self._told(account, one)
        self._level(account, one)

    def _coat(self, one: Happened) -> str:
        if one.word == "mixed":
            return one.text("coat")
        return self._spraying.coat

    def _account(self, coat: str) -> CoatLitres | None:
        if coat not in {each.id for each in self._plan.inputs.coats}:
            return None
        if coat not in self.coats:
            tanks: dict[str, float | None] = dict.fromkeys(_HANDS if self._two else ("",), 0.0)
            self.coats[coat] = CoatLitres(coat, tanks=tanks)
        return self.coats[coat]

    def _tank(self, one: Happened) -> str:
        """Which tank is meant, empty where it may be either's; with one sprayer there is one."""
        if not self._two:
            return ""
        done = self._spraying.done
        hand = whose(self._plan, self._coat(one), one, names=self._names, done=done)
        if hand is not None:
            return str(hand)
        name = one.text("sprayer")
        if name and name not in self._slots and len(self._slots) < len(_HANDS):
            self._slots[name] = next(h for h in _HANDS if h not in self._slots.values())
        return self._slots.get(name, "")

    def _holds(self, account: CoatLitres, one: Happened, litres: float | None) -> None:
        """That a tank holds so much; where it may be either's, of neither is anything known."""
        tank = self._tank(one)
        if self._two and not tank:
            account.tanks = dict.fromkeys(_HANDS, None)
        else:
            account.tanks[tank] = litres

    def _emptied(self, account: CoatLitres, bands: Sequence[str]) -> None:
        """Bands were sprayed: what is in those tanks is unknown until it is told."""
        hands = {str(self._band(name).sprayer) for name in bands}
        for name in list(account.tanks):
            if not self._two or self._slots or name in hands:
                account.tanks[name] = None

    def _mixed(self, account: CoatLitres, one: Happened) -> None:
        litres = one.number("litres") or 0.0
        planned_l = self._planned_l(account.coat)
        if account.mixed_l + litres > MORE_MIXED * planned_l > 0:
            self.contradictions.append(
                f"Coat {self._number(account)}: {account.mixed_l + litres:.1f} L are told to be "
                f"mixed, and it takes {planned_l:.1f} L by the plan; is a figure or its unit wrong?"
            )
        account.mixed_l += litres
        account.mixed_told = True
        if account.tub_l is not None:
            account.tub_l += litres

    def _filled(self, account: CoatLitres, one: Happened) -> None:
        tank = self._tank(one)
        before = account.tanks.get(tank, None if self._two else 0.0)
        litres, after = one.number("litres"), one.number("tank_l")
        if litres is None and after is not None and before is not None and after >= before:
            litres = after - before  # less than was in it: then more was sprayed than is entered
        self._holds(account, one, None if litres is None or before is None else before + litres)
        if litres is None:
            account.tub_l = None
            return
        account.filled_l = (account.filled_l or 0.0) + litres
        if account.tub_l is None or not account.mixed_told:
            return
        account.tub_l = round(account.tub_l - litres, 4)
        if account.tub_l < -HAIR_L and one.number("tub_l") is None:
            self.contradictions.append(
                f"Coat {self._number(account)}: more was filled than was mixed, by "
                f"{-account.tub_l:.1f} L; a batch or a weighing is missing."
            )
            account.tub_l = None
        elif account.tub_l < 0:
            account.tub_l = 0.0

    def _told(self, account: CoatLitres, one: Happened) -> None:
        tank, tub = one.number("tank_l"), one.number("tub_l")
        over = one.number("left_over_l")
        if tank is not None:
            self._holds(account, one, tank)
            self._too_full(account, tank)
        if tub is not None:
            account.tub_l = tub
        if over is not None:
            account.left_over_l = account.tub_l = over
            account.tanks = dict.fromkeys(account.tanks or {"": 0.0}, 0.0)

    def _level(self, account: CoatLitres, one: Happened) -> None:
        """Everything known now, and something told just now: a level."""
        said = one.word in {"tank-empty", "mixed"} or any(
            one.number(key) is not None for key in ("tank_l", "tub_l", "left_over_l")
        )
        tank, tub = account.tank_l, account.tub_l
        if said and tank is None and tub is not None and one.number("tub_l") is not None:
            account.tub_look = self._looked(account, one, tub, 0.0)
            self._more_than_mixed(account, account.tub_look)
        if not said or tank is None or tub is None or not account.tanks:
            return
        if not account.mixed_told and one.number("tub_l") is None and not account.levels:
            return  # a tub of which nothing was ever said
        level = self._looked(account, one, tub, tank)
        self._more_than_mixed(account, level)
        account.levels.append(level)
        account.tub_look = None

    def _more_than_mixed(self, account: CoatLitres, level: Level) -> None:
        if account.mixed_told and level.hand_l > account.mixed_l + HAIR_L:
            self.contradictions.append(
                f"Coat {self._number(account)}: {level.hand_l:.1f} L are told to be left, and only "
                f"{account.mixed_l:.1f} L were mixed; a batch is missing, or a figure is wrong."
            )

    def _looked(self, account: CoatLitres, one: Happened, tub_l: float, tank_l: float) -> Level:
        """What tub and tanks held then, beside what was done by then."""
        done = [name for name in self._spraying.done if self._owns(account.coat, name)]
        bands = [self._band(name) for name in done]
        return Level(
            one.at_min,
            account.mixed_l,
            round(tub_l, 4),
            round(tank_l, 4),
            len(bands),
            round(sum(band.litres for band in bands), 4),
            round(sum(band.polygon.shape.area for band in bands), 4),
        )

    def _too_full(self, account: CoatLitres, tank_l: float) -> None:
        holds_l = self._plan.inputs.tools.tank_l
        if tank_l > FULLER * holds_l:
            self.contradictions.append(
                f"Coat {self._number(account)}: {tank_l:.1f} L are told to be in a tank that takes "
                f"{holds_l:.1f} L; is a figure or its unit wrong?"
            )

    def _planned_l(self, coat: str) -> float:
        """What the coat takes by the plan, with what is left for another day. [L]"""
        every = (*self._plan.fields, *self._plan.left)
        return sum(band.litres for one in every if one.coat == coat for band in one.bands)

    def _number(self, account: CoatLitres) -> str:
        return numbered(self._spraying.plan, account.coat)

    def _owns(self, coat: str, band: str) -> bool:
        return self._spraying.owner[band].coat == coat

    def _band(self, name: str) -> Band:
        return next(b for b in self._spraying.owner[name].bands if b.id == name)
