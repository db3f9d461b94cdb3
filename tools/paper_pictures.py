"""Draw the first page of papers of the invented house, small and grey, for docs/papers.md.

python tools/paper_pictures.py [NAME …]: those that docs/papers.md shows, or those named; into
docs/picture/papers.
"""

from __future__ import annotations

import sys
from pathlib import Path

import pypdfium2
from PIL import Image

from farwall.job.office import OfficeGround
from farwall.job.plan_job import plan_job
from farwall.papers.office.bundles import PAPERS
from farwall.papers.office.ground import PaperGround
from farwall.readers.job_json import read_job

ROOT = Path(__file__).resolve().parent.parent
HOUSE = ROOT / "src" / "farwall" / "cli" / "demo_house.json"
OUT = ROOT / "docs" / "picture" / "papers"
_WIDE, _GREYS = 320, 8


def picture(pdf: bytes) -> Image.Image:
    """The first page in a few greys, so wide that its lines can be told apart."""
    page = pypdfium2.PdfDocument(pdf)[0]
    shown = page.render(scale=3 * _WIDE / page.get_width()).to_pil().convert("L")
    small = shown.resize((_WIDE, round(shown.height / 3)), Image.Resampling.LANCZOS)
    return small.quantize(_GREYS)


def main(names: list[str]) -> None:
    """Draw those named, or all that are shown."""
    shown = (ROOT / "docs" / "papers.md").read_text(encoding="utf-8")
    job = read_job(HOUSE)
    ground = PaperGround(OfficeGround(job, plan_job(job)))
    OUT.mkdir(parents=True, exist_ok=True)
    for one in PAPERS:
        name, _, ending = one.file.rpartition(".")
        wanted = name in names if names else f"papers/{name}.png" in shown
        if ending == "pdf" and wanted:
            picture(one.make(ground)).save(OUT / f"{name}.png", optimize=True)


if __name__ == "__main__":
    main(sys.argv[1:])
