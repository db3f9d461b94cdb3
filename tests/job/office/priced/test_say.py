"""The price in lines for a terminal: what to ask first, every cost with its range and rank."""

from dataclasses import replace

from farwall.job.office.priced.kept import IN_VAN, KeptGear
from farwall.job.office.priced.noun import Added, Cost, Driver, Priced, RoomMoney
from farwall.job.office.priced.say import priced_said

FOUND = Priced(
    costs=(
        Cost("mask", "300.26", "461.95", "750.66", "common practice", "546 ft of wall"),
        Cost("stain", "567.00", "1810.00", "2215.00", "guess", "as the shopping list has it"),
    ),
    cost="2271.95", currency="USD", cost_low="1900.00", cost_high="3100.50", cost_mean="2400.00",
    added=(Added("profit", "15", "340.79", "guess", ""),),
    price="2610.00", price_low="2185.00", price_high="3566.00", loss_percent=20.4,
    drivers=(Driver("the house itself", 24.6, "Walk the floor before you quote."),),
    gear=(KeptGear("new sprayers", "2", "120.00", "7.06", 10, 17, 30, "guess"),),
)  # fmt: skip


def test_what_to_ask_comes_first_with_its_range_and_its_chance_of_loss():
    first, *_ = priced_said(FOUND)
    assert first == (
        "To ask 2,610 USD (2,185 to 3,566 at the ends of cost); it loses money on 20 % of such "
        "jobs."
    )
    least, *_ = priced_said(replace(FOUND, least_job=True))
    assert "the least job that is taken" in least


def test_every_cost_has_its_range_its_rank_and_its_rule_under_one_another():
    said = priced_said(FOUND)
    mask = next(one for one in said if one.startswith("mask "))
    stain = next(one for one in said if one.startswith("stain "))
    assert mask.split() == [
        "mask",
        "462",
        "300",
        "to",
        "751",
        "common",
        "practice:",
        "546",
        "ft",
        "of",
        "wall",
    ]
    assert "1,810" in stain
    assert mask.index("common practice") == stain.index("guess")
    (whole,) = [one for one in said if one.startswith("four jobs in five")]
    assert "2,272" in whole
    assert "1,900 to 3,101" in whole
    assert "2,400 on the average" in whole


def test_what_is_added_what_drives_it_and_gear_are_told():
    said = "\n".join(priced_said(FOUND))
    assert "guess: 15 % of cost" in said
    assert "25 %  Walk the floor before you quote." in said
    assert "7.06  120  17 (10 to 30)  guess" in said
    there = replace(FOUND, gear=(replace(FOUND.gear[0], rank=IN_VAN),))
    assert IN_VAN in "\n".join(priced_said(there))


def test_a_room_that_loses_is_named_with_what_helps_and_nothing_is_headed_that_is_not_there():
    room = RoomMoney(
        "linen", "Linen", 2.8, "170.38", "165.87", "-4.51", loses=True,
        do="Price the job as a whole.", cost_low="138.25", cost_high="206.35",
    )  # fmt: skip
    closet = replace(room, room="c", name="Closet")
    said = priced_said(replace(FOUND, rooms=(room, closet, closet)))
    assert said[-4].split() == ["Linen", "170", "138", "to", "206", "166"]
    assert said[-1] == "Linen, 2 × Closet: Price the job as a whole."
    bare = priced_said(replace(FOUND, added=(), drivers=(), gear=()))
    assert not any(one.startswith(("Added", "What drives", "Gear", "Offers")) for one in bare)
