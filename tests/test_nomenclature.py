"""Every key that a user meets in a file stands in docs/nomenclature.md."""

import dataclasses
import inspect
import re
import typing
from pathlib import Path

import pytest

from farwall.facts import job, plan, reading, so_far
from farwall.floor import nouns

ROOT = Path(__file__).resolve().parents[1]
PAGE = (ROOT / "docs" / "nomenclature.md").read_text()


MODULES = [nouns, job, plan, reading, so_far]
WORDS_THAT_ARE_UNITS = {"litres", "minutes"}
UNIT_OF_THE_ROW = {"low", "likely", "high"}
SHARES_OF_ONE = {"chance", "error", "share", "any_edge_dies", "mix_short"}


def fields_of(module):
    """Name and type of every field of the module's own nouns."""
    return {
        (name, str(hint))
        for _, noun in inspect.getmembers(module, dataclasses.is_dataclass)
        if noun.__module__.startswith("farwall.")
        for name, hint in typing.get_type_hints(noun).items()
    }


@pytest.mark.parametrize("module", MODULES, ids=lambda m: m.__name__)
def test_every_key_of_the_nouns_is_explained(module):
    keys = {name for name, _ in fields_of(module)}
    explained = set(re.findall(r"`([a-z0-9_]+)`", PAGE))
    assert len(keys) > 5
    assert keys - explained == set()


def test_every_number_names_its_unit():
    endings = tuple(re.findall(r"`(_[a-z0-9_]+)`", PAGE))
    numbers = {
        name.removesuffix("_low").removesuffix("_high")
        for module in MODULES
        for name, hint in fields_of(module)
        if re.search(r"(?<!')\bfloat\b", hint) and not re.search("tuple|dict", hint)
    }
    numbers -= WORDS_THAT_ARE_UNITS | UNIT_OF_THE_ROW | SHARES_OF_ONE
    assert len(numbers) > 20
    assert {name for name in numbers if not name.endswith(endings)} == set()
