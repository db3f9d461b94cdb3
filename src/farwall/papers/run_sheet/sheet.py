"""Plan in, PDF bytes out: the facts of each page as JSON, laid out by the templates beside."""

from __future__ import annotations

import json
from collections.abc import Callable, Sequence
from datetime import datetime
from functools import cache, partial
from importlib.resources import files
from pathlib import Path
from typing import TYPE_CHECKING

from farwall.beside import Beside, at_once
from farwall.facts.plan import Plan
from farwall.papers.glyphs import missing_words
from farwall.papers.lettering import clipped
from farwall.papers.run_sheet.before_page import before_page
from farwall.papers.run_sheet.buying import Buying
from farwall.papers.run_sheet.day_page import day_page
from farwall.papers.run_sheet.field_page import field_pages_begun
from farwall.papers.run_sheet.in_language import in_language
from farwall.papers.run_sheet.look_points import looks_page
from farwall.papers.run_sheet.margins import Paper, paper_for
from farwall.papers.run_sheet.moments_page import moments_page
from farwall.papers.run_sheet.sun_page import sun_page
from farwall.papers.run_sheet.van_page import van_page
from farwall.papers.square import square
from farwall.papers.svg import plain
from farwall.papers.wall_clock import Units, plan_clock
from farwall.papers.words import names_in
from farwall.phrasebook import Language, beside_in, speaking

if TYPE_CHECKING:
    import typst

_HASH_SHOWN = 12


def run_sheet_pdf(
    plan: Plan,
    *,
    job_name: str,
    units: Units = "us",
    gates: Sequence[dict[str, object]] | None = None,
    paper: Paper | None = None,
    revision: int | None = 1,
    notes: str = "",
    language: Language = "en",
    screens: str = "",
) -> bytes:
    """The run sheet as PDF bytes; the same plan gives the same bytes.

    One page for the evening before and the morning, one of the van where it was told, one for
    the day, one of moments, one of the sun where it was reckoned, one of the looks into last
    fields where there are any, one for each field in each coat; a page that cannot hold its words
    goes on to a second. `units` puts gallons and feet or litres and metres first and chooses the
    paper (US Letter or A4) unless `paper` does. `gates` (see `buying.Buying`) wins over those of
    `plan.buying`. `notes` are the user's own words for the first page. `language`: what the book
    of phrases does not hold stays in English. `revision`: of the facts, None where nobody told it.
    `screens`: address of the house in the firm's book, empty where it has none.
    """
    begun = run_sheet_begun(
        plan,
        job_name=job_name,
        units=units,
        gates=gates,
        paper=paper,
        revision=revision,
        notes=notes,
        language=language,
        screens=screens,
    )
    return begun()


def run_sheet_begun(
    plan: Plan,
    *,
    job_name: str,
    units: Units = "us",
    gates: Sequence[dict[str, object]] | None = None,
    paper: Paper | None = None,
    revision: int | None = 1,
    notes: str = "",
    language: Language = "en",
    screens: str = "",
    beside: Beside = at_once,
) -> Callable[[], bytes]:
    """The same run sheet, its pages drawn and the setting begun `beside`; what comes back waits."""
    data = sheet_data(
        plan, job_name=job_name, units=units, gates=gates, paper=paper, revision=revision,
        notes=notes, language=language, beside=beside,
    )  # fmt: skip
    data |= {"qr": square(screens, "phone"), "screen": "phone"}
    return beside(partial(_compiled, data, datetime.fromisoformat(plan.starts_at)))


def sheet_data(
    plan: Plan,
    *,
    job_name: str,
    units: Units = "us",
    gates: Sequence[dict[str, object]] | None = None,
    paper: Paper | None = None,
    revision: int | None = 1,
    notes: str = "",
    language: Language = "en",
    beside: Beside = at_once,
) -> dict[str, object]:
    """What the templates say, in words ready to be set, whatever it is set as."""
    size = paper_for(units, paper)
    buying = Buying.of(plan, gates=gates)
    names = names_in(plan) | {job_name}
    begun = beside_in(language, names, beside)
    with speaking(language, names):
        fields = field_pages_begun(plan, buying, units=units, size=size, beside=begun)
        before = before_page(plan, buying, job_name=job_name, units=units, notes=notes)
        if lacking := missing_words((*names, notes)):
            before["warnings"].insert(0, lacking)
        return in_language(
            {
                "paper": size.typst_name,
                "job": plain(job_name),
                "footer": _footer(plan, job_name, revision, units),
                "before": before,
                "van": van_page(plan, units=units),
                "day": day_page(plan, job_name=job_name, units=units, size=size),
                "moments": moments_page(plan, units=units, size=size),
                "sun": sun_page(plan, units=units, size=size),
                "looks": looks_page(plan, units=units),
                "fields": fields(),
            },
            units,
        )


def _footer(plan: Plan, job_name: str, revision: int | None, units: Units) -> str:
    name = clipped(plain(job_name), 230, 9)
    if plan.so_far is not None:
        name += f" · planned again at {plan_clock(plan, units).time(plan.so_far.at_min)}"
    of = "" if revision is None else f"facts {revision} · "
    return f"{name} · {of}inputs {plan.inputs_hash[:_HASH_SHOWN]}"


def _compiled(data: dict[str, object], moment: datetime) -> bytes:
    import typst

    pdf = typst.compile(
        run_sheet_home() / "sheet.typ",
        root=run_sheet_home(),
        font_paths=run_sheet_fonts(),
        ignore_system_fonts=True,
        format="pdf",
        sys_inputs={"data": json.dumps(data, ensure_ascii=False)},
        timestamp=int(moment.timestamp()),
    )
    return bytes(pdf)


def run_sheet_home() -> Path:
    """The folder of the templates and fonts inside the package."""
    return Path(str(files("farwall.papers.run_sheet")))


@cache
def run_sheet_fonts() -> typst.Fonts:
    """The font that the package carries, and nothing of the machine's own."""
    import typst

    return typst.Fonts(
        include_system_fonts=False,
        include_embedded_fonts=True,
        font_paths=[run_sheet_home() / "fonts"],
    )
