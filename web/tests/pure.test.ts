/** Ids, eras, gloves, words: by hand. */
import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { test } from "node:test";
import type { Entry } from "../src/pure/entry.ts";
import { jumped, offOf } from "../src/pure/era.ts";
import { dayOf } from "../src/pure/day.ts";
import { once } from "../src/pure/gloves.ts";
import { nextId } from "../src/pure/ids.ts";
import { big, callBetween, clock, clockAway, countdown, dateAt, dayTold, short, volume, whoseTank } from "../src/pure/say.ts";
import { type Reading, stepped } from "../src/pure/reading.ts";
import { sha256 } from "../src/pure/sha256.ts";
import { meeting, middle } from "../src/pure/shapes.ts";
import { bandName, type Field, type Sheet } from "../src/pure/sheet.ts";
import { inOrder, struck } from "../src/pure/story.ts";
import { batchRefused, byTable, TABLE_MS, type Pours } from "../src/pure/pouring.ts";
import { give, knows, languageOf, speak, w } from "../src/pure/words.ts";
import { EN } from "../src/words/en.ts";
import { ES } from "../src/words/es.ts";

const zeros = new Uint8Array(8);
const ones = new Uint8Array(8).fill(255);

test("an id holds its millisecond, its version and its variant where RFC 9562 has them", () => {
  // By hand, the RFC's own example of a time: 0x017F22E279B0 is 2022-02-22 19:22:22 UTC.
  const { id } = nextId({ ms: 0, count: 0 }, 0x017f22e279b0, ones);
  assert.equal(id, "017f22e2-79b0-7000-bfff-ffffffffffff");
  assert.equal(nextId({ ms: 0, count: 0 }, 1, zeros).id, "00000000-0001-7000-8000-000000000000");
});

test("ids rise within a millisecond, when the clock steps back, and past 4096 in one", () => {
  let last = { ms: 0, count: 0 };
  let before = "";
  for (let n = 0; n < 5000; n += 1) {
    const made = nextId(last, n < 4500 ? 1000 : 10, zeros);
    assert.ok(made.id > before, `${made.id} after ${before}`);
    [before, last] = [made.id, made.last];
  }
  assert.equal(last.ms, 1001);
});

test("a jump of the wall clock is seen, a drift and a long quiet are not", () => {
  const before = { wall: 1_000_000, steady: 500 };
  assert.equal(jumped(before, { wall: 1_060_000, steady: 60_500 }), false);
  assert.equal(jumped(before, { wall: 1_061_500, steady: 60_500 }), false);
  assert.equal(jumped(before, { wall: 4_660_000, steady: 60_500 }), true);
  assert.equal(jumped(before, { wall: 900_000, steady: 60_500 }), true);
});

test("after a reload only a clock that went back is a jump", () => {
  const before = { wall: 1_000_000, steady: null };
  assert.equal(jumped(before, { wall: 9_000_000, steady: 10 }), false);
  assert.equal(jumped(before, { wall: 900_000, steady: 10 }), true);
});

test("two taps within 300 ms on one button count once, on two buttons twice", () => {
  const counts = once();
  assert.equal(counts("main", 1000), true);
  assert.equal(counts("main", 1299), false);
  assert.equal(counts("drip", 1299), true);
  assert.equal(counts("main", 1598), false);
  assert.equal(counts("main", 1898), true);
});

test("a strike that was itself struck does not hold", () => {
  const strike = (id: string, entry: string) => ({ id, word: "struck", about: { entry } }) as unknown as Entry;
  assert.deepEqual([...struck([strike("b", "a")])], ["a"]);
  assert.deepEqual([...struck([strike("b", "a"), strike("c", "b")])], ["b"]);
});

test("what stands large before a field that must be planned again is NO, and once it is begun the field itself", () => {
  speak("en");
  const field = { id: "a.1", coat: "a", no: 1, rooms: ["hall"], start: 10, end: 20, low: 5, bands: [], cannot: true };
  const sheet = { rooms: { hall: "Hall" }, fields: [field], starts_at: "2026-06-08T08:00", units: "us" } as unknown as Sheet;
  const day = (begun: boolean) => ({ field, band: null, begun, wait: null, late: 0 }) as unknown as Parameters<typeof big>[1];
  assert.deepEqual([big(sheet, day(false), null, 0).word, big(sheet, day(false), null, 0).label], ["NO", "do not begin Hall"]);
  assert.equal(big(sheet, day(true), null, 12).word, "go on");
  assert.equal(big(sheet, day(true), 15, 12).until, 15);
});

test("the countdown never shows more than is left", () => {
  assert.equal(countdown(3.9), "3:54");
  assert.equal(countdown(3.999), "3:59");
  assert.equal(countdown(-0.5), "−0:30");
  assert.equal(countdown(100), "1 h 40");
});

test("each call comes once, and the most pressing of two", () => {
  assert.equal(callBetween(1.01, 0.99)?.[0], 1);
  assert.equal(callBetween(0.99, 0.98), null);
  assert.equal(callBetween(2.5, 0.4)?.[0], 0.5);
  assert.equal(callBetween(0.01, -0.01)?.[0], 0);
});

test("a US gallon is 3.785411784 L", () => {
  assert.equal(volume(3.785411784 * 1.6, "us"), "1.6\u00a0gal");
  assert.equal(volume(6.06, "metric"), "6.1\u00a0L");
});

test("a reading steps by tenths and halves of a gallon, and never past full or below nothing", () => {
  const gal = 3.785411784;
  let reading: Reading = { tank: null, tub: null };
  reading = stepped(reading, "tank", 2, gal, 2 * gal, "us");
  assert.ok(Math.abs(reading.tank! - 1.5 * gal) < 1e-9);
  for (let n = 0; n < 9; n += 1) reading = stepped(reading, "tank", 1, gal, 2 * gal, "us");
  assert.equal(reading.tank, 2 * gal);
  for (let n = 0; n < 9; n += 1) reading = stepped(reading, "tank", -2, gal, 2 * gal, "us");
  assert.equal(reading.tank, 0);
  assert.equal(reading.tub, null);
});

test("SHA-256 gives the digests of FIPS 180-4's examples, and of lengths about a block", () => {
  const bytes = (text: string) => new TextEncoder().encode(text);
  assert.equal(sha256(bytes("abc")), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  assert.equal(
    sha256(bytes("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq")),
    "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
  );
  for (const size of [0, 1, 55, 56, 57, 63, 64, 65, 119, 120, 1000]) {
    const content = Uint8Array.from({ length: size }, (_, n) => (n * 31 + size) % 256);
    assert.equal(sha256(content), createHash("sha256").update(content).digest("hex"), String(size));
  }
});

give("en", EN);

test("the page speaks what it has until other words come", () => {
  assert.equal(w("languageIs"), "en");
  speak("es");
  assert.equal(w("languageIs"), "en");
  assert.equal(knows("es"), false);
  give("es", ES);
  assert.equal(w("languageIs"), "en");
});

test("Spanish has every word of English, with the same places, and both are spoken", () => {
  const places = (text: string) => [...text.matchAll(/\{\w+\}/g)].map(([one]) => one).sort();
  assert.deepEqual(Object.keys(ES).sort(), Object.keys(EN).sort());
  for (const key of Object.keys(EN) as (keyof typeof EN)[]) assert.deepEqual(places(ES[key]), places(EN[key]), key);
  speak("es");
  assert.equal(w("bandDone", { band: "1.4.2" }), "Franja 1.4.2 lista");
  speak("en");
  assert.equal(w("bandDone", { band: "1.4.2" }), "Band 1.4.2 done");
});

test("the language is what was chosen, else the job's, else the phone's, else English", () => {
  assert.equal(languageOf("en", "es", ["es-MX"]), "en");
  assert.equal(languageOf("", "es", ["en-US"]), "es");
  assert.equal(languageOf("", "", ["fr", "es-MX", "en"]), "es");
  assert.equal(languageOf("", "", ["fr"]), "en");
});

test("two bands meet in the middle of the border that they share", () => {
  // By hand: 300 x 80 cm below 300 x 80 cm share the line y = 80 from 0 to 300.
  const below = [0, 0, 300, 0, 300, 80, 0, 80];
  const above = [0, 80, 300, 80, 300, 160, 0, 160];
  assert.deepEqual(middle(below), [150, 40]);
  const [x, y] = meeting(below, above)!;
  assert.ok(Math.abs(x - 150) < 16 && Math.abs(y - 80) < 16, `${x} ${y}`);
  assert.equal(meeting([], above), null);
});

test("the table of the gate refuses a whole by any two of it, and allows no more than two", () => {
  // By hand: 0 water, 1 stain, 2 acid; 0 is allowed, 1 with care, 2 refused. Acid on stain is refused.
  const cells = [[0, 0, 0, 0], [2, 0, 2, 1], [2, 2, 0, 1]];
  const table: Pours = {
    things: [["water", "water", false], ["dark", "dark", false], ["muriatic acid", "muriatic acid", false]],
    vessels: [["open tub", "an open tub", true], ["metal pail", "a pail", false]], cells: { "open tub": cells },
    reasons: [["allowed", "a", "", ""], ["allowed with warning", "b", "", ""], ["refused", "c", "d", ""]],
  };
  const word = (things: string[], age: number | null = 0, vessel = "open tub") => byTable(table, things, vessel, age).word;
  assert.equal(word(["water", "dark"]), "allowed");
  assert.equal(word(["dark", "water"]), "refused");
  assert.equal(word(["dark"]), "allowed with warning");
  assert.equal(word(["water", "dark"], TABLE_MS + 1), "");
  assert.equal(word(["water", "dark"], null), "");
  assert.equal(word(["water", "water", "dark"]), "");
  assert.equal(word(["water", "dark", "muriatic acid"], null), "refused");
  assert.equal(word(["water", "dark"], 0, "metal pail"), "");
  assert.equal(word(["water", "lye"]), "");
  assert.equal(word([]), "");
  assert.equal(batchRefused(table, "dark", false), null);
  assert.deepEqual(batchRefused(table, "dark", true), ["refused", "c", "d", ""]);
});

test("a coat of sealer is named with its lot where one was entered", () => {
  const of = (about: object) => short({ fields: [] } as never, { word: "sealed", about } as unknown as Entry);
  assert.equal(of({ round: 1 }), "sealer down");
  assert.equal(of({ round: 1, lot: "S-4410" }), "sealer down, lot S-4410");
});

test("the clock at the house is told by halves of the day, in a metric job by 24 hours", () => {
  const sheet = { starts_at: "2026-05-15T08:00:00-07:00" } as Sheet;
  const metric = { ...sheet, units: "metric" } as Sheet;
  const told = [0, 245, 480, -480].map((minute) => [clock(sheet, minute), clock(metric, minute)]);
  assert.deepEqual(told, [
    ["8:00\u00a0am", "8:00"], ["12:05\u00a0pm", "12:05"], ["4:00\u00a0pm", "16:00"], ["12:00\u00a0am", "0:00"],
  ]);
});

test("a phone by another zone, or an hour wrong, is told of in the floor's own time; minutes are not", () => {
  const sheet = { starts_at: "2026-06-08T08:00:00-06:00", units: "us" } as Sheet;
  const ms = Date.parse("2026-06-08T08:40:00-06:00");
  const told = (offS: number, wrongS: number, zone: number) => {
    const found = clockAway(sheet, offS, ms + wrongS * 1000, zone);
    return found && `${found.at} ${found.here}`.replaceAll("\u00a0", " ");
  };
  assert.equal(told(0, 0, -360), null);
  assert.equal(told(170, 170, -360), null);
  assert.equal(told(240, 240, -360), "8:40 am 8:44 am");
  assert.equal(told(-240, -240, -360), "8:40 am 8:36 am");
  assert.equal(told(0, 0, -300), "8:40 am 9:40 am");
  assert.equal(told(3600, 3600, -360), "8:40 am 9:40 am");
  assert.equal(told(0, 0, 330), "8:40 am 8:10 pm");
  assert.equal(told(3600, 3600, -420), null, "an hour wrong in the zone beside shows the floor's time");
});

test("the date at the house is its own, whatever the zone of the phone", () => {
  const sheet = { starts_at: "2026-06-08T20:00:00-06:00" } as Sheet;
  assert.equal(dateAt(sheet, 0), "2026-06-08");
  assert.equal(dateAt(sheet, 300), "2026-06-09");
});

test("how far a clock is off is taken from the next era that is told, else from the one before", () => {
  assert.deepEqual([0, 1, 2, 3].map((era) => offOf({ 1: 240, 2: 60 }, era)), [240, 240, 60, 60]);
  assert.equal(offOf({}, 0), null);
});

test("entries that a phone made while it slept in between are put right by what is told of it last", () => {
  const entry = (id: string, era: number, minute: number): Entry => ({
    id, job: "q", word: "note", at: new Date(Date.parse("2026-06-08T14:00:00Z") + minute * 60_000).toISOString(), who: "",
    device: "helper", number: era + 1, era, about: {}, version: 1,
  });
  const others = [entry("a", 0, 14), entry("b", 1, 24)].map((one, n) => ({ entry: one, place: n + 1, clock_off_s: n ? 240 : null }));
  const found = inOrder("2026-06-08T08:00:00-06:00", [], others, {});
  assert.deepEqual(found.map(({ at }) => at), [10, 20]);
  assert.deepEqual(inOrder("2026-06-08T08:00:00-06:00", [entry("a", 0, 14)], [], { 3: 240 }).map(({ at }) => at), [10]);
});

test("the day of a plan is told as people say it, by the house's own calendar", () => {
  const sheet = { starts_at: "2026-05-14T23:30:00-07:00" } as Sheet;
  assert.equal(dayTold(sheet), "Thu,\u00a0May\u00a014");
  speak("es");
  assert.equal(dayTold(sheet), "jue,\u00a014\u00a0may");
  speak("en");
});

test("in Spanish a sentence that ends with half a day has one point", () => {
  speak("es");
  const at = clock({ starts_at: "2026-05-15T08:00:00Z" } as Sheet, 60);
  assert.equal(w("bookTold", { at }), "Dicho a las 9:00\u00a0a.\u00a0m.");
  assert.equal(w("bookTold", { at: "9:00" }), "Dicho a las 9:00.");
  speak("en");
});

test("a band is called by coat, field and place, as the book and the terminal call it", () => {
  const field = { id: "second.3", coat: "second", no: 3, bands: [["second.3.1"], ["second.3.2"]] } as unknown as Field;
  const sheet = { coats: [{ id: "first" }, { id: "second" }], fields: [field] } as unknown as Sheet;
  assert.equal(bandName(sheet, field, "second.3.2"), "2.3.2");
});

test("a plan whose day is long past begins nothing; one that is yet to come tells its day", () => {
  const field = { id: "first.1", coat: "first", no: 1, rooms: ["hall"], start: 5, end: 20, cannot: false };
  const sheet = { rooms: { hall: "Hall" }, fields: [field], starts_at: "2026-06-08T08:00:00-06:00" } as unknown as Sheet;
  const day = { field, begun: false, wait: null, late: 0 } as unknown as Parameters<typeof big>[1];
  assert.equal(big(sheet, day, null, 20 + 1439).word, "8:05\u00a0am"); // a day beyond, to the minute
  const past = big(sheet, day, null, 20 + 1441);
  assert.equal(past.word, "past");
  assert.match(past.label, /plan Hall for a new day/);
  assert.match(big(sheet, day, null, -2000).label, /begin Hall; the plan is for/);
});

test("where two spray a fill entered for one leaves the other's to come, and says whose it is", () => {
  speak("en");
  const fill = (by: string, at: number, band = "c.1.1") => ({
    coat: "c", band, at, minutes: 1, litres: 7, by, door: "", kind: "", tank: null }) as unknown as Sheet["fills"][number];
  const row = (id: string, hand: number): Field["bands"][number] => [id, hand, 5, 6, 0, 1, 0];
  const sheet = {
    starts_at: "2026-06-08T08:00:00-06:00", coats: [{ id: "c" }], mixes: [], clocks: [], rooms: {}, shapes: [],
    fields: [{ id: "c.1", coat: "c", no: 1, rooms: [], start: 5, end: 6, low: 9, bands: [row("c.1.1", 1), row("c.1.2", 2)] }],
    fills: [fill("sprayer", 1), fill("sprayer 2", 1), fill("helper to sprayer 2", 9, "c.1.2")],
  } as unknown as Sheet;
  const entry = (n: number, about: Entry["about"]) => ({ at: n, entry: {
    id: `e${n}`, job: "q", word: "filled", at: "", who: "", device: "a", number: n, era: 0, about, version: 1 } });
  const left = (...told: Entry["about"][]) => dayOf(sheet, told.map((about, n) => entry(n, about))).fills.map((one) => `${one.by} ${one.at}`);
  assert.deepEqual(left(), ["sprayer 1", "sprayer 2 1", "helper to sprayer 2 9"]);
  assert.deepEqual(left({ sprayer: "2" }), ["sprayer 1", "helper to sprayer 2 9"]);
  assert.deepEqual(left({ sprayer: "2" }, { sprayer: "2" }), ["sprayer 1"]);
  assert.deepEqual(left({}), ["sprayer 2 1", "helper to sprayer 2 9"]);
  assert.deepEqual(left({ sprayer: "2" }, {}), ["helper to sprayer 2 9"]);
  assert.equal(whoseTank(sheet, sheet.fills[2]), " · sprayer 2");
  assert.equal(whoseTank({ ...sheet, fields: [] }, sheet.fills[2]), "");
});
