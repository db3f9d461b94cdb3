"""Escaped text against the standard library's."""

from __future__ import annotations

from xml.sax import saxutils

from hypothesis import example, given
from hypothesis import strategies as st

from farwall.papers.xml_text import escape, quoteattr

texts = st.text(st.sampled_from("ab &<>\"'\n\r\tä;")) | st.text()


@given(texts)
@example("&lt; is not <")
def test_it_is_escaped_as_by_the_standard_library(text):
    assert escape(text) == saxutils.escape(text)


@given(texts)
@example("both ' and \"")
def test_it_is_quoted_as_by_the_standard_library(text):
    assert quoteattr(text) == saxutils.quoteattr(text)
