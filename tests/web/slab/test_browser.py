"""The page in a browser: nothing is lost, whatever dies; and it is no toy for dry hands only."""

from __future__ import annotations

import re
from urllib.parse import quote

import pytest
from tests.midday import day_of
from tests.web.slab.browser import (
    PHONES,
    browsing,
    fresh,
    opened,
    phone,
    playing,
    sent,
    tap,
    tapped,
)
from tests.web.slab.colours import contrast
from tests.web.slab.house import JOB, KEY, serving
from tests.web.slab.pictures import jpeg_with_a_place, size_of

pytestmark = pytest.mark.slow

HOUSES = (JOB, "taps", "words", "late", "390x844", "360x640", "light", "wash", "pour", "tongue")
"""A house for each test: one book, one server and one browser do for all."""


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


def words(server, job):
    return [one["word"] for one in server.entries(job)]


def photographed(page, picture):
    tap(page, "Note, photo")
    page.locator("#photo").set_input_files(picture)
    page.get_by_role("button", name="Undo").get_by_text("photo").wait_for()


def test_entries_and_photos_survive_a_killed_server_and_a_closed_browser_once_each(
    server, play, browser, tmp_path
):
    taken = jpeg_with_a_place(browser)
    assert b"Exif" in taken
    assert size_of(taken) == (3200, 1600)
    (tmp_path / "taken.jpg").write_bytes(taken)
    (tmp_path / "other.jpg").write_bytes(jpeg_with_a_place(browser, 800))
    with phone(play, tmp_path / "phone") as context:
        page = opened(context, server.address)
        tapped(page, 8)
        server.kill()
        tapped(page, 7)
        photographed(page, tmp_path / "taken.jpg")
        page.locator(".status", has_text="entries on this phone not sent yet").wait_for()
    with phone(play, tmp_path / "phone") as context:
        page = opened(context, server.address, key=False)  # without signal, from its own memory
        told = re.search(r"(\d+) entries on this phone not sent yet", page.inner_text(".status"))
        assert int(told[1]) >= 8
        photographed(page, tmp_path / "other.jpg")
        tapped(page, 5)
        server.start()
        page.reload()
        sent(page)
        page.reload()
        sent(page)
    found = sorted(server.entries(), key=lambda one: one["number"])
    assert len({one["id"] for one in found}) == len(found) == 22
    assert [one["number"] for one in found] == list(range(1, 23))
    plan = day_of("quince-street")
    order = [band.id for field in plan.fields for band in field.bands]
    done = [one["about"]["band"] for one in found if one["word"] == "band-done"]
    assert done == order[:20]
    photos = [server.file(o["about"]["file"]) for o in found if o["word"] == "photo"]
    assert [size_of(one) for one in photos] == [(1600, 800), (800, 400)]
    assert not any(b"Exif" in one for one in photos)
    with fresh(browser) as context:  # a second phone sees what the first did
        page = opened(context, server.address)
        page.locator("button.main", has_text="Band 1.5.4 done").wait_for(timeout=30_000)


def test_quick_taps_are_one_slips_are_struck_and_wireless_keys_press(server, browser):
    with fresh(browser) as context:
        page = opened(context, server.address, job="taps")
        sent(page)  # until then news may draw the key anew
        box = page.locator("button.main").bounding_box()
        x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
        page.touchscreen.tap(x, y)
        page.touchscreen.tap(x, y)
        page.locator("button.main", has_text="Band 1.1.2 done").wait_for()
        page.get_by_role("button", name="Undo").tap()
        page.locator("button.main", has_text="Band 1.1.1 done").wait_for()
        sent(page)
        assert sorted(words(server, "taps")) == ["band-done", "struck"]
        keys = ("Enter", "Space", "PageDown", "AudioVolumeUp", "VolumeDown", "MediaTrackNext")
        for number, key in enumerate(keys):
            before = page.locator("button.main").inner_text()
            page.wait_for_timeout(310)
            if number < 4:
                page.keyboard.press(key)
            else:  # keys that this driver has no name for, as the browser would tell them
                told = f"new KeyboardEvent('keydown', {{key: '{key}', bubbles: true}})"
                page.evaluate(f"document.body.dispatchEvent({told})")
            page.locator("button.main", has_not_text=before).wait_for()
        # news that comes while a finger presses does not take the tap away
        page.get_by_role("button", name="Drip").hover()
        page.mouse.down()
        page.evaluate("dispatchEvent(new Event('online'))")  # asks the book, which draws anew
        page.wait_for_timeout(1500)
        page.mouse.up()
        page.get_by_role("button", name="Undo").get_by_text("drip").wait_for(timeout=5000)
        # a page that is taken for a new one is drawn before its memory is read, and set right by it
        shown = page.locator("button.main").inner_text()
        page.evaluate("localStorage.clear()")
        page.goto(f"{server.address}/slab/taps#{quote(KEY)}")
        page.reload()
        page.get_by_role("button", name="Undo").get_by_text("drip").wait_for(timeout=5000)
        assert page.locator("button.main").inner_text() == shown
        assert page.evaluate("localStorage['farwall-slab-kept']") == "1"


def test_every_word_of_the_page_is_one_the_book_takes(server, browser):
    with fresh(browser) as context:
        context.add_init_script(
            "window.headset = {}; navigator.mediaSession.setActionHandler = "
            "(name, does) => { window.headset[name] = does; };"
        )
        page = opened(context, server.address, job="words")
        tapped(page, 3)
        tap(page, "Phone")
        page.locator("[data-do='wish headset']").tap()
        page.locator("[data-do='wish headset'][aria-pressed='true']").wait_for()
        tap(page, "Back")
        page.evaluate("headset.nexttrack()")  # the key of a headset, as the browser would call it
        page.locator("button.main", has_text="Band 1.2.2 done").wait_for()
        tap(page, "Tank filled", "Drip", "Sheen gone", "Bath", "Still damp", "All of it", "Dry")
        tap(page, "Bath", "Stopped", "Another trade came in", "Note, photo", "Room closed", "Hall")
        tap(page, "Note, photo", "Room free", "Hall", "Note, photo")
        page.locator("#text").fill("the jamb dripped")
        tap(page, "Enter", "Eyes, spills", "Enter: a spill, nobody hurt")
        tap(page, "Eyes, spills", "Enter: somebody was hurt", "Tank, tub")
        page.locator("button", has_text="+½").first.tap()
        tap(page, "Enter", "Helper", "Label for the jug")
        page.locator("#lot").fill("L-417")
        tap(page, "Back", "Helper")
        page.locator("button", has_text="Mixed:").tap()
        sent(page)
        assert page.locator(".status", has_text="turned away").count() == 0
    assert sorted(words(server, "words")) == sorted([
        *["band-done"] * 4, "filled", "drip", "sheen-lost", "still-damp", "dry", "stopped", "note",
        "near-miss", "hurt", "tank-weighed", "mixed", "room-closed", "room-free",
    ])  # fmt: skip
    mixed = next(one for one in server.entries("words") if one["word"] == "mixed")
    assert mixed["about"]["lot"] == "L-417"


def rinsed(page, ph, rag):
    """One rinse of the room in hand, with its strip and rag."""
    tap(page, "Rinsed", ph, rag)
    page.locator("button.main", has_text=f"pH {ph}, rag {rag}").tap()


def test_a_wash_day_is_tapped_without_signal_and_answered_by_the_phone_and_then_by_the_book(
    server, browser
):
    with fresh(browser) as context:
        page = opened(context, server.address, job="wash")
        sent(page)
        context.set_offline(True)
        tap(page, "Helper", "Washing", "Tap water not read", "7.5")
        page.get_by_role("button", name="Tap water pH 7.5").wait_for()
        tap(page, "Bath not rinsed", "Scrubbed", "Vacuumed")
        rinsed(page, "6", "grey")
        page.get_by_text("Scrub again with neutraliser, not only a rinse.").wait_for()
        page.get_by_text("By this phone.").wait_for()
        rinsed(page, "7.5", "clean")
        page.get_by_text("pH and rag pass.").wait_for()
        tap(page, "Undo rinsed")
        page.get_by_text("Scrub again with neutraliser, not only a rinse.").wait_for()
        tap(page, "One more strip", "5", "Dry swipe: powder")
        tap(page, "Back")
        page.locator("[data-do='wash-room bath']", has_text="scrub again").wait_for()
        context.set_offline(False)
        page.evaluate("dispatchEvent(new Event('online'))")
        page.get_by_text("By the book.").wait_for(timeout=60_000)
        asked = page.locator("[data-do='wash-room bath'] b").inner_text()
        assert re.fullmatch(r"scrub again, \d+( to \d+)?", asked)
    told = sorted(server.entries("wash"), key=lambda one: one["number"])
    assert [one["word"] for one in told] == [
        "strip-read", "scrubbed", "vacuumed", "rinsed", "rinsed", "struck", "strip-read",
        "dry-swiped",
    ]  # fmt: skip
    assert told[0]["about"] == {"of": "tap", "ph": 7.5}
    assert told[3]["about"] == {"room": "bath", "round": 1, "ph": 6, "rag": "grey"}
    assert told[6]["about"] == {"room": "bath", "of": "rinse water", "ph": 5}
    assert told[7]["about"] == {"room": "bath", "powder": True}


def test_the_gate_is_asked_with_signal_and_says_no_to_what_it_does_not_know_without(
    server, browser
):
    with fresh(browser) as context:
        page = opened(context, server.address, job="pour")
        sent(page)
        verdict = page.locator(".verdict")
        context.set_offline(True)
        tap(page, "Helper", "May it be poured?")
        verdict.get_by_text("Not asked: unknown means no").wait_for()  # it has no list yet
        context.set_offline(False)
        page.evaluate("dispatchEvent(new Event('online'))")
        tap(page, "What stands there", "water", "What is poured in", "dark earth")
        verdict.get_by_text("Allowed, with care").wait_for()
        page.get_by_text("By the book, at").wait_for()
        context.set_offline(True)
        tap(page, "What is poured in", "Brought, on no list", "bleach")
        verdict.get_by_text("Refused").wait_for()
        page.get_by_text("By the list on this phone").wait_for()
        tap(page, "Start anew", "What stands there", "dark earth", "What is poured in", "water")
        page.get_by_text("Water poured into strong acid boils").wait_for()
        tap(page, "In what: an open plastic tub", "a metal pail")
        verdict.get_by_text("Not asked: unknown means no").wait_for()
    assert words(server, "pour") == []


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
PAGES = [
    "", "Helper", "Eyes, spills", "Tank, tub", "Sheen gone", "Stopped", "Note, photo", "Phone",
    "Helper > Washing", "Helper > Washing > All of it", "Helper > Washing > All of it > Rinsed",
    "Helper > May it be poured?", "Helper > May it be poured? > What stands there",
]  # fmt: skip
EN_ES = {
    "Helper": "Ayudante", "Eyes, spills": "Ojos, derrames", "Tank, tub": "Tanque, tina",
    "Sheen gone": "Sin brillo", "Stopped": "Parado", "Note, photo": "Nota, foto",
    "Washing": "Lavado", "All of it": "Todo", "Rinsed": "Enjuagado",
    "May it be poured?": "¿Se puede verter?", "What stands there": "Lo que ya está ahí",
    "Phone": "Teléfono", "Back": "Atrás", "Undo": "Deshacer",
}  # fmt: skip


@pytest.mark.parametrize(
    ("size", "language"), [(PHONES[0], "en-US"), (PHONES[1], "es-MX")], ids=["390x844", "360x640"]
)
def test_every_page_is_read_in_the_sun_by_any_eye_and_pressed_with_wet_gloves(
    server, browser, size, language
):
    from axe_playwright_python.sync_playwright import Axe

    say = (lambda name: EN_ES.get(name, name)) if language == "es-MX" else (lambda name: name)
    with fresh(browser, size=size, language=language) as context:
        page = opened(context, server.address, job=f"{size[0]}x{size[1]}")
        tapped(page, 8)
        for name in PAGES:
            for one in filter(None, name.split(" > ")):
                tap(page, say(one))
                page.get_by_role("button", name=say("Back")).wait_for()
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
            assert page.locator("[data-do='go eyes'], [data-do='hurt']").count() >= 1
            wrong = Axe().run(page).response["violations"]
            assert wrong == [], (name, [(one["id"], one["nodes"][0]["html"]) for one in wrong])
            while page.locator(".status").count() == 0:
                tap(page, say("Back"))
        undo = page.get_by_role("button", name=say("Undo")).bounding_box()
        stop = page.get_by_role("button", name=say("Stopped")).bounding_box()
        assert stop["y"] - undo["y"] > size[1] * 0.8
        # by keyboard alone: the focus goes through the keys in their order, and stays on one that
        # was drawn anew
        order = []
        for _ in range(4):
            page.keyboard.press("Tab")
            order.append(page.evaluate("document.activeElement.dataset.do"))
        assert order == ["undo", "go helper", "go eyes", "main"]
        page.wait_for_timeout(310)
        page.keyboard.press("Enter")
        page.locator("button.main", has_text="3.3").wait_for()
        assert page.evaluate("document.activeElement.dataset.do") == "main"


def test_the_edge_is_called_out_as_it_runs_down_and_then_says_stop(server, browser):
    with fresh(browser, language="es-US") as context:
        context.add_init_script(
            "window.shaken = []; navigator.vibrate = (told) => window.shaken.push(told);"
            "window.spoken = []; window.speechSynthesis.speak = (told) => "
            "window.spoken.push([told.lang, told.text]);"
        )
        page = context.new_page()
        page.clock.install()
        page.goto(f"{server.address}/slab/late#{KEY}")
        page.locator("button.main").wait_for(timeout=30_000)
        page.clock.run_for(400)
        page.get_by_role("button", name="Teléfono").tap()
        page.locator("[data-do='wish speech']").tap()
        page.locator("[data-do='wish speech'][aria-pressed='true']").wait_for()
        page.clock.run_for(400)
        page.get_by_role("button", name="Atrás").tap()
        page.locator("button.main").tap()
        page.locator(".label", has_text="minutos que le quedan a la orilla viva").wait_for()
        context.set_offline(True)
        low_min = day_of("quince-street").fields[0].open_time_min.low
        for _ in range(int(low_min * 12) + 6):
            page.clock.run_for(5000)
        assert page.evaluate("shaken.length") == 5  # two minutes, one, thirty and ten seconds, none
        assert page.evaluate("spoken") == [["es", one] for one in (
            "así se canta el tiempo", "dos minutos de orilla", "un minuto", "treinta segundos",
            "diez segundos", "se acabó el tiempo de la orilla",
        )]  # fmt: skip
        assert page.locator("#big").inner_text().startswith("−")
        assert "difumine en seco" in page.locator(".stop").inner_text()


def test_a_page_comes_with_one_language_and_changes_it_without_signal(server, browser):
    with fresh(browser, language="es-MX") as context:
        asked = []
        context.on("request", lambda one: asked.append(one.url.rpartition("/")[2]))
        page = opened(context, server.address, job="tongue")
        page.get_by_role("button", name="Teléfono").wait_for()
        assert next(one for one in asked if one.endswith(".json")) == "es.json"
        page.evaluate("navigator.serviceWorker.ready.then(() => true)")
        context.set_offline(True)
        page.reload()
        tap(page, "Teléfono", "English")
        page.get_by_role("heading", name="This phone").wait_for()
        page.reload()
        page.get_by_role("button", name="Sheen gone").wait_for()
        assert page.evaluate("document.documentElement.lang") == "en"


def test_a_spanish_house_is_read_in_spanish_on_a_phone_that_speaks_english(server, browser):
    with fresh(browser) as context:

        def in_spanish(route):
            told = route.fetch()
            route.fulfill(response=told, json={**told.json(), "language": "es"})

        context.route("**/sheet", in_spanish)
        page = context.new_page()
        page.goto(f"{server.address}/slab/tongue#{quote(KEY)}")
        page.get_by_role("button", name="Ayudante").wait_for(timeout=30_000)
        page.get_by_text("Todo enviado").wait_for(timeout=30_000)
        assert page.evaluate("document.documentElement.lang") == "es"


def test_the_first_load_is_light_and_open_for_eyes_and_spills_without_a_key(server, browser):
    with fresh(browser) as context:
        asked, wrong = [], []

        def seen(response):  # a method of a list cannot be listened with
            asked.append(response)

        context.on("response", seen)
        page = context.new_page()
        page.on("console", lambda one: wrong.append(one.text))
        page.on("pageerror", lambda one: wrong.append(str(one)))
        page.goto(f"{server.address}/slab/light")
        page.get_by_role("button", name="Eyes, spills").tap()
        page.get_by_role("heading", name="water first").wait_for()
        tap(page, "Back")
        page.locator("#key").fill(KEY)
        page.get_by_role("button", name="Open").tap()
        page.locator("button.main", has_text="Band 1.1.1 done").wait_for(timeout=30_000)
        sent(page)
        page.wait_for_timeout(300)
        assert KEY not in page.url
        mine = [o for o in asked if not o.from_service_worker and not o.request.service_worker]
        sizes = {one.url: one.request.sizes() for one in mine}
        wire = sum(o["responseBodySize"] + o["responseHeadersSize"] for o in sizes.values())
        assert not any("invented" in url.partition("#")[0] for url in sizes)
        assert len(mine) <= 8, sizes
        assert wire <= 60_000, sizes
        assert wrong == []
        print(len(mine), "requests,", wire, "bytes")


def test_a_square_of_another_book_or_of_a_house_that_is_gone_says_what_to_read_again(
    server, browser
):
    """No command of the office's machine, and in the language of the phone."""
    told = [
        (f"none-such#{quote(KEY)}", "El libro no tiene esa casa."),
        ("light#another-key", "Esa no es la clave de este libro."),
    ]
    for square, what in told:
        with fresh(browser, language="es-MX") as context:
            page = context.new_page()
            page.goto(f"{server.address}/slab/{square}")
            page.get_by_text(f"{what} Lea otra vez el cuadro").wait_for(timeout=30_000)
            assert "farwall" not in page.locator("body").inner_text()
