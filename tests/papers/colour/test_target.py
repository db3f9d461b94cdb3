"""The printed target: true to size, read back from its own page, one page in both languages."""

import numpy as np
import pypdfium2
import pytest
from tests.papers.office.grounds import english_left, ground

from farwall.colour.targets.own import asked_srgb, own_target
from farwall.papers.colour.target import target_sheet
from farwall.papers.office.bundles import BY_FILE
from farwall.readers.colour_photo.markers import placed, plane_of_markers

PX_MM = 4.0


@pytest.mark.parametrize(("units", "language"), [("us", "en"), ("metric", "es")])
def test_the_page_bears_each_square_in_its_place_and_true_to_size(units, language):
    pdf = BY_FILE["colour-target.pdf"].make(ground(units=units, language=language))
    document = pypdfium2.PdfDocument(pdf)
    assert len(document) == 1
    page = np.asarray(document[0].render(scale=PX_MM * 25.4 / 72).to_pil().convert("RGB"))
    target = own_target()
    plane = plane_of_markers(page, target)
    across = placed(plane, np.array([(0.0, 0.0), (100.0, 0.0), (0.0, 100.0)]))
    assert np.hypot(*(across[1] - across[0])) / PX_MM == pytest.approx(100, abs=0.4)
    assert np.hypot(*(across[2] - across[0])) / PX_MM == pytest.approx(100, abs=0.4)
    for patch in target.patches:
        x, y = placed(plane, np.array([patch.at_mm]))[0]
        assert tuple(page[int(y), int(x)]) == asked_srgb(patch), patch.name
    text = document[0].get_textpage().get_text_bounded()
    assert "150 mm" in text


def test_every_sentence_has_its_spanish():
    one = ground("bare", language="es")
    assert english_left(target_sheet(one), one) == []
