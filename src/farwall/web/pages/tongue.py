"""In which language a page answers: as chosen here, else as the browser asks, else English."""

from __future__ import annotations

from fastapi import Request

from farwall.phrasebook import LANGUAGES, Language

TONGUE = "tongue"
"""The cookie that keeps what was chosen."""


def language_of(request: Request) -> Language:
    """One of `LANGUAGES`."""
    chosen = request.cookies.get(TONGUE, "")
    if chosen in LANGUAGES:
        return chosen
    return _asked(request.headers.get("accept-language", ""))


def _asked(header: str) -> Language:
    """The first of ours that the browser likes best [rfc9110, 12.5.4]."""
    liked = []
    for place, part in enumerate(header.split(",")[:20]):
        tag, _, weight = part.partition(";q=")
        try:
            liked.append((-float(weight or 1), place, tag.strip().lower().partition("-")[0]))
        except ValueError:
            continue
    return next((tag for weight, _, tag in sorted(liked) if tag in LANGUAGES and weight < 0), "en")
