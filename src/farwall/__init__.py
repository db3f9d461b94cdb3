"""Farwall plans the acid staining of bare concrete floors."""
