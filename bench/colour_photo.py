"""Time and memory of reading the colours of a photo of twelve megapixels.

python bench/colour_photo.py: an invented photo of the 24 patches, made larger; seconds of the
processor and the most memory of a process that imports the reader and reads it twice. Linux.
"""

from __future__ import annotations

import io
import subprocess
import sys
import tempfile
from pathlib import Path

from PIL import Image

from farwall.bench.colour_photos import photograph
from farwall.bench.colour_scene import common_24

SIZE = (4000, 3000)
READ = """
import sys, time
data = open(sys.argv[1], "rb").read()
for when in ("with imports", "again"):
    began = time.process_time()
    from farwall.readers.colour_photo.read import read_colour_photo
    found = read_colour_photo(data)
    assert found.target is not None
    print(f"{when:<14}{time.process_time() - began:6.2f} s of the processor")
# Not getrusage: what it tells begins with the memory of the process that started this one.
most = next(one for one in open("/proc/self/status") if one.startswith("VmHWM"))
print(f"most memory   {int(most.split()[1]) / 1000:6.0f} MB")
"""


def main() -> None:
    shot = photograph(common_24(), "sun", seed=1, wide_px=1600)
    large = Image.open(io.BytesIO(shot.data)).resize(SIZE)
    into = io.BytesIO()
    large.save(into, "JPEG", quality=92)
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "photo.jpg"
        path.write_bytes(into.getvalue())
        subprocess.run([sys.executable, "-c", READ, str(path)], check=True)


if __name__ == "__main__":
    main()
