"""First ranges of what is left on a scrubbed floor, before a rinse of the job has shown anything.

They are set so that three to six rinses are usual, as the trade has it; all the rest is our guess.
"""

from __future__ import annotations

POWDER_LN, POWDER_SD = 4.8, 1.2
"""Powder after the first scrub, natural logarithm: so that three to six rinses are usual (common
practice) at 12 gal on 100 ft² in four. Its spread is a guess."""
ACID_LN, ACID_SD = -0.7, 1.2
"""Acid in the first rinse over what the tap water can take: lime and neutraliser have taken nearly
all [common-practice]. A guess."""
HOLD_UP_LN, HOLD_UP_SD = -1.0, 0.4
"""What stays down and badly mixed, 0.37 L/m² likely: a guess."""
PORES_LN, PORES_SD = -5.0, 0.7
"""Share of the first powder that the pores give after a rinse, 0.7 % likely: a guess."""
ROOM_SHARE = 0.5
"""A room's own spread over that of the jobs. A guess."""
FADES = 0.8
"""What the pores give after each rinse over what they gave after the one before. A guess."""
SCRUB_LEAVES, SCRUB_PORES, SCRUB_ACID = 0.5, 0.5, 0.3
"""What a scrub leaves of powder, of what the pores give, of acid. A guess."""
NIGHT = 3.0
"""What the pores give overnight over what they give after one rinse. A guess."""
RAG_SD, PH_SD = 0.45, 0.4
"""Two people with one rag; paper to half a unit [astm-d4262] and an eye. A guess."""
GREY_LN = 1.4
"""A rag turns from grey to coloured at four times what it calls clean. A guess."""
HOLDS = 0.8
"""A range of this job holds four times in five."""
SOUR, SOUR_SD = 0.37, 0.6
"""Acid over what the tap can take at which a tap of pH 7.5 reads 6.5: derived of `rinse_ph`. How
surely it is seen: a guess."""
LEAST_ROUNDS = 3
"""Rinses in which a grey rag is usual; from the last of them on it asks for a scrub. Common
practice: three are the least."""
