"""Reads floors out of gbXML, the exchange of building models with energy reckoning."""
