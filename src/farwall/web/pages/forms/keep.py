"""New facts kept as a new version, unless somebody else kept others since the form was made."""

from __future__ import annotations

import asyncio
from collections.abc import Mapping
from typing import Any

from farwall.web.door import Door
from farwall.web.pages.beside import sums_of
from farwall.web.pages.fact_form import facts_in_words
from farwall.web.pages.figures import BEFORE, noted
from farwall.web.pages.forms.asked import asked_of
from farwall.web.pages.forms.nouns import Form
from farwall.web.pages.forms.told import Slip, Wrong, changed_facts
from farwall.web.pages.shown import State
from farwall.web.people.who import name_of_who
from farwall.web.words import said


async def keep_form(door: Door, form: Form, state: State, told: Mapping[str, Any]) -> bool:
    """Keep what was typed; False when the facts say that already.

    Raises Wrong with all mistakes, and when the facts have changed since the form was made.
    """
    facts = await asyncio.to_thread(door.book.facts, state.id, state.version)
    if str(told.get("version", "")) != str(state.version):
        raise changed_by_other()
    changed = await asyncio.to_thread(changed_facts, asked_of(form, facts), facts, told)
    if changed is None:
        return False
    await keep_facts(door, state, changed)
    return True


async def keep_facts(door: Door, state: State, changed: Mapping[str, Any]) -> None:
    """Keep facts after those of `state`, with a note of the plan before. Raises Wrong."""
    now, book, who = door.now(), door.book, name_of_who()

    def keep() -> None:
        if book.versions(state.id)[-1].version != state.version:
            raise changed_by_other()
        book.put_facts(state.id, changed, who=who, at=now, name=str(changed.get("name", "")))
        if state.shown is not None and state.fresh:
            shown = state.shown
            note = noted(
                shown.figures, version=shown.version, starts_at=shown.plan.starts_at,
                told=facts_in_words(shown.job),
            ) | sums_of(shown.plan)  # fmt: skip
            book.put_document(BEFORE, state.id, note)

    await door.written(keep)


def changed_by_other() -> Wrong:
    """What is told to whoever typed into older facts."""
    return Wrong([Slip("", "", said("facts-other"))])
