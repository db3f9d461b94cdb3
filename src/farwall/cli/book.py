"""`farwall book …`: the jobs of a book, adding one, looking through it, backups, open formats."""

from __future__ import annotations

import argparse
import json
import os
from collections.abc import Callable, Mapping, Sequence
from dataclasses import asdict
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from farwall.facts.log import Kept
    from farwall.store.book import Book
    from farwall.store.nouns import BookFault, JobLine

_DONE, _HAS_FAULTS = 0, 1
_MOMENT = 29
"""As wide as `2026-11-26T01:26:44.251+00:00`."""
_EPILOG = (
    "Without a word its jobs are listed. ADDRESS is a folder, or postgresql://user@host/name with "
    "--files for the folder of photos. Without it: FARWALL_BOOK, else a folder of the user's own "
    "data. docs/book.md tells more."
)


def arguments(parser: argparse.ArgumentParser) -> None:
    """What is to be done with the book; without a word, its jobs are listed."""
    parser.epilog = _EPILOG
    _everywhere(parser, default=None)
    doings = parser.add_subparsers(dest="doing", metavar="DOING")

    def doing(name: str, what: str, *words: tuple[str, str]) -> argparse.ArgumentParser:
        sub = doings.add_parser(name, help=what, description=what)
        for word, told in words:
            path = word in {"JOB.json", "TO", "FROM", "DIR"}
            dest = {"JOB.json": "job", "ID": "id"}.get(word, "place")
            taken = sub.add_argument(dest, metavar=word, type=Path if path else str, help=told)
            if name == "show":
                taken.nargs, taken.default, taken.required = "?", "", False
        _everywhere(sub, default=argparse.SUPPRESS)
        return sub

    add = doing("add", "put a job's facts into the book", ("JOB.json", "a job file"))
    add.add_argument("--id", metavar="ID", help="of the job; else its own, else the file's name")
    add.add_argument("--who", metavar="NAME", default="", help="who puts it there")
    add.add_argument(
        "--plan-file", metavar="DRAWING", type=Path, help="keep the drawing that it was made of"
    )
    show = doing(
        "show", "a job: its versions and its log", ("ID", "of the job; without it all are listed")
    )
    show.add_argument("--facts", action="store_true", help="print its facts, as a job file")
    show.add_argument("--version", metavar="N", type=int, help="of the facts; else the newest")
    for word, what in (
        ("aside", "set a house aside: out of lists, calendar, van, lessons; nothing is erased"),
        ("back", "bring a house back that was set aside"),
    ):
        moved = doing(word, what, ("ID", "of the job"))
        moved.add_argument("--who", metavar="NAME", default="", help="who does it")
        if word == "aside":
            moved.add_argument("--why", metavar="TEXT", default="", help="the reason")
    doing("check", "look through the whole book; exit 1 when something is wrong with it")
    doing("backup", "copy the book while it is used", ("TO", "a new folder"))
    doing("restore", "make a new book from a backup", ("FROM", "the folder of the backup"))
    doing("out", "write the whole book in open formats", ("DIR", "a new folder"))
    doing("in", "fill an empty book from open formats", ("DIR", "the folder"))


def _everywhere(parser: argparse.ArgumentParser, *, default: Any) -> None:
    parser.add_argument("--book", metavar="ADDRESS", default=default, help="which book")
    parser.add_argument(
        "--files", metavar="DIR", type=Path, default=default, help="its folder of files"
    )
    parser.add_argument(
        "--json",
        action="store_true",
        default=False if default is None else default,
        help="one JSON document on stdout",
    )


def run(options: argparse.Namespace) -> int:
    """0 done, 1 when a check finds faults; raises `Refused` when the book cannot be used."""
    from farwall.store.address import address, insist_there, is_there

    if options.doing in {"check", "show", "backup", "out", "aside", "back"}:
        insist_there(options.book, files=options.files)
    if options.doing is None:
        where = address(options.book, files=options.files)
        if not is_there(where):  # looking makes none
            return _listed(where.shown, [], options)
    if options.doing == "check":
        return _check(options)
    if options.doing == "restore":
        return _restore(options)
    from farwall.store.book import Book

    doings: Mapping[str | None, Callable[[Book, argparse.Namespace], int]] = {
        None: _list,
        "add": _add,
        "show": _show,
        "aside": _aside,
        "back": _back,
        "backup": lambda book, told: _moved(book, told, book.backup, "is backed up to"),
        "out": lambda book, told: _moved(book, told, book.out, "is written to"),
        "in": lambda book, told: _moved(book, told, book.take_in, "is filled from"),
    }
    with Book.open(options.book, files=options.files) as book:
        return doings[options.doing](book, options)


def _list(book: Book, options: argparse.Namespace) -> int:
    return _listed(book.where.shown, book.jobs(), options)


def _listed(shown: str, jobs: Sequence[JobLine], options: argparse.Namespace) -> int:
    if options.json:
        return _print({"book": shown, "jobs": [asdict(one) for one in jobs]})
    if not jobs:
        print(f"{shown} holds no job yet. `farwall book add JOB.json` adds one.")
        return _DONE
    wide = max(3, *(len(one.id) for one in jobs))
    print(f"{'job':<{wide}}  facts  entries  {'last heard of':<{_MOMENT}}  state   name")
    for one in jobs:
        print(_job_line(one, wide))
    return _DONE


def _job_line(one: JobLine, wide: int) -> str:
    state = "aside" if one.aside else "closed" if one.closed else "open"
    counts = f"{one.versions:>5}  {one.entries:>7}"
    return (
        f"{one.id:<{wide}}  {counts}  {one.latest_at:<{_MOMENT}}  {state:<6}  {one.name}".rstrip()
    )


def _add(book: Book, options: argparse.Namespace) -> int:
    from farwall.cli.log_photo import content_of
    from farwall.readers.job_json import job_to_dict, read_job
    from farwall.store.nouns import DRAWING

    job = read_job(options.job)
    name = options.id or job.id or options.job.stem
    now = datetime.now().astimezone().isoformat(timespec="seconds")
    facts = job_to_dict(job)
    drawing = None if options.plan_file is None else content_of(options.plan_file)
    sha = "" if drawing is None else book.put_file(drawing)
    version = book.put_facts(name, facts, who=options.who, at=now, name=job.name)
    told: dict[str, object] = {"job": name, "version": version}
    if sha:
        kept = {"file": sha, "name": options.plan_file.name, "facts": version}
        book.put_document(DRAWING, name, kept)
        told["drawing"] = kept
    if options.json:
        return _print(told)
    print(f"Job {name} is in the book, version {version} of its facts.")
    if sha:
        print(f"Its drawing {options.plan_file.name} is kept, {sha}.")
    return _DONE


def _show(book: Book, options: argparse.Namespace) -> int:
    if not options.id:
        return _listed(book.where.shown, book.jobs(), options)
    if options.facts:
        from farwall.readers.job_json import job_from, job_to_text

        facts = book.facts(options.id, options.version)
        print(job_to_text(job_from(facts, options.id)), end="")
        return _DONE
    from farwall.store.nouns import DRAWING

    versions, entries = book.versions(options.id), book.entries(options.id)
    drawing = book.document(DRAWING, options.id)
    if options.json:
        told = [[asdict(one) for one in each] for each in (versions, entries)]
        document = {"job": options.id, "versions": told[0], "entries": told[1]}
        return _print(document if drawing is None else {**document, "drawing": drawing})
    print(f"Job {options.id}: {versions[-1].name}".rstrip(": "))
    for one in versions:
        print(f"  facts {one.version:>4}  {one.at}  {one.who}".rstrip())
    if drawing is not None:
        print(f"  drawing {drawing['name']}, of facts {drawing['facts']}: file {drawing['file']}")
    for kept in entries:
        print(_entry_line(kept))
    print(f"{len(entries)} {'entry' if len(entries) == 1 else 'entries'}.")
    return _DONE


def _aside(book: Book, options: argparse.Namespace) -> int:
    from farwall.cli.book_aside import aside

    return aside(book, options)


def _back(book: Book, options: argparse.Namespace) -> int:
    from farwall.cli.book_aside import back

    return back(book, options)


def _entry_line(kept: Kept) -> str:
    entry = kept.entry
    about = ", ".join(f"{key} {_plainly(value)}" for key, value in entry.about.items())
    told = f"  {kept.place:>6}  {entry.at}  {entry.word:<12}  {about}"
    return f"{told}  ({entry.who})" if entry.who else told.rstrip()


def _plainly(value: object) -> str:
    return value if isinstance(value, str) else json.dumps(value, ensure_ascii=False)


def _check(options: argparse.Namespace) -> int:
    from farwall.store.book import Book
    from farwall.store.nouns import BookFault, BookTrouble

    try:
        with Book.open(options.book, files=options.files) as book:
            shown, faults = book.where.shown, book.check()
    except BookTrouble as trouble:
        if not trouble.damaged:
            raise
        shown = trouble.mistakes[0].where
        what = f"{trouble.mistakes[0].what} {trouble.mistakes[0].remedy}"
        faults = [BookFault("damaged", "the book", what)]
    harm = any(one.harm for one in faults)
    if options.json:
        _print({"book": shown, "faults": [asdict(one) for one in faults]})
    else:
        _show_faults(shown, faults, harm=harm)
    return _HAS_FAULTS if harm else _DONE


def _show_faults(shown: str, faults: list[BookFault], *, harm: bool) -> None:
    for one in faults:
        print(f"{one.code:<13} {one.where}: {one.what}{'' if one.harm else ' (no harm)'}")
    if not harm:
        print(f"{shown} is whole.")
        return
    many = sum(one.harm for one in faults)
    print(f"{many} {'fault' if many == 1 else 'faults'}. Keep this book as it is; work on a copy.")


def _restore(options: argparse.Namespace) -> int:
    from farwall.errors import Mistake, Refused
    from farwall.store.book import restore

    if options.book is None and not os.environ.get("FARWALL_BOOK"):
        raise Refused(Mistake("--book", "say where the new book is to be.", "Name a new folder."))
    restore(options.place, options.book, files=options.files)
    return _said(options, options.book or os.environ["FARWALL_BOOK"], "is restored from")


def _moved(
    book: Book, options: argparse.Namespace, doing: Callable[[Path], None], said: str
) -> int:
    doing(options.place)
    return _said(options, book.where.shown, said)


def _said(options: argparse.Namespace, book: str, said: str) -> int:
    if options.json:
        return _print({"book": book, "folder": str(options.place)})
    print(f"The book {book} {said} {options.place}.")
    return _DONE


def _print(document: Mapping[str, object]) -> int:
    print(json.dumps(document, ensure_ascii=False, default=dict))
    return _DONE
