"""Words of the page before and after."""

from __future__ import annotations

WORDS = {
    "colour-pairs-title": "Before and after, {name}",
    "colour-pairs-about":
    "Two photos of one place side by side, for the customer. A photo and a screen are not the"
    " floor: the signed sample is the standard. Only photos of one state, dry, clean and wet "
    "or sealed, can be compared.",
    "colour-pairs-refused": "The values were not kept.",
    "colour-pairs-none": "No photo of a room or a sample is in the log yet.",
    "colour-pairs-one":
    "One photo only: take another later, from the same place in the same light.",
    "colour-pairs-sample": "Sample {id}",
    "colour-pairs-before": "before",
    "colour-pairs-after": "after",
    "colour-pairs-make": "Make the paper",
    "colour-pairs-print": "The firm's own print of the target",
    "colour-pairs-measured":
    "{n} squares of it are measured: photos with it are corrected by them, here and where a "
    "photo tells a look.",
    "colour-pairs-unmeasured": "Nobody measured it: colours of photos with it are a guess.",
    "colour-pairs-values":
    "What an instrument reads of the print, or a photo of it beside the 24 patches: a table "
    "with the heads patch,L,a,b, or JSON",
    "colour-pairs-keep": "Keep the values",
    "colour-pairs-forget": "Forget the values: another print is used",
}  # fmt: skip
