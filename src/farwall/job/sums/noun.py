"""What a sum is: a name, its arguments, and a function from what was given to a result."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

Json = str | int | float | bool | list[object] | dict[str, object] | None
Result = dict[str, Json]
"""Keys as promised to callers; `rank`, `source` and `warnings` always among them."""


@dataclass(frozen=True)
class Bounds:
    """Sensible values in the argument's first unit, both ends included."""

    low: float
    high: float
    above: bool = False
    """Whether the low end itself is left out."""

    def hold(self, value: float) -> bool:
        """Whether `value` is within."""
        return (value > self.low if self.above else value >= self.low) and value <= self.high


@dataclass(frozen=True)
class Argument:
    """One argument. `units` maps the ending of a key to a unit of `unit_table`, SI first.

    A quantity `air` with endings `c` and `f` may be given as `air_c` or
    `air_f` and is handed on as `air_c`. No units: a plain number (`bounds`
    set) or a text. `choices` lists what a text may be. `load` turns a text
    into something else and is supplied by the door (a file into weather).
    several: a list, of texts joined by commas or an array of texts and numbers; may be empty;
    with units each is a number.
    """

    name: str
    units: Mapping[str, str] | None = None
    bounds: Bounds | None = None
    needed: bool = False
    choices: tuple[str, ...] = ()
    loaded: bool = False
    several: bool = False

    @property
    def keys(self) -> dict[str, str | None]:
        """Each key that may be given, with its unit; the first is the one handed on."""
        if self.units is None:
            return {self.name: None}
        return {"_".join(filter(None, (self.name, end))): u for end, u in self.units.items()}

    @property
    def key(self) -> str:
        """The key under which the value is handed on."""
        return next(iter(self.keys))


class Given:
    """The arguments of one sum, checked and in SI, by their first key."""

    def __init__(self, values: Mapping[str, object]) -> None:
        self._values = values

    def __contains__(self, key: str) -> bool:
        return key in self._values

    def number(self, key: str) -> float:
        """A number that is surely there (needed, or asked for after `in`)."""
        value = self._values[key]
        assert isinstance(value, float)
        return value

    def maybe(self, key: str) -> float | None:
        """A number, or None when it was not given."""
        return self.number(key) if key in self._values else None

    def usual(self, key: str, default: float) -> float:
        """A number, or `default` when it was not given."""
        return self.number(key) if key in self._values else default

    def text(self, key: str) -> str | None:
        """A text, or None when it was not given."""
        value = self._values.get(key)
        assert value is None or isinstance(value, str)
        return value

    def texts(self, key: str) -> tuple[str, ...]:
        """A list of texts, empty when it was not given."""
        value = self._values.get(key, ())
        assert isinstance(value, tuple)
        return value

    def numbers(self, key: str) -> tuple[float, ...]:
        """A list of quantities in SI, empty when it was not given."""
        value = self._values.get(key, ())
        assert isinstance(value, tuple)
        return value

    def thing(self, key: str) -> object:
        """What the door made of a text."""
        return self._values[key]


@dataclass(frozen=True)
class Sum:
    """One sum. `one_of` lists groups of first keys of which exactly one must be given."""

    name: str
    what: str
    arguments: Sequence[Argument]
    reckon: Callable[[Given], Result]
    one_of: tuple[tuple[str, ...], ...] = ()


def refuse(where: str, what: str, remedy: str = "") -> Refused:
    """One mistake, ready to be raised."""
    return Refused(Mistake(where, what, remedy))
