from farwall.papers.walk_paper.words import WORDS


def test_no_word_is_empty():
    assert all(text.strip() for table in WORDS.values() for text in table.values())


def test_left_and_right_are_words_that_the_reader_knows_when_written_out():
    assert (WORDS["en"]["left"], WORDS["en"]["right"]) == ("left", "right")
