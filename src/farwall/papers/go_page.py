"""The page 'Go or no-go': verdict, reasons, what is still to be asked and tried, signatures."""

from __future__ import annotations

import json
from importlib.resources import files
from pathlib import Path
from typing import Any

from farwall.evidence import Rank
from farwall.facts.defaults import own_stain_words
from farwall.facts.go import Finding, Go, SlabTest
from farwall.facts.job import Job
from farwall.facts.plain import plain as plain_facts
from farwall.job.go.say import VERDICT_WORDS, parts
from farwall.job.go.tests_to_do import HIDE
from farwall.job.plan_job import hash_of
from farwall.papers.foot import foot_line
from farwall.papers.run_sheet.in_language import in_language
from farwall.papers.run_sheet.margins import Paper, paper_for
from farwall.papers.square import square
from farwall.papers.svg import plain
from farwall.papers.wall_clock import Units
from farwall.phrasebook import speaking

SIGNED = (
    "The rules are common practice of the trade, no source, where none is named. We have "
    "read this page. The floor varies in colour; cracks, patches and marks of what lay on "
    "it show. The signed, sealed sample is the standard."
)
_EPOCH = 978_307_200
"""Papers carry no time of their own making: the same facts give the same bytes."""


def go_pdf(
    go: Go, job: Job, *, units: Units = "us", paper: Paper | None = None, inputs_hash: str = "",
    screens: str = "",
) -> bytes:  # fmt: skip
    """The page as PDF bytes; the same findings give the same bytes. Long lists go on to a second.

    `units` choose the paper (US Letter or A4) unless `paper` or the job does; the language is the
    job's wish. inputs_hash: that of the job's plan; where there is none, that of the job itself is
    told. screens: address of the house in the firm's book.
    """
    import typst

    home = Path(str(files("farwall.papers.run_sheet")))
    name = job.name or job.id or "The job"
    rooms = {word for room in job.floor.rooms for word in (room.id, room.label)}
    stains = own_stain_words(job.stains)
    size, qr = paper_for(units, paper or job.wishes.paper), square(screens, "survey")
    with speaking(job.wishes.language, rooms | stains | {name}):
        footer = foot_line(
            name, "go or no-go", revision=job.revision,
            inputs_hash=inputs_hash or hash_of(plain_facts(job)), size=size, square=qr,
        )  # fmt: skip
        data = in_language({"paper": size.typst_name, **page_words(go, job)}, units)
    data |= {"verdict": go.verdict, "footer": footer, "qr": qr, "screen": "survey"}
    pdf = typst.compile(
        home / "go.typ",
        root=home,
        font_paths=typst.Fonts(
            include_system_fonts=False, include_embedded_fonts=True, font_paths=[home / "fonts"]
        ),
        ignore_system_fonts=True,
        format="pdf",
        sys_inputs={"data": json.dumps(data, ensure_ascii=False)},
        timestamp=_EPOCH,
    )
    return bytes(pdf)


def page_words(go: Go, job: Job) -> dict[str, Any]:
    """What the page says, in words ready to be set."""
    sorted_ = parts(go)
    told = [(title, found) for title, found in sorted_ if title in {_NO, _WITH} and found]
    asked = [one for _, found in sorted_ for one in found if one.verdict == "ask"]
    order = [one.rule for one in go.findings if one.verdict == "go"]
    return {
        "job": plain(job.name or job.id or "The job"),
        "verdict": go.verdict,
        "words": VERDICT_WORDS[go.verdict],
        "told": [
            {"title": title.rstrip(":"), "no": title == _NO, "rows": [_row(one) for one in found]}
            for title, found in told
        ],
        "asked": [{"words": plain(one.reason), "vital": one.vital} for one in asked],
        "tests": [_test(one, job) for one in go.tests],
        "care": HIDE if any(one.care for one in go.tests) else "",
        "order": ", ".join(order),
        "signed": SIGNED,
    }


def _row(one: Finding) -> dict[str, str]:
    texts = " Texts disagree; the strictest holds until you choose." if one.advised else ""
    return {
        "rule": plain(one.rule[0].upper() + one.rule[1:]),
        "reason": plain(one.reason),
        "change": plain(one.change + texts),
        "rank": "" if one.rank == Rank.PRACTICE.value else f"({one.rank})",
    }


def _test(one: SlabTest, job: Job) -> dict[str, str]:
    label = {room.id: room.label for room in job.floor.rooms}
    before = one.care.removesuffix(HIDE).strip()
    said = " ".join(filter(None, (before, one.how, one.first_in(label))))
    return {"name": f"{one.count} × {one.test}", "words": plain(said)}


_NO, _WITH = "What says no:", "To go with:"
