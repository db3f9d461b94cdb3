"""The story of a day: entries put in order, doubled ones once, struck ones out. Pure."""
