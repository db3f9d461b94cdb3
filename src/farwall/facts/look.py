"""Looks inside a field: when tub and tank are read, and what is then mixed. Litres, minutes."""

from __future__ import annotations

from typing import Literal

from farwall.nouns import dataclass

WayName = Literal["look inside", "in parts", "at stop lines"]
"""look inside: little in the morning, more at stop lines, the last field looked into · in parts:
the same, but the last field is too small to be looked into · at stop lines: all that is likely in
the morning, the last field's reserve at its stop line."""


@dataclass(frozen=True)
class MixWay:
    """How the mix of a coat is made, and by which facts that way was taken."""

    coat: str
    way: WayName
    why: str

    @property
    def lean(self) -> bool:
        """Whether it is mixed little by little."""
        return self.way != "at stop lines"


@dataclass(frozen=True)
class LookRow:
    """With `left_l` in tub and tank, `mix_l` is mixed and boxed with it."""

    left_l: float
    mix_l: float


@dataclass(frozen=True)
class LookIf:
    """What a look says where `factor` times the planned litres were used before the field.

    The field is begun on `begin_l`. With `go_on_l` or more left one goes on; with less `rows` say
    what to mix; with less than `keep_l` a batch can no longer be boxed in time.
    """

    factor: float
    begin_l: float
    go_on_l: float
    keep_l: float
    rows: tuple[LookRow, ...]


@dataclass(frozen=True)
class Look:
    """A look into a field before band `band`, once band `after` is done.

    `ready_min`: a batch begun at `at_min` is boxed, slack counted. Planned litres of the field:
    `done_l` before the look, `until_ready_l` up to `ready_min`, `to_do_l` after the look.
    `bears`: so many times the planned litres may the field take from its start, and something is
    left to box with at `ready_min`; `mixes`: by the plan it is this look that mixes.
    """

    coat: str
    field: str
    band: str
    after: str
    at_min: float
    ready_min: float
    done_l: float
    until_ready_l: float
    to_do_l: float
    begin_l: float
    bears: float
    mixes: bool
    ifs: tuple[LookIf, ...]
