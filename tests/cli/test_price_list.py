"""`farwall price` with a price list of sellers, and the empty list that is filled in."""

from __future__ import annotations

import json
from decimal import Decimal

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.cli.main import main
from farwall.facts.plain import plain

PRICES = (
    "what,colour,size,price,seller,delivery,free from\n"
    "masking tape,,60 yd,7.90,Elder Yard,25,400\n"
    "masking film,,100 ft,12.50,Elder Yard,,\n"
    "bananas,,1 kg,1,Elder Yard,,\n"
)


@pytest.fixture
def house(tmp_path):
    path = tmp_path / "job.json"
    path.write_text(json.dumps(plain(job(TWO_ROOMS))))
    return str(path)


@pytest.fixture
def prices(tmp_path):
    path = tmp_path / "prices.csv"
    path.write_text(PRICES)
    return str(path)


def test_the_list_is_used_and_what_it_left_out_goes_to_stderr(house, prices, capsys):
    assert main(["price", house, "--wares", prices, "--json"]) == 0
    shown = capsys.readouterr()
    buying = json.loads(shown.out)["buying"]
    told = {one["kind"]: one for one in buying["lines"]}
    assert (told["tape"]["seller"], told["tape"]["price"], told["tape"]["rank"]) == (
        "Elder Yard", "7.90", "measured here",
    )  # fmt: skip
    assert "row 4 (bananas)" in shown.err
    goods = sum(Decimal(one["cost"]) for one in buying["lines"])
    fees = sum(Decimal(one["delivery"]) for one in buying["sellers"])
    assert goods + fees == Decimal(buying["total"])


def test_the_part_says_van_sellers_guesses_and_plenty(house, prices, capsys):
    assert main(["price", house, "--wares", prices, "--part", "buying"]) == 0
    out = capsys.readouterr().out
    for words in ("Elder Yard: goods", "delivery 25 USD", "rests on invented prices",
                  "20 % more of everything", "No list costs less: proven."):  # fmt: skip
        assert words in out, words


def test_a_spoilt_list_is_refused_calmly(house, tmp_path, capsys):
    path = tmp_path / "list.xlsx"
    path.write_bytes(b"PK\x03\x04 nothing")
    assert main(["price", house, "--wares", str(path)]) == 2
    assert "torn" in capsys.readouterr().err
    assert main(["price", house, "--wares", str(tmp_path / "none.csv")]) == 2


def test_an_empty_list_is_written_without_a_job(tmp_path, capsys):
    path = tmp_path / "empty.xlsx"
    with pytest.raises(SystemExit) as ended:
        main(["price", "--price-list-template", str(path)])
    assert ended.value.code == 0
    assert path.read_bytes()[:2] == b"PK"
    with pytest.raises(SystemExit) as ended:
        main(["price", "--price-list-template", str(tmp_path / "empty.pdf")])
    assert ended.value.code == 2
    assert "name it .xlsx or .csv" in capsys.readouterr().err
