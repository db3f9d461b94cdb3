"""Readers of other people's files: drawings, weather, jobs."""
