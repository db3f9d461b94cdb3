"""A letter without a shape is named; a large font is opened only for what the small ones lack."""

from farwall.papers.glyphs import FONTS, missing_words, shapes, without_shape


def test_what_the_fonts_have_is_not_named():
    assert without_shape(["Bath’s · 9 × 12 ft² – “½”", "حمام", "מטבח", "厨房", "キッチン"]) == ()
    assert missing_words(["Hall"]) == ""


def test_a_letter_that_none_has_is_named_by_its_code_point():
    assert without_shape(["Hall \U00012345"]) == ("\U00012345",)
    assert "U+12345" in missing_words(["Hall \U00012345"])


def test_the_large_font_stays_shut_for_plain_words():
    shapes.cache_clear()
    without_shape(["Bath – 9 × 12"])
    assert shapes.cache_info().currsize == 1
    without_shape(["厨房"])
    assert shapes.cache_info().currsize == len(FONTS)
