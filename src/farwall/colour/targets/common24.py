"""The common target of 24 patches: three published sets of its values. [target-24]

Six columns, four rows, the greys in the last row from white to black. Which of the sets a target
belongs to stands on it or in its papers; the newest one is taken where nobody says.
"""

from __future__ import annotations

from farwall.colour.lab import lab_of_xyz, xyz_of_xyy
from farwall.colour.targets.nouns import Patch, Target

Xyy = tuple[float, float, float]

NAMES = (
    "dark skin",
    "light skin",
    "blue sky",
    "foliage",
    "blue flower",
    "bluish green",
    "orange",
    "purplish blue",
    "moderate red",
    "purple",
    "yellow green",
    "orange yellow",
    "blue",
    "green",
    "red",
    "yellow",
    "magenta",
    "cyan",
    "white 9.5",
    "neutral 8",
    "neutral 6.5",
    "neutral 5",
    "neutral 3.5",
    "black 2",
)
SETS: dict[str, tuple[Xyy, ...]] = {
    "after-2014": (
        (0.43748, 0.37852, 0.09832), (0.42225, 0.37249, 0.3362), (0.27615, 0.29838, 0.17855),
        (0.37332, 0.45117, 0.13468), (0.30289, 0.28629, 0.22872), (0.2864, 0.38972, 0.41436),
        (0.52815, 0.40533, 0.31264), (0.23239, 0.2112, 0.10911), (0.50445, 0.32706, 0.189),
        (0.33347, 0.25055, 0.06277), (0.39889, 0.50415, 0.43318), (0.49358, 0.44428, 0.42934),
        (0.20522, 0.16867, 0.05596), (0.32304, 0.51042, 0.22334), (0.56287, 0.33556, 0.1278),
        (0.46776, 0.47602, 0.5993), (0.42131, 0.26692, 0.18951), (0.20913, 0.30266, 0.18061),
        (0.34891, 0.36421, 0.88069), (0.34558, 0.35988, 0.58997), (0.34415, 0.35919, 0.36487),
        (0.34577, 0.35909, 0.19062), (0.34265, 0.35758, 0.08817), (0.34377, 0.35606, 0.03151),
    ),
    "average-of-30": (
        (0.4325, 0.3788, 0.1034), (0.4191, 0.3748, 0.3525), (0.2761, 0.3004, 0.1847),
        (0.37, 0.4501, 0.1335), (0.302, 0.2877, 0.2324), (0.2856, 0.391, 0.4174),
        (0.5291, 0.4075, 0.3117), (0.2339, 0.2155, 0.114), (0.5008, 0.3293, 0.1979),
        (0.3326, 0.2556, 0.0644), (0.3989, 0.4998, 0.4435), (0.4962, 0.4428, 0.4358),
        (0.204, 0.1696, 0.0579), (0.327, 0.5033, 0.2307), (0.5709, 0.3298, 0.1268),
        (0.4694, 0.4732, 0.6081), (0.4177, 0.2704, 0.2007), (0.2151, 0.3037, 0.1903),
        (0.3488, 0.3628, 0.9129), (0.3451, 0.3596, 0.5885), (0.3446, 0.359, 0.3595),
        (0.3438, 0.3589, 0.1912), (0.3423, 0.3576, 0.0893), (0.3439, 0.3565, 0.032),
    ),
    "2005": (
        (0.4316, 0.3777, 0.1008), (0.4197, 0.3744, 0.3495), (0.276, 0.3016, 0.1836),
        (0.3703, 0.4499, 0.1325), (0.2999, 0.2856, 0.2304), (0.2848, 0.3911, 0.4178),
        (0.5295, 0.4055, 0.3118), (0.2305, 0.2106, 0.1126), (0.5012, 0.3273, 0.1938),
        (0.3319, 0.2482, 0.0637), (0.3984, 0.5008, 0.4446), (0.4957, 0.4427, 0.4357),
        (0.2018, 0.1692, 0.0575), (0.3253, 0.5032, 0.2318), (0.5686, 0.3303, 0.1257),
        (0.4697, 0.4734, 0.5981), (0.4159, 0.2688, 0.2009), (0.2131, 0.3023, 0.193),
        (0.3469, 0.3608, 0.9131), (0.344, 0.3584, 0.5894), (0.3432, 0.3581, 0.3632),
        (0.3446, 0.3579, 0.1915), (0.3401, 0.3548, 0.0883), (0.3406, 0.3537, 0.0311),
    ),
}  # fmt: skip
"""x, y and Y under D50, in the order of the names."""
NEWEST = "after-2014"
_PITCH_MM, _SIDE_MM = 46.0, 40.0
"""Of the large print; small prints are alike in shape. From memory."""
_ROWS, _COLUMNS = 4, 6


def common_24(values: str = NEWEST) -> Target:
    """The target with one of the published sets. Raises KeyError for a set that there is not."""
    half = _PITCH_MM / 2
    patches = tuple(
        Patch(
            name=name,
            at_mm=(half + (k % _COLUMNS) * _PITCH_MM, half + (k // _COLUMNS) * _PITCH_MM),
            side_mm=_SIDE_MM,
            lab=_lab(xyy),
            grey=k // _COLUMNS == _ROWS - 1,
        )
        for k, (name, xyy) in enumerate(zip(NAMES, SETS[values], strict=True))
    )
    size = (_COLUMNS * _PITCH_MM, _ROWS * _PITCH_MM)
    return Target("24 patches", size, patches, known=True, lit_between=False)


def _lab(xyy: Xyy) -> tuple[float, float, float]:
    lightness, a, b = (float(v) for v in lab_of_xyz(xyz_of_xyy(*xyy)))
    return lightness, a, b
