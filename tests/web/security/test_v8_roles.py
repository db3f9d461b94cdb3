"""Who may do what: every route says what it asks for, and every role is held to it."""

import pytest
from tests.web.pages.office import KEY, two_rooms

from farwall.store.people import People
from farwall.store.people_nouns import ROLES
from farwall.web.people.roles import CHANGE, LOOK, MAY, NEEDS, OPEN, PEOPLE, SELF, TAP, may


def routes(router):
    """Every route of an app: method and template."""
    for route in router.routes:
        inner = getattr(route, "original_router", None)
        if inner is not None:
            yield from routes(inner)
        else:
            for method in (route.methods or {"ANY"}) - {"HEAD"}:
                yield f"{method} {route.path}"


def test_every_route_says_what_it_asks_for(office):
    """A route that is missing here is taken as `look` or `change`: say it in `web.people.roles`."""
    there = set(routes(office.app))
    assert len(there) > 40
    assert there - NEEDS.keys() == set()


def test_no_need_is_told_for_a_route_that_is_not_there(office):
    assert NEEDS.keys() - set(routes(office.app)) == set()


def test_what_is_open_to_all_is_little():
    assert {route for route, need in NEEDS.items() if need == OPEN} == {
        "GET /enter", "POST /enter", "GET /authority.crt", "GET /static/{name}",
        "GET /join/{token}",
        "POST /join/{token}", "GET /healthz", "GET /readyz", "GET /api/openapi.json",
        "GET /api/clock", "GET /slab/files/{name}", "GET /slab/{job}",
    }  # fmt: skip


def test_each_role_may_what_the_one_below_may():
    assert set(MAY) == set(ROLES)
    assert MAY["owner"] == {SELF, LOOK}
    assert MAY["owner"] < MAY["helper"] < MAY["office"] < MAY["lead"]
    assert not may("office", PEOPLE)
    assert not may("helper", CHANGE)
    assert not may("king", LOOK)


PAGES = sorted(one for one, need in NEEDS.items() if "/api/" not in one and need != OPEN)


@pytest.mark.parametrize("role", ROLES)
def test_every_page_and_form_is_shut_to_who_may_not(office, role):
    office.put(two_rooms())
    office.enter_as(role)
    for told in PAGES:
        method, _, path = told.partition(" ")
        if path in {"/leave", "/me/leave-all"}:
            continue
        path = path.replace("{job}", "none").replace("{name}", "none").replace("{person}", "none")
        ask = office.get if method == "GET" else office.post
        refused = "Your role does not go that far" in ask(path).text
        assert refused is not may(role, NEEDS[told]), told


API = sorted(one for one, need in NEEDS.items() if "/api/" in one and need != OPEN)


@pytest.mark.parametrize("role", ROLES)
def test_every_question_of_the_api_is_shut_to_a_device_that_may_not(office, role):
    bearer = {"authorization": f"Bearer {device_of(office, role)}"}
    for told in API:
        method, _, path = told.partition(" ")
        path = path.replace("{job}", "none").replace("{sha}", "none")
        answer = office.ask(method, path, headers=bearer)
        assert (answer.status_code == 403) is not may(role, NEEDS[told]), told
        assert answer.status_code != 401


def device_of(office, role):
    office.name()
    found = office.name(f"Cy the {role}", role)
    return office.sessions.begin(found, "device")


def test_ended_access_ends_at_once_and_another_role_counts_at_once(office):
    token = device_of(office, "office")
    bearer = {"authorization": f"Bearer {token}"}
    people = People(office.book)
    one = people.named("Cy the office")[0]
    assert office.ask("PUT", "/api/jobs/two/facts", headers=bearer, json={}).status_code == 422
    people.set_role(one.id, "owner")
    assert office.ask("PUT", "/api/jobs/two/facts", headers=bearer, json={}).status_code == 403
    assert office.get("/api/jobs", headers=bearer).status_code == 200
    people.end(one.id, at=office.clock.isoformat())
    assert office.get("/api/jobs", headers=bearer).status_code == 401


def test_the_key_may_do_all_of_the_api(office):
    office.name()
    for told in API:
        method, _, path = told.partition(" ")
        path = path.replace("{job}", "none").replace("{sha}", "none")
        answer = office.ask(method, path, headers={"authorization": f"Bearer {KEY}"})
        assert answer.status_code not in {401, 403}, told


def test_a_way_is_shown_only_to_who_may_go_it(office):
    office.enter_as("lead")
    assert 'href="/people"' in office.get("/").text
    office.enter_as("office")
    assert 'href="/people"' not in office.get("/").text


def test_a_form_of_a_page_that_forgot_to_ask_who_comes_is_refused(office):
    """`form_of` asks by itself: a router without the dependency is not open by that."""
    from fastapi import APIRouter, Request

    from farwall.web.pages.guard import form_of
    from farwall.web.pages.paper import PageRoute, seen_elsewhere

    router = APIRouter(route_class=PageRoute)

    @router.post("/forgotten")
    async def forgotten(request: Request):
        await form_of(request)
        return seen_elsewhere("/done")

    office.app.include_router(router)
    assert office.post("/forgotten").headers["location"].startswith("/enter")


def test_facts_are_kept_under_the_name_of_who_changed_them(office):
    office.enter_as("office")
    office.bring(two_rooms())
    assert office.book.versions("two")[-1].who == "Bo the office"


def test_no_role_but_these(office):
    office.enter_as("lead")
    assert office.post("/people/invite", data={"role": "king"}).status_code == 422
    assert TAP in MAY["helper"]
