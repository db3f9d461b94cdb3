"""People of a book: who may come in, links that are spent once, the last lead that stays."""

import pytest
from tests.store.entries import AT, LATER

from farwall.errors import Refused
from farwall.store.comings import Comings, seal_of
from farwall.store.people import People
from farwall.store.people_nouns import FIRST, JOIN, RESET, LastLead, LinkSpent, NameTaken


@pytest.fixture
def people(book):
    return People(book)


@pytest.fixture
def lead(people):
    return people.name_first("Ann Field", "hash-a", AT)


def invited(people, token, *, kind=JOIN, role="helper", person=None, ends_s=100.0):
    people.invite(seal_of(token), kind=kind, role=role, person=person, ends_s=ends_s)


def join(people, token, name, password="", now_s=1.0):
    return people.join(seal_of(token), now_s=now_s, name=name, password=password, at=AT)


def test_the_first_lead_is_named_once(people, lead):
    assert lead.role == "lead"
    assert people.has_lead()
    with pytest.raises(LinkSpent):
        people.name_first("Bo", "hash-b", AT)
    assert [one.name for one in people.all()] == ["Ann Field"]


def test_a_name_is_known_however_it_is_written(people, lead):
    for written in ("ann field", "  ANN   Field ", "\uff21nn Field"):
        found = people.named(written)
        assert found is not None
        assert found[0].id == lead.id
        assert found[1] == "hash-a"
    assert people.named("Ann") is None


def test_a_link_lets_one_in_and_is_spent(people, lead):
    invited(people, "one")
    assert people.invited(seal_of("one"), now_s=1.0).role == "helper"
    made = join(people, "one", "Bo", "hash-b")
    assert (made.role, made.name) == ("helper", "Bo")
    assert people.invited(seal_of("one"), now_s=1.0) is None
    with pytest.raises(LinkSpent):
        join(people, "one", "Cy")


@pytest.mark.parametrize(("token", "now_s"), [("one", 100.0), ("another", 1.0), ("", 1.0)])
def test_a_link_that_has_ended_or_never_was_lets_nobody_in(people, lead, token, now_s):
    invited(people, "one")
    with pytest.raises(LinkSpent):
        join(people, token, "Bo", now_s=now_s)
    assert len(people.all()) == 1


@pytest.mark.parametrize("name", ["ann field", "", " ", "a\x00b", "x" * 201])
def test_a_name_that_will_not_do_leaves_the_link_good(people, lead, name):
    invited(people, "one")
    with pytest.raises(Refused):
        join(people, "one", name)
    assert join(people, "one", "Bo").name == "Bo"


def test_the_last_lead_stays_lead_until_there_is_another(people, lead):
    invited(people, "device", role="lead")
    join(people, "device", "Nobody")  # a lead without a password cannot sign in
    for change in (lambda: people.end(lead.id, at=AT), lambda: people.set_role(lead.id, "owner")):
        with pytest.raises(LastLead):
            change()
    invited(people, "one", role="lead")
    join(people, "one", "Bo", "hash-b")
    people.end(lead.id, at=LATER)
    assert [(one.name, one.ended_at) for one in people.all()][-1] == ("Ann Field", LATER)
    assert people.named("Ann Field")[1] == ""


def test_who_is_ended_is_out_at_once(book, people, lead):
    invited(people, "one")
    made = join(people, "one", "Bo", "hash-b")
    comings = Comings(book)
    comings.begin("token", made.id, kind="browser", now_s=1.0, ends_s=50.0)
    assert comings.session("token", now_s=2.0, idle_s={"browser": 50.0}).person.name == "Bo"
    people.end(made.id, at=AT)
    assert comings.session("token", now_s=2.0, idle_s={"browser": 50.0}) is None
    with pytest.raises(Refused):
        invited(people, "again", kind=RESET, person=made.id)


def test_a_link_to_choose_anew_ends_the_older_link_and_all_sessions(book, people, lead):
    comings = Comings(book)
    comings.begin("token", lead.id, kind="browser", now_s=1.0, ends_s=50.0)
    invited(people, "old", kind=RESET, role="lead", person=lead.id)
    invited(people, "new", kind=RESET, role="lead", person=lead.id)
    with pytest.raises(LinkSpent):
        join(people, "old", "", "hash-x")
    assert join(people, "new", "", "hash-n").id == lead.id
    assert people.named("Ann Field")[1] == "hash-n"
    assert comings.sessions(lead.id, now_s=2.0) == []


def test_only_the_newest_link_for_the_first_lead_is_good(people):
    invited(people, "old", kind=FIRST, role="lead")
    invited(people, "new", kind=FIRST, role="lead")
    with pytest.raises(LinkSpent):
        join(people, "old", "Ann", "hash")
    assert join(people, "new", "Ann", "hash").role == "lead"


def test_two_may_not_bear_one_name(people, lead):
    invited(people, "one")
    with pytest.raises(NameTaken):
        join(people, "one", "ANN FIELD", "hash")


def test_a_hash_is_renewed_only_while_the_password_is_the_same(people, lead):
    people.set_hash(lead.id, "hash-other", "hash-new")
    assert people.named("Ann Field")[1] == "hash-a"
    people.set_hash(lead.id, "hash-a", "hash-new")
    assert people.named("Ann Field")[1] == "hash-new"
