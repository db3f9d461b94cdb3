from farwall.cli.main import main


def test_sheets_are_written(tmp_path, capsys):
    out = tmp_path / "sheet.pdf"
    assert main(["walk-sheet", "--out", str(out), "--rooms", "2"]) == 0
    assert out.read_bytes().startswith(b"%PDF")
    assert "sheet.pdf" in capsys.readouterr().out


def test_too_many_sheets_are_refused_calmly(tmp_path, capsys):
    assert main(["walk-sheet", "--out", str(tmp_path / "x.pdf"), "--rooms", "99"]) == 2
    assert "99 sheets are not made. 1 to 60." in capsys.readouterr().err
