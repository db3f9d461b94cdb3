"""The seal sheet as PDF: words of each page as JSON, laid out by the template of the run sheet."""

from __future__ import annotations

import json
from datetime import datetime
from importlib.resources import files
from pathlib import Path

from farwall.facts.plan import Plan
from farwall.job.seal_day.noun import Sealing
from farwall.papers.lettering import clipped
from farwall.papers.run_sheet.margins import Paper, paper_for
from farwall.papers.run_sheet.sheet import run_sheet_fonts
from farwall.papers.seal_front import front_page
from farwall.papers.seal_pages import coat_pages
from farwall.papers.svg import plain
from farwall.papers.wall_clock import Units

_HASH_SHOWN = 12


def seal_sheet_pdf(
    plan: Plan,
    sealing: Sealing,
    *,
    units: Units = "us",
    paper: Paper | None = None,
    notes: str = "",
) -> bytes:
    """The seal sheet as PDF bytes; the same seal day gives the same bytes.

    `units` puts gallons and feet or litres and metres first and chooses the paper (US Letter or
    A4) unless `paper` does.
    """
    import typst

    size = paper_for(units, paper)
    home = Path(str(files("farwall.papers.run_sheet")))
    name = plan.job or "The job"
    data = {
        "paper": size.typst_name,
        "job": plain(name),
        "footer": f"{clipped(plain(name), 230, 9)} · seal day · inputs "
        f"{plan.inputs_hash[:_HASH_SHOWN]}",
        "front": front_page(plan, sealing, units=units, notes=notes),
        "coats": coat_pages(plan, sealing, units=units, size=size),
    }
    pdf = typst.compile(
        home / "seal.typ",
        root=home,
        font_paths=run_sheet_fonts(),
        ignore_system_fonts=True,
        format="pdf",
        sys_inputs={"data": json.dumps(data, ensure_ascii=False)},
        timestamp=int(datetime.fromisoformat(plan.starts_at).timestamp()),
    )
    return bytes(pdf)
