"""One thing has one name in Spanish, on whatever paper it stands."""

from pathlib import Path

import farwall.phrasebook.es as book

FOLDER = Path(book.__file__).parent


def test_the_survey_is_called_alike_on_all_papers():
    """*Inspección* on its own paper and in the schedule, *revisión* in hours and call-back."""
    told = "\n".join(path.read_text(encoding="utf-8") for path in sorted(FOLDER.glob("*.py")))
    assert '"Survey": "Inspección"' in told
    assert "revisión" not in told
