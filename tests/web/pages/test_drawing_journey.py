"""From an empty floor to a planned one in a real browser: by mouse, by finger, by keys alone."""

from __future__ import annotations

import json
import re

import pytest
from tests.web.pages.serving import KEY, PLANNED_MS, serving
from tests.web.pages.test_draw import rooms_of_others

pytestmark = pytest.mark.slow


@pytest.fixture(scope="module")
def served(tmp_path_factory):
    with serving(tmp_path_factory.mktemp("drawing")) as here:
        yield here


class Board:
    """A page with a house that was just begun, and where its floor lies on the screen."""

    def __init__(self, browser, served, name, *, first=("", ""), **context):
        self.page = browser.new_context(**context).new_page()
        self.complaints = []
        self.page.on("pageerror", lambda error: self.complaints.append(str(error)))
        self.page.goto(served)
        self.page.get_by_label("Key").fill(KEY)
        self.page.get_by_role("button", name="Enter").click()
        self.page.get_by_role("link", name="Draw a house").click()
        self.page.get_by_label("Name of the house").fill(name)
        self.page.get_by_label("Width").fill(first[0])
        self.page.get_by_label("Depth").fill(first[1])
        self.page.get_by_role("button", name="Begin").click()
        # Drawn by its script, which then listens too: a tool chosen sooner would be lost.
        self.page.locator("#floor-drawing[viewBox]").wait_for(state="attached")

    def at(self, x, y):
        """Where a place of the floor [m] is on the screen [px]."""
        svg = self.page.locator("#floor-drawing")
        box = svg.bounding_box()
        left, top, wide, _ = (float(one) for one in svg.get_attribute("viewBox").split())
        scale = box["width"] / wide
        return box["x"] + (100 * x - left) * scale, box["y"] + (-100 * y - top) * scale

    def tool(self, name):
        self.page.get_by_role("button", name=name, exact=True).click()

    def things(self):
        return self.page.locator("#things li").all_inner_texts()

    def drag(self, start, end):
        """From one place of the floor to another, by mouse [m]."""
        self.page.mouse.move(*self.at(*start))
        self.page.mouse.down()
        self.page.mouse.move(*self.at(*end), steps=4)
        self.page.mouse.up()

    def planned(self):
        self.tool("Keep and plan")
        self.page.get_by_text("Kept as facts").wait_for()
        self.page.get_by_role("link", name="To the plan").click()
        self.page.get_by_role("slider").wait_for(timeout=PLANNED_MS)
        assert self.complaints == []


def test_by_mouse_with_an_undo_to_the_beginning(served, browser):
    board = Board(browser, served, "Mouse", first=("12' 6\"", "3.81 m"))
    page = board.page

    board.tool("Room")
    board.drag((3.924, 0.01), (6.5, 3.0))  # a wall apart from the first room, in line with its foot
    board.tool("Opening")
    page.mouse.click(*board.at(3.81, 1.5))
    page.mouse.click(*board.at(1.5, 3.81))
    page.get_by_label("A way out on the day").check()
    board.tool("Saw cut")
    page.mouse.click(*board.at(1.9, 0))
    page.mouse.click(*board.at(1.9, 3.81))
    board.tool("Pick and move")
    board.drag((0, 2), (-0.5, 2))
    told = board.things()
    assert told[0].startswith("Room 1, ")
    assert {"Door, Room 1 to Room 2", "Door, Room 2 to Room 1"} & set(told)
    assert [one for one in told if one.startswith("Outside door") and one.endswith("way out")]
    steps = 0
    while page.locator("#undo").is_enabled():
        page.keyboard.press("Control+z")
        steps += 1
    assert steps == 6
    assert len(board.things()) == 1
    for _ in range(steps):
        board.tool("Redo")
    assert board.things() == told
    board.planned()


def test_a_whole_room_is_moved_by_its_name_from_inside_and_by_the_arrows(served, browser):
    board = Board(browser, served, "Whole", first=("4 m", "3 m"))
    page = board.page

    def lies():
        """Where the second room's floor begins and ends [m]."""
        d = page.locator("#floor-drawing .floors path").nth(1).get_attribute("d")
        numbers = [float(one) / 100 for one in re.findall(r"-?\d+(?:\.\d+)?", d)]
        return min(numbers[::2]), max(numbers[::2]), -max(numbers[1::2]), -min(numbers[1::2])

    board.tool("Room")
    board.drag((4.114, 0.01), (6.0, 2.0))
    board.tool("Opening")
    page.mouse.click(*board.at(4.05, 1.0))
    board.tool("Pick and move")
    page.keyboard.press("Escape")
    was = lies()
    board.drag((5.6, 0.4), (5.6, 0.9))  # inside, and not in hand: the floor is shifted
    assert lies() == was
    board.drag(((was[0] + was[1]) / 2, 1.0), ((was[0] + was[1]) / 2 + 0.01, 1.5))  # by its name
    page.get_by_text("The room was moved, with its openings").wait_for()
    moved = lies()
    assert moved[0] == pytest.approx(was[0], abs=2e-3)  # still a wall off its neighbour
    assert moved[2] == pytest.approx(was[2] + 0.5, abs=0.06)
    board.drag((5.6, moved[2] + 0.4), (6.6, moved[2] + 0.4))  # from inside, for it is in hand
    page.get_by_text("Look at what leads elsewhere now: Outside door").wait_for()
    away = lies()
    assert away[0] == pytest.approx(moved[0] + 1.0, abs=0.06)
    page.keyboard.press("ArrowUp")
    assert lies()[2] > away[2]
    for _ in range(3):
        page.keyboard.press("Control+z")
    assert lies() == was
    assert board.complaints == []


def test_by_finger_on_a_phone_and_the_page_stays(served, browser):
    phone = {"viewport": {"width": 390, "height": 780}, "has_touch": True, "is_mobile": True}
    board = Board(browser, served, "Finger", first=("4 m", "3 m"), **phone)
    page = board.page
    page.locator("#board").scroll_into_view_if_needed()
    board.tool("Opening")
    page.touchscreen.tap(*board.at(2, 3))
    page.get_by_label("A way out on the day").check()
    board.tool("Pick and move")
    page.locator("#board").scroll_into_view_if_needed()
    rolled = page.locator("#board").bounding_box()["y"]
    session = page.context.new_cdp_session(page)
    x, y = board.at(4, 1.5)
    touch = "Input.dispatchTouchEvent"
    session.send(touch, {"type": "touchStart", "touchPoints": [{"x": x, "y": y}]})
    for step in range(1, 6):
        points = [{"x": x + 6 * step, "y": y + 8 * step}]
        session.send(touch, {"type": "touchMove", "touchPoints": points})
    session.send(touch, {"type": "touchEnd", "touchPoints": []})
    page.get_by_text("The wall was moved").wait_for()
    assert page.locator("#board").bounding_box()["y"] == rolled
    board.planned()


def test_by_keys_alone(served, browser):
    board = Board(browser, served, "Keys")
    page = board.page

    def press(*keys):
        for key in keys:
            page.keyboard.press(key)

    def reach(target):
        """On by Tab until it has the focus."""
        for _ in range(60):
            if target.evaluate_all("(found) => found.includes(document.activeElement)"):
                return
            press("Tab")
        pytest.fail("Tab never came there")

    reach(page.get_by_role("button", name="Room", exact=True))
    press("Enter")  # and the floor has the focus
    page.keyboard.type("13' 1 1/2")
    press("Escape")
    page.keyboard.type("1")
    page.locator("#typed").fill("4 m x 3 m")
    press("Enter")
    assert board.things() == ["Room 1, 129 ft²"]
    reach(page.get_by_label("Take the right wall"))
    press("Enter", "Shift+ArrowRight")  # the wall goes out by a foot: 4.3048 m by 3 m
    assert board.things() == ["Room 1, 139 ft²"]
    press("Control+z")
    assert board.things() == ["Room 1, 129 ft²"]
    press("Home", "Escape")
    reach(page.get_by_role("button", name="Opening", exact=True))
    press("Enter")
    for _ in range(5):
        press("Shift+ArrowUp")
    press("Enter", "Escape")
    reach(page.locator("#things"))
    press("End")
    reach(page.get_by_label("A way out on the day"))
    press("Space")
    assert board.things()[1].endswith("way out")
    reach(page.locator("#keep"))
    press("Enter")
    page.get_by_text("Kept as facts").wait_for()
    reach(page.get_by_role("link", name="To the plan"))
    press("Enter")
    page.get_by_role("slider").wait_for(timeout=PLANNED_MS)
    assert board.complaints == []


def test_what_an_import_found_is_answered_at_its_place_and_kept(served, browser):
    board = Board(browser, served, "Notes")
    page = board.page
    page.goto(served)
    file = {"name": "lot_3.geojson", "mimeType": "application/json", "buffer": rooms_of_others()}
    page.locator("#file").set_input_files(file)
    page.get_by_role("button", name="Bring it").click()
    found = page.get_by_text("What the import found: ")  # no way out, so no job yet
    found.wait_for()
    many = int(re.search(r"found: (\d+) to answer", found.inner_text())[1])

    def left(number):
        page.get_by_text(f"What the import found: {number} to answer").wait_for()

    page.get_by_role("button", name="Keep and plan").click()
    page.locator("#faults li", has_text="way out").wait_for()
    page.get_by_role("button", name="Mark the way out").click()
    ring = json.loads(page.locator("#drawing").get_attribute("data-given"))
    (x, y), (far, _) = ring["drawn"]["rooms"][0]["polygon"]["coordinates"][0][:2]
    page.mouse.click(*board.at((x + far) / 2, y))
    page.get_by_text("Marked as a way out.").wait_for()
    page.get_by_role("button", name="Seen").first.focus()
    page.keyboard.press("Enter")
    left(many - 2)
    board.tool("Undo")
    left(many - 1)
    board.tool("Redo")
    board.planned()
    page.go_back()
    left(many - 2)
    assert board.complaints == []


def test_a_room_is_split_by_a_line_and_joined_again(served, browser):
    board = Board(browser, served, "Split", first=("6 m", "3 m"))
    page = board.page
    page.locator("#things li").first.click()
    page.get_by_role("button", name="Split it by a line").click()
    page.mouse.move(*board.at(2, 0.02))
    page.mouse.down()
    page.mouse.move(*board.at(2, 1.5))
    page.mouse.move(*board.at(2, 2.98))
    page.mouse.up()
    page.locator("#things li").nth(2).wait_for()
    assert [one.split(",")[0] for one in board.things()] == ["Room 1", "Room 1 2", "Wide opening"]
    page.locator("#things li").first.click()
    page.get_by_label("Join with").select_option(index=0)
    page.get_by_role("button", name="Join", exact=True).click()
    page.locator("#things li").nth(1).wait_for(state="detached")
    assert len(board.things()) == 1
    board.tool("Undo")
    board.tool("Undo")
    assert len(board.things()) == 1
    assert board.complaints == []
