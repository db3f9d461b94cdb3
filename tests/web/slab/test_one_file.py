"""The one file: whole, with a policy that fits what is in it, and no way out of its data."""

from __future__ import annotations

import base64
import hashlib
import json
import re

import pytest
from tests.midday import day_of

from farwall.readers.plan_json import plan_to_dict
from farwall.web.slab.one_file import one_file
from farwall.web.slab.sheet import sheet_of


@pytest.fixture(scope="module")
def sheet():
    return sheet_of(plan_to_dict(day_of("quince-street")), "quince")


def hash_of(text):
    return "sha256-" + base64.b64encode(hashlib.sha256(text.encode()).digest()).decode()


def test_the_policy_allows_this_script_and_this_style_alone(sheet):
    page = one_file(sheet).decode()
    policy = re.search(r'http-equiv="Content-Security-Policy" content="([^"]+)"', page)[1]
    script = re.search(r"<script>(.*?)</script>", page, re.DOTALL)[1]
    style = re.search(r"<style>(.*?)</style>", page, re.DOTALL)[1]
    assert f"script-src '{hash_of(script)}'" in policy
    assert f"style-src '{hash_of(style)}'" in policy
    assert "default-src 'none'" in policy
    assert "connect-src" not in policy
    assert page.index("Content-Security-Policy") < page.index("<style>") < page.index("<script>")


def test_nothing_is_fetched_from_beside_it(sheet):
    page = one_file(sheet).decode()
    markup = re.sub(r"<(script|style)[^>]*>.*?</\1>", "", page, flags=re.DOTALL)
    assert re.findall(r'(?:src|href)="([^"]*)"', markup) == ["data:,"]


def test_the_plan_is_in_it_whole(sheet):
    page = one_file(sheet).decode()
    told = re.search(r'<script type="application/json" id="sheet">(.*?)</script>', page)[1]
    assert json.loads(told) == json.loads(json.dumps(sheet))


def test_a_name_cannot_end_the_block_it_stands_in(sheet):
    bad = {**sheet, "job": "</script><script>alert(1)</script><!--"}
    page = one_file(bad).decode()
    assert page.count("</script>") == 2
    told = re.search(r'id="sheet">(.*?)</script>', page)[1]
    assert json.loads(told)["job"] == bad["job"]


def test_the_same_sheet_gives_the_same_bytes(sheet):
    assert one_file(sheet) == one_file(dict(sheet))
