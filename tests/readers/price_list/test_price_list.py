"""Price lists of any hand: columns in any order, two languages, hostile files; every row told."""

from __future__ import annotations

import io
import itertools
import zipfile
from decimal import Decimal

import openpyxl
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from farwall.errors import Refused
from farwall.papers.price_template import HEADS, price_template
from farwall.readers.price_list import price_list_in, read_price_list
from farwall.readers.price_list.amounts import NotRead, number, price, whole_size
from farwall.readers.price_list.rows import list_in
from farwall.readers.price_list.words import HEADS as KNOWN
from farwall.readers.price_list.words import column_of, kind_in

GALLON = 3.785411784

PLAIN = """what,colour,size,price,seller,lot,in stock,delivery,free from
stain,walnut,1 gal,60.00,Elder Yard,7,12,25,400
stain,walnut,5 gal,"1,270.00",Elder Yard,7,,25,400
masking tape,,60 yd,7.90,Mill Road,,,,
"""


def read_or_refused(content):
    """Whether it came to wares or to a refusal with its reasons."""
    try:
        return bool(list_in(content).wares)
    except Refused as refused:
        return bool(refused.mistakes)


def book_of(*rows, sheets=1):
    book = openpyxl.Workbook()
    for n in range(sheets):
        sheet = book.active if n == 0 else book.create_sheet(f"more {n}")
        for row in rows:
            sheet.append(row)
    made = io.BytesIO()
    book.save(made)
    return made.getvalue()


def told(ware):
    return ware.kind, ware.of, round(ware.size, 6), ware.unit, ware.price


def test_a_plain_list_by_hand():
    read = list_in(PLAIN.encode())
    assert [told(one) for one in read.wares] == [
        ("stain", "walnut", round(GALLON, 6), "l", "60"),
        ("stain", "walnut", round(5 * GALLON, 6), "l", "1270"),
        ("tape", "", 54.864, "m", "7.9"),
    ]
    assert read.wares[0].in_stock == 12
    assert (read.sellers[0].id, read.sellers[0].delivery, read.sellers[0].free_from) == (
        "Elder Yard", "25", "400",
    )  # fmt: skip
    assert read.told == ()


@pytest.mark.parametrize(
    "text",
    [
        PLAIN,
        "\ufeff" + PLAIN,
        PLAIN.replace('"1,270.00"', "1270.00").replace(",", ";"),
        PLAIN.replace('"1,270.00"', "1270.00").replace(",", "\t"),
        "A list of this spring\r\n\r\n" + PLAIN.replace("\n", "\r\n"),
        PLAIN.replace('"1,270.00"', "1270.00").replace(",", ";").replace(".", ","),
        "sep=;\n" + PLAIN.replace('"1,270.00"', "1270.00").replace(",", ";"),
    ],
)
def test_delimiters_marks_and_decimal_commas_say_the_same(text):
    assert [told(one) for one in list_in(text.encode()).wares] == [
        told(one) for one in list_in(PLAIN.encode()).wares
    ]


def test_a_spanish_list_in_another_order_by_hand():
    text = (
        "Precio unitario;Proveedor;Descripción;Tinte;Envase;Existencias\n"
        "1.060,50 €;Patio Norte;Tinte ácido;nogal;1 galón;no\n"
        "12,00 €;Patio Norte;Guantes de neopreno;;caja de 12;\n"
        "9,80 €;Patio Norte;Película para cubrir;;30,5 m;\n"
        "7,00 €;Patio Norte;Bicarbonato;;5 kg;\n"
    )
    read = list_in(text.encode("cp1252"))
    assert read.currency == "EUR"
    assert [told(one) for one in read.wares] == [
        ("stain", "nogal", round(GALLON, 6), "l", "1060.5"),
        ("gloves", "", 12.0, "count", "12"),
        ("film", "", 30.5, "m", "9.8"),
        ("bicarbonate", "", 5.0, "kg", "7"),
    ]
    assert read.wares[0].in_stock == 0


def test_a_workbook_says_what_its_table_says():
    rows = [line.split(",") for line in PLAIN.replace('"1,270.00"', "1270.00").splitlines()]
    typed = [rows[0]] + [[float(c) if i == 3 else c for i, c in enumerate(row)] for row in rows[1:]]
    read = price_list_in(book_of(*typed), name="list.xlsx")
    assert [told(one) for one in read.wares] == [told(one) for one in list_in(PLAIN.encode()).wares]


def test_every_row_that_is_left_out_is_told_with_its_number():
    text = PLAIN + (
        "bananas,,5 kg,1.00,Mill Road,,,,\n"
        "tape,,roll,5.00,Mill Road,,,,\n"
        "stain,,1 gal,60,Mill Road,,,,\n"
        "gloves,,each,dear,Mill Road,,,,\n"
        "rags,,,,Mill Road,,,,\n"
        "masking tape,,60 yd,7.90,Mill Road,,,,\n"
    )
    read = list_in(text.encode())
    assert len(read.wares) == 3
    for row, word in [(5, "not known"), (6, "how much"), (7, "which stain"), (8, "no price"),
                      (10, "says the same as row 4")]:  # fmt: skip
        assert any(f"row {row} " in one and word in one for one in read.told), (row, read.told)
    assert any("no price: row 9" in one for one in read.told)


def test_a_list_with_no_known_head_says_what_it_says_and_what_is_known():
    with pytest.raises(Refused) as refused:
        price_list_in(b"alpha,beta\n1,2\n", name="odd.csv")
    assert "alpha, beta" in str(refused.value)
    assert "price" in str(refused.value)


def test_where_no_row_is_left_all_reasons_are_told():
    with pytest.raises(Refused) as refused:
        list_in(b"what,price\nbananas,1\ntape,2\n")
    assert len(refused.value.mistakes) == 2


def test_sellers_of_two_deliveries_pay_the_dearer_and_it_is_told():
    read = list_in(PLAIN.replace("Elder Yard,7,12,25,400", "Elder Yard,7,12,35,400").encode())
    assert read.sellers[0].delivery == "35"
    assert any("35.00 is taken" in one for one in read.told)


def test_two_currencies_are_not_mixed():
    text = "what,size,price,currency\ntape,60 yd,7,USD\nfilm,100 ft,9,USD\nrags,each,1,EUR\n"
    read = list_in(text.encode())
    assert (read.currency, len(read.wares)) == ("USD", 2)
    assert any("EUR" in one for one in read.told)


@pytest.mark.parametrize(
    ("text", "comma", "value"),
    [
        ("1,290.50", False, "1290.50"), ("1.290,50", True, "1290.50"), ("60,00", True, "60.00"),
        ("1,290", False, "1290"), ("1.290", True, "1290"), ("1 290,5", True, "1290.5"),
        ("1,234,567", True, "1234567"), (".5", False, ".5"), ("12.345", False, "12.345"),
    ],
)  # fmt: skip
def test_figures_by_hand(text, comma, value):
    assert number(text, comma=comma) == Decimal(value)


@pytest.mark.parametrize("text", ["", "-5", "5 each", "n/a", "1e5", "$", "12..3"])
def test_what_is_no_price_is_refused(text):
    with pytest.raises(NotRead):
        price(text, comma=False)


@pytest.mark.parametrize(
    ("size", "unit", "name", "wanted", "found"),
    [
        ("5", "gal", "", ("l",), 5 * GALLON), ("1/2 gal", "", "", ("l",), GALLON / 2),
        ("1 1/2 gal", "", "", ("l",), 1.5 * GALLON), ("32 fl oz", "", "", ("l",), GALLON / 4),
        ("16 oz", "", "", ("kg",), 0.45359237), ("750ml", "", "", ("l",), 0.75),
        ("", "qt", "", ("l",), GALLON / 4), ("2.5", "L", "", ("l",), 2.5),
        ("roll of 180 ft", "", "", ("m",), 54.864), ("", "roll", "tape 60 yd", ("m",), 54.864),
        ("box of 100", "", "", ("count",), 100), ("12", "pack", "", ("count",), 12),
        ("each", "", "", ("count",), 1), ("", "", "gloves", ("count",), 1),
        (Decimal(25), "lb", "", ("kg",), 25 * 0.45359237),
        ("", "each", "2 gal sprayer", ("count",), 1),
    ],
)  # fmt: skip
def test_sizes_by_hand(size, unit, name, wanted, found):
    assert whole_size(size, unit, name, wanted, comma=False).size == pytest.approx(found)


def test_each_head_and_each_thing_is_known_by_one_meaning():
    words = [word for group in KNOWN.values() for word in group]
    assert len(words) == len(set(words))
    assert column_of("Price (USD)") == "price"
    assert column_of("Tamaño") == "size"
    assert kind_in("Blue masking tape 2 in") == "tape"
    assert kind_in("Tiras de pH, 100") == "ph-strips"
    assert kind_in("bananas") is None


@pytest.mark.parametrize("suffix", ["xlsx", "csv"])
def test_the_template_is_read_back_once_prices_stand_in_it(suffix, tmp_path):
    path = tmp_path / f"prices.{suffix}"
    path.write_bytes(price_template(suffix))
    assert price_template(suffix) == path.read_bytes()
    with pytest.raises(Refused, match="no price: rows 2 to"):
        read_price_list(path)
    if suffix == "csv":
        path.write_text(path.read_text("utf-8-sig").replace("180 ft,", "180 ft,7.50", 1))
    else:
        book = openpyxl.load_workbook(path)
        row = next(n for n in range(1, 40) if book.active.cell(n, 1).value == "masking tape")
        book.active.cell(row, HEADS.index("price") + 1, 7.5)
        book.save(path)
    read = read_price_list(path)
    assert [told(one) for one in read.wares] == [("tape", "", 54.864, "m", "7.5")]


def test_a_bomb_is_refused_before_it_is_unpacked():
    made = io.BytesIO()
    with zipfile.ZipFile(made, "w", zipfile.ZIP_DEFLATED) as out:
        out.writestr("xl/workbook.xml", b"<x/>")
        out.writestr("xl/worksheets/sheet1.xml", b"0" * 70_000_000)
    with pytest.raises(Refused, match="larger than 60 MB"):
        price_list_in(made.getvalue(), name="bomb.xlsx")


def test_entities_that_swell_are_refused():
    swell = "".join(f'<!ENTITY {b} "{f"&{a};" * 10}">' for a, b in itertools.pairwise("abcdefghij"))
    bomb = f'<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa">{swell}]>'
    made = io.BytesIO()
    with (
        zipfile.ZipFile(io.BytesIO(book_of(["what", "price"], ["tape", 5]))) as source,
        zipfile.ZipFile(made, "w") as out,
    ):
        for name in source.namelist():
            body = source.read(name).decode()
            if name.startswith("xl/worksheets/sheet"):
                head, _, rest = body.partition("?>") if body.startswith("<?xml") else ("", "", body)
                body = (
                    (f"{head}?>" if head else "")
                    + bomb
                    + rest.replace(
                        "<sheetData>",
                        '<sheetData><row r="9"><c r="A9" t="str"><v>&j;</v></c></row>',
                    )
                )
            out.writestr(name, body)
    with pytest.raises(Refused, match="could not be opened"):
        price_list_in(made.getvalue(), name="swell.xlsx")


def test_a_row_far_down_is_refused_and_not_walked_to():
    book = openpyxl.Workbook()
    book.active.append(["what", "price"])
    book.active.cell(1_000_000, 1, "tape")
    made = io.BytesIO()
    book.save(made)
    with pytest.raises(Refused, match="20,000 rows"):
        price_list_in(made.getvalue(), name="far.xlsx")


@pytest.mark.parametrize(
    ("content", "word"),
    [
        (b"", "empty"), (b"PK\x03\x04torn", "torn"), (b"\xd0\xcf\x11\xe0old", "old kind"),
        (b"%PDF-1.7", "no table"), (b"\x00\x01\x02\x03" * 50, "no table"),
    ],
)  # fmt: skip
def test_what_is_no_list_is_refused_calmly(content, word):
    with pytest.raises(Refused, match=word):
        price_list_in(content, name="it")


@settings(max_examples=150)
@given(st.binary(max_size=400))
def test_noise_is_read_or_refused_and_nothing_else(noise):
    assert read_or_refused(b"what,price,size\n" + noise)


@settings(max_examples=60)
@given(st.integers(0, 10_000), st.binary(min_size=1, max_size=30))
def test_a_spoilt_workbook_is_read_or_refused(at, noise):
    good = book_of(["what", "price", "size"], ["tape", 5, "60 yd"])
    spoilt = good[: at % len(good)] + noise + good[at % len(good) + len(noise) :]
    assert read_or_refused(spoilt)
