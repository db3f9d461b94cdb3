"""Every sentence that the gate says is in the phrasebook."""

from farwall.acid.pouring import acts, gate
from farwall.acid.pouring.nouns import VESSELS
from farwall.phrasebook import in_spanish
from farwall.phrasebook.es.acid_pouring import PHRASES
from farwall.phrasebook.es.acid_pouring_more import PHRASES as MORE

RULES = (*gate.RULES, *(rule for rules in acts.BY_ACT.values() for rule in rules))
PLAIN = (gate.NOT_NAMED, gate.NOT_THERE, gate.ASK_SHEETS, gate.OTHER_VESSEL, gate.FORBIDDEN,
         gate.BY_NAME, gate.SAME, gate.NOTHING)  # fmt: skip


def test_every_sentence_of_the_gate_is_said_in_spanish():
    texts = [text for rule in RULES for text in (rule.what, rule.instead) if text]
    assert len(texts) > 150
    assert [text for text in (*texts, *PLAIN) if in_spanish(text) is None] == []


def test_the_two_tables_do_not_hold_the_same_sentence_and_never_say_mask():
    assert PHRASES.keys() & MORE.keys() == set()
    both = " ".join([*PHRASES, *PHRASES.values(), *MORE, *MORE.values()]).casefold()
    assert "mask" not in both.split()
    assert "mascarilla" not in both
    assert "máscara" not in both


def test_the_words_of_rules_differ_so_that_each_may_be_named():
    ids = [rule.id for rule in gate.RULES]
    assert len(set(ids)) == len(ids)
    assert all(rule.vessels <= set(VESSELS) for rule in gate.RULES)
