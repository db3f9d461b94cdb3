"""The process that does a server's slow work ends when the server is killed."""

from __future__ import annotations

from tests.killed import left_behind

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
    assert left_behind(_SERVER, tmp_path) == ""
