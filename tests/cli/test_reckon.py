"""The door of the single sums: text in, text or JSON out, exit codes."""

import io
import json
import subprocess
import sys

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.strategies.weather import epw_text

from farwall.cli import reckon
from farwall.cli.main import main


def test_a_sum_in_words(capsys):
    assert main(["reckon", "air", "air_f=70", "rh_percent=50"]) == 0
    out, err = capsys.readouterr()
    assert "dew point        10.29 °C · 50.53 °F" in out
    assert "rank: published · source: ashrae-2017-ch1" in out
    assert err == ""


@pytest.mark.parametrize(
    "words",
    [
        ["reckon", "air", "air_f=70", "rh_percent=50", "--json"],
        ["reckon", "--json", "air", "air_f=70", "rh_percent=50"],
        ["reckon", "air", "--json", "air_f=70", "rh_percent=50"],
    ],
)
def test_json_is_one_document_and_nothing_else(capsys, words):
    assert main(words) == 0
    out, err = capsys.readouterr()
    assert json.loads(out)["dew_point_f"] == pytest.approx(50.53, abs=0.01)
    assert out.count("\n") == 1
    assert err == ""


@pytest.mark.parametrize(
    ("words", "parts"),
    [
        (["reckon"], ["Which sum?", "film-drying"]),
        (["reckon", "airs"], ["Did you mean air?"]),
        (["reckon", "air"], ["air_c: This is needed", "rh_percent: This is needed"]),
        (["reckon", "air", "air_c"], ["not key=value"]),
        (["reckon", "air", "air_c=1", "air_c=2"], ["given twice"]),
        (["reckon", "air", "air_cc=1", "rh_percent=x"], ["Did you mean air_c", "not a number"]),
        (["reckon", "weather", "file=nowhere.epw"], ["nowhere.epw", "cannot be opened"]),
        (["reckon", "--lines", "air"], ["stdin"]),
        (["reckon", "convert", "value=1", "from=ft", "to=kg"], ["ft is length, kg is mass"]),
    ],
)
def test_a_mistake_is_a_calm_sentence_and_exit_2(capsys, words, parts):
    assert main(words) == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert all(part in err for part in parts)
    assert "Traceback" not in err


def test_a_no_is_exit_1_with_its_reason(capsys):
    assert main(["reckon", "open-time", "surface_f=95"]) == 1
    out, err = capsys.readouterr()
    assert out == ""
    assert "above 29.4 °C (85 °F)" in err


def test_a_no_in_json_is_a_document_too(capsys):
    assert main(["reckon", "open-time", "surface_f=40", "--json"]) == 1
    out, err = capsys.readouterr()
    answer = json.loads(out)
    assert answer["verdict"] == "no"
    assert answer["remedies"]
    assert answer["reason"] in err


def test_help_of_one_sum_lists_what_it_asks_for(capsys):
    assert main(["reckon", "coverage", "-h"]) == 0
    assert "one of these  m2_per_l= or ft2_per_gal=" in capsys.readouterr().out
    assert main(["reckon", "film-drying", "--help"]) == 0
    out = capsys.readouterr().out
    assert "needed        air_c= or air_f=" in out
    assert "relation= (uno, uno_ip" in out


def test_weather_from_a_file(capsys, tmp_path):
    path = tmp_path / "a place.epw"
    path.write_text(epw_text(fields=32))
    assert main(["reckon", "weather", f"file={path}", "month=7", "--json"]) == 0
    assert json.loads(capsys.readouterr().out)["hours"] == 744


def test_a_broken_weather_file_names_its_faults(capsys, tmp_path):
    path = tmp_path / "broken.epw"
    path.write_text("LOCATION,x\n")
    assert main(["reckon", "weather", f"file={path}"]) == 2
    assert "broken.epw cannot be used" in capsys.readouterr().err


def lines(*asked: object) -> tuple[int, list[dict]]:
    text = "".join((one if isinstance(one, str) else json.dumps(one)) + "\n" for one in asked)
    return answered(text.encode(errors="replace"))


def answered(raw: bytes) -> tuple[int, list[dict]]:
    stdin, stdout = io.BytesIO(raw), io.TextIOWrapper(io.BytesIO(), encoding="ascii")
    code = reckon._lines(stdin, stdout)
    stdout.seek(0)
    return code, [json.loads(line) for line in stdout.read().splitlines()]


def test_lines_keep_their_order_and_go_on_after_a_refusal():
    code, answers = lines(
        {"name": "coverage", "args": {"ft2_per_gal": 200}},
        {"name": "coverage", "args": {"ft2_per_gal": -1}},
        "{not json",
        "",
        {"name": "open-time", "args": {"surface_c": 40}},
        {"name": "coverage", "args": {"ft2_per_gal": "400"}},
    )
    assert code == 1
    assert ["error" in one for one in answers] == [False, True, True, True, False]
    assert answers[0]["wet_film_mm"] == pytest.approx(2 * answers[4]["wet_film_mm"])
    assert answers[1]["mistakes"][0]["where"] == "ft2_per_gal"
    assert answers[3]["verdict"] == "no"


def test_lines_that_all_go_well_are_exit_0():
    code, answers = lines({"name": "coverage", "args": {"ft2_per_gal": 200}})
    assert code == 0
    assert len(answers) == 1


json_values = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=5),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=5), inner),
    max_leaves=5,
)


@given(
    json_values
    | st.fixed_dictionaries(
        {"name": st.sampled_from(["air", "convert", "open-time", "nothing"])},
        optional={"args": json_values, "more": json_values},
    )
)
def test_any_line_gets_one_line_back(asked):
    code, answers = lines(json.dumps(asked))
    assert len(answers) == 1
    assert code == ("error" in answers[0])


@given(st.binary(max_size=40))
def test_any_noise_gets_one_calm_answer_a_line(noise):
    _, answers = answered(noise)
    asked = [one for one in noise.decode(errors="replace").split("\n") if one.strip()]
    assert len(answers) == len(asked)
    assert all("error" in one for one in answers)


def test_a_line_nested_without_end_is_refused():
    _, (answer,) = lines("[" * 100_000)
    assert "JSON" in answer["error"]


PROGRAM = "import sys; from farwall.cli.main import main; sys.exit(main())"


def test_through_a_real_pipe():
    """The whole way: a process, JSON lines in and out, the letters of other languages kept."""
    asked = json.dumps({"name": "convert", "args": {"value": 1, "from": "°F", "to": "°C"}})
    done = subprocess.run(
        [sys.executable, "-c", PROGRAM, "reckon", "--lines"],
        input=(asked + "\n" + "{}\n").encode(),
        capture_output=True,
        check=False,
    )
    first, second = map(json.loads, done.stdout.decode().splitlines())
    assert first["value"] == pytest.approx(-17.2222, abs=1e-4)
    assert "error" in second
    assert done.returncode == 1


def test_a_sum_does_not_load_what_it_does_not_need():
    """A slow command start is a defect: no numpy, shapely or pydantic for a single sum."""
    heavy = ("numpy", "scipy", "shapely", "pydantic", "ezdxf", "typst")
    code = (
        "import sys; from farwall.cli.main import main; "
        "main(['reckon', 'open-time', '--json']); "
        f"sys.exit(any(name in sys.modules for name in {heavy}))"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, check=False)
    assert done.returncode == 0, done.stderr.decode()
