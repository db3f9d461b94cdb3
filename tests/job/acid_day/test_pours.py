"""The part of the acid day on pouring: materials, table, deeds, and its lines for a terminal."""

from dataclasses import replace

from tests.job.pouring.test_listed import SAND

from farwall.facts.job import Stain
from farwall.facts.materials import Material
from farwall.job.acid_day.pours import pours_of_job, pours_said

READ = Stain("sand", "sand", chromate=False, oxidiser=False, sheet_read="2027-01-04")


def deed(job, act):
    return next(one for one in pours_of_job(job).deeds if one.act == act)


def test_a_floor_of_chromate_or_of_a_sheet_not_entered_is_not_ground():
    grind = "grind with shroud and vacuum"
    assert deed(replace(SAND, stains=(READ,)), grind).word == "allowed with warning"
    assert deed(replace(SAND, stains=(replace(READ, chromate=True),)), grind).word == "refused"
    assert deed(replace(SAND, stains=(Stain("sand"),)), grind).word == "refused"


def test_silica_controls_stand_beside_grinding():
    told = deed(replace(SAND, stains=(READ,)), "grind with shroud and vacuum")
    assert "HEPA" in told.instead
    assert told.source == "silica"


def test_the_sheets_that_were_not_read_are_known():
    listed = (Material("a", "etching acid"), Material("b", "bleach", sheet_read=True))
    part = pours_of_job(replace(SAND, stains=(READ,), materials=listed))
    read = {one.id: one.sheet_read for one in part.materials}
    assert (read["a"], read["b"], read["sand"], read["water"]) == (False, True, True, True)


def test_the_terminal_tells_every_group_and_that_unknown_is_refused():
    part = pours_of_job(replace(SAND, stains=(READ,), materials=(Material("b", "bleach"),)))
    lines = pours_said(part)
    heads = [line for line in lines if line.startswith(("Refused", "Allowed"))]
    assert len(heads) == len(part.groups) + len(part.brought)
    assert any("Chlorine gas" in line for line in lines)
    assert any("Unknown means refused" in line for line in lines)
