"""What work costs and on which terms it is offered, as the firm told. No reckoning here.

Amounts are text, so that no cent is lost in a float. What is left out is taken from the table of
defaults, by its rank.
"""

from __future__ import annotations

from typing import Annotated, Literal

from annotated_types import Ge, Le, MaxLen, MinLen

from farwall.nouns import dataclass

Amount = Annotated[str, MinLen(1), MaxLen(30)]
"""A decimal number as text, such as 1290 or 1290.50."""
Percent = Annotated[float, Ge(0), Le(100)]
_Share = Annotated[float, Ge(0), Le(500)]
_Days = Annotated[int, Ge(0), Le(3650)]
_Word = Annotated[str, MaxLen(200)]

TaxOn = Literal["all", "materials", "labour"]
TaxKind = Literal["standard", "zero", "exempt", "reverse charge", "not subject"]
"""The kinds of EN 16931 (codes S, Z, E, AE, O); a sales tax is `standard` with its own rate."""


@dataclass(frozen=True)
class Tax:
    """A tax that is added: its name on the paper, its rate, and what it is taken of."""

    name: _Word = ""
    percent: Percent = 0.0
    on: TaxOn = "all"
    kind: TaxKind = "standard"
    reason: _Word = ""


@dataclass(frozen=True)
class Rates:
    """What an hour and a visit cost the firm, and what is added to cost.

    labour_per_h: of one person, with insurance and taxes on wages (loaded) · visit: travel of one
    more day on site · overhead_percent, profit_percent: of cost · risk_percent: of cost,
    where the firm takes a flat share instead of what the draws say · least: smallest job that is
    taken · standby_per_h: both people waiting for others · change_per_h and
    change_material_percent: work asked for later · mock_up: one more sample.
    """

    labour_per_h: Amount | None = None
    visit: Amount | None = None
    overhead_percent: _Share | None = None
    profit_percent: _Share | None = None
    risk_percent: _Share | None = None
    least: Amount | None = None
    standby_per_h: Amount | None = None
    change_per_h: Amount | None = None
    change_material_percent: _Share | None = None
    mock_up: Amount | None = None


@dataclass(frozen=True)
class CallBacks:
    """Call-backs of this firm: chance of each kind in per cent, and what one costs."""

    residue_percent: Percent | None = None
    moisture_percent: Percent | None = None
    colour_percent: Percent | None = None
    cost_low: Amount | None = None
    cost: Amount | None = None
    cost_high: Amount | None = None


@dataclass(frozen=True)
class Terms:
    """On which terms a quote stands: what is due when, how long it holds, how it is rounded.

    deposit_percent: due before stain is bought · progress_percent: due when the colour is in and
    rinsed · the rest at hand-over · rounded_to: the step of a quoted figure · warranty_months: of
    workmanship · area_tolerance_percent: beyond it the price is adjusted.
    """

    deposit_percent: Percent | None = None
    progress_percent: Percent | None = None
    pay_days: _Days | None = None
    valid_days: _Days | None = None
    rounded_to: Amount | None = None
    warranty_months: Annotated[int, Ge(0), Le(600)] | None = None
    area_tolerance_percent: Percent | None = None
    restocking_percent: Percent | None = None
    excluded: tuple[_Word, ...] = ()
    included: tuple[_Word, ...] = ()


@dataclass(frozen=True)
class Offer:
    """One of the ways in which the floor is offered: coats, saw cuts, finish, what is left out.

    coats: ids of the job's coats that are laid; none means all · sealer_coats, finish_coats: how
    many · rooms: ids; none means all · added: an amount for what else it holds, such as saw cuts.
    """

    id: Annotated[str, MinLen(1), MaxLen(80)]
    name: _Word = ""
    coats: tuple[str, ...] = ()
    rooms: tuple[str, ...] = ()
    sealer_coats: Annotated[int, Ge(0), Le(6)] | None = None
    finish_coats: Annotated[int, Ge(0), Le(6)] | None = None
    added: Amount | None = None
    words: Annotated[str, MaxLen(600)] = ""
