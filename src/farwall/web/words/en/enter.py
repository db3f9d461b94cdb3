"""Words of coming in."""

from __future__ import annotations

WORDS = {
    "enter-title": "The key first",
    "enter-told": "The key was printed where Farwall was started. It opens this book in this "
    "browser for twelve hours.",
    "enter-key": "Key",
    "enter": "Enter",
    "wrong-key": "This is not the key of this book.",
    "too-many-tries": "Too many wrong keys from here. Wait a minute, then try again.",
}
