"""Over https with the book's own authority: a phone that trusts it reloads without signal."""

from __future__ import annotations

import os
import shutil
import subprocess
from datetime import UTC, datetime

import pytest
from tests.web.slab.browser import CHROMIUM, PHONES, opened, playing, sent, tap, tapped
from tests.web.slab.house import Server, planned

from farwall.web.authority import authority_of

pytestmark = pytest.mark.slow


@pytest.fixture
def server(tmp_path):
    """A house that is twelve minutes old, served with the book's own certificate."""
    found = Server(planned(tmp_path, begun_min=12.0), "--local-certificate")
    found.start()
    yield found
    found.kill()


@pytest.fixture
def trusting(server, tmp_path):
    """A home whose browsers trust the authority as a phone does after the steps."""
    if shutil.which("certutil") is None:
        pytest.skip("no certutil here (Debian's libnss3-tools): no browser was made to trust it")
    store = tmp_path / "home" / ".pki" / "nssdb"
    store.mkdir(parents=True)
    authority = authority_of(server.book, datetime.now(UTC))
    for words in (
        ["-N", "--empty-password"],
        ["-A", "-n", "ours", "-t", "C,,", "-i", str(authority.public)],
    ):
        subprocess.run(["certutil", "-d", f"sql:{store}", *words], check=True, capture_output=True)
    return tmp_path / "home"


def phone_at(play, home, profile):
    return play.chromium.launch_persistent_context(
        str(profile), executable_path=str(CHROMIUM), args=["--no-sandbox"],
        env={**os.environ, "HOME": str(home)}, has_touch=True, is_mobile=True,
        viewport={"width": PHONES[0][0], "height": PHONES[0][1]},
    )  # fmt: skip


def test_a_phone_that_trusts_us_goes_on_without_the_server_and_with_the_day_laid_anew(
    server, trusting, tmp_path
):
    from playwright.sync_api import Error

    with playing() as play:
        stranger = play.chromium.launch(executable_path=str(CHROMIUM), args=["--no-sandbox"],
                                        env={**os.environ, "HOME": str(tmp_path)})  # fmt: skip
        with pytest.raises(Error, match="ERR_CERT_AUTHORITY_INVALID"):
            stranger.new_page().goto(server.address)
        stranger.close()
        context = phone_at(play, trusting, tmp_path / "phone")
        page = opened(context, server.address)
        tapped(page, 4)  # twelve minutes late: the book is asked to lay the rest anew
        sent(page)
        tap(page, "Helper", "The book says")
        laid = page.get_by_text("The rest of the day was laid anew at")
        for _ in range(60):  # it asks at each look; the book lays the day when there was quiet
            if laid.count():
                break
            page.evaluate("dispatchEvent(new Event('online'))")
            page.wait_for_timeout(1000)
        assert "knowing 4 entries" in laid.inner_text()
        page.evaluate("navigator.serviceWorker.ready.then(() => true)")
        server.kill()
        page.reload()
        page.locator("button.main", has_text="Band 1.2.2 done").wait_for()
        page.locator(".label", has_text="from the day laid anew at").wait_for()
        page.locator(".status", has_text="No signal").wait_for()
        tapped(page, 1)
        page.locator(".status", has_text="1 entry on this phone not sent yet").wait_for()
        context.close()
