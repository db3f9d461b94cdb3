"""A form that is kept while nothing answers stays as it was typed, and is kept once it answers."""

import pytest
from tests.web.walked import browsing, served, signed_in

pytestmark = pytest.mark.slow


def test_what_is_typed_into_a_form_outlasts_a_book_that_does_not_answer(tmp_path):
    with served(tmp_path) as address, browsing() as browser:
        page = signed_in(browser, address)
        page.goto(f"{address}/houses/two/survey")
        blank = page.locator("[name='survey.rh_percent']")
        blank.fill("51")
        page.context.set_offline(True)
        page.get_by_role("button", name="Keep this").click()
        page.get_by_text("Farwall does not answer: nothing was kept").wait_for()
        assert blank.input_value() == "51"
        page.context.set_offline(False)
        page.get_by_role("button", name="Keep this").click()
        page.wait_for_url(f"{address}/houses/two/survey?kept=yes")
        assert blank.input_value() == "51"
