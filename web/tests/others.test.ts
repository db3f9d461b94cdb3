import assert from "node:assert/strict";
import { test } from "node:test";
import type { FromBook } from "../src/pure/entry.ts";
import { withOthers } from "../src/pure/others.ts";

const one = (id: string, place: number, off: number | null = 0, device = "helper"): FromBook => ({
  entry: { id, job: "q", word: "note", at: "2026-06-08T08:00:00Z", who: "", device, number: place, era: 0, about: {}, version: 1 },
  place, clock_off_s: off,
});
const ids = (known: { others: FromBook[] }) => known.others.map(({ entry }) => entry.id);

test("what came is added once, and the last place counts up", () => {
  const known = withOthers({ others: [one("a", 1)], pulled: 1 }, [one("a", 1), one("b", 4)], false);
  assert.deepEqual(ids(known), ["a", "b"]);
  assert.equal(known.pulled, 4);
});

test("of an older book that was put back all is taken, and what it lost is not forgotten", () => {
  const known = { others: [one("a", 1), one("lost", 2), one("c", 3)], pulled: 3 };
  const then = withOthers(known, [one("a", 1), one("new", 2)], true);
  assert.deepEqual(ids(then), ["a", "lost", "c", "new"]);
  assert.equal(then.pulled, 2);
  assert.equal(then.others.find((each) => each.place === 2)!.entry.id, "new");
});

test("a clock told anew puts right what that phone told before, and no other's", () => {
  const known = { others: [one("a", 1, 0), one("b", 2, 5, "other")], pulled: 2 };
  const then = withOthers(known, [one("c", 3, 240)], false);
  assert.deepEqual(then.others.map((each) => each.clock_off_s), [240, 5, 240]);
});
