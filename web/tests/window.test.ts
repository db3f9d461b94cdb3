// The stretch of the tape that is seen: zoomed, moved, pinched, held on the tape.
import assert from "node:assert/strict";
import { test } from "node:test";
import { holding, LEAST_MIN, moved, pinched, within, zoomed } from "../office/house/window.ts";

const whole = { from: -1000, to: 9000 };

test("zooming keeps a minute in its place", () => {
  const seen = { from: 0, to: 100 };
  const near = zoomed(seen, 0.5, 25);
  assert.deepEqual(near, { from: 12.5, to: 62.5 });
  assert.equal((25 - near.from) / 50, 0.25);
});

test("a window stays on the tape and is never shorter than it may be", () => {
  for (const seen of [{ from: -9e5, to: 9e5 }, { from: 40, to: 40.1 }, { from: 8990, to: 9400 }]) {
    const held = within(seen, whole);
    assert.ok(held.from >= whole.from && held.to <= whole.to + 1e-9);
    assert.ok(held.to - held.from >= LEAST_MIN - 1e-9);
  }
});

test("it moves no further than a minute needs to be seen", () => {
  const seen = { from: 0, to: 100 };
  assert.equal(holding(seen, 50, whole), seen);
  assert.deepEqual(holding(seen, 120, whole), moved(seen, 24));
  assert.deepEqual(holding(seen, -10, whole), moved(seen, -14));
});

test("the minutes under two fingers stay under them", () => {
  const seen = { from: 0, to: 200 };
  const now = pinched(seen, [50, 150], [25, 175], 400);
  const at = (x: number): number => now.from + (x / 400) * (now.to - now.from);
  assert.ok(Math.abs(at(25) - 25) < 1e-9 && Math.abs(at(175) - 75) < 1e-9);
});

test("fingers that change sides or meet never turn the tape round", () => {
  const seen = { from: 0, to: 200 };
  for (const now of [[100, 100], [101, 99], [0, 400]] as [number, number][]) {
    const held = pinched(seen, [50, 150], now, 400);
    assert.ok(held.to > held.from);
  }
});
