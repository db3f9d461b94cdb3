"""One page for each house: the chain, with the days on which other trades stay out."""
