"""Loose lines and words of a drawing, whatever file they came in, made into rooms and openings."""
