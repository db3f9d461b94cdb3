"""The nouns: job, plan, reading. No reckoning."""
