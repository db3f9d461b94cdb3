"""The page in a browser: nothing is lost, whatever dies; and it is no toy for dry hands only."""

from __future__ import annotations

import json
import re

import pytest
from tests.midday import day_of
from tests.web.slab.browser import PHONES, opened, phone, tapped
from tests.web.slab.house import JOB, KEY, serving

from farwall.papers.json_text import json_text
from farwall.readers.plan_json import plan_to_dict

pytestmark = pytest.mark.slow


@pytest.fixture
def server(tmp_path):
    with serving(tmp_path) as found:
        yield found


def words(server):
    return [one["word"] for one in server.entries()]


def sent(page):
    page.locator(".status", has_text="All is sent").wait_for(timeout=60_000)


def test_thirty_entries_survive_a_killed_server_and_a_closed_browser_once_each(server, tmp_path):
    with phone(tmp_path / "phone") as context:
        page = opened(context, server.address)
        tapped(page, 12)
        server.kill()
        tapped(page, 10)
        page.locator(".status", has_text="entries on this phone not sent yet").wait_for()
    with phone(tmp_path / "phone") as context:
        page = opened(context, server.address, key=False)  # without signal, from its own memory
        told = re.search(r"(\d+) entries on this phone not sent yet", page.inner_text(".status"))
        assert int(told[1]) >= 10
        tapped(page, 8)
        server.start()
        page.reload()
        sent(page)
        page.reload()
        sent(page)
    found = server.entries()
    assert len(found) == 30
    assert len({one["id"] for one in found}) == 30
    assert sorted(one["number"] for one in found) == list(range(1, 31))
    plan = day_of("quince-street")
    order = [band.id for field in plan.fields for band in field.bands]
    assert [one["about"]["band"] for one in sorted(found, key=lambda o: o["number"])] == order[:30]


def test_a_second_phone_sees_what_the_first_did(server, tmp_path):
    with phone(tmp_path / "one") as context:
        page = opened(context, server.address)
        tapped(page, 4)
        sent(page)
    with phone(tmp_path / "two") as context:
        page = opened(context, server.address)
        page.locator("button.main", has_text="Band 2.2 done").wait_for(timeout=30_000)


def test_two_quick_taps_are_one_and_a_slip_is_struck_and_kept(server, tmp_path):
    with phone(tmp_path / "phone") as context:
        page = opened(context, server.address)
        button = page.locator("button.main")
        box = button.bounding_box()
        x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
        page.touchscreen.tap(x, y)
        page.touchscreen.tap(x, y)
        page.locator("button.main", has_text="Band 1.2 done").wait_for()
        page.get_by_role("button", name="Undo").tap()
        page.locator("button.main", has_text="Band 1.1 done").wait_for()
        sent(page)
    assert sorted(words(server)) == ["band-done", "struck"]


def test_a_wireless_key_presses_the_main_button(server, tmp_path):
    with phone(tmp_path / "phone") as context:
        page = opened(context, server.address)
        page.keyboard.press("Enter")
        page.locator("button.main", has_text="Band 1.2 done").wait_for()
        page.wait_for_timeout(310)
        page.keyboard.press("Space")
        page.locator("button.main", has_text="Band 1.3 done").wait_for()


def test_every_word_of_the_page_is_one_the_book_takes(server, tmp_path):
    with phone(tmp_path / "phone") as context:
        page = opened(context, server.address)
        tapped(page, 4)

        def tap(*names):
            for name in names:
                page.wait_for_timeout(310)
                page.get_by_role("button", name=name, exact=True).tap()

        tap("Tank filled", "Drip", "Sheen gone", "Bath", "Still damp", "All of it", "Dry", "Bath")
        tap("Stopped", "Another trade came in", "Note")
        page.locator("#text").fill("the jamb dripped")
        tap("Enter", "Eyes, spills", "Enter: a spill, nobody hurt")
        tap("Eyes, spills", "Enter: somebody was hurt", "Tank, tub")
        page.locator("button", has_text="+½").first.tap()
        tap("Enter", "Helper")
        page.locator("button", has_text="Mixed:").tap()
        sent(page)
        assert page.locator(".status", has_text="turned away").count() == 0
    assert sorted(words(server)) == sorted([
        *["band-done"] * 4, "filled", "drip", "sheen-lost", "still-damp", "dry", "stopped", "note",
        "near-miss", "hurt", "tank-weighed", "mixed",
    ])  # fmt: skip


SIZES = """() => [...document.querySelectorAll("button")].map((one) => {
  const box = one.getBoundingClientRect();
  return [one.innerText, box.width, box.height, box.left, box.right, one.className];
})"""
TEXTS = """() => {
  const found = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) {
    const text = walker.currentNode.textContent.trim();
    const one = walker.currentNode.parentElement;
    if (!text || one.closest("svg, script, style, noscript")) continue;
    let ground = "rgba(0, 0, 0, 0)";
    for (let up = one; up && ground === "rgba(0, 0, 0, 0)"; up = up.parentElement) {
      ground = getComputedStyle(up).backgroundColor;
    }
    const style = getComputedStyle(one);
    found.push([text, parseFloat(style.fontSize), style.color, ground]);
  }
  return found;
}"""
PAGES = ["", "Helper", "Eyes, spills", "Tank, tub", "Sheen gone", "Stopped", "Note", "Phone"]


def luminance(colour):
    """Relative luminance of `rgb(r, g, b)` [wcag22]."""
    parts = [int(one) / 255 for one in re.findall(r"\d+", colour)[:3]]
    r, g, b = [p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts]
    return 0.2126 * r + 0.7152 * g + 0.0722 * b


def contrast(one, other):
    low, high = sorted((luminance(one), luminance(other)))
    return (high + 0.05) / (low + 0.05)


def test_contrast_by_hand():
    """By hand: black on white is 21:1; the ink of the page on white is 14.7:1."""
    assert contrast("rgb(0, 0, 0)", "rgb(255, 255, 255)") == pytest.approx(21)
    assert contrast("rgb(31, 42, 48)", "rgb(255, 255, 255)") == pytest.approx(14.7, abs=0.05)


@pytest.mark.parametrize("size", PHONES, ids=["390x844", "360x640"])
def test_every_page_can_be_read_in_the_sun_and_pressed_with_wet_gloves(server, tmp_path, size):
    with phone(tmp_path / "phone", size=size) as context:
        page = opened(context, server.address)
        tapped(page, 16)
        for name in PAGES:
            if name:
                page.wait_for_timeout(310)
                page.get_by_role("button", name=name, exact=True).tap()
                page.get_by_role("button", name="Back").wait_for()
            for text, wide, high, left, right, kind in page.evaluate(SIZES):
                assert min(wide, high) >= 57, (name, text, wide, high)
                assert high >= 95 or kind != "main", (name, text, high)
                assert left >= 0, (name, text)
                assert right <= size[0], (name, text)
            for text, font_px, colour, ground in page.evaluate(TEXTS):
                assert font_px >= 16, (name, text, font_px)
                assert contrast(colour, ground) >= 7, (name, text, colour, ground)
            tall = page.evaluate("document.documentElement.scrollHeight")
            assert tall <= size[1], f"{name or 'the run'} has to be dragged: {tall}"
            assert page.get_by_role("button", name=re.compile("Eyes|hurt")).count() >= 1
            if name:
                page.get_by_role("button", name="Back").tap()
                page.locator(".status").wait_for()


def test_news_under_a_pressed_finger_does_not_take_the_tap_away(server, tmp_path):
    with phone(tmp_path / "phone") as context:
        page = opened(context, server.address)
        sent(page)
        page.get_by_role("button", name="Drip").hover()
        page.mouse.down()
        page.evaluate("dispatchEvent(new Event('online'))")  # asks the book, which draws anew
        page.wait_for_timeout(1500)
        page.mouse.up()
        page.get_by_role("button", name="Undo").get_by_text("drip").wait_for(timeout=5000)


def test_the_edge_is_called_out_as_it_runs_down_and_then_says_stop(server, tmp_path):
    with phone(tmp_path / "phone") as context:
        context.add_init_script(
            "window.shaken = []; navigator.vibrate = (told) => window.shaken.push(told);"
        )
        page = context.new_page()
        page.clock.install()
        page.goto(f"{server.address}/slab/{JOB}#{KEY}")
        page.locator("button.main").wait_for(timeout=30_000)
        page.clock.run_for(400)
        page.locator("button.main").tap()
        page.locator(".label", has_text="minutes left on the live edge").wait_for()
        server.kill()
        low_min = day_of("quince-street").fields[0].open_time_min.low
        for _ in range(int(low_min * 60) + 30):
            page.clock.run_for(1000)
        assert page.evaluate("shaken.length") == 5  # two minutes, one, thirty and ten seconds, none
        assert page.locator("#big").inner_text().startswith("−")
        assert "stop and feather it out dry" in page.locator(".stop").inner_text()


def test_eyes_and_spills_are_told_also_where_no_key_is_known_and_nobody_answers(server, tmp_path):
    with phone(tmp_path / "phone") as context:
        page = context.new_page()
        page.goto(f"{server.address}/slab/{JOB}")
        page.get_by_role("button", name="Eyes, spills").tap()
        page.get_by_role("heading", name="water first").wait_for()
        page.wait_for_timeout(310)
        page.get_by_role("button", name="Back").tap()
        page.locator("#key").fill(KEY)
        page.get_by_role("button", name="Open").tap()
        page.locator("button.main", has_text="Band 1.1 done").wait_for(timeout=30_000)


def test_undo_and_stopped_are_at_opposite_ends(server, tmp_path):
    with phone(tmp_path / "phone", size=PHONES[1]) as context:
        page = opened(context, server.address)
        undo = page.get_by_role("button", name="Undo").bounding_box()
        stop = page.get_by_role("button", name="Stopped").bounding_box()
        assert stop["y"] - undo["y"] > PHONES[1][1] * 0.8


def test_the_first_load_is_light_and_its_policy_is_not_broken(server, tmp_path):
    with phone(tmp_path / "phone") as context:
        asked, wrong = [], []

        def seen(response):  # a method of a list cannot be listened with
            asked.append(response)

        context.on("response", seen)
        page = context.new_page()
        page.on("console", lambda one: wrong.append(one.text))
        page.on("pageerror", lambda one: wrong.append(str(one)))
        page.goto(f"{server.address}/slab/{JOB}#{KEY}")
        sent(page)
        assert KEY not in page.url
        mine = [o for o in asked if not o.from_service_worker and not o.request.service_worker]
        sizes = {one.url: len(one.body()) for one in mine}
        assert not any("invented" in url.partition("#")[0] for url in sizes)
        assert len(mine) <= 8, sizes
        assert sum(sizes.values()) <= 60_000, sizes
        assert wrong == []
        print(len(mine), "requests,", sum(sizes.values()), "bytes")


def test_the_one_file_keeps_what_is_tapped_and_gives_it_to_the_log(tmp_path, capsys):
    from farwall.cli.main import main

    folder = tmp_path / "monday"
    folder.mkdir()
    (folder / "plan.json").write_text(json_text(plan_to_dict(day_of("quince-street"))))
    assert main(["slab", str(folder / "plan.json"), "--out", str(folder / "slab.html")]) == 0
    with phone(tmp_path / "phone") as context:
        page = context.new_page()
        wrong = []
        page.on("console", lambda one: wrong.append(one.text))
        page.goto((folder / "slab.html").as_uri())
        tapped(page, 5)
        page.reload()
        page.locator("button.main", has_text="Band 2.3 done").wait_for()
        page.locator(".status", has_text="5 entries on this phone: save them").wait_for()
        page.get_by_role("button", name="Phone", exact=True).tap()
        with page.expect_download() as saving:
            page.get_by_role("button", name="Save what was logged").tap()
        saving.value.save_as(tmp_path / "logged.jsonl")
        assert wrong == []
    capsys.readouterr()
    assert main(["log", str(folder), "--from", str(tmp_path / "logged.jsonl"), "--json"]) in {0, 1}
    entered = json.loads(capsys.readouterr().out)["entered"]
    assert [one["about"]["band"] for one in entered][-1] == "first.2.2"
    assert len(entered) == 5
