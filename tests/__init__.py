"""The tests; a package so that `from tests.strategies import ...` finds ours and no other."""
