"""The parts of the one floor drawing: frame, walls, marks, and words that never overlap."""
