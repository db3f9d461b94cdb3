"""The van after a job: uses counted, tips as measured, what was used taken off."""

from __future__ import annotations

from dataclasses import replace

from farwall.errors import Mistake, Refused
from farwall.facts.van import Flow, Stock, UsedUp, Van, VanSprayer
from farwall.job.van.say import amount_words
from farwall.job.van.shopping import HAIR, same


def after(van: Van, used: UsedUp) -> tuple[Van, tuple[str, ...]]:
    """The van as it then is, and what did not add up, in words.

    More used than was there empties the shelf and is told: what was bought on the way is
    not in the van's list. Raises Refused for names that the van does not have.
    """
    _insist_known(van, used)
    flows = dict(used.flows)
    sprayers = tuple(_sprayed(one, used, flows.get(one.id)) for one in van.sprayers)
    stock, odd = {one.id: one for one in van.stock}, []
    for name, amount in used.things:
        left = stock[name].amount - amount
        if left < -HAIR:
            odd.append(f"{amount:g} of {name} were used and {stock[name].amount:g} were there.")
        stock[name] = replace(stock[name], amount=round(max(left, 0.0), 4))
    for stain, lot, litres in used.stains:
        short_l = _pour(stock, stain, lot, litres, used.on)
        if short_l > HAIR:
            of_lot = f" of lot {lot}" if lot else ""
            odd.append(
                f"{amount_words(short_l, 'l')} of {stain}{of_lot} more were used than were there."
                + _lots_there(van, stain, lot)
            )
    return Van(sprayers, tuple(stock[one.id] for one in van.stock), van.version), tuple(odd)


def _sprayed(one: VanSprayer, used: UsedUp, flow: float | None) -> VanSprayer:
    uses = one.uses + (one.id in used.sprayers)
    if flow is None:
        return replace(one, uses=uses)
    return replace(one, uses=uses, flows=(*one.flows, Flow(used.on, flow, uses)))


def _pour(stock: dict[str, Stock], stain: str, lot: str, litres: float, on: str) -> float:
    """Take litres off the shelf, opened containers first; what could not be taken. [L]"""
    own = [
        one
        for one in stock.values()
        if one.kind == "stain" and same(one.of, stain) and (not lot or one.lot == lot)
    ]
    own.sort(key=lambda one: (not one.opened, one.opened, one.id))
    for one in own:
        taken = min(one.amount, litres)
        if taken > 0:
            left = round(one.amount - taken, 4)
            stock[one.id] = replace(one, amount=left, opened=one.opened or on)
            litres -= taken
    return litres


def _lots_there(van: Van, stain: str, lot: str) -> str:
    """Which lots there are, where the one that was told is none of them."""
    own = [one for one in van.stock if one.kind == "stain" and same(one.of, stain)]
    lots = {one.lot for one in own if one.lot}
    return f" The van's list has lot {_listed(lots)} of it." if lots and lot not in lots else ""


def _insist_known(van: Van, used: UsedUp) -> None:
    sprayers = {one.id for one in van.sprayers}
    stock = {one.id for one in van.stock}
    mistakes = [
        Mistake(name, "no sprayer of this name is in the van.", f"It has {_listed(sprayers)}.")
        for name in dict.fromkeys((*used.sprayers, *(name for name, _ in used.flows)))
        if name not in sprayers
    ]
    mistakes += [
        Mistake(name, "nothing of this name is in the van.", f"It has {_listed(stock)}.")
        for name, _ in used.things
        if name not in stock
    ]
    if mistakes:
        raise Refused(*mistakes)


def _listed(names: set[str]) -> str:
    return ", ".join(sorted(names)) or "none"
