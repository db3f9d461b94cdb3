"""A floor walked with a tape: wall after wall, closed by least squares."""
