"""Words of the page that brings the run sheet onto a phone."""

from __future__ import annotations

WORDS = {
    "onto-phone": "Onto the phone",
    "onto-title": "Onto the phone: {name}",
    "onto-told": "The run sheet goes onto a phone in three ways. Choose one the evening before, "
    "open it once while there is signal, and leave it open.",
    "onto-code": "Point the phone’s camera here",
    "onto-code-alt": "A square code with the address of the run sheet and the key of this book",
    "onto-code-told": "It holds {address} and, behind the #, the key of this book: a browser "
    "sends that part to nobody. Who reads the square has the key. Do not leave it on a wall.",
    "onto-safe": "This address is safe for a phone that knows its certificate: the page then "
    "opens without signal, all day.",
    "onto-plain": "This address is plain http: it works, but a page that was closed does not open "
    "again without signal, and others on the network can read the key. Way 1 or 2 is better.",
    "onto-loopback": "You opened this page as {host}, which only this machine understands. The "
    "square names {address} instead; it answers there only if Farwall was started for the "
    "network:",
    "onto-no-address": "This machine is on no network: a phone cannot reach it. Way 3 needs none.",
    "onto-1": "1. A copy with a real certificate",
    "onto-1-told": "For a firm: Farwall runs on a machine with a public name. Nothing is put onto "
    "the phone.",
    "onto-1-a": "Have a certificate made for the name of that machine, as for any web site.",
    "onto-1-b": "Start Farwall there with it:",
    "onto-1-c": "Open this page under that name, and let the phone read the square above.",
    "onto-2": "2. An authority of your own",
    "onto-2-told": "For a laptop in the van: phone and laptop in one network, no internet. The "
    "phone is made to trust this machine once.",
    "onto-2-make": "Make the authority, once:",
    "onto-2-serve": "Start Farwall with its certificate:",
    "onto-2-fetch": "Bring its public part onto the phone: by this square, by cable, or by mail. "
    "A warning comes, for the phone does not know this machine yet.",
    "onto-2-alt": "A square code with the address of the authority’s public part",
    "onto-2-file": "The authority’s public part",
    "onto-2-compare": "Before it is installed, compare the SHA-256 fingerprint that the phone "
    "shows. If one pair differs, stop.",
    "onto-2-ios": "iOS: Settings, the profile that was downloaded, Install. Then Settings, "
    "General, About, Certificate Trust Settings: switch it on.",
    "onto-2-android": "Android: Settings, Security, Encryption and credentials, Install a "
    "certificate, CA certificate. It warns that such a certificate can read all: this one vouches "
    "for local names only.",
    "onto-2-read": "Let the phone read the square at the top. Take the authority off a phone that "
    "no longer works for you.",
    "onto-2-none": "This book has no authority yet.",
    "onto-3": "3. One file, no server",
    "onto-3-told": "For a day without laptop and network. What is tapped stays on the phone, and "
    "comes into the book by a file in the evening.",
    "onto-3-get": "Take the file, and bring it onto the phone by cable or mail:",
    "onto-3-file": "The run sheet as one file",
    "onto-3-open": "Open it on the phone from its own files, in a browser. It holds the paper run "
    "sheet too, and prints it.",
    "onto-3-save": "In the evening: Phone, Save what was logged. Then on this machine:",
    "onto-unplanned": "There is no plan of this house yet: no run sheet, no file.",
    "onto-back": "To the house",
    "onto-check": "On the phone, under Phone, Who taps here: it says whether it can reload "
    "without signal and keep the screen awake. Try it: flight mode, then reload.",
}
