"""Words of `farwall log`: what belongs to the entry, and what to who makes it."""

from farwall.cli.log_asked import asked_of


def test_who_says_yes_to_waste_water_is_carried_and_is_not_who_enters_it():
    asked = asked_of(["job", "waste", "drum=1", "who=City works"])
    assert (asked.carried, asked.who) == (("drum=1", "who=City works"), "")


def test_for_every_other_word_who_is_who_enters_it():
    asked = asked_of(["job", "note", "text=hi", "who=Ada"])
    assert (asked.carried, asked.who) == (("text=hi",), "Ada")
