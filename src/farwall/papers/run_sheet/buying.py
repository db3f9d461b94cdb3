"""What was reckoned about mixing and buying, as the papers read it from the plan."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import field

from farwall.facts.plan import Plan
from farwall.nouns import dataclass


@dataclass(frozen=True)
class Gate:
    """Litres to have in tanks and tub before a field is begun.

    `thirsty` gives the litres for a slab that drank `factor` times the plan so far.
    """

    start_l: float
    thirsty: tuple[tuple[float, float], ...] = ()


@dataclass(frozen=True)
class Container:
    """So many containers of one size of one stain, each at a price in words."""

    stain: str
    size_l: float
    count: int
    price: str


@dataclass(frozen=True)
class UsualRule:
    """What the usual rule mixes for a coat, in litres, and its chances of running dry, 0 to 1."""

    coat: str
    low_l: float
    high_l: float
    chance_dry_low: float
    chance_dry_high: float


@dataclass(frozen=True)
class Buying:
    """The free dict `plan.buying`, read. Keys it may have, none of them required:

    - `certainty_percent`: how sure the gates are, for the whole job
    - `stains`: list of `{stain, containers: [{size_l, count, price}], cost, currency, boxed, lots}`
    - `gates`: list of `{field, start_l, starts: [{factor, start_l}]}`
    - `usual_rule`: list of `{coat, low_l, high_l, chance_dry_low, chance_dry_high}`

    Litres of cut mix; chances from 0 to 1; money as text. Other keys are passed over.
    """

    certainty_percent: float | None = None
    containers: tuple[Container, ...] = ()
    costs: tuple[str, ...] = ()
    boxed: tuple[str, ...] = ()
    gates: Mapping[str, Gate] = field(default_factory=dict)
    usual_rule: tuple[UsualRule, ...] = ()

    @classmethod
    def of(cls, plan: Plan, *, gates: Sequence[Mapping[str, object]] | None = None) -> Buying:
        """Read a plan's dict; `gates` wins over its own."""
        free: Mapping[str, object] = plan.buying or {}
        stains = _rows(free.get("stains"))
        certainty = free.get("certainty_percent")
        return cls(
            certainty_percent=None if certainty is None else _number(certainty),
            containers=tuple(
                _container(str(stain.get("stain") or ""), row)
                for stain in stains
                for row in _rows(stain.get("containers"))
            ),
            costs=tuple(
                f"{stain['cost']} {stain.get('currency') or 'USD'}"
                for stain in stains
                if stain.get("cost")
            ),
            boxed=tuple(str(stain.get("stain")) for stain in stains if stain.get("boxed")),
            gates={
                str(row.get("field")): _gate(row)
                for row in (gates if gates is not None else _rows(free.get("gates")))
            },
            usual_rule=tuple(_usual(row) for row in _rows(free.get("usual_rule"))),
        )


def _rows(value: object) -> list[Mapping[str, object]]:
    if not isinstance(value, list | tuple):
        return []
    return [row for row in value if isinstance(row, Mapping)]


def _number(value: object) -> float:
    return float(value) if isinstance(value, int | float | str) else 0.0


def _container(stain: str, row: Mapping[str, object]) -> Container:
    return Container(
        stain=stain,
        size_l=_number(row.get("size_l")),
        count=int(_number(row.get("count"))),
        price=str(row.get("price") or ""),
    )


def _gate(row: Mapping[str, object]) -> Gate:
    return Gate(
        start_l=_number(row.get("start_l")),
        thirsty=tuple(
            (_number(step.get("factor")), _number(step.get("start_l")))
            for step in _rows(row.get("starts"))
        ),
    )


def _usual(row: Mapping[str, object]) -> UsualRule:
    return UsualRule(
        str(row.get("coat") or ""),
        *(
            _number(row.get(key))
            for key in ("low_l", "high_l", "chance_dry_low", "chance_dry_high")
        ),
    )
