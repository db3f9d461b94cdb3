"""Lessons from closed jobs: small updates in closed form. Pure."""
