"""Words of coming in."""

from __future__ import annotations

WORDS = {
    "enter-title": "The key first",
    "enter-told": "The key was printed where Farwall was started. It opens this book in this "
    "browser for twelve hours.",
    "enter-key": "Key",
    "enter": "Enter",
    "wrong-key": "This is not the key of this book.",
    "not-the-key": "This book has people by now: sign in by name and password.",
    "too-many-tries": "Too many tries that failed. Wait a minute, then try again.",
    "enter-title-name": "Who are you?",
    "enter-told-name": "You stay in on this browser for a week at most, and for twelve hours "
    "without a look at it.",
    "enter-name": "Name",
    "enter-password": "Password",
    "wrong-password": "The name or the password is not right.",
    "enter-forgot": "Forgotten? A lead makes you a link, or at the machine itself: farwall people "
    "reset and your name.",
    "join-title-join": "Come in",
    "join-title-first": "Name the first person",
    "join-title-reset": "Choose a new password",
    "join-told-join": "You were asked into this book as {role}, who {does}",
    "join-told-first": "This book has nobody yet who manages its people. Whoever opens this link "
    "first is its {role}, who {does}",
    "join-told-reset": "For {name}. Every device where you were in is left.",
    "join-title-phone": "This phone as {name}",
    "join-told-phone": "It opens the run sheet and logs under this name, with all that {name} may, "
    "until it is ended under {name}’s own name in Farwall. Do not do it on another's phone.",
    "join-phone": "Take this phone in",
    "join-name": "Your name, as the others know you",
    "join-no-name": "Say what you are called.",
    "join-password": "Come in with this password",
    "join-device": "Only the run sheet on this phone",
    "join-device-told": "Without a password: this phone alone comes in, and a lead can end it. "
    "Or choose a password and come in from anywhere:",
    "link-spent": "This link is not good any more. Ask for a new one",
    "device-title": "{name}, this phone is in",
    "device-told": "Tap a house, then keep the page on your home screen. New houses come here too: "
    "keep this page as well.",
    "password-new": "New password",
    "password-again": "The same again",
    "password-told": "At least {least} characters, any you like; four or five words of your own do "
    "well. No need to change it but when somebody may know it.",
    "password-short": "The password has fewer than {least} characters. Add some words.",
    "password-long": "The password is too long: 256 characters at most.",
    "password-common": "Too easy to guess: without the common words, the runs of keys and your own "
    "name too little is left of it. Add words of your own.",
    "password-differs": "The two passwords differ. Type them again.",
    "name-taken": "Another person of this book bears this name. Add a letter to yours.",
}
