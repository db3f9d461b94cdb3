"""Words of the page of a call after hand-over, and of the papers of the day and of hand-over."""

from __future__ import annotations

WORDS = {
    "call-back-title": "A call after hand-over: {name}",
    "call-back-told": "Answer what the caller knows, leave the rest open. What is not known rules "
    "nothing out. Each cause is held against this floor’s own log.",
    "call-back-slips": "Not yet:",
    "call-back-likely": "Likely causes",
    "call-back-for": "For it:",
    "call-back-against": "Against it:",
    "call-back-whose": "Whose:",
    "call-back-first": "First on the visit:",
    "call-back-rest": "Not ruled out either",
    "call-back-out": "Ruled out, and by what",
    "call-back-log": "What the log of this floor has",
    "call-back-no-log": "No record of washing or sealing that could be held against it.",
    "call-back-ask": "Ask next, it could change the order",
    "call-back-kit": "Take along",
    "call-back-questions": "The questions",
    "call-back-unknown": "not known",
    "call-back-when": "11 Feb 2027 or 4 months",
    "call-back-look": "Look for causes",
    "call-back-sheet": "The sheet for the visit (PDF)",
    "call-back-enter": "Enter the call in the log",
    "call-back-way": "A call after hand-over: likely causes",
    "papers-name-cut-list-pdf": "Cut list and stop lines (PDF)",
    "papers-for-cut-list-pdf": "Where staining may end unseen, what marks it, and which saw cuts "
    "come before the floor is cleaned.",
    "papers-name-batch-log-pdf": "Batch log (PDF)",
    "papers-for-batch-log-pdf": "What is to be mixed, what was mixed, of which lot, by whom, and "
    "what was left.",
    "papers-name-wash-record-pdf": "Neutralise, pH and rag (PDF)",
    "papers-for-wash-record-pdf": "What each room read after its last rinse: the record that is "
    "kept.",
    "papers-name-seal-record-pdf": "Sealing record (PDF)",
    "papers-for-seal-record-pdf": "Slab, air, dew point margin, lot and hands of every coat.",
    "papers-name-punch-list-pdf": "Punch list and acceptance (PDF)",
    "papers-for-punch-list-pdf": "Walked by daylight and lamp, room by room; the owner signs it.",
    "papers-name-call-back-pdf": "Call-back sheet (PDF)",
    "papers-for-call-back-pdf": "The questions for the telephone, this floor’s records, likely "
    "causes and what to take along.",
    "papers-name-post-mortem-pdf": "Looking back on the job (PDF)",
    "papers-for-post-mortem-pdf": "Hours, coverage, rinses, call-backs and money, planned beside "
    "actual. It stays in the firm.",
}
