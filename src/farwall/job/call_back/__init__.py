"""A call after hand-over: likely causes with their reasons, whose they are, what to take along."""

from farwall.job.call_back.asked import QUESTIONS, call_from
from farwall.job.call_back.noun import Call, Likely, Sign, Triage
from farwall.job.call_back.triage import triage_of

__all__ = ["QUESTIONS", "Call", "Likely", "Sign", "Triage", "call_from", "triage_of"]
