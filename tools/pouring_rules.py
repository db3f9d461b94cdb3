"""Write the rules of pouring down as tables between the marks of docs/acid-pouring.md.

python tools/pouring_rules.py: run it when a rule has changed; a test holds the two together.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator, Sequence
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT / "src"))

from farwall.acid.pouring import acts, allowing_rules, danger_rules, place_rules, spoil_rules  # noqa: E402
from farwall.acid.pouring.nouns import Rule  # noqa: E402
from farwall.acid.pouring.traits import traits_of  # noqa: E402
from farwall.job.pouring.asked import KINDS  # noqa: E402

PAGE = ROOT / "docs" / "acid-pouring.md"
BEGIN, END = "<!-- rules -->", "<!-- end of rules -->"
PARTS: tuple[tuple[str, Sequence[Rule]], ...] = (
    ("What hurts", danger_rules.DANGERS),
    ("What spoils", spoil_rules.SPOILS),
    ("Order and vessel", place_rules.PLACES),
    ("Cautions", place_rules.CAUTIONS),
    ("What goes together", allowing_rules.TOGETHER),
    ("What may stand where", allowing_rules.STANDS),
    ("Opening, sanding, sweeping", [r for rules in acts.BY_ACT.values() for r in rules]),
)


def tables() -> str:
    """All tables as Markdown."""
    return "\n".join([*_kinds(), *(line for part in PARTS for line in _part(*part))])


def _kinds() -> Iterator[str]:
    yield from ("### Kinds and their traits", "", "| kind | traits |", "| --- | --- |")
    for kind in KINDS:
        yield f"| {kind} | {', '.join(one.trait for one in traits_of(kind))} |"
    yield ""


def _part(name: str, rules: Sequence[Rule]) -> Iterator[str]:
    yield from (f"### {name}", "", "| rule | answer | when these meet | where | source, rank |")
    yield "| --- | --- | --- | --- | --- |"
    for rule in rules:
        meets = " + ".join(" or ".join(sorted(need)) for need in rule.meets)
        meets += ", the first poured after the second" if rule.in_turn else ""
        meets += ", unless sampled" if rule.unless_sampled and rule.word == "refused" else ""
        where = ", ".join(sorted(rule.vessels)) or "everywhere"
        told = f"{rule.source}, {rule.rank.value}"
        yield f"| {rule.id} | {rule.word} | {meets} | {where} | {told} |"
    yield ""


def main() -> None:
    """Put the tables between the marks."""
    text = PAGE.read_text(encoding="utf-8")
    before, rest = text.split(BEGIN)
    after = rest.split(END)[1]
    PAGE.write_text(f"{before}{BEGIN}\n{tables()}\n{END}{after}", encoding="utf-8")


if __name__ == "__main__":
    main()
