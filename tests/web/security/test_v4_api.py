"""The whole API, asked what nobody would ask: no broken answer, and none that is not told of.

By hand, with as many questions to each operation as one likes:

    FARWALL_ASKED=1000 python3 run.py test tests/web/security/test_v4_api.py -n0
"""

import hashlib
import os

import pytest
import schemathesis
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st
from schemathesis import GenerationMode
from schemathesis.checks import load_all_checks, not_a_server_error
from schemathesis.specs.openapi import checks
from tests.web.pages.office import KEY, Office, two_rooms

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
