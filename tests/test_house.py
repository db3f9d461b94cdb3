"""The house itself: what is tracked, what is locked, what is shipped, how light the door is."""

import ast
import re
import subprocess
import sys
import tomllib
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[1]
SOURCE = ROOT / "src" / "farwall"
LOCKS = ("requirements-boot.lock", "requirements.lock", "requirements-test.lock")
PIN = re.compile(r"^([a-z0-9._-]+)==(\S+)", re.MULTILINE)
HEAVY = ("numpy", "scipy", "shapely", "ezdxf", "typst", "pydantic", "psychrolib")

# Written in two halves, so that this file does not find itself.
MACHINE_PATH = re.compile("(?<![\\w.~-])/" + "(?:work|root|home|Users)/")
REGISTRY_HOST = re.compile(
    "|".join(
        re.escape(left + "." + right)
        for left, right in [
            ("pypi", "org"), ("pythonhosted", "org"), ("npmjs", "org"), ("npmjs", "com"),
            ("debian", "org"), ("crates", "io"), ("golang", "org"),
        ]
    )
)  # fmt: skip


def tracked_texts() -> list[tuple[str, str]]:
    """Name and text of every file under version control that is text."""
    listed = subprocess.run(
        ["git", "ls-files", "-z"], cwd=ROOT, check=False, capture_output=True, text=True
    )
    if listed.returncode:
        pytest.skip("not a git checkout: what is tracked cannot be told")
    texts = []
    for name in filter(None, listed.stdout.split("\0")):
        try:
            texts.append((name, (ROOT / name).read_text(encoding="utf-8")))
        except (UnicodeDecodeError, FileNotFoundError):
            continue
    return texts


@pytest.mark.parametrize("pattern", [MACHINE_PATH, REGISTRY_HOST], ids=["path", "registry"])
def test_no_tracked_file_names_a_machine_path_or_a_package_registry(pattern):
    texts = tracked_texts()
    assert len(texts) > 20, "the listing looks wrong"
    found = [
        f"{name}:{number}: {line.strip()[:80]}"
        for name, text in texts
        for number, line in enumerate(text.splitlines(), 1)
        if pattern.search(line)
    ]
    assert found == []


@pytest.mark.parametrize(
    ("pattern", "text"),
    [(MACHINE_PATH, "see /" + "root/x"), (REGISTRY_HOST, "https://pypi" + ".org/simple")],
    ids=["path", "registry"],
)
def test_the_patterns_above_find_what_they_are_for(pattern, text):
    assert pattern.search(text)


@pytest.mark.parametrize("lock", LOCKS)
def test_every_locked_package_has_a_hash_and_no_address(lock):
    text = (ROOT / lock).read_text()
    entries = re.split(r"\n(?=\S)", text.strip())
    assert len(entries) >= 5
    for entry in entries:
        assert PIN.match(entry), entry
        assert "--hash=sha256:" in entry, entry
    assert "://" not in text
    assert "--index" not in text
    assert "--extra-index" not in text
    assert "--find-links" not in text


def test_the_core_lock_is_a_part_of_the_test_lock():
    core, tests = (set(PIN.findall((ROOT / lock).read_text())) for lock in LOCKS[1:])
    assert core < tests


def test_all_that_pyproject_names_is_locked():
    project = tomllib.loads((ROOT / "pyproject.toml").read_text())
    groups = project["dependency-groups"]
    named = [*groups["test"], *groups["oracle"], *groups["lint"]]
    extras = project["project"]["optional-dependencies"]
    wanted = [*project["project"]["dependencies"], *extras["fast"], *named]
    locked = {name for name, _ in PIN.findall((ROOT / LOCKS[2]).read_text())}
    assert {re.split(r"[<>=\[; ]", need, maxsplit=1)[0] for need in wanted} <= locked
    boot = {name for name, _ in PIN.findall((ROOT / LOCKS[0]).read_text())}
    assert {"uv", "hatchling", "editables", "setuptools"} <= boot


def test_the_wheel_holds_every_file_of_the_source(tmp_path):
    """hatchling leaves git-ignored files out without a word: compare with the disk, not git."""
    built = subprocess.run(
        [sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", str(tmp_path)],
        cwd=ROOT, check=False, capture_output=True, text=True,
    )  # fmt: skip
    assert built.returncode == 0, built.stderr
    (wheel,) = tmp_path.glob("*.whl")
    shipped = {n for n in zipfile.ZipFile(wheel).namelist() if n.startswith("farwall/")}
    on_disk = {
        path.relative_to(SOURCE.parent).as_posix()
        for path in SOURCE.rglob("*")
        if path.is_file() and "__pycache__" not in path.parts
    }
    assert shipped == on_disk


@pytest.mark.parametrize("arguments", [[], ["--help"], ["--version"]], ids=str)
def test_the_command_line_starts_without_the_heavy_libraries(arguments):
    code = (
        "import sys\n"
        "from farwall.cli.main import main\n"
        "try:\n"
        f"    {'main(%r)' % arguments if arguments else 'pass'}\n"  # noqa: UP031
        "except SystemExit as end:\n"
        "    assert end.code == 0\n"
        f"print('heavy:', *sorted(set({HEAVY!r}) & set(sys.modules)))\n"
    )
    run = subprocess.run(
        [sys.executable, "-c", code], check=True, capture_output=True, text=True, cwd=ROOT
    )
    assert run.stdout.splitlines()[-1] == "heavy:"


def test_the_heavy_libraries_are_there_to_be_found_by_the_test_above():
    code = f"import sys, {', '.join(HEAVY)}; print(len(set({HEAVY!r}) & set(sys.modules)))"
    run = subprocess.run(
        [sys.executable, "-W", "ignore", "-c", code], check=True, capture_output=True, text=True
    )
    assert run.stdout.strip() == str(len(HEAVY))


def test_every_relative_link_of_the_documents_leads_somewhere():
    pages = [*ROOT.glob("*.md"), *ROOT.glob("docs/**/*.md"), ROOT / "tests/README.md"]
    broken = [
        f"{page.relative_to(ROOT)}: {target}"
        for page in pages
        for target in re.findall(r"\]\(([^)#:]+)(?:#[^)]*)?\)", page.read_text())
        if not (page.parent / target).exists()
    ]
    assert len(pages) > 8
    assert broken == []


def test_every_page_of_the_documents_is_reached_from_the_first():
    """From README, link by link; also no page that nobody finds."""
    found, ahead = set(), [ROOT / "README.md"]
    while ahead:
        page = ahead.pop()
        links = re.findall(r"\]\(([^)#:]+\.md)(?:#[^)]*)?\)", page.read_text())
        new = {(page.parent / link).resolve() for link in links} - found
        found |= new
        ahead += new
    assert {page.resolve() for page in ROOT.glob("docs/**/*.md")} - found == set()


def test_every_command_in_the_documents_is_a_command():
    from farwall.cli.main import COMMANDS

    pages = [ROOT / "README.md", ROOT / "CONTRIBUTING.md", ROOT / "CHANGELOG.md"]
    text = "\n".join(page.read_text() for page in pages)
    named = set(re.findall(r"run\.py ([a-z][a-z-]*)", text)) | set(
        re.findall(r"`farwall ([a-z][a-z-]*)", text)
    )
    assert "demo" in named
    assert named <= {*COMMANDS, "test"}


def docstrings(path: Path) -> str:
    """All docstrings of a file and the comments beside its constants."""
    text = path.read_text()
    nodes = (ast.Module, ast.ClassDef, ast.FunctionDef)
    words = [ast.get_docstring(n) or "" for n in ast.walk(ast.parse(text)) if isinstance(n, nodes)]
    return "\n".join([*words, *re.findall(r"#.*Source:.*", text)])


def test_every_source_key_cited_in_the_code_stands_in_the_bibliography():
    """A key is lower case with a hyphen or a digit in square brackets, such as [uno-1998]."""
    sources = (ROOT / "docs/sources.md").read_text()
    listed = set(re.findall(r"^\| ([a-z0-9-]+) \|", sources, re.MULTILINE))
    cited = {
        key: path.relative_to(ROOT).as_posix()
        for path in SOURCE.rglob("*.py")
        for key in re.findall(r"\[([a-z]+[a-z0-9]*(?:-[a-z0-9]+)+)\]", docstrings(path))
    }
    assert "nist-hb44" in cited
    assert {key: where for key, where in cited.items() if key not in listed} == {}
