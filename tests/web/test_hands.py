"""The process that does a server's slow work ends when the server is killed."""

from __future__ import annotations

import subprocess
import sys

_SERVER = """
import os
from farwall.web.hands import one_process

if __name__ == "__main__":
    hands = one_process()
    hands.submit(os.getpid).result()
    print("works", flush=True)
    hands.submit(os.getpid).result()
    import time
    time.sleep(600)
"""


def test_a_killed_server_leaves_no_process_behind(tmp_path):
    (tmp_path / "server.py").write_text(_SERVER)
    server = subprocess.Popen(
        [sys.executable, str(tmp_path / "server.py")], stdout=subprocess.PIPE, text=True
    )
    assert server.stdout is not None
    assert server.stdout.readline() == "works\n"
    server.kill()
    # its hands hold the other end of this pipe: it ends when they are gone
    rest, _ = server.communicate(timeout=60)
    assert rest == ""
