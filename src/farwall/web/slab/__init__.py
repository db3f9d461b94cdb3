"""The run sheet on a phone: its page, the plan it carries, the one file that needs no server."""
