"""A ladder for tests: three squares of one stain, two of them with a second coat; made up."""

from __future__ import annotations

from dataclasses import replace

from tests.spray.hand_floors import job, row

from farwall.facts.job import Coat, Job, Sealer, Stain
from farwall.facts.samples import Look, Sample

COATS = (Coat("first", "dark", "1:2"), Coat("second", "dark", "1:4"))


def house(**facts) -> Job:
    told = {
        "coats": COATS, "stains": (Stain("dark", density_kg_l=1.2),),
        "sealer": Sealer(name="house sealer"),
    }  # fmt: skip
    return replace(job(row(3, 3), samples=()), **{**told, **facts})


def wet(lightness, *, error_de=1.0, **more) -> Look:
    return Look("clean wet", (lightness, 8.0, 18.0), error_de=error_de, **more)


def sealed(lightness, *, error_de=1.0, **more) -> Look:
    return Look("sealed", (lightness, 9.0, 20.0), error_de=error_de, **more)


def made(name, cut, *looks, over=None, **more) -> Sample:
    told = {
        "coat": "second" if over else "first", "area_m2": 0.5, "laid_ml": 100.0, "scrubs": 3,
        "dwell_h": 9.0, "sheen_loss_min": 12.0, "room": "a",
    }  # fmt: skip
    return Sample(name, cut=cut, over=over, looks=looks, **{**told, **more})


def whole() -> tuple[Sample, ...]:
    """Weak, planned, strong; a second coat over the planned one, which is signed."""
    return (
        made("S", "1:1", wet(38.0), sealed(34.0)),
        made("W", "1:4", wet(52.0), sealed(49.0)),
        made("P", "1:2", wet(45.0), sealed(41.0)),
        made("P2", "1:4", wet(41.0, light="day"), sealed(36.5, light="lamp"), over="P",
             sealer="house sealer", approved_by="Owner", approved_on="2026-04-20"),
    )  # fmt: skip
