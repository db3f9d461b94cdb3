"""Labels: the elements of the GHS in both languages, on their page, readable in the hand."""

import re
import xml.etree.ElementTree as ET
from dataclasses import replace
from importlib.resources import files

import pytest
from tests.papers.acid.ground import (
    BLANK,
    FULL,
    STAINS,
    ground,
    letters_of,
    mixes,
    overlapping,
    pages_of,
)

from farwall.acid.hazards import HAZARDS, PICTOGRAM_OF, PRECAUTIONS
from farwall.facts.contents import Content
from farwall.facts.washing import Drums, Washing
from farwall.papers.acid.labels.hazardous import precautions
from farwall.papers.acid.labels.plain_ones import DRUMS_UNTOLD, MOST_DRUMS
from farwall.papers.acid.labels.sheet import LEAST_PT, ON_A_PAGE, _set, labels_of, labels_pdf
from farwall.web.pages.told import reads_english

WORST = tuple(
    replace(
        one,
        name="Deep Umber of the invented chart, second series, for floors",
        chromate=True,
        oxidiser=True,
        contents=(
            Content("sodium dichromate", 5.0, None),
            Content("copper(II) chloride", 10.0, None),
            Content("manganese(II) chloride", 15.0, 20.0),
            Content("other", 1.0, 5.0),
        ),
    )
    for one in STAINS
)


@pytest.fixture(scope="module")
def pdf():
    return labels_pdf(ground(mixes=mixes(2, acid_l=0.4)))


def page_count(labels):
    return sum(
        -(-sum(one.size == size for one in labels) // most) for size, most in ON_A_PAGE.items()
    )


@pytest.mark.parametrize("units", ["us", "metric"])
@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("stains", [STAINS, WORST, ()])
def test_labels_keep_to_their_pages_and_are_read_in_the_hand(stains, language, units):
    of = ground(replace(FULL, stains=stains), language=language, units=units, mixes=mixes(3))
    made = labels_pdf(of)
    assert len(pages_of(made)) == page_count(labels_of(of))
    sizes = [one.size_pt for page in letters_of(made) for one in page if one.char.strip()]
    assert min(sizes) >= LEAST_PT - 0.01
    assert overlapping(made) == []


def test_a_batch_has_a_label_for_its_jug_and_one_for_its_sprayer():
    labels = labels_of(ground(mixes=mixes(2)))
    first = [one for one in labels if one.more and one.more.en.startswith("Coat 1, mix 1")]
    assert [one.on.en for one in first] == ["Jug", "Sprayer"]
    assert [one.on.es for one in first] == ["Jarra", "Rociadora"]


def test_product_signal_statements_and_precautions_stand_on_the_page(pdf):
    page = pages_of(pdf)[0]
    for told in (
        "of the invented chart",
        "Danger",
        "Peligro",
        "muriatic acid",
        "ácido muriático",
        HAZARDS["H314"].en,
        HAZARDS["H314"].es[:30],
        PRECAUTIONS["P305+P351+P338"].en[:20],
        "Date",
        "Fecha",
        "Lot",
        "Lote",
    ):
        assert told in page


@pytest.mark.parametrize("stains", [STAINS, WORST, ()])
def test_every_label_is_whole_in_both_languages(stains):
    for one in labels_of(ground(replace(FULL, stains=stains), mixes=mixes(1))):
        said = [
            one.on,
            one.more,
            one.signal,
            one.no,
            *one.statements,
            *one.precautions,
            *one.lines,
            *one.blanks,
        ]
        said = [both for both in said if both is not None]
        assert [both.es for both in said if reads_english(both.es)] == []
        assert all(both.en.strip() and both.es.strip() for both in said)
        assert [both for both in said if both.en == both.es] == []


def test_whatever_is_asked_for_is_a_precaution_that_has_its_words():
    assert set(precautions(tuple(HAZARDS))) == set(PRECAUTIONS)
    assert precautions(()) == ()


@pytest.mark.parametrize(
    ("codes", "code"),
    [(("H314",), "P280"), (("H334",), "P284"), (("H350",), "P308+P313"), (("H410",), "P273")],
)
def test_a_statement_asks_for_its_precaution_un_ghs_annex_3_from_memory(codes, code):
    assert code in precautions(codes)


def test_the_pail_says_not_for_eyes_and_never_closed():
    pail = next(one for one in labels_of(ground()) if one.what.en == "Bicarbonate water")
    said = " ".join(line.en for line in pail.lines)
    assert "Not for eyes or skin" in said
    assert "never close it" in said
    assert pail.pictograms == ()


@pytest.mark.parametrize(
    ("count", "labels"), [(None, DRUMS_UNTOLD), (0, 0), (3, 3), (500, MOST_DRUMS)]
)
def test_as_many_drums_as_were_told(count, labels):
    job = replace(FULL, washing=Washing(drums=Drums(count=count)))
    drums = [one for one in labels_of(ground(job)) if one.size == "drum"]
    assert len(drums) == labels
    for one in drums:
        assert "Not yet tested" in one.no.en
        assert "vented" in " ".join(line.en for line in one.lines).lower()
        assert "iron" in one.more.en


def test_a_drum_of_an_unread_stain_claims_nothing_and_one_of_chromate_names_it():
    of = labels_of(ground(BLANK))
    assert "nobody told" in next(one for one in of if one.size == "drum").more.en
    of = labels_of(ground(replace(FULL, stains=WORST)))
    assert "hexavalent chromium" in next(one for one in of if one.size == "drum").more.en


def test_what_nobody_told_stands_on_the_label():
    first = labels_of(ground(BLANK))[0]
    assert "Not told: its strength, whether it holds chromate" in first.lines[0].en
    assert "No se dijo: su fuerza, si lleva cromato" in first.lines[0].es
    assert first.wide is not None
    assert all(one.wide is None for one in labels_of(ground()) if one.statements)


def test_the_same_job_gives_the_same_bytes(pdf):
    assert labels_pdf(ground(mixes=mixes(2, acid_l=0.4))) == pdf


@pytest.mark.parametrize("name", sorted(set(PICTOGRAM_OF.values())))
def test_each_pictogram_is_a_red_diamond_on_its_point_with_a_symbol_inside(name):
    root = ET.fromstring((files("farwall.papers.acid") / "pictograms" / f"{name}.svg").read_text())
    frame, *symbol = root
    assert frame.get("d") == "M100 6 194 100 100 194 6 100Z"
    assert frame.get("stroke") == "#c4161c"
    assert symbol


@pytest.mark.parametrize("name", sorted(set(PICTOGRAM_OF.values())))
def test_no_symbol_touches_its_frame_and_grey_keeps_it(name):
    """Drawn at 200 px: black lies inside the white of the diamond, with air to the red."""
    picture = drawn(name)
    black = [(x, y) for x in range(200) for y in range(200) if max(picture.getpixel((x, y))) < 60]
    assert len(black) > 800
    assert max(abs(x - 100) + abs(y - 100) for x, y in black) <= 88


def drawn(name):
    import io

    import typst
    from PIL import Image

    home = files("farwall.papers.acid") / "pictograms"
    source = b'#set page(width: 200pt, height: 200pt, margin: 0pt)\n#image("/%s.svg", width: 200pt)'
    made = typst.compile(source % name.encode(), root=str(home), format="png", ppi=72)
    return Image.open(io.BytesIO(bytes(made))).convert("RGB")


@pytest.mark.parametrize("order", [("en", "es"), ("es", "en")])
def test_no_line_of_a_label_ends_between_a_number_and_its_unit(order):
    labels = labels_of(ground(mixes=mixes(2, acid_l=0.4)))
    words = [one for label in labels for one in _words(_set(label, order))]
    assert sum("\u00a0gal" in one or "\u00a0L" in one for one in words) > 3
    assert [one for one in words if re.search(r"\d (gal|L|lb|kg|min|%)(?!\w)", one)] == []


def _words(value):
    if isinstance(value, str):
        return [value]
    parts = value.values() if isinstance(value, dict) else value
    return [word for part in parts for word in _words(part)]
