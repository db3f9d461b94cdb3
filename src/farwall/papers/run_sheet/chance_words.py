"""Chances on the day's page: how often an edge dies or the mix runs short, and what would help."""

from __future__ import annotations

from farwall.facts.plan import Chances, Field, Plan
from farwall.job.chances.words import share_words


def dies(plan: Plan, field: Field) -> str:
    """The chance that an edge of this field dies, as short as it goes; empty where not drawn."""
    if plan.chances is None:
        return ""
    own = [one for one in plan.chances.edge_dies if one.field == field.id]
    return share_words(own[0].chance, under="< ") if own else ""


def how_sure(plan: Plan) -> list[list[str]]:
    """Rows of a figure and its words: any edge, the mix; last what to do about it."""
    chances = plan.chances
    if chances is None or all(field.verdict == "cannot" for field in plan.fields):
        return []
    rows = [
        [share_words(chances.any_edge_dies), "that an edge dies somewhere"],
        [share_words(chances.mix_short), "that the mix runs short inside a field"],
    ]
    help_ = _what_helps(chances)
    return [*rows, ["", help_]] if help_ else rows


def _what_helps(chances: Chances) -> str:
    """What matters most, and what to do about the weightiest input that can be narrowed."""
    most = chances.matters_most[0] if chances.matters_most else None
    if most is None or most.share <= 0:
        return ""
    if most.what_to_do:
        return f"Most of it hangs on the {most.input}. {most.what_to_do}"
    other = next((one for one in chances.matters_most if one.what_to_do and one.share > 0.05), None)
    said = f"Most of it hangs on the {most.input} ({most.rank})."
    return f"{said} {other.what_to_do}" if other else said
