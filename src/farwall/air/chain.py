"""A chain of nodes that pass heat to their neighbours, stepped implicitly in time.

One dimension: each node holds heat, is tied to the next one, and may be tied
to something outside whose warmth is known. A slab on its ground is such a
chain; so are walls, air, slab and ground of a house together, in this order.
"""

from __future__ import annotations

from collections.abc import Sequence

from farwall.nouns import dataclass

BACKWARD_EULER, CRANK_NICOLSON = 1.0, 0.5


@dataclass(frozen=True)
class Chain:
    """`holds_j_m2k` of each node, and `between_w_m2k` from each to the next (one fewer)."""

    holds_j_m2k: tuple[float, ...]
    between_w_m2k: tuple[float, ...]


def stepped(
    chain: Chain,
    warmth_c: Sequence[float],
    *,
    step_s: float,
    ties_w_m2k: Sequence[float],
    given_w_m2: Sequence[float],
    share_new: float = CRANK_NICOLSON,
) -> list[float]:
    """Temperatures one step later. [°C]

    warmth_c: now, one a node. ties_w_m2k: conductance from each node to the
    outside. given_w_m2: heat that reaches each node, its tie times the warmth
    outside included, as its mean over the step. share_new: 1 is backward Euler
    (first order in time, no ringing), 0.5 Crank and Nicolson (second order).
    Stable for any step. Both schemes are textbook; the system is solved by
    elimination along the chain (exact, no pivots: it is diagonally dominant).
    """
    count = len(warmth_c)
    between = chain.between_w_m2k
    above, right = [0.0] * count, [0.0] * count
    old = 1.0 - share_new
    before, before_tie = 0.0, 0.0
    for n in range(count):
        here = warmth_c[n]
        tie = between[n] if n < count - 1 else 0.0
        after = warmth_c[n + 1] if n < count - 1 else 0.0
        inert = chain.holds_j_m2k[n] / step_s
        leaves = before_tie + tie + ties_w_m2k[n]
        known = inert * here + given_w_m2[n]
        if old:
            known += old * (before_tie * before + tie * after - leaves * here)
        pull = share_new * before_tie
        diagonal = inert + share_new * leaves
        if n:
            diagonal -= pull * above[n - 1]
            known += pull * right[n - 1]
        above[n] = share_new * tie / diagonal
        right[n] = known / diagonal
        before, before_tie = here, tie
    for n in range(count - 2, -1, -1):
        right[n] += above[n] * right[n + 1]
    return right


def joined(*chains: Chain, ties_w_m2k: Sequence[float]) -> Chain:
    """Chains end to end, tied by these conductances (one fewer than chains)."""
    holds = tuple(one for chain in chains for one in chain.holds_j_m2k)
    between: list[float] = []
    for n, chain in enumerate(chains):
        between += chain.between_w_m2k
        if n < len(chains) - 1:
            between.append(ties_w_m2k[n])
    return Chain(holds, tuple(between))
