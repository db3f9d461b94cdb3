/** Words and figures for the page. Pure. */
import { bandName, roomsOf, type Fill, type Sheet } from "./sheet.ts";
import type { Day } from "./day.ts";
import type { Entry } from "./entry.ts";

export type Units = "us" | "metric";
const L_PER_GAL = 3.785411784;

/** `1.6 gal` or `6.1 L`. */
export function volume(litres: number, units: Units): string {
  return units === "us" ? `${(litres / L_PER_GAL).toFixed(1)} gal` : `${litres.toFixed(1)} L`;
}

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

/** The clock at the house at a minute of the plan, `9:42`. */
export function clock(sheet: Sheet, minute: number): string {
  const found = /([+-])(\d\d):?(\d\d)$/.exec(sheet.starts_at);
  const off = found ? (found[1] === "-" ? -1 : 1) * (Number(found[2]) * 60 + Number(found[3])) : 0;
  const at = new Date(Date.parse(sheet.starts_at) + (minute + off) * 60_000);
  return `${at.getUTCHours()}:${String(at.getUTCMinutes()).padStart(2, "0")}`;
}

/** `Great room · band 4 of 8`. */
export function where(sheet: Sheet, day: Day): string {
  if (!day.field || !day.band) return "All that is planned is sprayed";
  const n = day.field.bands.findIndex((row) => row[0] === day.band!.id) + 1;
  return `${roomsOf(sheet, day.field)} · band ${n} of ${day.field.bands.length}`;
}

/** `Coat 2, dark 1:2`. */
export function coatWords(sheet: Sheet, coat: string): string {
  const n = sheet.coats.findIndex((one) => one.id === coat);
  const found = sheet.coats[n];
  return found ? `Coat ${n + 1}, ${found.stain} ${found.cut}` : coat;
}

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

/** The one big thing. due: the minute of the edge, from the book or from the sheet. */
export function big(sheet: Sheet, day: Day, due: number | null, now: number): Big {
  if (due !== null && now - due > QUIET_MIN) {
    const label = `what was sprayed since: the edge was due at ${clock(sheet, due)}`;
    return { until: null, word: "enter", label, edge: false };
  }
  if (due !== null) {
    return { until: due, word: "", label: "minutes left on the live edge", edge: true };
  }
  if (day.wait) {
    const { clock: wait, from } = day.wait;
    const likely = wait.likely_min;
    const state = wait.name === "dry to recoat" ? "dry to recoat" : "dry to neutralise";
    if (likely === null) return { until: null, word: "wait", label: `not ${state} in sight: look`, edge: false };
    const early = wait.low_min === null ? "" : `, look from ${clock(sheet, from + wait.low_min)}`;
    const label = `until likely ${state}${early} · ${wait.rank}`;
    if (now < from + likely) return { until: from + likely, word: "", label, edge: false };
    return { until: null, word: "look", label: `whether it is ${state}`, edge: false };
  }
  if (!day.field) return { until: null, word: "done", label: "nothing left to spray", edge: false };
  if (day.begun) return { until: null, word: "go on", label: "no edge waits in this field", edge: false };
  const start = day.field.start + (day.late ?? 0);
  if (Math.abs(start - now) > FAR_MIN) {
    const at = sheet.starts_at.slice(0, 10);
    return { until: null, word: clock(sheet, day.field.start), label: `begin ${roomsOf(sheet, day.field)}; the plan is for ${at}`, edge: false };
  }
  const label = `begin ${roomsOf(sheet, day.field)} at ${clock(sheet, start)}`;
  if (start > now) return { until: start, word: "", label: `until you ${label}`, edge: false };
  return { until: null, word: "begin", label: `${roomsOf(sheet, day.field)}: ${clock(sheet, start)} by the plan`, edge: false };
}

/** `full tank to the Laundry–Hall door at 9:42`. */
export function fillLine(sheet: Sheet, fill: Fill & { then: number }): string {
  const what = fill.by === "helper" ? "Full tank" : "Fill the tank";
  return `${what} to the ${fill.door} at ${clock(sheet, fill.then)}`;
}

/** A few words for an entry: what `undo` would strike. */
export function short(sheet: Sheet, entry: Entry): string {
  const band = String(entry.about["band"] ?? "");
  const field = sheet.fields.find((one) => one.bands.some((row) => row[0] === band));
  if (entry.word === "band-done" && field) return `${bandName(field, band)} done`;
  return entry.word.replace("-", " ");
}

/** What is said aloud, and when [minutes left]. */
export const CALLS: [number, string][] = [
  [2, "two minutes on the edge"],
  [1, "one minute"],
  [0.5, "thirty seconds"],
  [10 / 60, "ten seconds"],
  [0, "the edge is out of time"],
];

/** The call between two looks at what is left, the most pressing one; null for none. */
export function callBetween(before: number, now: number): [number, string] | null {
  return CALLS.filter(([at]) => before > at && now <= at).pop() ?? null;
}
