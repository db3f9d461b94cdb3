"""What the code can say and has no Spanish: counted by part of the code, and may only fall.

A count holds every string of two words and more, whole sentences as well as pieces that are put
together and keys that nobody reads. So no count need ever reach nothing; but a new sentence
without Spanish makes one rise.
"""

import pytest
from tests.phrasebook.spoken import modules, spoken_in

from farwall.phrasebook import in_spanish

MOST = {
    "papers/run_sheet": 17,
    "papers/drawing": 3,
    "spray/remedies": 6,
    "job/cautions.py": 0,
    "job/seal_day/cautions.py": 3,
    "job/chances": 3,
    "job/go": 119,
    "job/live": 31,
    "job/van": 26,
    "job/office/quantities": 9,
    "job/acid_day/neutralising": 12,
    "job/proof.py": 6,
    "job/patch_words.py": 1,
    "evidence.py": 0,
}


def without_spanish(name):
    return [
        f"{path.name}:{line}: {text}"
        for path in modules(name)
        for line, text in spoken_in(path)
        if in_spanish(text) is None
    ]


@pytest.mark.parametrize("name", MOST)
def test_no_more_is_said_without_spanish_than_before(name):
    found = without_spanish(name)
    more = f"Say it in src/farwall/phrasebook/es too: {len(found)} in {name}, {MOST[name]} before."
    assert len(found) <= MOST[name], "\n".join([more, *found])


def test_a_sentence_is_found_whatever_way_it_is_written(tmp_path):
    module = tmp_path / "one.py"
    module.write_text(
        '"""No word of mine."""\nA = "one stop line"\nB = f"{A} of {A}, twice"\n'
        'def f():\n    """Nor mine."""\n    return "go on "\\\n "with it"\n'
    )
    told = {text for _, text in spoken_in(module)}
    assert told == {"\ue000 of \ue000, twice", "one stop line", "go on with it"}
