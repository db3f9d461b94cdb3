"""Change orders, amounts due, terms and the invoice of a house, over HTTP."""

from __future__ import annotations

import pytest
from tests.papers.invoice.rules import broken
from tests.web.pages.office import Office, faults_of_html

PNG = b"\x89PNG\r\n\x1a\n" + b"invented" * 4
NO_FILE = {"x": ("", b"")}
TERMS = {
    "version": "1", "terms-firm.firm.name": "Harbour Floors",
    "terms-firm.firm.address.lines": "12 Kiln Row, yard 3", "terms-firm.firm.address.country": "US",
    "terms-firm.firm.tax_id": "00-7654321", "terms-firm.firm.company_id": "00-1234",
    "terms-customer.customer.name": "R. Invented",
    "terms-customer.customer.address.country": "US",
    "terms-rates.prices.rates.change_per_h": "$62.50",
    "prices.taxes.0.kind": "standard", "prices.taxes.0.percent": "8.25",
    "prices.taxes.0.on": "all", "prices.taxes.0.name": "sales tax",
}  # fmt: skip


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    found.put_planned("Two rooms")
    found.app.state.live.replanning.tapped = lambda _: None
    yield found
    found.close()


def names_of(office):
    """Names of the blanks of the form, as the page has them."""
    import re

    return re.findall(r'name="([^"]+)"', office.get("/houses/two/terms").text)


def terms(office, told=TERMS):
    known = names_of(office)
    found = {"version": told["version"]}
    for key, value in told.items():
        name = next((one for one in known if key == one or key.endswith(one)), key)
        found[name] = value
    return office.post("/houses/two/terms", data=found)


def log(office, word, **told):
    return office.post("/houses/two/log", data={"word": word} | told, files=NO_FILE)


@pytest.mark.parametrize("page", ["change", "price/due", "terms"])
@pytest.mark.parametrize("language", ["en", "es"])
def test_a_page_is_sound(office, page, language):
    log(office, "change", what="x", agreed_by="y", amount="1")
    answer = office.get(f"/houses/two/{page}", headers={"accept-language": language})
    assert answer.status_code == 200
    assert faults_of_html(answer.text) == []
    assert f'<html lang="{language}"' in answer.text


def test_a_change_is_priced_before_it_is_entered(office):
    told = {"what": "move the drain", "agreed_by": "R.", "hours": "6.5", "materials": "40.10"}
    answer = office.post("/houses/two/change", data=told | {"do": "look"}, files=NO_FILE)
    assert answer.status_code == 200
    assert "This change comes to 385.15" in answer.text
    assert 'value="move the drain"' in answer.text
    assert list(office.book.entries("two")) == []
    kept = office.post(
        "/houses/two/change", data=told | {"do": "keep"}, files={"signed": ("p.png", PNG)}
    )
    assert kept.status_code == 303
    text = office.get(kept.headers["location"]).text
    assert "Change order 1 is entered: 385.15." in text
    (entry,) = (one.entry for one in office.book.entries("two"))
    assert entry.word == "change"
    assert entry.about["materials"] == "40.10"
    sha = entry.about["signed"]
    assert f"/houses/two/photo/{sha}" in text
    assert office.get(f"/houses/two/photo/{sha}").content == PNG


def test_a_change_that_lacks_something_comes_back_as_it_was(office):
    answer = office.post("/houses/two/change", data={"what": "x", "amount": "ten"}, files=NO_FILE)
    assert answer.status_code == 422
    assert "agreed_by" in answer.text
    assert 'value="x"' in answer.text
    assert list(office.book.entries("two")) == []


def test_a_helper_may_enter_a_change_and_not_what_was_paid(office):
    office.enter_as("helper")
    change = office.post(
        "/houses/two/change", data={"what": "x", "agreed_by": "y", "amount": "5"}, files=NO_FILE
    )
    assert change.status_code == 303
    assert log(office, "paid", amount="5").status_code == 403


@pytest.mark.parametrize(("role", "kept"), [("helper", False), ("office", True)])
def test_nor_may_a_helpers_phone_and_the_change_beside_it_is_kept(office, role, kept):
    office.name()
    token = office.sessions.begin(office.name("Bo", role), "device")
    shown = {"authorization": f"Bearer {token}"}
    head = {"job": "two", "at": "2026-06-08T09:00:00+00:00", "device": "p"}
    change = {"id": "one", "word": "change", "number": 1,
              "about": {"what": "x", "agreed_by": "y"}}  # fmt: skip
    paid = {"id": "two", "word": "paid", "number": 2, "about": {"amount": "5"}}
    told = {"device": "p", "era": 0, "sent_at": head["at"],
            "entries": [head | change, head | paid]}  # fmt: skip
    answer = office.ask("POST", "/api/entries", json=told, headers=shown).json()
    assert answer["new"] == (["one", "two"] if kept else ["one"])
    assert [one["id"] for one in answer["turned"]] == ([] if kept else ["two"])
    alone = head | {"id": "three", "word": "paid", "number": 3, "about": {"amount": "6"}}
    answer = office.ask("POST", "/api/jobs/two/log", json=alone, headers=shown)
    assert answer.status_code == (200 if kept else 422)


def test_terms_are_kept_and_new_houses_begin_with_the_firms_own(office):
    answer = terms(office)
    assert answer.headers["location"] == "/houses/two/terms?kept=yes"
    facts = office.book.facts("two")
    assert facts["firm"]["address"]["lines"] == ["12 Kiln Row", "yard 3"]
    assert facts["prices"]["rates"]["change_per_h"] == "62.50"
    assert facts["prices"]["taxes"][0]["percent"] == 8.25
    from farwall.web.pages.new_houses import with_firm

    new = with_firm({"version": 1, "prices": {"currency": "USD"}}, office.book)
    assert new["firm"] == facts["firm"]
    assert new["prices"]["taxes"] == facts["prices"]["taxes"]
    assert "customer" not in new


def test_the_list_of_papers_says_what_the_invoice_as_data_lacks(office):
    listed = office.get("/houses/two/papers").text
    assert "/houses/two/papers/invoice.pdf" in listed
    assert "/houses/two/papers/invoice.xml" not in listed
    assert "Enter first: This invoice has no number. Enter in the log that an invoice" in listed
    assert "firm.name" not in listed


def test_the_invoice_as_data_is_refused_with_a_list_and_then_passes_the_rules(office):
    refused = office.get("/houses/two/papers/invoice.xml")
    assert refused.status_code == 422
    assert "The firm has no name. Enter it on the page of terms." in refused.text
    assert "firm.name" not in refused.text
    terms(office)
    log(office, "accepted", amount="6,100.00", agreed_by="R. Invented")
    log(office, "invoiced", number="2026-17", part="final")
    answer = office.get("/houses/two/papers/invoice.xml")
    assert answer.headers["content-type"].startswith("application/xml")
    assert broken(answer.content) == []
    assert b"6603.25" in answer.content
    due = office.get("/houses/two/price/due").text
    assert "Agreed by R. Invented: 6,100.00 without tax." in due


def test_in_spanish_what_lacks_is_told_in_spanish_and_by_no_key(office):
    spanish = {"accept-language": "es"}
    listed = office.get("/houses/two/papers", headers=spanish).text
    for page in (listed, office.get("/houses/two/papers/invoice.xml", headers=spanish).text):
        assert "Apunte en la bitácora que se hizo una factura" in page
        assert "La empresa no tiene nombre." in page
        assert "firm.name" not in page
        assert "invoice was" not in page
    assert "Ningún lugar tiene en la bitácora dos fotos" in listed
    assert "--before" not in listed


def test_that_nobody_agreed_is_told_by_the_words_of_the_log(office):
    for language, words in (
        ("en", "that the price was agreed."),
        ("es", "que se acordó el precio"),
    ):
        due = office.get("/houses/two/price/due", headers={"accept-language": language}).text
        assert words in due
        assert "`" not in due
