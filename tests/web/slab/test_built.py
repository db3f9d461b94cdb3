"""The built files: what the sources give, light, and silent about where they came from."""

from __future__ import annotations

import gzip
import re
import shutil

import pytest
from tests.web.slab.node import DIST, OFFICE, ROOT, WEB, ran, tools

from farwall.web.slab.routes import KINDS

MOST_BYTES = 60_000
MOST_SAMPLES_BYTES = 12_000


def test_every_built_file_is_served_and_nothing_else_lies_there():
    assert {one.name for one in DIST.iterdir()} == set(KINDS)


def test_the_built_files_are_what_the_sources_give(tmp_path):
    tools()
    for name in ("src", "public", "index.html", "early.js", "package.json", "vite.config.ts",
                 "tsconfig.json"):  # fmt: skip
        copy = shutil.copytree if (WEB / name).is_dir() else shutil.copy
        copy(WEB / name, tmp_path / name)
    (tmp_path / "node_modules").symlink_to(WEB / "node_modules")
    out = tmp_path / "dist"
    config = (tmp_path / "vite.config.ts").read_text()
    assert config.count('"../src/farwall/web/slab/dist"') == 1
    told = config.replace('"../src/farwall/web/slab/dist"', '"dist"')
    (tmp_path / "vite.config.ts").write_text(told)
    built_at(tmp_path)
    differ = [n for n in KINDS if (out / n).read_bytes() != (DIST / n).read_bytes()]
    assert differ == [], "run `npm run build` in web/"


def test_what_moves_in_the_office_is_what_its_sources_give(tmp_path):
    tools()
    names = ("office", "package.json", "vite.office.config.ts", "tsconfig.office.json")
    for name in (*names, "tsconfig.json"):
        copy = shutil.copytree if (WEB / name).is_dir() else shutil.copy
        copy(WEB / name, tmp_path / name)
    (tmp_path / "node_modules").symlink_to(WEB / "node_modules")
    config = (tmp_path / "vite.office.config.ts").read_text()
    assert config.count('"../src/farwall/web/static/built"') == 1
    told = config.replace('"../src/farwall/web/static/built"', '"built"')
    (tmp_path / "vite.office.config.ts").write_text(told)
    built_at(tmp_path, "-c", "vite.office.config.ts")
    made = {one.name: one.read_bytes() for one in (tmp_path / "built").iterdir()}
    kept = {one.name: one.read_bytes() for one in OFFICE.iterdir()}
    assert made == kept, "run `npm run build` in web/"


def built_at(folder, *words):
    import subprocess

    done = subprocess.run(
        ["node", "node_modules/vite/bin/vite.js", "build", *words], cwd=folder,
        capture_output=True, text=True, check=False,
    )  # fmt: skip
    assert done.returncode == 0, done.stderr[-2000:]


def test_the_sources_pass_the_type_checker():
    tools()
    ran("node_modules/.bin/tsc", "--noEmit")
    ran("node_modules/.bin/tsc", "-p", "tsconfig.office.json")


def test_the_pure_parts_pass_their_own_tests():
    tools()
    assert re.search(r"# fail 0\b", ran("npm", "test", "--silent"))


def test_no_file_of_the_page_names_an_address_to_fetch_from():
    texts = [one for one in WEB.glob("*") if one.is_file()]
    texts += [
        one
        for folder in ("src", "office", "public", "tests")
        for one in (WEB / folder).rglob("*.*")
    ]
    for path in [*texts, *DIST.iterdir(), *OFFICE.iterdir()]:
        text = path.read_text(encoding="utf-8")
        assert '"funding"' not in text, f"{path.name} names who made a package"
        assert 'resolved"' not in text, f"{path.name} says where a package came from"
        found = set(re.findall(r"https?://[\w.]+", text)) - {"http://www.w3.org"}
        if path.name == "package-lock.json":
            found = {one for one in found if "regist" in one}
        assert found == set(), path.relative_to(ROOT)


@pytest.mark.parametrize("name", ["index.html", "slab.js"])
def test_the_page_asks_nobody_else_and_holds_one_script_that_begins_early(name):
    text = (DIST / name).read_text()
    assert "eval(" not in text
    assert "//cdn" not in text
    if name == "index.html":  # the one script in it is named by the policy: see test_routes.py
        assert len(re.findall(r"<script(?![^>]*\bsrc=)", text)) == 1
        assert not re.search(r"\son\w+=\"|style=", text)


def test_the_page_leaves_room_for_any_plan():
    """Packed as the server packs it: two fifths of what a first load may weigh are left for plan
    and log. A wash day and the gate of pouring lie in the page so that they hold without signal."""
    apart = {"samples.js", "en.json", "es.json"}
    page = [one for one in DIST.iterdir() if one.name not in apart]
    for words in ("en.json", "es.json"):  # a first load carries one language
        held = [one.read_bytes() for one in (*page, DIST / words)]
        assert sum(len(gzip.compress(one, 9)) for one in held) < MOST_BYTES * 0.6


def test_the_sample_day_comes_apart_and_is_light_too():
    assert len(gzip.compress((DIST / "samples.js").read_bytes(), 9)) < MOST_SAMPLES_BYTES
    assert b"samples.js" in (DIST / "sw.js").read_bytes()  # so that it opens without signal
