"""What reading a building model costs, from the start of the process to the last byte of JSON.

python bench/reading_ifc.py [--once]: `farwall read FILE --json` on 100 invented rooms with 100
doors and 100 windows on two storeys, and on the 82 rooms of a model in ../shared/data/plans when it
is there. Told are the seconds of the processor, those of the reader's own process with them.
Wanted: under 6 s.
"""

import resource
import subprocess
import sys
import tempfile
from pathlib import Path

from timing import FARWALL, ROOT

sys.path.insert(0, str(ROOT))
from tests.readers.ifc.making import Making, box

TIMES = 1 if "--once" in sys.argv else 5
INSTITUTE = ROOT.parent / "shared/data/plans/institute_five_storey_ifc2x3.ifc"


def invented(wide: int = 10, deep: int = 5, storeys: int = 2) -> bytes:
    """Rooms of 4 by 3 m in rows, each with a door to the next and a window."""
    made = Making()
    for level in range(storeys):
        storey = made.storey(f"Level {level}", 3.0 * level)
        for number in range(wide * deep):
            x, y = number % wide * 4.1, number // wide * 3.1
            made.space(storey, f"{level}{number:02d}", box(x, y, x + 4, y + 3), long="Room")
            made.door(storey, box(x + 4, y + 1, x + 4.1, y + 1.9), 0.9)
            window = box(x + 1, y + 3, x + 2, y + 3.1)
            made.door(storey, window, 1.0, kind="IfcWindow", base=0.9, height=1.2)
    return made.data()


def processor_s(path: Path) -> float:
    """Seconds of the processor for one reading, children and all."""
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    subprocess.run([FARWALL, "read", str(path), "--json"], check=True, stdout=subprocess.DEVNULL)
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    return after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime


with tempfile.TemporaryDirectory() as folder:
    synthetic = Path(folder) / "hundred.ifc"
    synthetic.write_bytes(invented())
    for words, path in (("100 invented rooms", synthetic), ("82 rooms of an institute", INSTITUTE)):
        if not path.exists():
            print(f"{words}: not here")
            continue
        spent = sorted(processor_s(path) for _ in range(TIMES))
        size = path.stat().st_size / 1e6
        print(f"{words}, {size:.2f} MB: {spent[0]:.2f} to {spent[-1]:.2f} s of the processor")
