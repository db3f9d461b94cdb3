"""Go or no-go in a few calm lines: the verdict first, then reasons in order of weight."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from farwall.evidence import rank_words
from farwall.facts.go import Finding, Go, SlabTest

VERDICT_WORDS = {
    "no": "No.",
    "not yet": "Not yet: questions are open that could make it a no.",
    "go with": "Go, with work and words first.",
    "go": "Go.",
}
WINS = "The sheet of the material in hand, local codes and licensed practice win over this list."


def said(go: Go, *, name: str = "", labels: Mapping[str, str] | None = None) -> str:
    """All of it: reasons, questions, tests; `labels` are what people call the rooms, by id."""
    lines = [f"{name or 'The job'}: {VERDICT_WORDS[go.verdict]}"]
    for title, found in parts(go):
        if found:
            lines.append(title)
            lines.extend(f"  {line}" for one in found for line in _told(one))
    if go.tests:
        lines.append("Tests to do:")
        lines.extend(_test(one, labels or {}) for one in go.tests)
    lines.append(WINS)
    return "\n".join(lines)


def parts(go: Go) -> list[tuple[str, list[Finding]]]:
    """Findings under their titles, the heaviest first in each."""
    heavy = sorted(go.findings, key=lambda one: -one.weight)
    return [
        ("What says no:", [one for one in heavy if one.verdict == "no"]),
        ("To be asked first:", [one for one in heavy if one.verdict == "ask" and one.vital]),
        ("To go with:", [one for one in heavy if one.verdict == "go with"]),
        ("Also to be asked:", [one for one in heavy if one.verdict == "ask" and not one.vital]),
        ("In order:", [one for one in heavy if one.verdict == "go"]),
    ]


def in_short(go: Go, *, most: int = 3, reasons: bool = False) -> str:
    """One line for a plan: the verdict and what weighs most, by its rules or by its reasons."""
    first = {"no": "no", "not yet": "ask", "go with": "go with"}.get(go.verdict)
    heavy = [one for one in go.findings if one.verdict == first]
    if go.verdict == "not yet":
        heavy = [one for one in heavy if one.vital]
    shown = ", ".join(one.rule for one in heavy[:most])
    more = f" and {len(heavy) - most} more" if len(heavy) > most else ""
    said_no = f"{shown}{more}. `farwall go` says why and what would change it."
    if reasons:
        said_no = f"{' '.join(one.reason for one in heavy[:most])}{more}"
    words = {
        "no": f"No-go: {said_no}",
        "not yet": f"Go or no-go: not yet. Still to be asked: {shown}{more}.",
        "go with": f"Go, with: {shown}{more}.",
        "go": "Go: every rule is in order.",
    }
    return words[go.verdict]


def _test(one: SlabTest, labels: Mapping[str, str]) -> str:
    said = " ".join(filter(None, (one.how, one.first_in(labels), one.care)))
    return f"  {one.count} × {one.test}: {said} ({one.source})"


def _told(one: Finding) -> Sequence[str]:
    if one.verdict == "go":
        return [f"{one.rule}: {one.reason}"]
    rank = rank_words(one.rank, one.source)
    lines = [f"{one.rule}: {one.reason}" + (f" ({rank})" if one.verdict != "ask" else "")]
    if one.change:
        lines.append(f"  {one.change}")
    if one.advised and one.verdict in {"no", "go with"}:
        lines.append(f"  Texts disagree: {'; '.join(one.advised)}.")
    return lines
