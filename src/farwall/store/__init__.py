"""The job book: facts, entries and files kept, in one file or in a firm's database."""
