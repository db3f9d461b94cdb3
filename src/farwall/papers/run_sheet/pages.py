"""The run sheet page by page as drawings, for what shows or prints it without a reader of PDF."""

from __future__ import annotations

import json
from datetime import datetime
from typing import Any

from farwall.facts.plan import Plan
from farwall.papers.run_sheet.sheet import run_sheet_fonts, run_sheet_home, sheet_data
from farwall.papers.wall_clock import Units
from farwall.phrasebook import Language


def run_sheet_pages(
    plan: Plan,
    *,
    job_name: str,
    units: Units = "us",
    notes: str = "",
    language: Language = "en",
) -> tuple[bytes, ...]:
    """Each page of `run_sheet_pdf` as SVG, letters as shapes; the same plan, the same bytes."""
    import typst

    data = sheet_data(plan, job_name=job_name, units=units, notes=notes, language=language)
    pages: Any = typst.compile(  # a list where there is more than one
        run_sheet_home() / "sheet.typ",
        root=run_sheet_home(),
        font_paths=run_sheet_fonts(),
        ignore_system_fonts=True,
        format="svg",
        sys_inputs={"data": json.dumps(data, ensure_ascii=False)},
        timestamp=int(datetime.fromisoformat(plan.starts_at).timestamp()),
    )
    return tuple(bytes(one) for one in (pages if isinstance(pages, list) else [pages]))
