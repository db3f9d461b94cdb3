"""The set-up script: what counts as finished, and what happens when it was cut short."""

import importlib.util
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[1]


@pytest.fixture
def run(tmp_path, monkeypatch):
    """run.py in an empty folder whose steps are written down and not carried out."""
    spec = importlib.util.spec_from_file_location("run", ROOT / "run.py")
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    venv = tmp_path / ".venv"
    for name, value in {"ROOT": tmp_path, "VENV": venv, "BIN": venv / "bin",
                        "PYTHON": venv / "bin" / "python", "STAMP": venv / "lib" / "farwall-stamp",
                        "steps": []}.items():  # fmt: skip
        monkeypatch.setattr(module, name, value, raising=False)
    for name in module.INPUTS:
        (tmp_path / name).write_text(name)

    def step(command):
        module.steps.append(command)
        module.PYTHON.parent.mkdir(parents=True, exist_ok=True)
        module.PYTHON.touch()
        module.STAMP.parent.mkdir(exist_ok=True)

    monkeypatch.setattr(module, "step", step)
    return module


def test_nothing_there_is_not_ready(run):
    assert not run.ready("core")
    assert not run.ready("test")


def test_a_finished_core_set_is_ready_for_the_core_alone(run):
    run.set_up("core")
    assert run.ready("core")
    assert not run.ready("test")


def test_a_finished_test_set_is_ready_for_both(run):
    run.set_up("test")
    assert run.ready("core")
    assert run.ready("test")


@pytest.mark.parametrize("name", ["pyproject.toml", "requirements.lock", "requirements-boot.lock"])
def test_a_changed_requirement_asks_for_a_set_up_that_keeps_what_is_there(run, name):
    run.set_up("core")
    keepsake = run.VENV / "keepsake"
    keepsake.touch()
    (run.ROOT / name).write_text("changed")
    assert not run.ready("core")
    run.set_up("core")
    assert run.ready("core")
    assert keepsake.exists()


def test_a_core_set_up_does_not_take_the_test_set_away(run):
    run.set_up("test")
    (run.ROOT / "pyproject.toml").write_text("changed")
    run.set_up("core")
    assert run.ready("test")
    assert any("requirements-test.lock" in command for command in run.steps[-3:])


@pytest.mark.parametrize("failing", [0, 1, 2, 3, 4])
def test_a_set_up_cut_short_at_any_step_is_made_again_from_nothing(run, monkeypatch, failing):
    step = run.step

    def cut_short(command):
        if len(run.steps) == failing:
            raise KeyboardInterrupt
        step(command)

    monkeypatch.setattr(run, "step", cut_short)
    with pytest.raises(KeyboardInterrupt):
        run.set_up("core")
    assert not run.ready("core")
    run.VENV.mkdir(exist_ok=True)
    (run.VENV / "half-written").touch()

    monkeypatch.setattr(run, "step", step)
    run.set_up("core")
    assert run.ready("core")
    assert not (run.VENV / "half-written").exists()


def test_an_update_cut_short_leaves_no_stamp(run, monkeypatch):
    run.set_up("core")
    (run.ROOT / "requirements.lock").write_text("changed")

    def fails(command):
        raise KeyboardInterrupt

    monkeypatch.setattr(run, "step", fails)
    with pytest.raises(KeyboardInterrupt):
        run.set_up("core")
    assert run.stamped() == ""


def test_a_vanished_python_is_not_ready(run):
    run.set_up("core")
    run.PYTHON.unlink()
    assert not run.ready("core")


def test_another_python_behind_the_same_link_means_start_again_from_nothing(run):
    """A system upgrade turns the link to a newer Python whose packages are elsewhere."""
    run.set_up("core")
    run.PYTHON.rename(run.PYTHON.with_name("python3.99"))
    run.PYTHON.symlink_to("python3.99")
    assert not run.ready("core")
    run.set_up("core")
    assert not run.PYTHON.is_symlink()
    assert run.ready("core")


def test_a_moved_folder_means_start_again_from_nothing(run, monkeypatch):
    """Scripts and the link to the source hold the folder's old path."""
    run.set_up("core")
    moved = run.ROOT.with_name("moved")
    run.ROOT.rename(moved)
    for name in ("VENV", "BIN", "PYTHON", "STAMP", "ROOT"):
        monkeypatch.setattr(run, name, moved / getattr(run, name).relative_to(run.ROOT))
    assert not run.ready("core")


def test_a_set_up_whose_packages_were_removed_is_not_ready(run):
    run.set_up("core")
    run.shutil.rmtree(run.VENV / "lib")
    assert not run.ready("core")


def test_every_install_asks_for_hashes_but_that_of_the_project_itself(run):
    run.set_up("test")
    installs = [command for command in run.steps if "install" in command]
    assert len(installs) == 3
    for command in installs:
        assert ("--require-hashes" in command) != ("-e" in command)
    assert "--no-deps" in installs[-1]


def test_without_pip_the_environment_brings_its_own(run, monkeypatch):
    monkeypatch.setattr(run, "find_spec", lambda name: None)
    run.set_up("core")
    assert "--without-pip" not in run.steps[0]
    assert run.steps[1][0] == str(run.PYTHON)


def test_with_pip_no_venv_package_is_needed(run, monkeypatch):
    monkeypatch.setattr(run, "find_spec", lambda name: name)
    run.set_up("core")
    assert "--without-pip" in run.steps[0]
    assert "--python" in run.steps[1]


def test_a_failed_step_is_told_calmly_with_what_to_do_next(tmp_path):
    spec = importlib.util.spec_from_file_location("run", ROOT / "run.py")
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    with pytest.raises(SystemExit, match=r"exit 3.*\n.*run the same command again"):
        module.step([module.sys.executable, "-c", "raise SystemExit(3)"])
