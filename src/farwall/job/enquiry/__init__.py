"""The first call: twelve answers, and whether they come to a visit, a no, or a rough range.

Nothing is kept of who calls. `questions` has what is asked, `judge` what it comes to, `rough` the
range by published prices, `say` its words for a terminal.
"""

from farwall.job.enquiry.judge import answer
from farwall.job.enquiry.noun import Answer, Enquiry, Found, RoughPart, RoughRange

__all__ = ["Answer", "Enquiry", "Found", "RoughPart", "RoughRange", "answer"]
