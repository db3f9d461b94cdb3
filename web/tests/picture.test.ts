/** The picture of the field in hand: what is written in it does not lie over other words. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { picture } from "../src/picture.ts";
import type { Day } from "../src/pure/day.ts";
import type { Sheet } from "../src/pure/sheet.ts";
import { give, speak } from "../src/pure/words.ts";
import { EN } from "../src/words/en.ts";

give("en", EN);
speak("en");

const BAND = ["1.1", 1, 0, 1, 0, 1, 0] as const;
const FIELD = { id: "1", coat: "one", no: 1, rooms: ["bath"], start: 0, end: 1, low: 4, bands: [[...BAND]] };

/** A bath of 2 m by `high` centimetres, its door in the middle of its right wall; centimetres. */
function bath(high: number): Sheet {
  const wall = [0, 0, 200, 0, 200, high, 0, high];
  return {
    rooms: { bath: "Bath", bed: "Bedroom 1" }, walls: { bath: wall, bed: [] }, shapes: [wall], fields: [FIELD], coats: [{ id: "one" }],
    doors: [{ rooms: ["bath", "bed"], line: [200, high / 2 - 40, 200, high / 2 + 40] }],
  } as unknown as Sheet;
}

function placed(sheet: Sheet, wide: number, high: number): { name: number[]; number: number[] } {
  const floor = { done: new Map() };
  const day = { field: FIELD, band: { id: "1.1", shape: 0 }, coat: "one", floor, low: 4, oldest: null, fills: [] } as unknown as Day;
  const found = [...picture(sheet, day, 0, wide, high).matchAll(/<text x="([-\d.]+)" y="([-\d.]+)".*?>(.*?)<\/text>/g)];
  const at = (told: RegExp) => found.filter(([, , , text]) => told.test(text!)).map(([, x, y]) => [Number(x), Number(y)])[0]!;
  return { name: at(/Bedroom/), number: at(/1\.1\.1/) };
}

test("a door in a side wall is named on the free paper behind it", () => {
  const { name } = placed(bath(300), 420, 240); // 420 px wide for 200 cm by 300: paper is left on both sides
  assert.ok(name[0]! > 200, `${name[0]} lies in the room`);
});

test("where no paper is left its name stands within, not over the number of the band", () => {
  const { name, number } = placed(bath(100), 200, 240);
  assert.ok(name[0]! < 200);
  assert.ok(Math.abs(name[1]! - number[1]!) > 15, "the name lies over the number");
});
