"""What `run.py test` says when it may not install what tests need, or when a step fails."""

import importlib.util
import os
import subprocess
import sys
from functools import partial
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[1]


@pytest.fixture
def check():
    """tools/check.py as a module."""
    spec = importlib.util.spec_from_file_location("check_tool", ROOT / "tools" / "check.py")
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    module.ASIDE = ROOT / "nowhere"
    return module


def test_what_cannot_be_installed_is_said_loudly_with_the_reason(check, monkeypatch, capsys):
    monkeypatch.setattr(check.shutil, "which", lambda name: None)
    check.get_system_tools()
    said = capsys.readouterr().out
    assert (
        "SKIPPING the tests that need chromium, pdftoppm, pdftotext, initdb, certutil, strace"
        in said
    )
    assert "apt-get is not here" in said
    assert "chromium, libnss3-tools, poppler-utils, postgresql, strace" in said


def test_a_server_that_debian_keeps_off_the_path_is_found(check, monkeypatch, capsys, tmp_path):
    (tmp_path / "15" / "bin").mkdir(parents=True)
    (tmp_path / "15" / "bin" / "initdb").touch()
    check.ASIDE = tmp_path
    monkeypatch.setattr(check.shutil, "which", lambda name: None)
    check.get_system_tools()
    assert "initdb" not in capsys.readouterr().out


def test_an_apt_that_fails_is_said_too(check, monkeypatch, capsys):
    monkeypatch.setattr(check.shutil, "which", lambda name: None)
    monkeypatch.setattr(check, "may_install", list)
    monkeypatch.setattr(check, "run", lambda name, command: False)
    check.get_system_tools()
    assert "SKIPPING" in (said := capsys.readouterr().out)
    assert "apt-get failed" in said


def test_nothing_is_said_when_all_is_there(check, monkeypatch, capsys):
    monkeypatch.setattr(check.shutil, "which", lambda name: "/bin/true")
    check.get_system_tools()
    assert capsys.readouterr().out == ""


def test_neither_root_nor_sudo_may_install(check, monkeypatch):
    monkeypatch.setattr(check.shutil, "which", lambda name: name if name == "apt-get" else None)
    monkeypatch.setattr(check.os, "geteuid", lambda: 1000)
    assert check.may_install() is None
    monkeypatch.setattr(check.os, "geteuid", lambda: 0)
    assert check.may_install() == []


def rewritten():
    spec = importlib.util.spec_from_file_location("rewritten", ROOT / "tools" / "rewritten.py")
    tool = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(tool)
    return tool


def test_what_was_changed_since_the_set_up_is_compiled_anew(tmp_path, monkeypatch):
    monkeypatch.setattr(sys, "dont_write_bytecode", True)
    tool, module = rewritten(), tmp_path / "part.py"
    kept = Path(importlib.util.cache_from_source(str(module)))
    found = []
    for number in (1, 2, 2):
        module.write_text(f"number = {number}\n")
        os.utime(module, (number, number))
        tool.compile_changed(tmp_path)
        found.append(kept.read_bytes())
    assert found[0] != found[1] == found[2]


def test_a_test_is_compiled_once_as_pytest_would_and_then_found(tmp_path):
    tool = rewritten()
    (tmp_path / "helper.py").write_text("import json\nfrom tests.shapes import TWO_ROOMS\n")
    one = tmp_path / "test_one.py"
    one.write_text("def test_it():\n    assert 2 * 3 == 7, 'told'\n")
    assert list(tool.libraries([tmp_path / "helper.py"])) == ["json"]
    assert [tool.is_rewritten(path) for path in sorted(tmp_path.iterdir())] == [False, True]
    run = partial(subprocess.run, capture_output=True, text=True, check=False, cwd=tmp_path)
    script = f"import sys; sys.path.insert(0, {str(ROOT / 'tools')!r}); import rewritten as r; "
    script += f"from pathlib import Path; print(r.rewrite([Path({str(one)!r})]))"
    assert [run([sys.executable, "-c", script]).stdout.strip() for _ in range(2)] == ["1", "0"]
    tracing = [
        sys.executable,
        "-m",
        "pytest",
        "-p",
        "no:cacheprovider",
        "--debug=told",
        "test_one.py",
    ]
    assert "assert (2 * 3) == 7" in run(tracing).stdout
    assert "found cached rewritten pyc" in (tmp_path / "told").read_text()


def test_a_failed_step_shows_its_words_and_fails_the_whole(check, monkeypatch, capfd):
    fails = [sys.executable, "-c", "print('the reason'); raise SystemExit(1)"]
    passes = [sys.executable, "-c", "print('chatter')"]
    monkeypatch.setattr(check, "LINT", {"good": passes, "bad": fails})
    monkeypatch.setattr(check, "get_system_tools", lambda: None)
    monkeypatch.setattr(check, "PYTHON", "/bin/true")
    assert check.main([]) == 1
    out, err = capfd.readouterr()
    assert "good: passed" in out
    assert "chatter" not in out
    assert "bad: FAILED" in out
    assert "the reason" in out
    assert "FAILED beside pytest: bad" in err


@pytest.mark.skipif(sys.platform != "linux", reason="asks which cores it may use")
def test_there_are_more_workers_than_cores_from_two_on(check, monkeypatch):
    for cores, workers in ((1, 1), (2, 3), (4, 6), (8, 12)):
        monkeypatch.setattr(check.os, "sched_getaffinity", lambda _, n=cores: set(range(n)))
        assert check.workers() == workers


@pytest.mark.parametrize(("asked", "full", "rest"), [
    (["--full"], "1", []),
    (["--full", "tests/mix"], "1", ["tests/mix"]),
    (["tests/mix"], None, ["tests/mix"]),
])  # fmt: skip
def test_full_reaches_the_tests_and_is_no_word_for_pytest(check, monkeypatch, asked, full, rest):
    ran = []

    def stand_in(command, **more):
        ran.append((command, more.get("env", {}).get("FARWALL_FULL")))
        return check.subprocess.CompletedProcess(command, 0)

    monkeypatch.delenv("FARWALL_FULL", raising=False)
    monkeypatch.setattr(check, "lint", list)
    monkeypatch.setattr(check, "get_system_tools", lambda: None)
    monkeypatch.setattr(check.subprocess, "run", stand_in)
    assert check.main(asked) == 0
    command, told = ran[-1]
    assert command[command.index("worksteal") + 1 :] == rest
    assert int(command[command.index("-n") + 1]) == check.workers()
    assert told == full
