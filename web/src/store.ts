/** The page's own memory: one record, changed in transactions so that two tabs lose nothing. */
import { asked, ended, openBase } from "./base.ts";
import type { Entry, FromBook } from "./pure/entry.ts";
import { jumped, type Clocks } from "./pure/era.ts";
import { nextId, type Last } from "./pure/ids.ts";
import { newPhone, tapped, type Phone } from "./pure/phone.ts";
import type { Pours } from "./pure/pouring.ts";
import type { Course } from "./pure/sampling.ts";
import type { Sheet } from "./pure/sheet.ts";
import type { Draft } from "./samples/kit.ts";
import type { Photo } from "./photo.ts";

export interface Memory {
  phone: Phone;
  last: Last;
  number: number;
  era: number;
  clocks: Clocks;
  /** Seconds that this clock was ahead of the book's, by era. */
  offs: Record<string, number>;
}

/** The rest of a day as the book laid it anew: up to which place of the log it knows, and when. */
export interface Rest {
  upto: number;
  at: number;
  /** How many entries it knows. */
  entries: number;
  sheet: Sheet | null;
  /** Why there is none. */
  no: string[];
}

export interface JobMemory {
  key: string;
  sheet: Sheet | null;
  others: FromBook[];
  pulled: number;
  rest: Rest | null;
  /** What the book said last, and when by this phone. */
  said: { lines: string[]; langs?: string[]; at: number } | null;
  lot: string;
  /** The table of the gate, in which language, and when it was fetched by this phone. */
  pours?: { table: Pours; language: string; at: number } | null;
  /** The sample day, and what was read before a sample is laid. */
  samples?: Course | null;
  draft?: Draft;
}

export const NO_JOB: JobMemory = {
  key: "", sheet: null, others: [], pulled: 0, rest: null, said: null, lot: "",
};

export interface Wishes {
  tone: boolean;
  shake: boolean;
  speech: boolean;
  awake: boolean;
  /** Stronger lines and black, for a screen in the sun. */
  sun: boolean;
  /** Keys of a headset, by the media session. */
  headset: boolean;
  /** Empty: as the job has it. */
  units: "" | "us" | "metric";
  language: "" | "en" | "es";
  who: string;
}

export const WISHES: Wishes = {
  tone: true, shake: true, speech: false, awake: true, sun: false, headset: false,
  units: "", language: "", who: "",
};

let held: IDBDatabase | null = null;

/** What the page began before this script was there (`early.js`); nothing in the one file. */
export interface Early { key: string; told?: Promise<Response>; base?: Promise<IDBDatabase>; words: { language: "en" | "es"; told: Promise<Response> } }
export const early = (): Early | undefined => (window as { early?: Early }).early;

/** The base is let go of where another page wants to change it, or the browser closed it. */
async function opened(): Promise<IDBDatabase> {
  const begun = early()?.base;
  delete early()?.base;
  const base = await (begun ?? openBase());
  base.onversionchange = () => { held = null; base.close(); };
  base.onclose = () => { held = null; };
  return base;
}

let opening: Promise<IDBDatabase> | null = null;

async function db(): Promise<IDBDatabase> {
  if (held) return held;
  opening ??= opened().finally(() => { opening = null; });
  held = await opening;
  return held;
}

const store = async (name: string, mode: IDBTransactionMode = "readonly") => (await db()).transaction(name, mode).objectStore(name);

export async function read<T>(key: string, otherwise: T): Promise<T> {
  return ((await asked((await store("kept")).get(key))) as T | undefined) ?? otherwise;
}

/**
 * The record after a change. Not yet on the disk: what may be lost here with the power is learned
 * anew, for an answer of the book that is forgotten only has entries offered again.
 */
export async function change<T>(key: string, otherwise: T, step: (one: T) => T): Promise<T> {
  const kept = await store("kept", "readwrite");
  const done = ended(kept.transaction);
  const then = step(((await asked(kept.get(key))) as T | undefined) ?? otherwise);
  kept.put(then, key);
  await done;
  return then;
}

/** A photo by its SHA-256; undefined where it does not lie here. */
export async function photo(sha: string): Promise<ArrayBuffer | undefined> {
  return (await asked((await store("photos")).get(sha))) as ArrayBuffer | undefined;
}

/** Let go of the photos that no entry on this phone names. */
export async function forgetPhotos(named: Set<string>): Promise<void> {
  const photos = await store("photos", "readwrite");
  const done = ended(photos.transaction);
  for (const sha of await asked(photos.getAllKeys())) if (!named.has(String(sha))) photos.delete(sha);
  await done;
}

export function steady(): number {
  return performance.now();
}

export function emptyMemory(): Memory {
  const bytes = crypto.getRandomValues(new Uint8Array(5));
  const name = Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
  return {
    phone: newPhone(`phone-${name}`), last: { ms: 0, count: 0 }, number: 0, era: 0,
    clocks: { wall: Date.now(), steady: null }, offs: {},
  };
}

/** The page's own steady clock began anew with it: what an earlier page saw of it is no measure. */
let before: Clocks | null = null;

/** With the clocks looked at: the era counts up when the wall clock jumped. */
export function lookedAt(memory: Memory, at: number): Memory {
  const now: Clocks = { wall: at, steady: steady() };
  const then: Clocks = before ?? { wall: memory.clocks.wall, steady: null };
  before = now;
  return { ...memory, clocks: now, era: memory.era + (jumped(then, now) ? 1 : 0) };
}

export interface Tap {
  job: string;
  word: string;
  about: Entry["about"];
  at: number;
  who: string;
}

/** The entry that a tap makes, when it is on the disk, with its photo in the same step. */
export async function enter(tap: Tap, taken: Photo | null = null): Promise<Memory> {
  const writing = (await db()).transaction(["kept", "photos"], "readwrite", { durability: "strict" });
  const done = ended(writing);
  const kept = writing.objectStore("kept");
  const memory = ((await asked(kept.get("memory"))) as Memory | undefined) ?? emptyMemory();
  const seen = lookedAt(memory, Date.now());
  const made = nextId(seen.last, Date.now(), crypto.getRandomValues(new Uint8Array(8)));
  const entry: Entry = {
    id: made.id, job: tap.job, word: tap.word, at: moment(tap.at), who: tap.who,
    device: seen.phone.device, number: seen.number + 1, era: seen.era, about: tap.about, version: 1,
  };
  const then = { ...seen, last: made.last, number: entry.number, phone: tapped(seen.phone, entry) };
  if (taken) writing.objectStore("photos").put(taken.content, taken.sha);
  kept.put(then, "memory");
  await done;
  return then;
}

/** ISO 8601 with the offset of this phone. */
export function moment(ms: number): string {
  const at = new Date(ms);
  const off = -at.getTimezoneOffset();
  const local = new Date(ms + off * 60_000).toISOString().slice(0, -1);
  const two = (n: number) => String(Math.floor(Math.abs(n))).padStart(2, "0");
  return `${local}${off < 0 ? "-" : "+"}${two(off / 60)}:${two(off % 60)}`;
}
