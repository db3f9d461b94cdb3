"""The one file: whole, under a policy of its own, no way out of its data, printed as paper."""

from __future__ import annotations

import base64
import gzip
import hashlib
import io
import json
import re

import numpy as np
import pypdfium2
import pytest
from PIL import Image
from tests.midday import day_of
from tests.web.slab.browser import phone, playing, tap, tapped

from farwall.papers.json_text import json_text
from farwall.papers.run_sheet import run_sheet_pdf
from farwall.readers.plan_json import plan_to_dict
from farwall.store.files import file as kept_file
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
    assert page.count("</script>") == 3
    told = re.search(r'id="sheet">(.*?)</script>', page)[1]
    assert json.loads(told)["job"] == bad["job"]


def test_the_same_sheet_gives_the_same_bytes(sheet):
    assert one_file(sheet) == one_file(dict(sheet))


def test_the_paper_in_it_is_page_for_page_what_the_run_sheet_is_set_from(sheet):
    pages = [b'<svg viewBox="0 0 612 792"></svg>', b'<svg viewBox="0 0 612 792">2</svg>']
    page = one_file(sheet, pages).decode()
    packed = json.loads(re.search(r'id="paper-packed">(.*?)</script>', page)[1])
    assert [gzip.decompress(base64.b64decode(one)) for one in packed] == pages
    style = re.search(r"<style>(.*?)</style>", page, re.DOTALL)[1]
    assert "@page { size: 612pt 792pt; margin: 0; }" in style
    assert f"style-src '{hash_of(style)}'" in page
    assert page.count('<section id="paper">') == 1
    assert 'id="paper' not in one_file(sheet).decode()


@pytest.mark.slow
def test_it_keeps_what_is_tapped_gives_it_to_the_log_and_prints_the_run_sheet(tmp_path, capsys):
    from farwall.cli.main import main

    plan = day_of("quince-street")
    folder = tmp_path / "monday"
    folder.mkdir()
    (folder / "plan.json").write_text(json_text(plan_to_dict(plan)))
    assert main(["slab", str(folder / "plan.json"), "--out", str(folder / "slab.html")]) == 0
    paper = run_sheet_pdf(plan, job_name=plan.job)
    pages = len(pypdfium2.PdfDocument(paper))
    with playing() as play, phone(play, tmp_path / "phone") as context:
        page = context.new_page()
        wrong = []
        page.on("console", lambda one: wrong.append(one.text))
        page.goto((folder / "slab.html").as_uri())
        tapped(page, 5)
        page.reload()
        page.locator("button.main", has_text="Band 1.2.3 done").wait_for()
        page.locator(".status", has_text="5 entries on this phone: save them").wait_for()
        Image.new("RGB", (2000, 1000), "grey").save(tmp_path / "taken.jpg")
        tap(page, "Note, photo")
        page.locator("#photo").set_input_files(tmp_path / "taken.jpg")
        page.locator(".status", has_text="6 entries on this phone: save them").wait_for()
        tap(page, "Phone")
        with page.expect_download() as saving:
            page.get_by_role("button", name="Save what was logged").tap()
        saving.value.save_as(tmp_path / "logged.jsonl")
        page.get_by_role("button", name="The paper run sheet").tap()
        page.locator("#paper img").nth(pages - 1).wait_for()
        printed = page.pdf(prefer_css_page_size=True)
        assert wrong == []
    alike = likeness(printed, paper)
    assert alike.shape == (pages, pages)
    assert alike.diagonal().min() > 0.95
    assert list(alike.argmax(axis=1)) == list(range(pages)), "each is most like its own page"
    capsys.readouterr()
    assert main(["log", str(folder), "--from", str(tmp_path / "logged.jsonl"), "--json"]) in {0, 1}
    entered = json.loads(capsys.readouterr().out)["entered"]
    assert [one["word"] for one in entered] == ["band-done"] * 5 + ["photo"]
    assert entered[4]["about"]["band"] == "first.2.2"
    kept = kept_file(folder / "files", entered[5]["about"]["file"])
    assert Image.open(io.BytesIO(kept)).size == (1600, 800)


def likeness(one, other):
    """Correlation of the ink of each page of the one with each of the other, in blocks of 4 pt."""
    inks = []
    for content in (one, other):
        pages = []
        for page in pypdfium2.PdfDocument(content):
            ink = 255.0 - page.render(scale=1, grayscale=True).to_numpy()
            high, wide = ink.shape[0] // 4, ink.shape[1] // 4
            blocks = ink.reshape(ink.shape[:2])[: high * 4, : wide * 4]
            pages.append(blocks.reshape(high, 4, wide, 4).mean((1, 3)).ravel())
        inks.append(pages)
    return np.corrcoef(*inks)[: len(inks[0]), len(inks[0]) :]
