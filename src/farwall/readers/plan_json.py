"""A plan file to a `Plan`, and back.

Keys may grow, so that unknown ones are passed over here, unlike in a job: a
plan is made by the tool and not typed by a person. Whether a plan is any good
is not judged here; `spray.check` does that, and reads the file by itself.
"""

from __future__ import annotations

import json
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, cast

from farwall.errors import Mistake, Refused
from farwall.facts.plain import plain
from farwall.facts.plan import PLAN_VERSION, Plan
from farwall.readers import json_text
from farwall.readers.wording import in_words, shown

if TYPE_CHECKING:
    from pydantic import TypeAdapter


def read_plan(path: Path | str) -> Plan:
    """The plan in a file. Raises Refused with every mistake in it."""
    path = Path(path)
    about = f"{path.name} is not a plan."
    return _plan(json_text.parse(json_text.read_text(path), about=about), about)


def plan_from(data: object, about: str) -> Plan:
    """The plan in plain JSON values; `about` names where they come from. Raises Refused."""
    about = f"{about} is not a plan."
    return _plan(json_text.inspect(data, about=about), about)


def plan_to_dict(plan: Plan) -> dict[str, object]:
    """The plan as plain JSON values, every promised key there, `null` where nothing is known."""
    return cast("dict[str, object]", plain(plan))


def plan_to_text(plan: Plan) -> str:
    """The plan as the text of a file."""
    return json.dumps(plan_to_dict(plan), indent=1, ensure_ascii=False, allow_nan=False) + "\n"


@cache
def adapter() -> TypeAdapter[Plan]:
    """Pydantic's checker of a plan, made once and only when a file is read."""
    from pydantic import TypeAdapter

    return TypeAdapter(Plan)


def _plan(parsed: json_text.JsonText, about: str) -> Plan:
    from pydantic import ValidationError

    if parsed.mistakes:
        raise Refused(*parsed.mistakes, about=about)
    if not isinstance(parsed.data, dict):
        what = f"A plan is an object, not {shown(parsed.data)}."
        raise Refused(
            Mistake("", what, "`farwall plan JOB.json --out DIR` makes one."), about=about
        )
    version = parsed.data.get("version")
    if isinstance(version, int) and version > PLAN_VERSION:
        what = f"This plan was made by a later Farwall (version {version})."
        raise Refused(Mistake("version", what, "Use that Farwall."), about=about)
    try:
        return adapter().validate_json(json.dumps(parsed.data), strict=True)
    except ValidationError as error:
        raise Refused(*in_words(error.errors(include_url=False), {}), about=about) from None
