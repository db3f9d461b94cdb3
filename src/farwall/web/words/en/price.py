"""Words of the pages of money."""

from __future__ import annotations

WORDS = {
    "way-price": "price",
    "price-part-title": "{name}: {part}",
    "price-firm-alone": "What things cost the firm is for the office and the lead.",
    "price-ways": "Parts of the price",
    "price-part-price": "price",
    "price-part-hours": "hours",
    "price-part-quantities": "quantities",
    "price-part-masking": "masking",
    "price-part-buying": "to buy",
    "papers-before-the-pour": "Before the pour",
    "papers-quote": "For the quote",
    "papers-day": "For the day",
    "papers-hand-over": "For the hand-over and after",
    "papers-name-slab-protection-pdf": "Before the pour (PDF)",
    "papers-for-slab-protection-pdf": "For the builder: what the slab must be spared, so that it "
    "takes colour.",
}
