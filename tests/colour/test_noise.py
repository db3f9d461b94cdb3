"""The covariance of all that was seen, undone photo by photo, is what undoing the whole gives."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.colour.noise import noise_of
from farwall.colour.nouns import Seen, told
from farwall.colour.prior import Prior

PHOTO = st.tuples(st.sampled_from(["", "one", "two"]), st.floats(0.5, 6))


@given(st.lists(PHOTO, min_size=1, max_size=9), st.integers(0, 1000))
def test_it_undoes_the_whole_covariance(photos, seed):
    prior = Prior()
    seen = [Seen((), (50.0, 0.0, 0.0), photo=photo, blur=blur) for photo, blur in photos]
    given_ = told(seen, stains=1, rooms=(), prior=prior)
    roots = np.random.default_rng(seed).normal(0, 0.5, (len(seen), 3, 3))
    own = roots @ roots.transpose(0, 2, 1) + np.eye(3) * prior.spot**2
    whole = np.zeros((len(seen), 3, len(seen), 3))
    for i, (one, blur) in enumerate(photos):
        whole[i, :, i] += own[i]
        for j, (other, more) in enumerate(photos):
            if i == j or (one and one == other):
                whole[i, :, j] += blur * more * np.diag(np.square(prior.photo))
    whole = whole.reshape(3 * len(seen), -1)
    found = noise_of(own, given_)
    assert found.weight @ whole == pytest.approx(np.eye(len(whole)), abs=1e-7)
    assert found.log_size == pytest.approx(np.linalg.slogdet(whole)[1])
