"""The sentences of the core in the language of the page, names of rooms and stains as they are."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from farwall.facts.defaults import own_stain_words
from farwall.facts.job import Job
from farwall.phrasebook import speaking
from farwall.web.words import LANGUAGE


@contextmanager
def speaking_here(job: Job) -> Iterator[None]:
    """Meanwhile the phrasebook speaks as the page does; what it does not hold stays English."""
    names = [room.label for room in job.floor.rooms]
    names += own_stain_words(job.stains)
    names += [coat.id for coat in job.coats]
    with speaking("es" if LANGUAGE.get() == "es" else "en", names):
        yield
