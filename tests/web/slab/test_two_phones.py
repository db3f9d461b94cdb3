"""Two phones on one floor, both without signal for a while: what the book and either phone hold."""

from __future__ import annotations

import json
import re

import pytest
from tests.web.slab.browser import browsing, fresh, opened, playing, sent, tapped
from tests.web.slab.house import JOB, serving

pytestmark = pytest.mark.slow


def entered(page, does):
    """A key by what it does, where its name tells a figure."""
    page.wait_for_timeout(310)
    page.locator(f"[data-do={does}]").tap()
    page.wait_for_timeout(310)


def test_what_both_enter_without_signal_is_all_kept_told_alike_and_counted_once(tmp_path):
    with (
        serving(tmp_path) as server, playing() as play,
        fresh(browsing(play), ahead_min=3, zone="America/Denver") as one,
        fresh(browsing(play), ahead_min=-4, language="es-MX") as two,
    ):  # fmt: skip
        finisher, helper = opened(one, server.address), opened(two, server.address)
        finisher.locator(".status", has_text="this phone").wait_for()
        helper.locator(".status", has_text="este teléfono").wait_for()
        for phone in (one, two):
            phone.set_offline(True)
        tapped(finisher, 3)
        tapped(helper, 2)
        for page in (finisher, helper):  # each undoes its own last
            page.wait_for_timeout(310)
            page.locator("[data-do=undo]").tap()
            entered(page, "filled")
            page.locator("[data-do='go helper']").tap()
            entered(page, "mixed")
        said = [page.locator(".next").inner_text() for page in (finisher, helper)]
        hour, minute = zip(*(re.search(r"(\d+):(\d\d)", one).groups() for one in said), strict=True)
        apart = abs((int(hour[0]) - int(hour[1])) * 60 + int(minute[0]) - int(minute[1]))
        assert apart in {0, 1, 719, 720}, f"both tell the floor's time of the next fill: {said}"
        one.set_offline(False)
        two.set_offline(False)
        for page in (finisher, helper):  # without a reload
            page.locator("button.main", has_text="1.1.3").wait_for(timeout=60_000)
        sent(finisher)
        assert len({(e["device"], e["number"]) for e in server.entries()}) == 11
        now = json.loads(server._asked(f"/api/jobs/{JOB}/now"))["now"]
        assert now["band"] == "first.1.3"
        odd = " ".join(now["contradictions"])
        assert "a batch of" in odd
        assert "A filled tank came from two phones" in odd
        assert "1.1.2 was entered on another too and counts as done" in odd
        assert "told to be done twice" not in odd
