"""What is proved of a cut and an order, in one line that claims no more than that."""

from __future__ import annotations

from math import ceil

from farwall.facts.plan import Proof
from farwall.spray.fields import Cut
from farwall.spray.order import EQUAL_SHARE, Order

_HAIR = 5e-4


def proof_of(cut: Cut, order: Order, *, asked: bool) -> Proof:
    """The proof that goes with a plan. asked: whether the user insisted on the order."""
    return Proof(
        cut_proved=cut.proved,
        cut_gap_cost=round(cut.gap, 4),
        cut_tried=cut.columns,
        order_proved=order.proved,
        order_gap_share=round(order.gap, 4),
        worst_share=round(order.worst_share, 4),
        least_share=round(order.least_share, 4),
        order_asked=asked,
        what=f"{_order_words(order, asked=asked)}; {_cut_words(cut)}",
    )


def _cut_words(cut: Cut) -> str:
    if cut.proved:
        return f"stop lines: the best of {cut.columns} fields tried."
    return f"stop lines: of {cut.columns} fields tried, at most {cut.gap:.1f} could be spared."


def _order_words(order: Order, *, asked: bool) -> str:
    begins = "Order as asked for; by first guesses " if asked else "By first guesses "
    if order.gap <= _HAIR:
        return f"{begins}no order leaves the tightest field more to spare"
    more = f"{_percent(order.gap)} of its budget more"
    if order.worst_share <= order.least_share + EQUAL_SHARE:
        return f"{begins}no order leaves the tightest field over {more}"
    return f"{begins}another order might leave the tightest field up to {more}"


def _percent(share: float) -> str:
    """The share in whole per cent, rounded up: what may be gained is never told too small."""
    return f"{ceil(100 * share - 1e-6)} %"
