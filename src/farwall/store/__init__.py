"""The job book: facts, entries and files kept, in one file or in a firm's database.

`farwall.store.book.Book` is the door; importing it costs a moment, so doors do that late.
"""
