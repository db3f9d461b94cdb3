"""Colour of a job: its ladder of samples, what they tell, the next coat."""
