"""What is proposed on pictures of real concrete that nobody stained: every mark is a false alarm.

The pictures carry no scale, so each is read at two that are guessed. Cracks and joints are apart:
some of the pictures show them.
"""

from __future__ import annotations

from pathlib import Path

import numpy as np

from farwall.bench.mopped_match import APART
from farwall.bench.mopped_score import Find
from farwall.colour.marks.nouns import Sheet
from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

SCALES_M = (0.002, 0.004)
"""Side of a point of the picture on the ground. A guess."""
_ENDINGS = {".jpg", ".jpeg", ".png"}


@dataclass(frozen=True)
class Surface:
    """One picture at one scale: its name, square metres, marks by kind, cracks and joints."""

    name: str
    m_per_px: float
    area_m2: float
    marks: tuple[str, ...]
    apart: int


def surfaces(folder: Path, find: Find) -> tuple[Surface, ...]:
    """Every picture of the folder at both scales; refused where it holds none."""
    import cv2

    if not folder.is_dir():
        raise Refused(Mistake("--surfaces", f"there is no folder {folder}.", "Name one."))
    files = sorted(one for one in folder.iterdir() if one.suffix.lower() in _ENDINGS)
    if not files:
        raise Refused(Mistake("--surfaces", f"the folder {folder} holds no picture."))
    told = []
    for file in files:
        picture = cv2.imdecode(np.frombuffer(file.read_bytes(), np.uint8), cv2.IMREAD_COLOR)
        if picture is None:
            raise Refused(Mistake("--surfaces", f"{file.name} is no picture that can be read."))
        lab = cv2.cvtColor(picture[..., ::-1].astype(np.float32) / 255, cv2.COLOR_RGB2LAB)
        told += [_surface(file.stem, np.asarray(lab, np.float32), m, find) for m in SCALES_M]
    return tuple(told)


def _surface(name: str, lab: np.ndarray, m_per_px: float, find: Find) -> Surface:
    rows, columns = lab.shape[:2]
    sheet = Sheet(lab, np.ones((rows, columns), np.bool_), m_per_px, 0.0, rows * m_per_px)
    kinds = [mark.kind for mark in find(sheet, ())]
    return Surface(
        name, m_per_px, rows * columns * m_per_px**2,
        tuple(sorted(kind for kind in kinds if kind not in APART)),
        sum(kind in APART for kind in kinds),
    )  # fmt: skip
