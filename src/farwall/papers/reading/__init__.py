"""What was read from a file, drawn: so that a person sees it before anybody plans on it."""
