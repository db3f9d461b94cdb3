"""The whole API, asked what nobody would ask: no broken answer, and none that is not told of.

By hand, with as many questions to each operation as one likes:

    FARWALL_ASKED=1000 python3 run.py test tests/web/security/test_v4_api.py -n0
"""

import contextlib
import copy
import hashlib
import os

import pytest
import schemathesis
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st
from schemathesis import GenerationMode
from schemathesis.checks import load_all_checks, not_a_server_error
from schemathesis.specs.openapi import checks
from tests.store.entries import entry
from tests.web.pages.office import KEY, Office, two_rooms

from farwall.readers.log_json import entry_to_dict
from farwall.store.comings import Comings
from farwall.web.described import OPERATIONS
from farwall.web.people.roles import NEEDS

load_all_checks()
MANY = int(os.environ.get("FARWALL_ASKED", "20"))
PHOTO = b"\xff\xd8 a photo"
CHECKS = [
    not_a_server_error, checks.status_code_conformance, checks.content_type_conformance,
    checks.response_schema_conformance,
]  # fmt: skip
"""Not that what the document allows is taken: facts are judged by more than it can tell."""


@pytest.fixture(scope="module")
def asked(tmp_path_factory):
    office = Office(tmp_path_factory.mktemp("asked"))
    office.put(two_rooms(), name="Two rooms")
    office.book.put_file(PHOTO)
    # Each question would begin and end the app, and with it the thread that writes.
    office.app.router.lifespan_context = lambda _app: contextlib.nullcontext()
    with pytest.MonkeyPatch.context() as patch:
        # A third of the questions bears no key, and its clock stands still.
        patch.setattr(Comings, "tried", lambda *_told, **_more: 0.0)
        yield schemathesis.openapi.from_asgi("/api/openapi.json", office.app)
    office.close()


@pytest.mark.parametrize("told", sorted(OPERATIONS))
def test_nothing_breaks_and_every_answer_is_told_of(asked, told):
    """Half of the questions are about the house and the file that are there."""
    method, _, path = told.partition(" ")
    operation = asked[path][method]

    @given(
        case=st.one_of(*(operation.as_strategy(mode) for mode in GenerationMode))
        if operation.body or operation.query or operation.path_parameters
        else operation.as_strategy(GenerationMode.POSITIVE),
        known=st.booleans(),
    )
    @settings(
        max_examples=MANY, derandomize=True, deadline=None, database=None,
        phases=[Phase.generate], suppress_health_check=list(HealthCheck),
    )  # fmt: skip
    def ask(case, known):
        if known and "job" in case.path_parameters:
            case.path_parameters["job"] = "two"
        if known and "sha" in case.path_parameters:
            case.path_parameters["sha"] = hashlib.sha256(PHOTO).hexdigest()
        case.call_and_validate(checks=CHECKS, headers={"authorization": f"Bearer {KEY}"})

    ask()


ENTRY = entry_to_dict(entry("one", job="two"))
GOOD = {
    "POST /api/entries": {
        "device": "p", "era": 0, "sent_at": "2026-06-08T12:00:00+00:00", "entries": [ENTRY],
    },
    "POST /api/have": {"ids": ["one", "two"], "files": [hashlib.sha256(PHOTO).hexdigest()]},
    "POST /api/jobs/{job}/log": ENTRY,
    "PUT /api/jobs/{job}/facts": {"facts": two_rooms(), "who": "Ann", "name": "Two rooms"},
}  # fmt: skip
ANYTHING = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats(allow_nan=False, allow_infinity=False)
    | st.text(st.characters(codec="utf-8"), max_size=8)
    | st.sampled_from(["", "\x00", "two", "2026-06-08", 10**400, -1, 1e308, "../..", "\u202e"]),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=4), inner),
    max_leaves=4,
)  # fmt: skip


def bent(good, draw):
    """What is good, but for one value somewhere in it that is anything or is taken away."""
    good = copy.deepcopy(good)
    node = good
    while True:
        key = draw(st.sampled_from(sorted(node) if isinstance(node, dict) else range(len(node))))
        if not isinstance(node[key], dict | list) or not node[key] or draw(st.integers(0, 3)) == 0:
            break
        node = node[key]
    if draw(st.booleans()):
        node[key] = draw(ANYTHING)
    else:
        del node[key]
    return good


@pytest.mark.parametrize("told", sorted(GOOD))
def test_nothing_breaks_by_what_is_good_but_for_one_value(asked, told):
    """What is made up out of nothing is refused at the first look; this goes further in."""
    method, _, path = told.partition(" ")
    operation = asked[path][method]

    @given(st.data())
    @settings(
        max_examples=3 * MANY, derandomize=True, deadline=None, database=None,
        phases=[Phase.generate], suppress_health_check=list(HealthCheck),
    )  # fmt: skip
    def ask(data):
        case = operation.Case(body=bent(GOOD[told], data.draw), media_type="application/json")
        if "{job}" in path:
            case.path_parameters = {"job": "two"}
        case.call_and_validate(checks=CHECKS, headers={"authorization": f"Bearer {KEY}"})

    ask()


@pytest.mark.parametrize("told", sorted(OPERATIONS))
def test_another_method_is_refused_and_says_which_will_do(office, told):
    path = told.partition(" ")[2].replace("{job}", "two").replace("{sha}", "0" * 64)
    answer = office.ask("DELETE", path)
    assert answer.status_code == 405
    assert f"{answer.headers['allow']} {told.partition(' ')[2]}" in OPERATIONS
    assert set(answer.json()) == {"error", "mistakes"}


def test_every_question_of_the_api_is_told_of_and_no_other():
    ours = ("/api/", "/healthz", "/readyz")
    there = {one for one in NEEDS if one.partition(" ")[2].startswith(ours)}
    assert OPERATIONS.keys() == there - {"GET /api/openapi.json"}


def test_the_document_says_how_each_is_asked_and_refused(office):
    told = office.get("/api/openapi.json").json()
    assert told["components"]["securitySchemes"]["bearer"]["scheme"] == "bearer"
    for path, operations in told["paths"].items():
        for method, one in operations.items():
            guarded = NEEDS[f"{method.upper()} {path}"] != "open"
            assert ({"401", "403"} <= one["responses"].keys()) is guarded
            assert bool(one["security"]) is guarded
            assert one["summary"]
    assert "/enter" not in told["paths"]
