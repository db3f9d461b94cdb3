"""Reads files that strangers made in a process of its own, shut in before it opens them."""
