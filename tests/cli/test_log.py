"""`farwall log`: a day lived through from the command line, its file, its story, its answers."""

import json
import re
import subprocess
import sys
from datetime import datetime, timedelta

import pytest
from tests.cli.test_papers import pages_of
from tests.midday import EXAMPLES, day_of

from farwall.cli.log_file import LOG, LogFile
from farwall.cli.main import main
from farwall.facts.log import Entry
from farwall.papers.json_text import json_text
from farwall.readers.plan_json import plan_to_dict

JOB = EXAMPLES / "quince-street" / "job.json"


@pytest.fixture
def monday(tmp_path):
    """A folder with the plan of the morning, and the facts beside it."""
    folder = tmp_path / "monday"
    folder.mkdir()
    (folder / "plan.json").write_text(json_text(plan_to_dict(day_of("quince-street"))))
    (folder / "job.json").write_text(JOB.read_text())
    return folder


@pytest.fixture
def log(monday, capsys):
    def run(*words, code=0):
        assert main(["log", str(monday), *words]) == code
        told = capsys.readouterr()
        return told.out if code < 2 else told.err

    return run


def asked(log, *words, code=0):
    return json.loads(log(*words, "--json", code=code))


def short(entered):
    return entered["entered"][0]["id"][-6:]


def test_an_entry_is_told_back_with_its_id_and_what_to_do_now_in_ten_lines(log, monday):
    said = log("mixed", "coat=first", "gal=9.1", "at=7:50", "who=Ada").splitlines()
    assert re.fullmatch(
        r"Entered 7:50 am mixed: coat 1, 9\.1 gal \(34\.4 L\) \(Ada\)  \[[0-9a-f]{6}\]", said[0]
    )
    assert said[1].startswith("NOW 7:50 am: begin field 1.1 in Bath")
    assert len(said) <= 11
    kept = json.loads((monday / LOG).read_text())
    assert kept["entry"]["about"] == {"coat": "first", "litres": pytest.approx(34.447247)}
    assert kept["place"] == 1


def test_rooms_go_by_the_name_on_the_sheet_whatever_its_capitals(log, monday):
    log("still-damp", "room=great ROOM", "at=12:10")
    log("room-closed", "room=Bedroom 1", "at=12:11")
    kept = [json.loads(line) for line in (monday / LOG).read_text().splitlines()]
    assert [one["entry"]["about"]["room"] for one in kept] == ["great-room", "bed-1"]
    assert "the plan has no room Ball. Did you mean" in log("dry", "room=Ball", code=2)


def test_what_the_plan_has_not_is_refused_by_the_numbers_that_were_typed(log):
    assert "no band 1.8.99. Did you mean 1.8.9?" in log("band-done", "band=1.8.99", code=2)
    assert "no field 1.9. Did you mean 1.8?" in log("field-done", "field=1.9", code=2)
    assert "no coat 3." in log("mixed", "coat=3", "gal=1", code=2)


def test_help_parts_every_word_from_what_it_means(capsys):
    with pytest.raises(SystemExit):
        main(["log", "--help"])
    told = capsys.readouterr().out
    assert re.search(r"cartridge-changed +a new pair", told)
    assert "cartridge-changeda" not in told


def test_words_may_be_parted_and_stand_on_either_side_of_options(log):
    found = asked(log, "band", "done", "--device", "left pocket", "band=first.1.3", "at_min=2")
    assert found["entered"][0]["word"] == "band-done"
    assert found["entered"][0]["device"] == "left pocket"
    assert found["now"]["at_min"] == 2.0


def test_every_mistake_at_once_and_nothing_is_entered(log, monday):
    said = log("band-done", "band=first.9", "tank_galon=2", code=2)
    assert "the plan has no band 1.9" in said
    assert "Did you mean `tank_gal`?" in said
    assert not (monday / LOG).exists()


def morning(log, factor):
    """Four fields as planned but for the thirst, tub and tank told at each stop line."""
    left = 34.5
    log("mixed", "coat=first", "litres=34.5", "at_min=-5")
    for field in day_of("quince-street").fields[:4]:
        left -= sum(band.litres for band in field.bands) * factor
        told = f"tub_l={left:.3f}", "tank_l=0", f"at_min={field.end_min}"
        log("field-done", f"field={field.id}", *told)


def test_more_used_than_planned_is_more_to_mix(log):
    morning(log, 1.2)
    found = asked(log)["now"]
    assert found["drunk"]["seen_factor"] == pytest.approx(1.2, abs=0.001)
    assert found["more_mix"]["litres"] > 5


def test_a_struck_entry_puts_the_numbers_back(log):
    morning(log, 1.0)
    before = asked(log, "at=8:17")
    entered = asked(log, "tank-weighed", "tub_l=15", "tank_l=0", "at=8:17")
    assert entered["now"]["more_mix"]["litres"] > before["now"]["more_mix"]["litres"] + 3
    after = asked(log, "struck", f"entry={short(entered)}", "at=8:17")
    for key in ("more_mix", "drunk", "in_hand", "start_if"):
        assert after["now"][key] == before["now"][key]
    assert "struck: 8:17 am tank weighed" in log("--story")


def test_damp_at_three_hours_puts_the_clock_later(log):
    log("coat-done", "coat=first", "at=9:05")
    before = asked(log, "at=9:06")["now"]["waits"][0]["clock"]
    after = asked(log, "still-damp", "room=great-room", "at=12:05")["now"]["waits"][0]["clock"]
    assert after["likely_min"] > before["likely_min"] + 30
    said = log("at=12:06")
    told = r"dry to recoat: likely 1[12]?:\d\d pm \(12:\d\d pm to .*by the plan 11:\d\d am; learned"
    assert re.search(told, said)


def test_a_stop_is_exit_1_and_the_entry_is_kept_all_the_same(log, monday):
    said = log("fizz", "seen=no", "at=8:05", code=1)
    assert "NOW 8:05 am: STOP. Stop, wash it off, find the film." in said
    assert len((monday / LOG).read_text().splitlines()) == 1


def test_the_story_is_told_minute_by_minute_and_as_json(log):
    morning(log, 1.1)
    lines = log("--story").splitlines()
    assert lines[0] == "Quince Street, lot 9: 5 entries."
    assert [line.split(" am ")[0].strip() for line in lines[1:6]] == [
        "7:55", "8:01", "8:05", "8:10", "8:16"
    ]  # fmt: skip
    assert any("1.4 Study" in line and "took 0.9 gal" in line for line in lines)
    assert len(asked(log, "--story")["story"]["happened"]) == 5


def test_the_story_is_told_in_the_units_of_the_job(log, monday):
    morning(log, 1.1)
    us = log("still-damp", "room=bath", "at=12:10", "--story")
    assert us.startswith("Entered 12:10 pm still damp: ")
    us = log("--story")
    facts = json.loads((monday / "job.json").read_text())
    facts["wishes"] = {**facts.get("wishes", {}), "units": "metric"}
    (monday / "job.json").write_text(json.dumps(facts))
    metric = log("--story")
    for told, by_half in ((us, True), (metric, False)):
        halves = re.findall(r"\b\d+:\d\d\b( [ap]m)?", told)
        assert len(halves) > 10
        assert {bool(half) for half in halves} == {by_half}
    swapped = re.sub(r"([\d.]+ [^ ,()]+) \(([\d.]+ [^ ,()]+)\)", r"\2 (\1)", us)
    assert swapped != us
    assert re.sub(r"(?<=\d) [ap]m", "", swapped) == metric


def test_the_rest_of_the_day_is_planned_again(log, tmp_path):
    morning(log, 1.2)
    log("room-closed", "room=bed-2", "until=8:50", "at=8:17")
    said = log("--replan", "--out", str(tmp_path / "again"), "at=8:17")
    assert said.startswith("NOW 8:17 am:")
    again = json.loads((tmp_path / "again" / "plan.json").read_text())
    assert again["so_far"]["closed"] == [{"room": "bed-2", "until_min": 50.0}]
    assert again["more_mix"]["litres"] > 6
    assert main(["check", str(tmp_path / "again" / "plan.json")]) == 0


@pytest.mark.parametrize(
    ("told", "words"),
    [((), "Notas"), (("--language", "en", "--revision", "3"), "facts 3")],
)
def test_the_new_sheet_speaks_as_the_job_wishes_or_as_asked(log, monday, tmp_path, told, words):
    """In metres, in Spanish, with its notes, by the facts beside the plan; else as told with it."""
    facts = json.loads(JOB.read_text())
    facts["wishes"] |= {"units": "metric", "language": "es", "notes": "Tucker the cat."}
    (monday / "job.json").write_text(json.dumps(facts))
    morning(log, 1.2)
    log("--replan", "--out", str(tmp_path / "again"), "at=8:17", *told)
    text = "\n".join(pages_of(tmp_path / "again" / "run-sheet.pdf"))
    assert "Tucker the cat." in text
    assert words in text
    assert "133.3" in text or "m²" in text.splitlines()[1]


def test_two_sprayers_get_the_quick_answer_and_the_rest_laid_anew(log, monday, tmp_path):
    plan = json.loads((monday / "plan.json").read_text())
    for band in plan["fields"][7]["bands"][1::2]:
        band["sprayer"] = 2
    (monday / "plan.json").write_text(json.dumps(plan))
    morning(log, 1.2)
    assert main(["log", str(monday), "--replan", "--out", str(tmp_path / "o"), "at=8:17"]) == 0
    said = log("at=8:17")
    assert "NOW 8:17 am: begin field 1.5" in said
    assert "The rest is worth planning again (--replan --out DIR)" in said


def test_entries_of_phones_come_in_as_lines_twice_and_count_once(log, monday, tmp_path):
    one = {"id": "a1", "job": "q", "word": "field-done", "at": "2026-05-14T08:02:00-06:00"}
    one |= {"device": "phone", "number": 1, "about": {"field": "first.1", "tank_gal": 1.5}}
    two = {**one, "id": "a2", "number": 2, "at": "2026-05-14T08:06:00-06:00",
           "about": {"field": "first.2"}}  # fmt: skip
    path = tmp_path / "phone.jsonl"
    path.write_text(json.dumps(one) + "\n" + json.dumps(two) + "\n")
    assert len(asked(log, "--from", str(path))["entered"]) == 2
    assert "entered" not in asked(log, "--from", str(path))
    path.write_text(json.dumps({**one, "who": "another"}))
    assert "another entry under this id" in log("--from", str(path), code=2)
    assert len((monday / LOG).read_text().splitlines()) == 2


def test_what_a_dying_program_left_half_written_is_passed_over_and_said(log, monday, capsys):
    log("field-done", "field=first.1", "at=8:02")
    with (monday / LOG).open("a") as file:
        file.write('{"entry": {"id": "01a2')
    assert main(["log", str(monday), "field-done", "field=first.2", "at=8:06"]) == 0
    assert "log.jsonl, line 2: it cannot be read" in capsys.readouterr().err
    assert asked(log, "at=8:07")["now"]["fields_done"] == 2


def test_two_programs_at_once_lose_nothing(monday):
    """Each adds forty entries, numbered by what it finds there: all kept, no place twice."""
    program = (
        "import sys; from pathlib import Path\n"
        "from farwall.cli.log_file import LogFile; from farwall.facts.log import Entry\n"
        "at = '2026-05-14T08:00:00-06:00'; me = sys.argv[2]\n"
        "for n in range(40):\n"
        "    LogFile(Path(sys.argv[1])).keep(lambda there: [Entry(f'{me}-{n}', 'q', 'note', at,\n"
        "        number=len(there) + 1, about={'text': 'x' * 500})], received_at=at)\n"
    )
    running = [
        subprocess.Popen([sys.executable, "-c", program, str(monday), name]) for name in "ab"
    ]
    assert [one.wait() for one in running] == [0, 0]
    kept = LogFile(monday).entries()
    assert [one.place for one in kept] == list(range(1, 81))
    assert [one.entry.number for one in kept] == list(range(1, 81))


def test_the_log_is_only_added_to(monday):
    place = LogFile(monday)
    at = "2026-05-14T08:00:00-06:00"
    place.keep(lambda _: [Entry("a", "q", "room-free", at, about={"room": "x"})], received_at=at)
    before = (monday / LOG).read_bytes()
    place.keep(lambda _: [Entry("b", "q", "handed-over", at)], received_at=at)
    assert (monday / LOG).read_bytes().startswith(before)


def test_a_house_set_aside_begins_nothing_and_its_story_tells_it(monday, capsys):
    at = "2026-05-14T08:00:00-06:00"
    LogFile(monday).keep(lambda _: [Entry("a", "q", "set-aside", at)], received_at=at)
    assert main(["log", str(monday)]) == 0
    told = capsys.readouterr().out
    assert told == (
        "NOW: nothing by this plan. The house is set aside; brought back, it is open again.\n"
    )
    assert main(["log", str(monday), "--story"]) == 0
    assert "set aside" in capsys.readouterr().out


def test_a_folder_without_a_plan_says_what_to_do(tmp_path, capsys):
    assert main(["log", str(tmp_path)]) == 2
    assert "there is no plan.json in it. `farwall plan JOB.json" in capsys.readouterr().err
    assert main(["log", str(tmp_path / "nowhere")]) == 2
    assert "--book ADDRESS" in capsys.readouterr().err


def test_help_behind_the_job_is_the_help_of_the_command(capsys):
    assert main(["log", "anywhere", "--help"]) == 0
    told = capsys.readouterr().out
    assert told.startswith("usage: farwall log JOB")
    assert "band-done" in told


def test_a_word_tells_what_it_carries(capsys):
    assert main(["log", "anywhere", "band-done", "--help"]) == 0
    said = capsys.readouterr().out
    assert "band=band  the band  (must)" in said


def test_a_job_of_the_book_is_logged_and_read_alike(tmp_path, capsys):
    from farwall.store.book import Book

    with Book.open(tmp_path / "book") as book:
        facts = json.loads(JOB.read_text())
        book.put_facts("quince", facts, who="Ada", at="2026-05-01T08:00:00-06:00")
        book.put_document("plan", "quince", plan_to_dict(day_of("quince-street")))
    told = ["--book", str(tmp_path / "book")]
    words = ["log", "quince", "field-done", "field=first.1", "tank_l=5", "tub_l=28", "at=8:02"]
    assert main([*words, *told]) == 0
    assert "NOW 8:02 am: begin field 1.2" in capsys.readouterr().out
    with Book.open(tmp_path / "book") as book:
        assert [one.entry.word for one in book.entries("quince")] == ["field-done"]
    assert main(["log", "quinze", *told]) == 2
    assert "not in the book" in capsys.readouterr().err


def test_the_recorded_day_of_the_page_is_what_the_commands_say(log, monday):
    """Replayed line by line, but for the ends of ids and the minutes that the clocks foretell."""
    page = (EXAMPLES.parent / "docs" / "live-day.md").read_text()
    block = page[page.index("    $ farwall log monday") : page.index("\n## How it is reckoned")]
    runs = [one.strip("\n").split("\n") for one in block.split("    $ farwall log monday ")[1:]]
    assert len(runs) >= 10
    for command, *told in runs:
        words = command.split()
        if words[0] == "struck":
            last = LogFile(monday).entries()[-1].entry.id
            words[1] = f"entry={last[-6:]}"
        said = _bare(log(*words)).rstrip("\n").split("\n")
        if [line.strip() for line in told] != ["…"]:
            assert said == [_bare(line.removeprefix("    ")) for line in told]


def _bare(text):
    lines = re.sub(r"\[[0-9a-f]{6}\]", "[…]", text).split("\n")
    return "\n".join(re.sub(r"\d+:\d\d", "…", x) if "coat 1" in x.lower() else x for x in lines)


def test_without_a_word_the_device_is_this_homes_own(log, monkeypatch, tmp_path):
    monkeypatch.delenv("FARWALL_DEVICE")
    monkeypatch.setenv("XDG_STATE_HOME", str(tmp_path / "state"))
    first = asked(log, "note", "text=one", "at_min=1")["entered"][0]["device"]
    assert first == (tmp_path / "state/farwall/device").read_text().strip()
    assert asked(log, "note", "text=two", "at_min=2")["entered"][0]["device"] == first


def test_coats_fields_and_bands_are_told_by_their_numbers(log):
    by_id, by_number = (
        asked(log, "band-done", f"band={name}", "at=8:16") for name in ("first.4.3", "1.4.3")
    )
    assert by_id["entered"][0]["about"] == by_number["entered"][0]["about"]
    assert by_number["entered"][0]["about"] == {"band": "first.4.3"}


@pytest.mark.parametrize(("late", "told"), [(10, "NOW 8:12 am:"), (-30, "NOW 8:02 am:")])
def test_what_is_entered_late_on_its_day_is_answered_for_now(
    monday, capsys, monkeypatch, late, told
):
    """Told at 8:12 for 8:02, the answer was what to do at 8:02. At the desk the evening before, or
    on another day, it is told of the minute that was told."""
    start = datetime.fromisoformat(day_of("quince-street").starts_at)

    class Clock(datetime):
        @classmethod
        def now(cls, tz=None):
            return start + timedelta(minutes=2 + late)

    monkeypatch.setattr("farwall.cli.log.datetime", Clock)
    assert main(["log", str(monday), "field-done", "field=1.1", "at=8:02"]) == 0
    lines = capsys.readouterr().out.splitlines()
    assert lines[0].startswith("Entered 8:02 am field done: 1.1")
    assert lines[1].startswith(told)


def test_with_no_field_in_hand_no_command_to_stop_in_one_is_offered(log):
    """Sealer on a wet floor stops, and there is no edge to stop at."""
    log("coat-done", "coat=2", "at=2:50pm")
    log("rinsed", "ph=7", "rag=clean", "at=2026-05-15T09:00")
    said = log("sealed", "at=2026-05-15T09:30", code=1)
    assert "STOP. No more sealer" in said
    assert "farwall stop" not in said


def test_a_wait_under_a_coat_that_is_begun_is_told_no_more(log):
    log("coat-done", "coat=1", "at=9:05")
    assert "Coat 1, dry to recoat: likely" in log("still-damp", "room=great-room", "at=12:05")
    log("dry", "at=12:50")
    assert "dry to recoat" not in log("field-done", "field=2.1", "at=1:00pm")


def test_a_coat_of_which_only_a_batch_is_mixed_has_used_nothing(log):
    log("mixed", "coat=1", "gal=4", "at=7:50")
    assert " used by" not in log("field-done", "field=1.1", "at=8:02", "--story")
