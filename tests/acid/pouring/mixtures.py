"""How a row of odd.csv or lawful.csv becomes things; see README.md beside it."""

import csv
from pathlib import Path

from farwall.acid.pouring.gate import may_pour
from farwall.acid.pouring.things import thing_of
from farwall.facts.contents import Content
from farwall.facts.job import Stain
from farwall.facts.materials import Material

HERE = Path(__file__).parent
STAINS = ("stain", "mixed stain", "dried stain")


def rows(name):
    with (HERE / f"{name}.csv").open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def stain(which, told):
    if "stain-unknown" in told:
        return Stain(which)
    return Stain(
        which,
        chromate="chromate" in told and which == "a",
        oxidiser="oxidiser" in told and which == "a",
        contents=(Content("ammonium chloride", 1, 2),) if "ammonium" in told else (),
        sheet_read="" if "unread" in told else "2027-01-04",
    )


def thing(text, told=(), *, left=False):
    """`stain:b` is the kind stain of the stain b; without a name it is of the stain a."""
    kind, _, which = text.partition(":")
    which = which or "a"
    of_stain = kind in STAINS
    sampled = tuple(f"{k} {w}" for k in STAINS for w in "ab") if "sampled" in told else ()
    material = Material(
        f"{kind} {which}", kind, stain=which if of_stain else "", sheet_read="unread" not in told,
        sampled_with=sampled,
    )  # fmt: skip
    return thing_of(material, stain(which, told) if of_stain else None, left=left)


def tub_of(row):
    told = row["told"].split()
    left = [thing(one, told, left=True) for one in row["left"].split(" + ") if one]
    return [*left, *(thing(one, told) for one in row["tub"].split(" + "))]


def verdict_on(row):
    return may_pour(tub_of(row), row["vessel"])


def title(row):
    return " | ".join(part for key in ("tub", "vessel", "left", "told") if (part := row[key]))
