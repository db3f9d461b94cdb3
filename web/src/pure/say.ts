/** Words and figures for the page. Pure. */
import { bandName, handOf, roomsOf, twoSpray, type Fill, type Sheet } from "./sheet.ts";
import { isWord, w } from "./words.ts";
import type { Day } from "./day.ts";
import type { Entry } from "./entry.ts";

export type Units = "us" | "metric";
const L_PER_GAL = 3.785411784;

/** `1.6 gal` or `6.1 L`. */
export function volume(litres: number, units: Units): string {
  return units === "us" ? `${(litres / L_PER_GAL).toFixed(1)}\u00a0gal` : `${litres.toFixed(1)}\u00a0L`;
}

/** The same to a hundredth, for what is measured out. */
export function measured(litres: number, units: Units): string {
  return units === "us" ? `${(litres / L_PER_GAL).toFixed(2)}\u00a0gal` : `${litres.toFixed(2)}\u00a0L`;
}

/** A text with each number tied to its unit or half of the day: no line ends between them. */
export const bound = (text: string): string =>
  text.replace(/(?<=[\d½]) (?=(?:gal|L|mL|ft²|m²|ft|m|mm|min|h|s|lb|kg|g|°F|°C|%|ppm|am|pm|[ap]\. m\.)(?![\w²³]))/g, "\u00a0");

/** The size of a step of tank and tub in litres: a tenth, and a half or one. */
export function steps(units: Units): [number, number] {
  return units === "us" ? [L_PER_GAL / 10, L_PER_GAL / 2] : [0.25, 1];
}

/** `3:54`, `12 min` from 100 minutes on `1 h 40`; past its time with a minus. */
export function countdown(minutes: number): string {
  const sign = minutes < 0 ? "−" : "";
  const s = Math.floor(Math.abs(minutes) * 60);
  if (s >= 6000) return `${sign}${Math.floor(s / 3600)} h ${String(Math.floor(s / 60) % 60).padStart(2, "0")}`;
  return `${sign}${Math.floor(s / 60)}:${String(s % 60).padStart(2, "0")}`;
}

/** The clock at the house at a minute of the plan: `9:42 am`, in a metric job `9:42`. */
export function clock(sheet: Sheet, minute: number): string {
  return wall(sheet, Date.parse(sheet.starts_at) + (minute + zoneOf(sheet.starts_at)) * 60_000);
}

/** Minutes that a zone is ahead, of a moment in ISO 8601. */
export function zoneOf(moment: string): number {
  const found = /([+-])(\d\d):?(\d\d)$/.exec(moment);
  return found ? (found[1] === "-" ? -1 : 1) * (Number(found[2]) * 60 + Number(found[3])) : 0;
}

/** local: milliseconds, with the zone counted in. */
function wall(sheet: Sheet, local: number): string {
  const at = new Date(local);
  return hour(at.getUTCHours(), at.getUTCMinutes(), sheet.units ?? "us");
}

/** A clock that shows so much else than the floor's is told of. Rank: guess. */
const AWAY_MIN = 3;

/**
 * What it is on the floor, and what this phone shows, where they are minutes apart: its clock is off,
 * or it goes by another zone. offS: seconds that it is ahead · zone: minutes of its zone.
 */
export function clockAway(sheet: Sheet, offS: number, ms: number, zone: number): { at: string; here: string } | null {
  const here = ms + zone * 60_000;
  const floor = ms - offS * 1000 + zoneOf(sheet.starts_at) * 60_000;
  return Math.abs(here - floor) > AWAY_MIN * 60_000 ? { at: wall(sheet, floor), here: wall(sheet, here) } : null;
}

/** The date at the house at a minute of the plan, `2026-05-14`. */
export const dateAt = (sheet: Sheet, minute: number): string =>
  new Date(Date.parse(sheet.starts_at) + (minute + zoneOf(sheet.starts_at)) * 60_000).toISOString().slice(0, 10);

/** A time of day as a job of these units has it. */
export function hour(hours: number, minutes: number, units: Units): string {
  const past = String(minutes).padStart(2, "0");
  if (units === "metric") return `${hours}:${past}`;
  return `${hours % 12 || 12}:${past}\u00a0${w(hours < 12 ? "am" : "pm")}`;
}

/** The day of the plan in the language of the page, `Thu, May 14`; no line ends in it. */
export function dayTold(sheet: Sheet): string {
  const day = new Date(`${sheet.starts_at.slice(0, 10)}T00:00:00Z`);
  const told = { weekday: "short", day: "numeric", month: "short", timeZone: "UTC" } as const;
  return day.toLocaleDateString(w("languageIs"), told).replaceAll(" ", "\u00a0");
}

/** `Great room · band 4 of 8`. */
export function where(sheet: Sheet, day: Day): string {
  if (!day.field || !day.band) return w("whereDone");
  const n = day.field.bands.findIndex((row) => row[0] === day.band!.id) + 1;
  return w("whereBand", { rooms: roomsOf(sheet, day.field), n, of: day.field.bands.length });
}

/** What the job calls the stain of a coat; its id where it has no name. */
export const stainOf = (coat: Sheet["coats"][number]): string => coat.stain_name ?? coat.stain;

export interface Big {
  /** What stands large: counts down to this minute, or is a word. */
  until: number | null;
  word: string;
  label: string;
  edge: boolean;
}

const FAR_MIN = 24 * 60;
/** An edge so long past its time is no news: then entries are missing, as `job/live/rules.py` has it. */
export const QUIET_MIN = 30;

/** More than a day beyond the plan's last field, as `web/live_jobs.py` has it: nothing of it is begun. */
function isPast(sheet: Sheet, now: number): boolean {
  return now > Math.max(...sheet.fields.map((one) => one.end)) + FAR_MIN;
}

/** The one big thing. due: the minute of the edge, from the book or from the sheet. */
export function big(sheet: Sheet, day: Day, due: number | null, now: number): Big {
  if (due !== null && now - due > QUIET_MIN) {
    return word(w("enterWord"), w("enterLabel", { at: clock(sheet, due) }));
  }
  if (due !== null) return { until: due, word: "", label: w("edgeLabel"), edge: true };
  if (day.wait) return waiting(sheet, day.wait, now);
  if (!day.field) return word(w("done"), w("nothingLeft"));
  if (day.begun) return word(w("goOn"), w("noEdge"));
  const rooms = roomsOf(sheet, day.field);
  if (day.field.cannot) return word(w("cannotWord"), w("cannotLabel", { rooms }));
  if (isPast(sheet, now)) return word(w("pastWord"), w("pastLabel", { rooms, day: dayTold(sheet) }));
  const start = day.field.start + (day.late ?? 0);
  if (Math.abs(start - now) > FAR_MIN) {
    const on = { rooms, day: dayTold(sheet) };
    return word(clock(sheet, day.field.start), w("beginOn", on));
  }
  const at = clock(sheet, start);
  const what = w("beginAt", { rooms, at });
  if (start > now) return { until: start, word: "", label: w("untilYou", { what }), edge: false };
  return word(w("begin"), w("beginBy", { rooms, at }));
}

const word = (text: string, label: string): Big => ({ until: null, word: text, label, edge: false });

/** How far a figure can be trusted, in the words of the page. */
function rankWord(rank: string): string {
  const key = `rank-${rank}`;
  return isWord(key) ? w(key) : rank;
}

/** Between coats. */
function waiting(sheet: Sheet, { clock: wait, from }: NonNullable<Day["wait"]>, now: number): Big {
  const likely = wait.likely_min;
  const state = w(wait.name === "dry to recoat" ? "recoat" : "neutralise");
  if (likely === null) return word(w("wait"), w("notInSight", { state }));
  const early = wait.low_min === null ? "" : w("lookFrom", { at: clock(sheet, from + wait.low_min) });
  if (now >= from + likely) return word(w("look"), w("whether", { state }));
  const label = w("untilLikely", { state, early, rank: rankWord(wait.rank) });
  return { until: from + likely, word: "", label, edge: false };
}

/** `Bath–Hall door`, in the words of the page. */
export function doorWords(fill: Fill): string {
  if (!fill.kind || !fill.way) return fill.kind === "" ? w("wayNone") : fill.door;
  const key = { door: "wayDoor", opening: "wayOpening", "outside door": "wayOutside" } as const;
  return w(key[fill.kind], { rooms: fill.way.join("–") });
}

/** `Full tank to the Laundry–Hall door at 9:42`. */
export function fillLine(sheet: Sheet, fill: Fill & { then: number }): string {
  const at = clock(sheet, fill.then);
  return w(fill.by.startsWith("helper") ? "fullTank" : "fillTank", { door: doorWords(fill), at }) + whoseTank(sheet, fill);
}

/** Behind a tank where two spray: whose it is. */
export const whoseTank = (sheet: Sheet, fill: Fill | undefined): string =>
  fill && twoSpray(sheet) ? ` · ${w("sprayerNo", { n: handOf(fill) })}` : "";

/** A few words for an entry: what `undo` would strike. */
export function short(sheet: Sheet, entry: Entry): string {
  const band = String(entry.about["band"] ?? "");
  const field = sheet.fields.find((one) => one.bands.some((row) => row[0] === band));
  if (entry.word === "band-done" && field) return w("band-done", { band: bandName(sheet, field, band) });
  if (entry.word === "sealed" && entry.about["lot"]) return w("sealedLot", { lot: String(entry.about["lot"]) });
  return isWord(entry.word) ? w(entry.word).toLowerCase() : entry.word.replace("-", " ");
}

/** What is said aloud, and when [minutes left]. */
export const CALLS = [[2, "say2"], [1, "say1"], [0.5, "say30"], [10 / 60, "say10"], [0, "say0"]] as const;

/** The call between two looks at what is left, the most pressing one; null for none. */
export function callBetween(before: number, now: number): [number, string] | null {
  const found = CALLS.filter(([at]) => before > at && now <= at).pop();
  return found ? [found[0], w(found[1])] : null;
}
