"""People and what they did back out of open formats: without passwords, which never went in."""

from __future__ import annotations

from typing import Any

from farwall.errors import Mistake, Refused
from farwall.store.canonical import canonical, id_mistakes, text_mistakes, time_mistakes
from farwall.store.comings import done_row
from farwall.store.people_nouns import ROLES, known_as

Row = dict[str, Any]


def person_from(line: Row, known: set[str]) -> Row:
    """The row of a person. known: the names so far, to which theirs is added. Raises Refused."""
    name, role, ended = str(line["name"]), line["role"], str(line["ended_at"])
    wrong = [*id_mistakes("id", str(line["id"])), *text_mistakes("name", name)]
    wrong += time_mistakes("made_at", line["made_at"])
    wrong += time_mistakes("ended_at", ended) if ended else []
    if role not in ROLES:
        wrong.append(Mistake("role", f"{role!r} is none.", f"Say one of {', '.join(ROLES)}."))
    if not known_as(name) or known_as(name) in known:
        wrong.append(Mistake("name", "is empty, or another person bears it."))
    if wrong:
        raise Refused(*wrong)
    known.add(known_as(name))
    told = {"id": str(line["id"]), "name": name, "known_as": known_as(name), "role": role}
    at = {"made_at": line["made_at"], "ended_at": ended, "seen_s": 0.0}
    return {**told, **at, "password": ""}


def done_from(line: Row, deeds: list[str]) -> Row:
    """The row of a deed. deeds: the hashes so far, to which its own is added. Raises Refused."""
    due, number = len(deeds) + 1, line["number"]
    wrong = time_mistakes("at", line["at"])
    if number != due:
        what = f"{due} is due, {number} stands there."
        wrong.append(Mistake("number", what, "Is a line missing?"))
    if wrong:
        raise Refused(*wrong)
    body = canonical(dict(line["about"]), where="about")
    who, word, before = str(line["who"]), str(line["word"]), deeds[-1] if deeds else ""
    row = done_row(due, (line["at"], who, word, body), before)
    deeds.append(row["hash"])
    return row
