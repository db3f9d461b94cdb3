"""The papers that the business hands out and keeps: each a list of blocks, set in one look."""
