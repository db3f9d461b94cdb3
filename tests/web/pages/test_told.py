"""A sentence of the core on a page: Spanish where the book holds it, else English, marked."""

from markupsafe import Markup

from farwall.phrasebook import speaking
from farwall.web.pages.told import reads_english, told_on_page


def test_in_english_all_stays_as_it_is():
    assert told_on_page("Nobody told <this>.") == "Nobody told <this>."


def test_in_spanish_what_the_book_holds_is_spanish():
    with speaking("es", ["Hall"]):
        assert (
            told_on_page("Hall: Bands of 2' 0\" (0.61 m).") == "Hall: Franjas de 2' 0\" (0.61 m)."
        )


def test_what_the_book_lacks_is_marked_and_escaped():
    with speaking("es"):
        told = told_on_page("Nobody told of <this> and that.")
    assert isinstance(told, Markup)
    assert told == '<span lang="en">Nobody told of &lt;this&gt; and that.</span>'


def test_names_and_spanish_are_not_marked():
    with speaking("es"):
        assert told_on_page("Great room") == "Great room"
        assert told_on_page("Todo lo de hoy es de aquí.") == "Todo lo de hoy es de aquí."
    assert reads_english("the floor of the house")
    assert not reads_english("el piso de la casa")
