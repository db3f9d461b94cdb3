"""The wash-day sheet as PDF: words of each page as JSON, laid out by the template."""

from __future__ import annotations

import json
from datetime import datetime
from importlib.resources import files
from pathlib import Path
from typing import Any

from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.washing.noun import WashDay
from farwall.job.acid_day.washing.words import CAUTIONS, steps_of
from farwall.papers.acid.wash.drawing import wash_svg
from farwall.papers.acid.wash.pages import front, rests, room_block
from farwall.papers.lettering import clipped
from farwall.papers.run_sheet.in_language import in_language
from farwall.papers.run_sheet.margins import PaperSize, paper_for
from farwall.papers.square import square
from farwall.papers.svg import plain
from farwall.papers.wall_clock import plan_clock
from farwall.papers.words import names_in
from farwall.phrasebook import speaking

_HASH_SHOWN = 12
_MAP_HIGH = 380.0


def wash_day_pdf(ground: Ground, day: WashDay, *, screens: str = "") -> bytes:
    """The sheet of a job; the same job, plan and log give the same bytes.

    screens: address of the house in the firm's book.
    """
    import typst

    from farwall.papers.run_sheet.sheet import run_sheet_fonts

    wishes, plan = ground.job.wishes, ground.plan
    home = Path(str(files("farwall.papers.run_sheet")))
    size = paper_for(wishes.units, wishes.paper)
    with speaking(wishes.language, own_names(ground)):
        data = wash_data(ground, day, size)
    data |= {"qr": square(screens, "acid/washing"), "screen": "acid/washing"}
    pdf = typst.compile(
        home / "wash.typ", root=home, font_paths=run_sheet_fonts(), ignore_system_fonts=True,
        format="pdf", sys_inputs={"data": json.dumps(data, ensure_ascii=False)},
        timestamp=int(datetime.fromisoformat(plan.starts_at).timestamp()),
    )  # fmt: skip
    return bytes(pdf)


def own_names(ground: Ground) -> frozenset[str]:
    """What people call rooms, ways out and places here: no language changes it."""
    told = ground.job.washing
    ways = {one.id for one in ground.plan.inputs.exits}
    return names_in(ground.plan) | ways | {told.water_from, told.drums.at}


def wash_data(ground: Ground, day: WashDay, size: PaperSize) -> dict[str, Any]:
    """What the template sets, in the language that is spoken."""
    plan, units = ground.plan, ground.job.wishes.units
    clock = plan_clock(plan, units)
    name = plain(plan.job or "The job")
    return in_language(
        {
            "paper": size.typst_name,
            "job": name,
            "footer": f"{clipped(name, 230, 9)} · wash day · facts {ground.job.revision} · "
            f"inputs {plan.inputs_hash[:_HASH_SHOWN]}",
            "front": front(day, units, clock),
            "map": wash_svg(plan, day, units=units, width=size.inner_width, height=_MAP_HIGH),
            "steps": list(steps_of(day)),
            "cautions": list(CAUTIONS),
            "rooms": [room_block(one, units) for one in day.rooms],
            "rests": rests(day),
        },
        units,
    )
