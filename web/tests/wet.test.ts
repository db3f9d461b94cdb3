/** A second coat that is tapped onto a wet first one is told without signal too. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { dayOf } from "../src/pure/day.ts";
import type { Happened } from "../src/pure/story.ts";
import type { Field, Sheet } from "../src/pure/sheet.ts";

const field = (coat: string, room: string, start: number): Field => ({
  id: `${coat}.${room}`, coat, no: 1, rooms: [room], start, end: start + 2, low: 5,
  bands: [[`${coat}.${room}.1`, 1, start, start + 1, 1, 1, 0], [`${coat}.${room}.2`, 1, start + 1, start + 2, 1, 1, 0]],
});
const SHEET: Sheet = {
  version: 1, id: "a", job: "A", starts_at: "2026-06-08T08:00:00+00:00", inputs_hash: "", rooms: { hall: "Hall", bath: "Bath" },
  tank_l: 8, helper: true, coats: [{ id: "one", stain: "s", cut: "1:2" }, { id: "two", stain: "s", cut: "1:2" }],
  fields: [field("one", "hall", 0), field("one", "bath", 2), field("two", "hall", 120), field("two", "bath", 122)],
  fills: [], mixes: [], shapes: [], walls: {}, doors: [],
  clocks: [{ coat: "one", name: "dry to recoat", low_min: 60, likely_min: 120, high_min: 240, rank: "guess" }],
};
let count = 0;
const told = (word: string, at: number, about: Record<string, string> = {}): Happened => {
  count += 1;
  return { at, entry: { id: `e${count}`, job: "a", word, at: "", who: "", device: "p", number: count, era: 0, about, version: 1 } };
};
const band = (id: string, at: number): Happened => told("band-done", at, { band: id });
const FIRST = ["one.hall.1", "one.hall.2", "one.bath.1", "one.bath.2"].map((id, n) => band(id, n + 1));

test("it stands until the floor below may be dry, in the room that was tapped", () => {
  const { wet } = dayOf(SHEET, [...FIRST, band("two.hall.1", 5)]);
  assert.equal(wet?.field.id, "two.hall");
  assert.equal(wet?.until, 2 + 60, "the hall's first coat ended at minute 2, and dries 60 at the least");
});

test("another room that is dry, a look at another coat, or one before the floor was sprayed tell nothing of it", () => {
  const wet = (...looks: Happened[]) => dayOf(SHEET, [...FIRST, ...looks, band("two.hall.1", 31)]).wet;
  assert.ok(wet(told("dry", 30, { room: "bath" })));
  assert.ok(wet(told("dry", 30, { coat: "two" })));
  assert.ok(wet(told("dry", 1.5)));
  assert.ok(wet(told("dry", 29, { room: "hall" }), told("still-damp", 30, { room: "hall" })));
  assert.ok(wet(told("dry", 30, { clock: "seal" })));
  assert.equal(wet(told("still-damp", 29, { room: "hall" }), told("dry", 30, { room: "hall", coat: "one" })), null);
  assert.equal(wet(told("dry", 29), told("still-damp", 30, { room: "bath" })), null);
});

test("nothing is said before the tap, of a first coat, late enough, looked at, or without a wait", () => {
  assert.equal(dayOf(SHEET, FIRST).wet, null);
  assert.equal(dayOf(SHEET, FIRST.slice(0, 1)).wet, null);
  assert.equal(dayOf(SHEET, [...FIRST, band("two.hall.1", 70)]).wet, null);
  assert.equal(dayOf(SHEET, [...FIRST, told("dry", 30), band("two.hall.1", 31)]).wet, null);
  assert.equal(dayOf({ ...SHEET, clocks: [] }, [...FIRST, band("two.hall.1", 5)]).wet, null);
});
