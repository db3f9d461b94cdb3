"""What was typed into a form of the log, files too, kept as an entry; the same form once."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import partial

from fastapi import Request
from starlette.datastructures import UploadFile

from farwall.errors import Mistake, Refused
from farwall.facts.log import Entry
from farwall.facts.log_words import WORDS
from farwall.facts.plain import Plain
from farwall.nouns import dataclass
from farwall.store.files import MOST_BYTES
from farwall.store.new_id import new_id
from farwall.web.door import Door
from farwall.web.pages.guard import form_of, text_of
from farwall.web.pages.log_form import There, is_id, moment_of, told_of
from farwall.web.people.who import name_of_who
from farwall.web.taking import Offer, take

DEVICE = "office"
_ROOM = 20_000
FILES = {
    word.name: tuple(one.key for one in word.carried if one.kind == "hash")
    for word in WORDS.values()
}
"""Keys of each word that name a file of the book."""
_MOST_FILES = max(map(len, FILES.values()))


@dataclass(frozen=True)
class Typed:
    """The texts of a form by name, and the files that came with it."""

    told: Mapping[str, str]
    files: Mapping[str, bytes]


async def typed_of(request: Request, *, fields: int = 50) -> Typed:
    """What came with a form of the log."""
    form = await form_of(
        request, MOST_BYTES * _MOST_FILES + _ROOM, fields=fields, files=_MOST_FILES
    )
    try:
        told = {key: text_of(form, key) for key in form}
        files = {
            key: await value.read()
            for key, value in form.items()
            if isinstance(value, UploadFile) and value.filename
        }
    finally:
        await form.close()
    return Typed(told, files)


def files_named(entries: Iterable[Entry]) -> set[str]:
    """Hashes of all files that entries name."""
    named = (one.about.get(key) for one in entries for key in FILES.get(one.word, ()))
    return {one for one in named if isinstance(one, str)}


async def keep_typed(door: Door, job: str, there: There, word: str, typed: Typed) -> str:
    """The id of the entry that is now in the book. Raises Refused."""
    from farwall.readers.log_json import Head, entry_from_words, entry_to_dict

    told, book, plan, now = typed.told, door.book, there.plan, door.clock()
    at = moment_of(told, now, plan.starts_at if plan else "")
    carried = told_of(word, there, told)
    for key in FILES[word]:
        content = typed.files.get(key)
        if content:
            sha = await door.written(partial(book.put_file, content))
            carried = [*(one for one in carried if not one.startswith(f"{key}=")), f"{key}={sha}"]
    ident = told.get("id", "")
    ident = ident if is_id(ident) else new_id()
    late = bool(told.get("day") or told.get("time"))
    by = told.get("entered_by") or ("" if _asks_who(word) else told.get("who")) or name_of_who()

    def keep() -> None:
        own = [one.entry for one in book.entries(job) if one.entry.device == DEVICE]
        if any(one.id == ident for one in own):
            return  # the form came twice
        number = 0 if late else max((one.number for one in own), default=0) + 1
        head = Head(
            id=ident, job=job, at=at.isoformat(timespec="milliseconds"),
            who=by[:200],
            device=DEVICE, number=number,
        )  # fmt: skip
        plainly: dict[str, Plain] = entry_to_dict(entry_from_words(word, carried, head, plan))
        received = door.now()
        offer = Offer(DEVICE, 0, received, (plainly,))
        answer = take(book, offer, received_at=received)
        if answer.turned:
            raise Refused(*(Mistake("", why) for why in answer.turned[0].why))

    await door.written(keep)
    return ident


def _asks_who(word: str) -> bool:
    """Whether the word itself carries a `who`: then that is not who enters it."""
    return any(one.key == "who" for one in WORDS[word].carried)
