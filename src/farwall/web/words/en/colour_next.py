"""Words of the page of the next coat."""

from __future__ import annotations

WORDS = {
    "colour-next-title": "{name}: the next coat",
    "colour-next-judge": "Judging the next coat, by the samples",
    "colour-next-doses": "What each stain does here, by dose",
    "colour-next-doses-told": "One coat of it on this floor, clean and wet, as the samples tell "
    "it; ranges hold four times in five.",
    "colour-next-doses-of": "{stain} on the bare floor, {coverage}",
    "colour-next-doses-over": "{stain} over {over}, {coverage}",
    "colour-next-range": "L* {likely} ({low} to {high})",
    "colour-next-cut": "cut",
    "colour-next-swatch": "swatch",
    "colour-next-in-words": "in words",
    "colour-next-why": "Why",
    "colour-next-habit": "What else could be done",
    "colour-next-rooms": "Room by room",
    "colour-next-rests": "What it rests on",
    "colour-next-changes": "What would change it",
    "colour-next-mind": "Mind",
    "colour-next-ruler": "Lighter lies left, darker right. A dot is likely, its bar four times in "
    "five.",
    "colour-next-row-sample": "sample {sample}",
    "colour-next-row-now": "the floor now",
    "colour-next-row-now-foreseen": "the floor now, not looked at",
    "colour-next-row-after": "after this coat",
    "colour-next-row-habit": "after the habit, 1:2",
    "colour-next-mark-sample": "the sample",
    "colour-next-mark-dark": "too dark beyond",
    "colour-next-ask": "Ask of less, or of another coat",
    "colour-next-room": "room",
    "colour-next-all-rooms": "all rooms",
    "colour-next-coat": "coat to be decided",
    "colour-next-by-log": "by the log",
    "colour-next-stain": "stain",
    "colour-next-as-planned": "as planned",
    "colour-next-ask-again": "Ask",
    "colour-next-look": "Enter a look at the floor",
    "colour-next-look-told": "Lift the powder with a damp white pad at six spots, mop them wet, "
    "and read each colour. A dry floor says nothing: it is kept in the log and never used here.",
    "colour-next-refused": "This was not kept:",
    "colour-next-state": "how it stands",
    "colour-next-state-clean-wet": "clean and wet",
    "colour-next-state-dry": "dry",
    "colour-next-state-sealed": "sealed",
    "colour-next-last-coat": "last coat that is on",
    "colour-next-light": "seen by",
    "colour-next-light-day": "day",
    "colour-next-light-lamp": "the house's lamps",
    "colour-next-untold": "not told",
    "colour-next-spots": "spots",
    "colour-next-spots-told": "Colour of each spot, CIELAB under light D50; one is enough, six say "
    "how patchy the floor is.",
    "colour-next-spots-none": "Tell L*, a* and b* of one spot at least, or bring a photo with a "
    "target.",
    "colour-next-spot": "spot {n}",
    "colour-next-spot-wrong": "three numbers are needed: L* from 0 to 100, a* and b* from -150 to "
    "150.",
    "colour-next-error": "target off after correction, CIEDE2000; empty: read by eye",
    "colour-next-photo": "photo",
    "colour-next-photo-told": "photo instead: bare floor straight from above with a target on "
    "it; six spots are read",
    "colour-next-photo-full": "The target fills the photo: stand farther off, so that bare floor "
    "lies beside it.",
    "colour-next-keep": "Keep it in the log",
    "lessons-kind-stain strength, long waves": "stain strength, long waves",
    "lessons-kind-stain strength, middle waves": "stain strength, middle waves",
    "lessons-kind-stain strength, short waves": "stain strength, short waves",
    "lessons-unit-K/S of 1 L/m²": "K/S of 1 L/m²",
}
