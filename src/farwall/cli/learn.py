"""`farwall learn`: what closed jobs teach, which job moved what, and lessons switched off."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING

from farwall.errors import Mistake, Refused

if TYPE_CHECKING:
    from farwall.facts.closed import ClosedJob
    from farwall.facts.lessons import Lesson, Lessons

_DONE = 0


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall learn` takes."""
    parser.add_argument(
        "files",
        metavar="CLOSED.json",
        nargs="*",
        type=Path,
        help="closed jobs: one, a list, or one a line; folders with a log in them; or a file of "
        "lessons, to look into it",
    )
    parser.add_argument(
        "--book", metavar="ADDRESS", help="learn from every job of this book that was handed over"
    )
    parser.add_argument(
        "--keep",
        action="store_true",
        help="keep them in the --book, for its plans and live days",
    )
    parser.add_argument("--out", metavar="LESSONS.json", type=Path, help="where to write")
    parser.add_argument(
        "--forget-jobs",
        metavar="N",
        type=_positive,
        help="a job counts half once N others have followed it (nothing is forgotten unless asked)",
    )
    parser.add_argument(
        "--forget-months", metavar="N", type=_positive, help="a job counts half N months later"
    )
    parser.add_argument(
        "--off",
        metavar="NAME",
        action="append",
        default=[],
        help="tell this lesson, or all of this kind, but do not put it to work; may be repeated",
    )
    parser.add_argument(
        "--without", metavar="JOB", action="append", default=[], help="leave this job out"
    )
    parser.add_argument("--why", metavar="NAME", help="look into one lesson: which job moved it")
    parser.add_argument("--json", action="store_true", help="print one JSON document")


def run(options: argparse.Namespace) -> int:
    """Print what was learned; write it where asked."""
    from farwall.cli.learn_words import told_lesson, told_lessons
    from farwall.facts.plain import plain
    from farwall.readers.lessons_json import lessons_text

    lessons = _lessons(options)
    if options.out is not None:
        options.out.write_text(lessons_text(lessons), encoding="utf-8")
    if options.keep:
        _keep(lessons, options)
    if options.why is not None:
        lesson = _named(lessons, options.why)
        if options.json:
            import json

            print(json.dumps(plain(lesson), ensure_ascii=False))
        else:
            print(told_lesson(lesson))
        return _DONE
    print(lessons_text(lessons).rstrip() if options.json else told_lessons(lessons))
    if options.out is not None and not options.json:
        print(f"Written to {options.out}. `farwall plan JOB.json --lessons {options.out}` uses it.")
    return _DONE


def _lessons(options: argparse.Namespace) -> Lessons:
    from dataclasses import replace

    from farwall.cli.closed_jobs import closed_in
    from farwall.learn.forgetting import Forgetting
    from farwall.learn.lessons import lessons_of, switched_off
    from farwall.readers.lessons_json import is_lessons, read_closed, read_lessons

    if not options.files and options.book is None:
        what = "from which jobs?"
        raise Refused(Mistake("CLOSED.json", what, "Name their files or folders, or --book."))
    alone = options.files[0] if len(options.files) == 1 and options.book is None else None
    if alone is not None and not alone.is_dir() and is_lessons(alone):
        if options.without or options.forget_jobs or options.forget_months:
            what = "leaving out or forgetting needs the closed jobs themselves."
            remedy = "Give their files, not the file of lessons."
            raise Refused(Mistake(str(options.files[0]), what, remedy))
        lessons = read_lessons(options.files[0])
        if not options.off:
            return lessons
        return replace(lessons, lessons=switched_off(lessons.lessons, options.off))
    mistakes: list[Mistake] = []
    jobs = _of_book(options.book)
    for path in options.files:
        try:
            jobs += closed_in([path]) if path.is_dir() else read_closed(path)
        except Refused as refusal:
            if len(options.files) == 1:
                raise
            mistakes += [
                Mistake(f"{path.name}: {one.where}".rstrip(": "), one.what, one.remedy)
                for one in refusal.mistakes
            ]
    if mistakes:
        raise Refused(*mistakes, about=f"Not all is told yet: {len(mistakes)} mistakes.")
    return lessons_of(
        jobs,
        forgetting=Forgetting(options.forget_jobs, options.forget_months),
        off=tuple(options.off),
        without=tuple(options.without),
    )


def _keep(lessons: Lessons, options: argparse.Namespace) -> None:
    """The newest version of the firm's document in the book."""
    import sys

    from farwall.store.book import Book
    from farwall.web.firm import keep_lessons

    if options.book is None:
        raise Refused(Mistake("--keep", "in which book?", "Add --book ADDRESS."))
    with Book.open(options.book) as book:
        version = keep_lessons(book, lessons)
        print(f"Kept in {book.where.shown}, version {version} of its lessons.", file=sys.stderr)


def _of_book(book: str | None) -> list[ClosedJob]:
    """The book's closed jobs; those that cannot be told are named on stderr."""
    import sys

    from farwall.cli.closed_jobs import closed_in_book

    jobs = []
    for one in closed_in_book(book) if book is not None else ():
        if isinstance(one, str):
            print(one, file=sys.stderr)
        else:
            jobs.append(one)
    return jobs


def _named(lessons: Lessons, name: str) -> Lesson:
    from difflib import get_close_matches

    try:
        return lessons.named(name)
    except KeyError:
        known = [one.name for one in lessons.lessons]
        near = get_close_matches(name, known, n=3, cutoff=0.4)
        there = f"Did you mean {' or '.join(near)}?" if near else f"There are: {'; '.join(known)}."
        raise Refused(Mistake("--why", f"there is no lesson “{name}”.", there)) from None


def _positive(text: str) -> float:
    value = float(text)
    if not 0 < value < float("inf"):
        raise argparse.ArgumentTypeError("more than 0 is expected")
    return value
