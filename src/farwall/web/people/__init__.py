"""Who may come in and do what: roles, passwords, tries, links, deeds."""
