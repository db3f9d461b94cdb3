"""The form for the stains' sheets: a part a stain, and what is typed comes to its place."""

from tests.web.pages.office import two_rooms

from farwall.web.pages.forms.asked import asked_of
from farwall.web.pages.forms.sheets import sheets_of
from farwall.web.pages.forms.told import changed_facts

FACTS = two_rooms(
    stains=[{"id": "sand", "name": "wet sand"},
            {"id": "moss", "contents": [{"substance": "iron(III) chloride"}]}],
)  # fmt: skip


def asked():
    job = asked_of(sheets_of_none(), FACTS).job
    return asked_of(sheets_of(job), FACTS)


def sheets_of_none():
    from farwall.web.pages.forms.nouns import Form

    return Form("sheets", ())


def test_a_part_for_each_sheet_and_one_for_its_contents():
    titles = [(part.key, part.title) for part in asked().form.parts]
    assert titles == [
        ("sheet-part", "wet sand"),
        ("contents-part", "wet sand"),
        ("sheet-part", "moss"),
        ("contents-part", "moss"),
    ]


def test_what_is_typed_comes_to_its_place():
    found = changed_facts(
        asked(),
        FACTS,
        {
            "stains.0.hcl_percent_high": "12",
            "stains.0.oxidiser": "no",
            "stains.0.sheet_read": "2027-05-01",
            "stains.0.contents.0.substance": "manganese(II) chloride",
            "stains.0.contents.0.mass_percent_low": "15",
            "stains.1.contents.0.away": "yes",
        },
    )
    assert found is not None
    sand, moss = found["stains"]
    assert sand["hcl_percent_high"] == 12
    assert sand["oxidiser"] is False
    assert sand["sheet_read"] == "2027-05-01"
    assert sand["contents"] == [{"substance": "manganese(II) chloride", "mass_percent_low": 15.0}]
    assert moss["contents"] == []


def test_a_job_without_stains_has_nothing_to_ask():
    job = asked_of(sheets_of_none(), two_rooms()).job
    assert job.stains or sheets_of(job).parts == ()
