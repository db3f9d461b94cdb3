"""A sentence comes out whole in Spanish, or not at all."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.facts.defaults import DEFAULT_STAINS
from farwall.phrasebook import LANGUAGE, NAMES, in_spanish, said_whole, speaking, told
from farwall.phrasebook.matching import OUR_STAINS, PLACE
from farwall.phrasebook.phrases import phrases

ROOMS = frozenset({"Kitchen and dining", "Great room", "Bath 2", "Hall", "coat-1", "light"})

BY_HAND = [
    ("9:10 to 9:42", "9:10 a 9:42"),
    ("Fri 9:42", "vie. 9:42"),
    ("day 2, 9:42", "día 2, 9:42"),
    ("1.25 gal (4.7 L)", "1.25 gal (4.7 L)"),
    ("12' 3½\" (3.75 m)", "12' 3½\" (3.75 m)"),
    ("coat 1, light 1:1", "mano 1, light 1:1"),
    ("Great room and Bath 2", "Great room y Bath 2"),
    ("Kitchen and dining and Hall", "Kitchen and dining y Hall"),
    ("common practice, no source, our guess, Uno 1998",
     "práctica común, sin fuente, estimación nuestra, Uno 1998"),
    ("Great room: Bands of 2' 0\" (0.61 m).", "Great room: Franjas de 2' 0\" (0.61 m)."),
    ("Great room: Bands of 0.61 m (2' 0\").", "Great room: Franjas de 0.61 m (2' 0\")."),
    ("Wednesday, June 3, 2026, first stroke 8:00",
     "miércoles 3 de junio de 2026, primera pasada 8:00"),
    ("coats[0].cut: `cutt` is not a key here. Did you mean `cut`?",
     "coats[0].cut: `cutt` no es una clave aquí. ¿Quiso decir `cut`?"),
]  # fmt: skip


@pytest.mark.parametrize(("english", "spanish"), BY_HAND, ids=[one for one, _ in BY_HAND])
def test_a_sentence_worked_by_hand(english, spanish):
    assert in_spanish(english, ROOMS) == spanish


@pytest.mark.parametrize(
    "english",
    [
        "Nobody told the book of this.",
        "Acid into water, never water into acid. And one sentence that the book does not hold.",
        "Kitchen is on fire: mix 3 gal at once.",
        "the oldest edge waits",
    ],
)
def test_what_the_book_does_not_hold_whole_is_not_taken_apart(english):
    assert in_spanish(english, ROOMS) is None


def test_english_is_spoken_as_it_is_and_spanish_only_meanwhile():
    assert told("stop line") == "stop line"
    with speaking("es", ["Hall"]):
        assert told("stop line") == "línea de parada"
        assert told("Hall") == "Hall"
        assert told("No such words here") == "No such words here"
        assert not said_whole("No such words here")
    assert LANGUAGE.get() == "en"
    assert NAMES.get() == frozenset()


def test_a_name_that_reads_like_the_book_stays_where_it_is_known():
    assert in_spanish("door") == "puerta"
    assert in_spanish("door", frozenset({"door"})) == "door"


def test_a_name_nobody_knows_is_no_name_when_it_reads_like_english():
    assert in_spanish("Nobody has read the sheet of dark red for chromate.") is None
    assert in_spanish("Nobody has read the sheet of Umber 7 for chromate.") is not None


def test_spaces_around_and_ties_before_units_stay():
    assert in_spanish("  NOT YET: Hall free", ROOMS) == "  TODAVÍA NO: Hall libre"
    assert in_spanish("6.2\u00a0min to spare") == "sobran 6.2\u00a0min"


def test_a_name_that_joins_words_of_its_own_is_not_parted():
    names = frozenset({"Kitchen and dining", "Bath 2", "Kitchen", "Salt, sand"})
    told = in_spanish("Stop at the bare frame between Kitchen and dining and Bath 2.", names)
    assert told == "Pare en el marco sin puerta entre Kitchen and dining y Bath 2."
    told = in_spanish("Stop at the bare frame between Bath 2 and Kitchen and dining.", names)
    assert told == "Pare en el marco sin puerta entre Bath 2 y Kitchen and dining."
    assert in_spanish("Kitchen and Bath 2", names) == "Kitchen y Bath 2"
    assert in_spanish("Salt, sand and Bath 2", names) == "Salt, sand y Bath 2"


PATTERNS = sorted(
    one for one in phrases() if PLACE.search(one) and re.search(r"[^\W\d_]", PLACE.sub("", one))
)
"""Those with a word of their own: `{1} {2}` is for two colours in a row, and parts nothing else."""
QUANTITIES = st.one_of(
    st.decimals(0, 999, places=1).map(lambda d: f"{d} min"),
    st.decimals(0, 99, places=2).map(lambda d: f"{d} gal ({d * 2} L)"),
    st.integers(1, 12).map(lambda h: f"{h}:30"),
    st.integers(0, 100).map(lambda n: f"{n} %"),
)
WORDS = {
    "#": QUANTITIES,
    "@": st.sampled_from(sorted(ROOMS)),
    "&": st.from_regex(r"[a-z]{2,6}-\d\.\d", fullmatch=True),
    "*": st.from_regex(r'"[a-z]{3,6}"', fullmatch=True),
    "$": st.from_regex(r"[a-z]{2,6}\.[a-z]{2,6}", fullmatch=True),
    "": st.sampled_from(["a full tank", "common practice", "2.5 min more", "the slab sweats"]),
}


@given(st.sampled_from(PATTERNS), st.data())
def test_every_number_unit_and_name_of_a_sentence_is_in_its_spanish(pattern, data):
    put = {}
    english = PLACE.sub(lambda one: put.setdefault(one[0], data.draw(WORDS[one[1]])), pattern)
    spanish = in_spanish(english, ROOMS)
    assert spanish is not None, english
    kept = {one: word for one, word in put.items() if one != "" and PLACE.match(one)[1]}
    for word in kept.values():
        assert word in spanish, (english, spanish)
    assert numbers(spanish) == numbers(english)


def numbers(text):
    return sorted(re.findall(r"\d+(?:[.,:/]\d+)*", text))


@given(st.text(max_size=60))
def test_any_text_is_answered(text):
    found = in_spanish(text)
    assert found is None or numbers(found) == numbers(text)


def test_two_quantities_side_by_side_are_told_apart():
    english = "Air 20.0 min, slab 10.0 min 30.0 min after the first stroke: the air deceives, the "
    spanish = in_spanish(f"{english}slab decides.", ROOMS)
    assert spanish is not None
    assert spanish.index("10.0 min") != spanish.index("30.0 min")


def test_a_pattern_without_words_of_its_own_parts_no_two_sentences():
    """`{1} {2}` and its like once cut `Buy` off a text of two sentences and left it in English."""
    two = (
        "Buy 2 × 1 gal light at 58.00 and 3 × 1 gal dark at 58.00: 116.00 USD and 174.00 USD. "
        "Box all lots of one stain before the first mix."
    )
    said = in_spanish(two, frozenset({"light", "dark"}))
    assert said is not None
    assert said.startswith("Compre 2 × 1 gal light a 58.00 y 3 × 1 gal dark")
    assert said.endswith("Junte todos los lotes de un tinte antes de mezclar.")


@pytest.mark.parametrize(
    ("english", "spanish"),
    [
        ("Thu 21 May 9:00 am", "jue. 21 may 9:00 a. m."),
        ("from Mon 1 Jan, 7:30 am until Sat 6 Jan, 1:00 pm",
         "desde lun. 1 ene, 7:30 a. m. hasta sáb. 6 ene, 1:00 p. m."),
        ("3 K (5 °F)", "3 K (5 °F)"),
        ("wash day", "día de lavado"),
        ("room", "cuarto"),
        ("light colour and dark colour", "color claro y color oscuro"),
        ("coat 1, light colour, 1:1", "mano 1, color claro, 1:1"),
    ],
)  # fmt: skip
def test_days_of_a_month_kelvin_and_names_of_papers_are_said(english, spanish):
    assert in_spanish(english, frozenset({"Great room"})) == spanish


def test_a_sentence_that_tells_an_hour_ends_with_one_point():
    said = in_spanish(
        "Film or blanket the west windows of Hall before 2:40 pm, best the day before: without its "
        "sun the bands of Hall (1.5) leave their tightest edge 0.8 min, with it −1.3; or begin "
        "Hall by 8:45 am.",
        ROOMS,
    )
    assert said.endswith("; o empiece a más tardar a las 8:45 a. m. en Hall.")


def test_what_is_to_be_bought_of_stains_that_farwall_named_is_spanish():
    bought = "Buy 1 × 5 gal light colour at 270.00 and 3 × 1 gal dark colour: 270.00 USD."
    said = in_spanish(bought, frozenset())
    assert said == "Compre 1 × 5 gal color claro a 270.00 y 3 × 1 gal color oscuro: 270.00 USD."


def test_rooms_of_one_name_that_are_counted_are_names_as_well():
    names = frozenset({"Walk-in closet", "Hall"})
    told = in_spanish("First in 2 × Walk-in closet and Hall.", names)
    assert told == "Primero en 2 × Walk-in closet y Hall."


@pytest.mark.parametrize(
    ("english", "spanish"),
    [("Begin Wed 7:30 am.", "Empezar mié. 7:30 a. m."), ("Begin Wed 7:30.", "Empezar mié. 7:30.")],
)
def test_a_sentence_that_ends_with_an_hour_has_one_point(english, spanish):
    assert in_spanish(english) == spanish


@pytest.mark.parametrize(
    ("english", "spanish"),
    [
        ("light colour", "color claro"),
        ("light colour and dark colour", "color claro y color oscuro"),
        ("wet sand and dark colour", "wet sand y color oscuro"),
    ],
)
def test_our_own_stains_are_said_in_spanish_wherever_a_name_may_stand(english, spanish):
    text = f"The metals of {english} are not known: nobody entered what section 3 of its sheet "
    text += "lists."
    told = in_spanish(text, frozenset({"wet sand"}))
    assert told is not None
    assert told.startswith(f"Los metales de {spanish} no se conocen")
    assert {one.name for one in DEFAULT_STAINS} == OUR_STAINS
