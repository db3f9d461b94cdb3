"""What the tests of the book put into it."""

from farwall.facts.log import Entry

AT = "2026-05-04T07:00:00-05:00"
LATER = "2026-05-04T08:30:00-05:00"
FACTS = {"version": 1, "floor": {"rooms": [{"id": "hall", "area": 3.0}]}, "exits": []}


def entry(name, job="quince", word="note", **more):
    about = more.pop("about", {"text": f"said {name}"})
    return Entry(id=name, job=job, word=word, at=AT, about=about, **more)
