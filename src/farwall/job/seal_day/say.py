"""A seal day in a few calm lines."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta

from farwall.days.words import date_words
from farwall.facts.numbered import numbered
from farwall.facts.plan import Clock, Plan
from farwall.job.seal_day.noun import CoatHours, Sealing
from farwall.job.sealing import WHICH
from farwall.job.way_words import rooms_text
from farwall.units import clock_words, gal_from_l, volume_words

_WORDS = {"no": "NO", "go with": "Go, with what is listed", "go": "Go"}


def said(plan: Plan, sealing: Sealing, faults: Sequence[str], *, folder: str, us: bool) -> str:
    """Verdict first, then hours, fields, crossing, waits; what stands against it; what to open.

    us: hours by am and pm.
    """
    name = sealing.sealer.type or "a sealer nobody named"
    neat = f"{name[0].upper()}{name[1:]}, neat"
    lines = [f"{plan.job or 'The job'}: {_WORDS[sealing.verdict]}. {neat}."]
    if sealing.sealer.type is None:
        lines.append(f"  {WHICH}")
    lines += [f"  NO: {one}" for one in sealing.against]
    lines += [
        f"  {'NO' if one.word == 'no' else 'Mind'}: {one.what} {one.change}"
        for one in sealing.reasons
    ]
    lines += [f"  Mind: {one}" for one in minded(plan, sealing)]
    lines.append(f"  {_dried(sealing, us=us)}")
    for coat in sealing.coats:
        lines += _coat(plan, coat, sealing, us=us)
    lines += [f"  {_wait(one, plan, us=us)}" for one in plan.clocks if one.begins_min and one.coat
              == sealing.coats[-1].coat and one.name != "wet edge"]  # fmt: skip
    patch = sealing.test_patch
    lines.append(
        f"Test patch first: {rooms_text(plan, [patch.room])}, laid by {_at(patch.lay_by, us=us)}, "
        f"tried {_at(patch.try_at, us=us)}."
    )
    if sealing.verdict == "no":
        lines.append("So nothing here may be sealed as it stands.")
    elif faults:
        lines.append("The replay on the floor found:")
        lines += [f"  {fault}" for fault in faults[:12]]
    else:
        lines.append(
            "Replayed on the floor: nobody steps on wet sealer, no edge outlives its time."
        )
    lines.append(f"Open {folder}/seal-sheet.pdf; seal.svg lies beside it.")
    lines.append(plan.cautions[0])
    return "\n".join(lines)


def minded(plan: Plan, sealing: Sealing) -> tuple[str, ...]:
    """What the plan of a seal day warns of and the verdict's own reasons do not say already."""
    said_already = {*sealing.against, *(f"{o.what} {o.change}".strip() for o in sealing.reasons)}
    return tuple(one for one in plan.warnings if one not in said_already)


def _dried(sealing: Sealing, *, us: bool) -> str:
    dried = sealing.dried_down
    if dried.asked_from:
        return f"Told as dry from {_at(dried.not_before, us=us)}."
    likely = f", likely {_at(dried.at_likely, us=us)}" if dried.at_likely else ""
    late = _at(dried.at_high, us=us) if dried.at_high else "later than its clock counts"
    return f"Dried down by its clock at the late end {late}{likely}; the floor itself wins."


def _coat(plan: Plan, coat: CoatHours, sealing: Sealing, *, us: bool) -> list[str]:
    fields = [one for one in plan.fields if one.coat == coat.coat]
    begins, ends = _at(coat.begins_at, us=us), datetime.fromisoformat(coat.ends_at)
    cans = " and ".join(f"{one['count']} × {_size(one['size_l'])}" for one in coat.open_containers)
    opened = f" ({cans})" if cans else ", left of the last"
    words = [
        (
            f"Coat {numbered(plan, coat.coat)}: {begins} to {clock_words(ends, us=us)}, "
            f"{volume_words(coat.likely_l)} likely, {volume_words(coat.open_l)} opened before "
            f"it{opened}, {volume_words(coat.ready_l)} at hand."
        )
    ]
    if coat.word == "care":
        words.append(f"  With care: {'; '.join(coat.reasons)}")
    lost = [one for one in fields if one.verdict in {"two", "stop-line", "cannot"}]
    helped = [one for one in fields if one.verdict == "helper"]
    if sealing.verdict != "no" or not lost:
        words.append(
            f"  {len(fields)} fields"
            + (f", {len(helped)} only with the helper" if helped else "")
            + (f", {len(lost)} CANNOT be done like this" if lost else "")
        )
    crossed = [one for one in coat.crossings if one.crossed]
    if coat.crossings:
        words.append(f"  crossed over the coat below in {len(crossed)} of {len(fields)} fields")
    words += [
        f"  not crossed in {rooms_text(plan, one.rooms)}: {one.why}"
        for one in coat.crossings
        if not one.crossed
    ]
    if coat.recoat is not None and coat.abrade is not None:
        start, ended = datetime.fromisoformat(coat.begins_at), ends
        low = ended + timedelta(minutes=coat.recoat.low_min)
        high = coat.recoat.high_min
        late = (
            f", surely {_moment(ended + timedelta(minutes=high), us=us)}"
            if high is not None
            else ""
        )
        until = start + timedelta(minutes=coat.abrade.low_min)
        words.append(
            f"  next coat from {_moment(low, us=us)}{late}; "
            f"after {_moment(until, us=us)} abrade it first"
        )
    return words


def _wait(clock: Clock, plan: Plan, *, us: bool) -> str:
    start = datetime.fromisoformat(plan.starts_at) + timedelta(minutes=clock.begins_min or 0.0)
    low, late = clock.low_min, clock.high_min if clock.high_min is not None else clock.low_min
    if late == low:
        return f"{clock.name}: {_moment(start + timedelta(minutes=low), us=us)} ({clock.rank})"
    return (
        f"{clock.name}: {_moment(start + timedelta(minutes=low), us=us)} at the earliest, "
        f"{_moment(start + timedelta(minutes=late), us=us)} at the late end ({clock.rank})"
    )


def _at(moment: str, *, us: bool) -> str:
    return _moment(datetime.fromisoformat(moment), us=us)


def _moment(at: datetime, *, us: bool) -> str:
    """`Mon 18 May 8:05` (`8:05 am`), rounded to the minute as on the sheet."""
    at = (at + timedelta(seconds=30)).replace(second=0, microsecond=0)
    return f"{date_words(at)} {clock_words(at, us=us)}"


def _size(litres: object) -> str:
    return f"{gal_from_l(float(str(litres))):.3g} gal"
