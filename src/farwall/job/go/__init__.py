"""Go or no-go, before any price: rules look at the facts of a job and say what stands against it.

One small file for each group of rules, `table` for all of them, `verdict`
for the answer, `say` for its words. Every rule is common practice of the
trade unless its source says otherwise.
"""

from farwall.job.go.verdict import go_of_plan, go_or_no_go

__all__ = ["go_of_plan", "go_or_no_go"]
