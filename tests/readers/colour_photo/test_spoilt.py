"""Every sentence about a spoilt photo is told in Spanish too."""

import inspect
import re

import pytest

from farwall.phrasebook import in_spanish
from farwall.readers.colour_photo import spoilt

SENTENCES = (
    spoilt.NOT_MEASURED,
    spoilt.NO_TARGET,
    (
        "Burnt out and not used: B1, C2, white 9.5 and 3 more. Take it again, darker, and "
        "without a flash."
    ),
    "Uneven and not used: B1. A shadow's edge, a shine or a thing lies on them.",
    "The target is small in the photo: its squares are 9 points wide. Go nearer.",
    "The camera looks 52° aslant. Hold it over the target.",
    "The photo is out of focus or shaken. Touch the target on the screen first.",
    (
        "The light changes by 41 % across the target. Beside it the evening is a guess: lay "
        "the target nearer to the spot."
    ),
    "A shadow lies across the target. Beside it the light is not known.",
    (
        "Corrected, the squares are still 3.4 off (CIEDE2000): two lights mix, or the target "
        "is not the one whose values were taken."
    ),
    "Light shines on the spot: stand so that no window mirrors in it.",
)


@pytest.mark.parametrize("sentence", SENTENCES)
def test_it_is_said_in_spanish(sentence):
    assert in_spanish(sentence) not in (None, sentence)


def test_no_sentence_is_forgotten():
    source = " ".join(inspect.getsource(spoilt.spoilt).split())
    said = len(re.findall(r"told\.append\(", source))
    assert said == len(SENTENCES) - 3
