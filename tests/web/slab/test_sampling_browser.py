"""The sample day in a browser: led without signal, its stopwatches alive after a dead battery."""

from __future__ import annotations

from urllib.parse import quote

import pytest
from tests.web.slab.browser import PHONES, browsing, fresh, phone, playing
from tests.web.slab.colours import contrast
from tests.web.slab.house import KEY, serving
from tests.web.slab.pictures import jpeg_with_a_place
from tests.web.slab.test_browser import SIZES, TEXTS

pytestmark = pytest.mark.slow

HOUSES = ("led", "390x844", "360x640")
LEAST_PX, LEAST_HIGH_PX = 44, 57


@pytest.fixture(scope="module")
def server(tmp_path_factory):
    with serving(tmp_path_factory.mktemp("book"), jobs=HOUSES) as found:
        yield found


@pytest.fixture(scope="module")
def play():
    with playing() as found:
        yield found


@pytest.fixture(scope="module")
def browser(play):
    return browsing(play)


def led(context, server, job, *, key=True):
    """The day of a house, at its first page."""
    page = context.new_page()
    page.goto(f"{server.address}/slab/{job}?samples" + (f"#{quote(KEY)}" if key else ""))
    page.locator("[data-do='go samplesall']").wait_for(timeout=30_000)
    return page


def do(page, *acts):
    """These keys by what they do, one after another."""
    for act in acts:
        page.wait_for_timeout(310)
        page.locator(f"[data-do='{act}']").tap()


def typed(page, act, digits):
    do(page, act, *(f"sample digit {one}" for one in digits), "sample figure")


def begun(page):
    """What is read before the first cut."""
    do(page, "sample clean")
    typed(page, "sample ask drop", "12")
    typed(page, "sample ask slab", "67")
    typed(page, "sample ask air", "70")
    do(page, "sample skip humidity")


def laid(page, name, before, after):
    typed(page, f"sample ask before {name}", before)
    do(page, f"sample laid {name}")
    typed(page, f"sample ask weighed {name}", after)


def since(page):
    """The moments from which the stopwatches on the page run."""
    page.locator("[data-since]").first.wait_for()
    return sorted(one.get_attribute("data-since") for one in page.locator("[data-since]").all())


def test_a_day_is_led_without_signal_over_a_closed_phone_and_a_slip(
    server, play, browser, tmp_path
):
    (tmp_path / "wet.jpg").write_bytes(jpeg_with_a_place(browser, 800))
    with phone(play, tmp_path / "phone") as context:
        page = led(context, server, "led")
        page.evaluate("navigator.serviceWorker.ready.then(() => true)")
        context.set_offline(True)
        begun(page)
        laid(page, "A1", "2310", "2160")
        laid(page, "B1", "2300", "2155")
        typed(page, "sample ask before C1", "2290")
        page.get_by_role("button", name="C1 is laid").wait_for()
        do(page, "sample sheen A1", "undo")  # a slip
        page.get_by_role("button", name="Gloss gone: A1").wait_for()
        before = since(page)
        assert len(before) == 2
    with phone(play, tmp_path / "phone") as context:
        context.set_offline(True)
        page = led(context, server, "led", key=False)  # from its own memory
        assert since(page) == before
        page.get_by_text("before: 2290 g").wait_for()  # what was weighed lies here too
        do(page, "sample laid C1", "sample unweighed C1", "sample sheen B1", "sample dry B1")
        do(
            page,
            "go samplesall",
            "sample hand B1",
            "go samplehow",
            "sample wash B1",
            "sample pick scrubs 3",
            "sample pick ph 7.5",
        )
        do(page, "sample pick rag clean", "sample pick held holds", "sample washed")
        page.get_by_role("button", name="Undo").get_by_text("wash B1").wait_for()
        # On a slow machine another sample's stopwatch may be due by now, and stand first.
        do(page, "go samplesall", "sample hand B1")
        page.locator("[data-sample='B1'][data-step='wet']").set_input_files(tmp_path / "wet.jpg")
        # The photo is made small first, and counts then as the eleventh.
        page.locator(".status", has_text="11 entries on this phone not sent yet").wait_for()
        context.set_offline(False)
        page.evaluate("dispatchEvent(new Event('online'))")
        page.locator(".status", has_text="All is sent").wait_for(timeout=60_000)
    told = sorted(server.entries("led"), key=lambda one: one["number"])
    assert [one["word"] for one in told] == [
        "sample-laid", "sample-laid", "sample-laid", "sample-laid", "sample-sheen-lost", "struck",
        "sample-laid", "sample-sheen-lost", "sample-dry", "sample-washed", "photo",
    ]  # fmt: skip
    about = told[0]["about"]
    assert about["before_kg"] == 2.31
    assert about["slab_c"] == 19.44
    assert about["coat"] == "first"
    assert about["area_m2"] == 0.72
    assert "rh_percent" not in about
    assert told[1]["about"] == {"sample": "A1", "cut": "1:3", "after_kg": 2.16}
    washed = told[9]["about"]
    assert {k: washed[k] for k in ("scrubs", "ph", "rag", "held")} == {
        "scrubs": 3, "ph": 7.5, "rag": "clean", "held": "holds",
    }  # fmt: skip
    photo = told[10]["about"]
    assert (photo["sample"], photo["state"]) == ("B1", "clean wet")
    assert b"Exif" not in server.file(photo["file"])


@pytest.mark.parametrize(
    ("size", "language"), [(PHONES[0], "en-US"), (PHONES[1], "es-MX")], ids=["390x844", "360x640"]
)
def test_every_page_of_the_day_is_read_in_the_sun_and_pressed_with_gloves(
    server, browser, size, language
):
    from axe_playwright_python.sync_playwright import Axe

    with fresh(browser, size=size, language=language) as context:
        page = led(context, server, f"{size[0]}x{size[1]}")

        def looked_at(name):
            page.wait_for_timeout(100)
            for text, wide, high, left, right, kind in page.evaluate(SIZES):
                assert wide >= LEAST_PX, (name, text, wide)
                assert high >= LEAST_HIGH_PX, (name, text, high)
                assert high >= 74 or kind != "main", (name, text, high)
                assert 0 <= left <= right <= size[0], (name, text)
            for text, font_px, colour, ground in page.evaluate(TEXTS):
                assert font_px >= 16, (name, text, font_px)
                assert contrast(colour, ground) >= 7, (name, text, colour, ground)
            assert page.evaluate("document.documentElement.scrollWidth") <= size[0], name
            assert page.locator("[data-do='go eyes']").count() == 1, name
            wrong = Axe().run(page).response["violations"]
            assert wrong == [], (name, [(o["id"], o["nodes"][0]["html"]) for o in wrong])

        looked_at("clean")
        do(page, "sample clean", "sample ask drop")
        looked_at("keypad")
        do(page, "sample digit 9", "sample figure", "sample skip slab", "sample skip air")
        do(page, "sample skip humidity")
        looked_at("lay")
        do(page, "sample laid A1", "sample unweighed A1", "sample laid B1", "sample unweighed B1")
        do(page, "sample laid C1", "sample unweighed C1")
        looked_at("sheen")
        do(page, "go samplesall")
        looked_at("all")
        do(page, "go samples", "go samplehow")
        looked_at("how")
        do(page, "sample wash A1")
        looked_at("wash")
        do(page, "sample washed", "go samplesall", "sample hand A1")
        looked_at("wet")
        do(page, "go samplehow", "sample judge A1")
        looked_at("judge")
