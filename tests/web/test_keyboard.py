"""Every screen by the keyboard alone: Tab reaches each control, in order, and shows where it is."""

from __future__ import annotations

import pytest
from tests.web.walked import DOOR, PHONE, SCREENS, browsing, served, signed_in

pytestmark = pytest.mark.slow

LISTED = """const listed = () => {
  const told = [...document.querySelectorAll(
    'a[href], button, input, select, textarea, summary, [tabindex]')];
  const shown = told.filter(one => one.tabIndex >= 0 && !one.disabled && one.type !== 'hidden'
    && one.checkVisibility({visibilityProperty: true}) && one.getClientRects().length);
  return shown.filter(one => one.type !== 'radio' || one.checked
    || !shown.some(other => other.type === 'radio' && other.name === one.name
      && other.form === one.form && other.checked));
};
const named = one => `${one.tagName} ${one.id || one.name || one.textContent.trim().slice(0, 40)}`;
"""
"""What Tab should come upon: of radio buttons the one that is chosen."""
CONTROLS = f"() => {{ {LISTED} return listed().map(named); }}"
FROM_THE_TOP = """() => {
  document.body.tabIndex = -1; document.body.focus(); document.body.removeAttribute('tabindex');
  scrollTo(0, 0);
}"""
HERE = (
    "() => { "
    + LISTED
    + """
  const one = document.activeElement;
  if (!one || one === document.body) return null;
  const style = getComputedStyle(one), box = one.getBoundingClientRect();
  return {
    number: listed().indexOf(one),
    outlined: style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2,
    seen: box.width > 0 && box.bottom > 0 && box.top < innerHeight && box.right > 0,
    what: named(one),
  };
}"""
)


@pytest.fixture(scope="module")
def walks(tmp_path_factory):
    """Of each screen its controls, and what Tab came upon in turn."""
    with served(tmp_path_factory.mktemp("walked")) as address, browsing() as browser:
        page = signed_in(browser, address)
        found = {}
        for name, path in {**SCREENS, "phone": PHONE, "door": DOOR}.items():
            page.goto("about:blank")
            page.goto(address + path, wait_until="load")
            if name == "phone":
                page.locator("button.main").wait_for()
            page.evaluate(FROM_THE_TOP)
            controls = page.evaluate(CONTROLS)
            stops = []
            for _ in range(len(controls) * 4 + 8):
                page.keyboard.press("Tab")
                stop = page.evaluate(HERE)
                if stop is None or (stop["number"] == 0 and stops):
                    break  # through, or round to the first again
                stops.append(stop)
            found[name] = (controls, stops)
        return found


def test_every_control_is_reached(walks):
    missed = {
        name: [what for n, what in enumerate(controls) if n not in {s["number"] for s in stops}]
        for name, (controls, stops) in walks.items()
    }
    assert all(controls for controls, _ in walks.values())
    assert {name: told for name, told in missed.items() if told} == {}


def test_they_come_in_the_order_in_which_they_stand(walks):
    odd = {}
    for name, (_, stops) in walks.items():
        numbers = [stop["number"] for stop in stops if stop["number"] >= 0]
        if numbers != sorted(numbers):
            odd[name] = numbers
    assert odd == {}


def test_where_the_focus_is_can_be_seen(walks):
    unseen = {
        name: sorted({s["what"] for s in stops if not (s["outlined"] and s["seen"])})
        for name, (_, stops) in walks.items()
    }
    assert {name: told for name, told in unseen.items() if told} == {}
