"""All that the wash day says is said in Spanish too."""

import pytest

from farwall.acid.rinse_belief import More
from farwall.job.live.rinse_rules import DO, SEALER, WHY, more_said
from farwall.phrasebook import in_spanish

FILLED = {"ph": "9.5", "low": "7", "high": "8.5", "read": 1, "readings": 3}
SAID = [
    *(one.format(**FILLED) for one in WHY.values()), *DO.values(), *SEALER.values(),
    more_said(More(1, 1, 1)), more_said(More(1, 1, 2)), more_said(More(2, 2, 2)),
    more_said(More(2, 3, 5)), more_said(More(3, 4, 6), first=True),
    more_said(More(1, 1, 2), first=True),
]  # fmt: skip


@pytest.mark.parametrize("text", SAID)
def test_what_a_rinse_asks_for(text):
    found = in_spanish(text, frozenset())
    assert found is not None
    assert found != text
    assert in_spanish(f"Bath: {text}", frozenset({"Bath"})) is not None
