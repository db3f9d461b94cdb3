"""Cards to hang up on the site: few words, large, in English and in Spanish."""
