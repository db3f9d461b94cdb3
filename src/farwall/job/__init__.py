"""The use cases: what every door calls."""
