"""What the page of the van shows: its open form, what a house needs of it, what a job took."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from farwall.errors import FarwallError, Mistake, Refused, mistakes_of
from farwall.facts.plain import plain
from farwall.facts.van import UsedUp, Van
from farwall.papers.wall_clock import Units
from farwall.store.nouns import NoSuchJob
from farwall.web.pages.shown import Kept
from farwall.web.pages.van_form import flow_named, shown_amount, shown_tank
from farwall.web.pages.van_words import (
    buy_told,
    stock_told,
    take_told,
    there_told,
    thing_name,
    used_told,
)
from farwall.web.words import said

Json = dict[str, Any]
_FIELDS = (
    "id", "kind", "tank", "tip", "uses", "seals_at", "flow", "unsound", "amount", "unit", "of",
    "lot", "good_until", "opened",
)  # fmt: skip
_BLANK: Json = dict.fromkeys(_FIELDS, "")
TAKEN_OFF = "van-after"
"""Kind of document: by job, that what it used was taken off the van."""


def used_of(plans: Kept, job: str, now: Van) -> UsedUp:
    """What a job took by its log. Raises NoSuchJob, Refused."""
    from farwall.job.story import story
    from farwall.job.van.used import used_up

    shown = plans.state(job).shown
    if shown is None:
        raise Refused(Mistake(job, said("van-after-no-plan")))
    return used_up(shown.plan, story(shown.plan, plans.book.entries(job)), now)


def form_shown(
    found: Van, asked: Mapping[str, str], typed: Mapping[str, str] | None, units: Units
) -> Json:
    """The form that is open: which, and what stands in it; empty for none."""
    sprayer = next((one for one in found.sprayers if one.id == asked.get("edit")), None)
    stock = next((one for one in found.stock if one.id == asked.get("edit")), None)
    which = asked.get("new", "")
    told: Json = {}
    if sprayer is not None:
        which = "sprayer"
        told = {
            "id": sprayer.id, "kind": sprayer.kind, "tank": shown_tank(sprayer.tank_l, units),
            "tip": sprayer.tip, "uses": sprayer.uses, "seals_at": sprayer.seals_at,
            "unsound": sprayer.unsound,
        }  # fmt: skip
    elif stock is not None:
        which = "stock"
        amount, unit = shown_amount(stock, units)
        told = {**plain(stock), "amount": amount, "unit": unit}  # type: ignore[dict-item]
    if which not in {"sprayer", "stock"}:
        return {}
    stands = {**_BLANK, **told, **(typed or {})}
    was = told.get("id", "")
    return {"which": which, "was": was, "told": stands, "flow": flow_named(units)}


def needs_shown(plans: Kept, found: Van, job: str, names: Mapping[str, str], units: Units) -> Json:
    """What a house needs of the van, as `farwall van --job` says it."""
    from farwall.job.van.van_plan import van_plan

    if job not in names:
        return {}
    shown = plans.state(job).shown
    if shown is None:
        return {"name": names[job], "id": job, "none": said("van-no-plan")}
    plan = van_plan(found, shown.plan, shown.job)
    return {
        "name": names[job], "id": job, "none": "", "take": take_told(plan),
        "sound": bool(plan.sprayer and plan.spare), "mind": plan.mind,
        "there": [there_told(one, units) for one in plan.shopping if not one.buy],
        "buy": [buy_told(one, units) for one in plan.shopping if one.buy],
    }  # fmt: skip


def took_shown(plans: Kept, found: Van, job: str, names: Mapping[str, str], units: Units) -> Json:
    """What a closed job took, to be asked first."""
    from farwall.job.van.after import after

    if job not in names:
        return {}
    done = plans.book.document(TAKEN_OFF, job)
    if done is not None:
        return {"name": names[job], "id": job, "done": done, "trouble": []}
    try:
        used = used_of(plans, job, found)
        then, odd = after(found, used)
    except (FarwallError, NoSuchJob) as error:
        return {"name": names[job], "id": job, "done": None, "trouble": mistakes_of(error)}
    was = {one.id: one for one in found.stock}
    changed = [f"{one.id}: {stock_told(one, units)}" for one in then.stock if one != was[one.id]]
    things = [(one.id, thing_name(one.kind), one.unit) for one in found.stock
              if one.kind != "stain"]  # fmt: skip
    return {
        "name": names[job], "id": job, "done": None, "trouble": [],
        "used": list(used_told(used, units)), "then": changed, "odd": odd, "things": things,
    }  # fmt: skip
