"""Words of the book: its state, its backups."""

from __future__ import annotations

WORDS = {
    "book-title": "The book",
    "book-houses": "{houses} houses, {closed} of them handed over; {entries} entries in their "
    "logs.",
    "book-houses-1": "1 house, {closed} of them handed over; {entries} entries in its log.",
    "book-size": "Its file is {size}.",
    "book-files": "{n} photos and drawings, {size}.",
    "book-check": "Looked through",
    "book-being-looked": "It is being looked through, row by row; this page looks again by itself.",
    "book-trouble-check": "It could not be looked through:",
    "book-faults-1": "1 fault. Keep this book as it is; work on a copy.",
    "book-faults": "{n} faults. Keep this book as it is; work on a copy.",
    "book-whole": "The book is whole: every row is as it was put in, nothing is missing.",
    "book-calm": "To know, without harm:",
    "book-looked": "Looked through {at}.",
    "book-look-again": "Look through it again",
    "book-devices": "Phones and desks",
    "book-device": "last heard {at}; {entries}",
    "book-ahead": "; its clock is {minutes} min ahead",
    "book-behind": "; its clock is {minutes} min behind",
    "book-lacks-1": "1 entry of it has not come yet: number {numbers}. Open the run sheet on it "
    "within reach of this server.",
    "book-lacks": "{n} entries of it have not come yet: numbers {numbers}. Open the run sheet on "
    "it within reach of this server.",
    "book-devices-told": "A number missing between others is an entry still on that phone. What "
    "a phone holds behind its last entry cannot be known here: the phone itself says how many it "
    "holds.",
    "book-no-devices": "No device has brought anything yet.",
    "book-backup": "Back up now",
    "book-backup-told": "A copy of the whole book as it stands, as one file to keep elsewhere. "
    "Nobody has to stop working.",
    "book-backup-open": "Fetch it in open formats",
    "book-backup-open-told": "JSON lines, a table, floors, photos as they are: readable without "
    "this program.",
    "book-backup-store": "Fetch a copy of its file",
    "book-backup-store-told": "The store’s own file and the photos: quickest to put back.",
    "book-lead": "Only a lead takes the whole book along: ask one.",
    "book-which": "there is no such backup.",
    "book-restore": "Put one back",
    "book-restore-told": "Not here: a page that could put an old book in the place of this one "
    "could lose a day’s work. Unpack the file, and make a new book of its folder by the command "
    "line:",
    "book-restore-command": "farwall book restore FOLDER --book NEW",
}
