"""What the job costs, with its range, and what to ask for it."""

from farwall.job.office.priced.kept import IN_VAN, KeptGear, kept_back
from farwall.job.office.priced.noun import (
    Added,
    Cost,
    Driver,
    OfferPriced,
    Priced,
    RoomMoney,
    Sanity,
)
from farwall.job.office.priced.part import priced_of
from farwall.job.office.priced.say import priced_said
from farwall.price.usual import LABOUR_PER_H

__all__ = [
    "IN_VAN", "LABOUR_PER_H", "Added", "Cost", "Driver", "KeptGear", "OfferPriced", "Priced",
    "RoomMoney", "Sanity", "kept_back", "priced_of", "priced_said",
]  # fmt: skip
