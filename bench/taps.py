"""How long a tap takes over HTTP: kept on the disk, the log replayed, what to do now answered.

    .venv/bin/python bench/taps.py       a day of sorrel-rise (12 rooms), one real server

Wanted: at most 300 ms. The re-plan that answers all of them is told beside it.
"""

import json
import os
import subprocess
import tempfile
import time
from datetime import datetime, timedelta

import httpx
from timing import FARWALL, ONCE, ROOT

PORT, KEY, JOB = 8798, "a key for the bench, invented", "sorrel"
SHOWN = {"Authorization": f"Bearer {KEY}"}
MOST = 12 if ONCE else 1000


def main() -> None:
    """One server, one day."""
    with tempfile.TemporaryDirectory() as folder:
        env = {**os.environ, "FARWALL_KEY": KEY}
        at = ["--book", folder]
        facts = str(ROOT / "examples" / "sorrel-rise" / "job.json")
        subprocess.run([FARWALL, "book", "add", facts, "--id", JOB, *at], check=True,
                       stdout=subprocess.DEVNULL)  # fmt: skip
        server = subprocess.Popen([FARWALL, "serve", *at, "--port", str(PORT)], env=env,
                                  stderr=subprocess.DEVNULL)  # fmt: skip
        try:
            with httpx.Client(base_url=f"http://127.0.0.1:{PORT}", headers=SHOWN,
                              timeout=60) as client:  # fmt: skip
                day(client, planned(client))
        finally:
            server.terminate()
            server.wait()


def planned(client: httpx.Client) -> dict:
    """The plan, once the server has made it."""
    began = time.perf_counter()
    while True:
        try:
            answer = client.get(f"/api/jobs/{JOB}/plan")
        except httpx.ConnectError:
            time.sleep(0.1)
            continue
        if answer.status_code == 200:
            print(f"planned beside in {time.perf_counter() - began:.1f} s")
            return answer.json()["plan"]
        time.sleep(0.1)


def day(client: httpx.Client, plan: dict) -> None:
    """Every band of the first coat tapped, twice as thirsty fields weighed at their ends."""
    start = datetime.fromisoformat(plan["starts_at"])
    coat = plan["fields"][0]["coat"]
    fields = [field for field in plan["fields"] if field["coat"] == coat]
    bands = [(band, field) for field in fields for band in field["bands"]][:MOST]
    taps = [("mixed", 0.0, {"coat": coat, "litres": 60.0, "tub_l": 60.0})]
    for band, field in bands:
        taps.append(("band-done", band["end_min"] * 1.1, {"band": band["id"]}))
        if band is field["bands"][-1]:
            taps.append(("tank-weighed", band["end_min"] * 1.1, {"tub_l": 40.0, "tank_l": 2.0}))
    took_ms = []
    for number, (word, minute, about) in enumerate(taps):
        at = (start + timedelta(minutes=minute)).isoformat()
        body = {"id": f"tap-{number}", "word": word, "at": at, "about": about, "number": number}
        began = time.perf_counter()
        client.post(f"/api/jobs/{JOB}/log", json=body).raise_for_status()
        took_ms.append(1000 * (time.perf_counter() - began))
    told = sorted(took_ms)
    print(
        f"{len(taps)} taps: median {told[len(told) // 2]:.0f} ms, p95 "
        f"{told[round(0.95 * (len(told) - 1))]:.0f} ms, worst {told[-1]:.0f} ms"
    )
    began = time.perf_counter()
    while client.get(f"/api/jobs/{JOB}/now").json()["laying_anew"]:
        time.sleep(0.2)
    rest = client.get(f"/api/jobs/{JOB}/rest").json()
    knows = rest["upto"]
    print(f"the rest laid anew {time.perf_counter() - began:.1f} s after, from {knows} entries")
    print(json.dumps({"faults": rest["faults"], "no": rest["no"]}))


if __name__ == "__main__":
    main()
