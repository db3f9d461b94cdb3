"""What would make a field possible, or safer: each remedy by planning that field once more."""
