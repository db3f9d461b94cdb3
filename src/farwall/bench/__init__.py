"""The bench: floors that are always the same, and what a planner makes of them.

It is the judge of changes to the planner and no part of a job. The set of
floors is frozen: a test holds its digest, so that nobody tunes the floors to
the planner.
"""
