"""Words of the papers of a house."""

from __future__ import annotations

WORDS = {
    "papers-title": "The papers of {name}",
    "papers-slab": "For the slab",
    "papers-acid": "Acid, fumes, wash day, waste water",
    "papers-days": "For the days and the trades",
    "papers-open": "Open formats, for other programs and for keeping",
    "papers-refused": "It comes with a plan, and none can be made of these facts yet.",
    "papers-no-plan": "It comes with the plan: open the house, and one is made.",
    "papers-no-days": "It comes with a calendar that holds this house: ask for one under Days.",
    "papers-no-log": "Its log is empty so far.",
    "papers-name-run-sheet-pdf": "Run sheet (PDF)",
    "papers-for-run-sheet-pdf": "The whole day on paper: floor, bands, mixes, times, cautions. "
    "Print it and take it along, phone or no phone.",
    "papers-name-slab-html": "Run sheet as one file",
    "papers-for-slab-html": "For a phone that will have no signal: it opens from the phone "
    "itself and asks nobody.",
    "papers-name-floor-svg": "The floor (SVG)",
    "papers-for-floor-svg": "Fields, bands, stop lines and the way out, to hang up or to send to "
    "the builder.",
    "papers-name-moments-svg": "Its moments (SVG)",
    "papers-for-moments-svg": "The floor minute by minute, to walk through with the helper the "
    "evening before.",
    "papers-name-go-pdf": "Go or no-go (PDF)",
    "papers-for-go-pdf": "What was found on the slab, what is still to be asked and tried; the "
    "owner signs it.",
    "papers-name-chain-pdf": "The days of this house (PDF)",
    "papers-for-chain-pdf": "From protecting to hand-over, and until when all other trades stay "
    "out: a page for the builder.",
    "papers-name-days-ics": "Calendar file (iCalendar)",
    "papers-for-days-ics": "Its steps and its lock for anybody’s calendar; fetched again it "
    "moves its events and doubles none.",
    "papers-name-seal-sheet-pdf": "Seal sheet (PDF)",
    "papers-for-seal-sheet-pdf": "The day of the sealer: when it may go down, in what order, how "
    "much. It takes some seconds to make.",
    "papers-name-wash-day-pdf": "Wash day (PDF)",
    "papers-for-wash-day-pdf": "Rooms in order, steps, water, drums, and boxes for pH and rag "
    "of each rinse.",
    "papers-name-cards-pdf": "Cards to hang up (PDF)",
    "papers-for-cards-pdf": "Whom to call, eyes and skin, a spill, a drip, what to wear, eyewash, "
    "mixing, pressure: a page each, to be read at 2 m, in English and Spanish.",
    "papers-name-labels-pdf": "Labels (PDF)",
    "papers-for-labels-pdf": "For each jug and sprayer, the pail and the drums: what is in it, "
    "what it does, in English and Spanish, to cut out.",
    "papers-name-job-json": "The facts (job.json)",
    "papers-for-job-json": "All that is known of this house, for the command line or for another "
    "book.",
    "papers-name-plan-json": "The plan (plan.json)",
    "papers-for-plan-json": "Every band with its minutes, every mix, every wait, with the proof; "
    "any program may check it.",
    "papers-name-floor-dxf": "The floor in layers (DXF)",
    "papers-for-floor-dxf": "Walls, openings, stop lines and bands, each on a layer of its own, in "
    "metres, for a CAD office. Brought back here, it is the same floor.",
    "papers-name-floor-layers-svg": "The floor in layers (SVG)",
    "papers-for-floor-layers-svg": "The same layers as a drawing for any browser, printed at "
    "1:100. Brought back here, it is the same floor.",
    "papers-name-floor-geojson": "The floor (GeoJSON)",
    "papers-for-floor-geojson": "Rooms, openings and fixtures in metres, for a drawing program.",
    "papers-name-log-jsonl": "The log (JSON lines)",
    "papers-for-log-jsonl": "Every entry with both its clocks, a line each, struck ones too.",
}
