"""What of firm, prices, offers and supplies cannot be so is said, all at once."""

from farwall.readers.office_sense import office_mistakes

FLOOR = {"rooms": [{"id": "hall"}, {"id": "bath"}]}


def about(raw):
    return [one.where for one in office_mistakes(raw)]


def test_a_job_in_order_is_let_by():
    raw = {
        "floor": FLOOR, "coats": [{"id": "one"}],
        "firm": {"address": {"country": "US"}},
        "prices": {
            "rates": {"labour_per_h": "55"}, "terms": {"deposit_percent": 50, "rounded_to": "10"},
            "call_backs": {"cost_low": "300", "cost": "900", "cost_high": "6000"},
            "offers": [{"id": "plain", "coats": ["one"]}, {"id": "full"}],
        },
        "supplies": {"masking": {"not_masked": ["hall"], "items": [{"room": "bath"}]}},
    }  # fmt: skip
    assert about(raw) == []


def test_every_mistake_is_told_at_once():
    raw = {
        "floor": FLOOR, "coats": [{"id": "one"}],
        "firm": {"address": {"country": "usa"}},
        "prices": {
            "rates": {"labour_per_h": "55 USD"},
            "terms": {"deposit_percent": 60, "progress_percent": 50, "rounded_to": "0"},
            "call_backs": {"cost_low": "900", "cost": "300"},
            "offers": [{"id": "plain", "coats": ["two"]}, {"id": "plain"}],
        },
        "supplies": {"masking": {"not_masked": ["attic"], "room_film_m": {"loft": 1.0}}},
    }  # fmt: skip
    assert about(raw) == [
        "prices.rates.labour_per_h", "prices.terms", "prices.terms.rounded_to",
        "prices.call_backs", "prices.offers[0].coats", "prices.offers[1].id",
        "firm.address.country", "supplies.masking.not_masked[0]",
        "supplies.masking.room_film_m.loft",
    ]  # fmt: skip
