"""Why a mark is proposed, in the units of its job and the language of the page."""

from markupsafe import Markup, escape

from farwall.phrasebook import speaking
from farwall.web.pages.colour.marks_said import why_told

WHY = (
    "a darker strip along the edge of band 6 of coat 1 by the run sheet; 2.3 m long, about 15 cm "
    "beside that edge"
)


def test_a_job_in_feet_reads_feet_and_inches():
    """2.3 m is 90.6 in, 7' 6½\"; 15 cm is 5.9 in."""
    told = why_told(WHY, "us")
    assert told.endswith("7' 6½\" long, about 6\u00a0in beside that edge.")
    assert why_told(WHY, "metric").replace("\u00a0", " ") == f"{WHY}."


def test_in_spanish_too_and_what_lacks_spanish_is_marked_once():
    with speaking("es"):
        assert "de largo, a unos 6\u00a0in de esa orilla." in why_told(WHY, "us")
        lacking = why_told("the floor is not as it was, 2.3 m of it", "us")
    assert isinstance(lacking, Markup)
    assert escape(lacking).count("&lt;span") == 0
