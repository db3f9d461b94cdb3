"""The files of a calendar."""

import copy
import json

from tests.days.shop import shop
from tests.shapes import TWO_ROOMS

from farwall.days.calendar import calendar
from farwall.days.document import document
from farwall.facts.job import Job
from farwall.papers.days_files import days_files

TOLD = document(calendar(shop(2)))
ANY = Job(version=1, floor=TWO_ROOMS.floor, exits=TWO_ROOMS.exits)


def files_of(told, **more):
    return days_files(told, {one["id"]: ANY for one in told["houses"]}, **more)


def test_there_is_a_page_for_each_house_and_the_document_is_as_it_was():
    files = files_of(TOLD)
    assert set(files) == {"days.json", "days.svg", "chain-house-1.pdf", "chain-house-2.pdf"}
    assert json.loads(files["days.json"]) == TOLD


def test_ids_that_are_no_file_names_do_not_leave_the_folder_or_hide_each_other():
    told = copy.deepcopy(TOLD)
    told["houses"][0]["id"], told["houses"][1]["id"] = "../a b", "a/b"
    names = [name for name in files_of(told) if name.startswith("chain-")]
    assert len(set(names)) == 2
    assert not any("/" in name or ".." in name for name in names)


def test_in_spanish_pages_and_tape_are_and_the_document_stays():
    files = files_of(TOLD, language="es")
    assert json.loads(files["days.json"]) == TOLD
    tape = files["days.svg"].decode()
    assert "limpieza" in tape
    assert "cleaning" not in tape
    assert files["chain-house-1.pdf"] != files_of(TOLD)["chain-house-1.pdf"]
