/** When there is signal: what waits goes to the book, by the steps of the queue. */
import type { FromBook } from "./pure/entry.ts";
import { answered, toAsk, toOffer, told } from "./pure/phone.ts";
import type { Sheet } from "./pure/sheet.ts";
import { change, emptyMemory, lookedAt, moment, read, type JobMemory, type Memory } from "./store.ts";

export const NO_JOB: JobMemory = { key: "", sheet: null, others: [], pulled: 0 };
const PATIENCE_MS = 15_000;

/** What the book answered, or why not: `signal` false when nobody answered at all. */
export class NoAnswer extends Error {
  constructor(readonly signal: boolean, message: string, readonly status = 0) {
    super(message);
  }
}

interface Offered {
  new: string[];
  known: string[];
  turned: { id: string; why: string[] }[];
  places: number;
  received_at: string;
}

export interface Alarm { at_min: number; kind: string; what: string }
export interface Advice { stop: boolean; reason: string; do: string; rank: string }
export interface NowAnswer {
  place: number;
  now: {
    at_min: number; coat: string; field: string; open_low_min: number;
    alarms: Alarm[]; advice: Advice[];
    first_batch: { stain_l: number; water_l: number; acid_l: number } | null;
    more_mix: { litres: number; how: string; before_field: string } | null;
  };
  said: string[];
}

async function ask<T>(key: string, path: string, body?: unknown): Promise<T> {
  const giveUp = new AbortController();
  const timer = setTimeout(() => giveUp.abort(), PATIENCE_MS);
  try {
    const answer = await fetch(path, {
      method: body === undefined ? "GET" : "POST",
      headers: { Authorization: `Bearer ${key}`, "Content-Type": "application/json" },
      signal: giveUp.signal,
      cache: "no-store",
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    });
    const told_ = await answer.json();
    if (!answer.ok) {
      const why = [told_.error, ...(told_.mistakes ?? [])].filter(Boolean).join(" ");
      throw new NoAnswer(true, why, answer.status);
    }
    return told_ as T;
  } catch (error) {
    if (error instanceof NoAnswer) throw error;
    throw new NoAnswer(false, "no signal");
  } finally {
    clearTimeout(timer);
  }
}

const today = () => new Date().toISOString().slice(0, 10);
const of = (job: string) => `/api/jobs/${encodeURIComponent(job)}`;
const remember = (step: (one: Memory) => Memory) => change("memory", emptyMemory(), step);

/** Offer what waits until nothing new is left, ask once a day. Raises NoAnswer. */
export async function offer(key: string): Promise<void> {
  let memory = await remember((one) => lookedAt(one, Date.now()));
  const ids = toAsk(memory.phone, today());
  if (ids.length) {
    const { missing } = await ask<{ missing: string[] }>(key, "/api/have", { ids });
    memory = await remember((one) => ({ ...one, phone: told(one.phone, missing, today()) }));
  }
  let offered = new Set<string>();
  for (;;) {
    const batch = toOffer(memory.phone).filter((one) => !offered.has(one.id));
    if (!batch.length) return;
    for (const one of batch) offered.add(one.id);
    const { era } = memory;
    const sent = Date.now();
    const found = await ask<Offered>(key, "/api/entries", {
      device: memory.phone.device, era, sent_at: moment(sent), entries: batch,
    });
    const places = memory.phone.places;
    const turned = Object.fromEntries(found.turned.map((one) => [one.id, one.why]));
    const taken = [...found.new, ...found.known];
    memory = await remember((one) => ({
      ...one,
      offs: { ...one.offs, [era]: (sent - Date.parse(found.received_at)) / 1000 },
      phone: answered(one.phone, { taken, turned, places: found.places, today: today() }),
    }));
    if (found.places < places) offered = new Set(); // an older book: all that it lost goes again
  }
}

/** The plan of the job as the phone carries it. Raises NoAnswer. */
export async function fetchSheet(job: string, key: string): Promise<JobMemory> {
  const sheet = await ask<Sheet>(key, `${of(job)}/sheet`);
  return change(`job ${job}`, NO_JOB, (one) => ({ ...one, key, sheet }));
}

/** What others logged for this job. Raises NoAnswer. */
export async function fetchOthers(job: string, key: string): Promise<JobMemory> {
  const before = await read(`job ${job}`, NO_JOB);
  const path = `${of(job)}/entries?after=${before.pulled}`;
  const found = await ask<{ entries: FromBook[] }>(key, path);
  if (!found.entries.length) return before;
  return change(`job ${job}`, NO_JOB, (one) => {
    const known = new Set(one.others.map((each) => each.entry.id));
    const fresh = found.entries.filter((each) => !known.has(each.entry.id));
    const pulled = Math.max(one.pulled, ...found.entries.map((each) => each.place));
    return { ...one, others: [...one.others, ...fresh], pulled };
  });
}

/** What to do now, by the book. Raises NoAnswer. */
export function fetchNow(job: string, key: string): Promise<NowAnswer> {
  return ask<NowAnswer>(key, `${of(job)}/now`);
}
