"""Facts entered on a screen: a screen is a table of sentences with blanks, and words for them.

`nouns` says what a form is, `measures` and `places` what a blank holds and where, `asked` lists the
blanks of a form for the facts at hand, `told` puts what was typed into them, `shown` makes what a
template needs, `keep` keeps the new facts. Words: `words/*/`, help: `words/*/help.py`.
"""
