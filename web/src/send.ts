/** When there is signal: what waits goes to the book, by the steps of the queue. */
import { w } from "./pure/words.ts";
import type { Entry, FromBook } from "./pure/entry.ts";
import { withOthers } from "./pure/others.ts";
import { answered, MOST_AT_ONCE, toAsk, toOffer, told } from "./pure/phone.ts";
import type { Answer, Pours } from "./pure/pouring.ts";
import type { Step } from "./pure/rinsing.ts";
import type { Course } from "./pure/sampling.ts";
import type { Sheet } from "./pure/sheet.ts";
import { change, early, emptyMemory, lookedAt, moment, NO_JOB, photo, read, type JobMemory, type Memory, type Rest } from "./store.ts";

const PATIENCE_MS = 15_000;
const PHOTO_PATIENCE_MS = 90_000;

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
  said_in: string[];
  again: { word: string };
  rest_upto: number | null;
  laying_anew: boolean;
}

async function ask<T>(key: string, path: string, body?: unknown, begun?: Promise<Response>): Promise<T> {
  const file = body instanceof ArrayBuffer;
  const giveUp = new AbortController();
  const timer = setTimeout(() => giveUp.abort(), file ? PHOTO_PATIENCE_MS : PATIENCE_MS);
  try {
    const answer = await (begun ?? fetch(path, {
      method: body === undefined ? "GET" : file ? "PUT" : "POST",
      headers: {
        Authorization: `Bearer ${key}`,
        "Accept-Language": w("languageIs"), // what the book says comes in the language of the page
        "Content-Type": file ? "application/octet-stream" : "application/json",
      },
      signal: giveUp.signal,
      cache: "no-store",
      ...(body === undefined ? {} : { body: file ? body : JSON.stringify(body) }),
    }));
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

/** The photos that entries name. */
export const photosOf = (entries: Entry[]): string[] =>
  [...new Set(entries.filter((one) => one.word === "photo").map((one) => String(one.about["file"])))];

interface Missing { missing: string[]; missing_files: string[] }

/** Send the photos that the book lacks; back come those that lie nowhere. Raises NoAnswer. */
async function sendPhotos(key: string, lacking: string[]): Promise<Set<string>> {
  const nowhere = new Set<string>();
  for (const sha of lacking) {
    const content = await photo(sha);
    if (content) await ask(key, `/api/files/${sha}`, content);
    else nowhere.add(sha);
  }
  return nowhere;
}

/** How far this phone's clock is off, so that it knows before its first tap too. Raises NoAnswer. */
async function learnClock(key: string, era: number): Promise<Memory> {
  const sent = Date.now();
  const told_ = await ask<{ now: string }>(key, "/api/clock");
  const off = ((sent + Date.now()) / 2 - Date.parse(told_.now)) / 1000;
  return remember((one) => ({ ...one, offs: { ...one.offs, [era]: off } }));
}

/** Offer what waits until nothing new is left, ask once a day. Raises NoAnswer. */
export async function offer(key: string): Promise<void> {
  let memory = await remember((one) => lookedAt(one, Date.now()));
  if (!(memory.era in memory.offs)) memory = await learnClock(key, memory.era);
  const ids = toAsk(memory.phone, today());
  if (ids.length) {
    const files = photosOf(Object.values(memory.phone.kept).map(([one]) => one));
    const { missing, missing_files } = await ask<Missing>(key, "/api/have", { ids, files });
    await sendPhotos(key, missing_files); // a book put back from a copy gets its photos back too
    memory = await remember((one) => ({ ...one, phone: told(one.phone, missing, today()) }));
  }
  // Words are short and go first; a photo on a weak signal holds up none of them.
  await offerSome(key, (one) => one.word !== "photo");
  const waiting = Object.values((await read("memory", memory)).phone.waiting);
  const files = photosOf(waiting);
  if (!files.length) return;
  const { missing_files } = await ask<Missing>(key, "/api/have", { ids: [], files });
  const nowhere = await sendPhotos(key, missing_files);
  await offerSome(key, (one) => !nowhere.has(String(one.about["file"])));
}

/** Offer the entries that fit, in the order of tapping, each once in a round. */
async function offerSome(key: string, fits: (one: Entry) => boolean): Promise<void> {
  let memory = await read("memory", emptyMemory());
  let offered = new Set<string>();
  for (;;) {
    const left = toOffer(memory.phone, Infinity).filter((one) => fits(one) && !offered.has(one.id));
    const batch = left.slice(0, MOST_AT_ONCE);
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
  const page = early();
  const begun = page?.key === key ? page.told : undefined;
  delete page?.told;
  const sheet = await ask<Sheet>(key, `${of(job)}/sheet`, undefined, begun);
  return change(`job ${job}`, NO_JOB, (one) => {
    const same = one.sheet?.inputs_hash === sheet.inputs_hash && one.sheet.starts_at === sheet.starts_at;
    return { ...NO_JOB, ...one, key, sheet, rest: same ? one.rest ?? null : null };
  });
}

/**
 * What others logged for this job. The last one known is asked for along: where it is not in its place
 * any more, an older book was put back and gave its places anew, so all is fetched. Raises NoAnswer.
 */
export async function fetchOthers(job: string, key: string): Promise<JobMemory> {
  const before = await read(`job ${job}`, NO_JOB);
  const last = before.pulled ? before.others.find((one) => one.place === before.pulled) : undefined;
  const behind = (place: number) => ask<{ entries: FromBook[] }>(key, `${of(job)}/entries?after=${place}`);
  let found = await behind(last ? before.pulled - 1 : before.pulled);
  const anew = last !== undefined && found.entries[0]?.entry.id !== last.entry.id;
  if (anew) found = await behind(0);
  if (!anew && found.entries.length === (last ? 1 : 0) && last?.clock_off_s === found.entries[0]?.clock_off_s) return before;
  return change(`job ${job}`, NO_JOB, (one) => withOthers(one, found.entries, anew));
}

/** What to do now, by the book; what it says is kept for when there is no signal. Raises NoAnswer. */
export async function fetchNow(job: string, key: string): Promise<NowAnswer> {
  const found = await ask<NowAnswer>(key, `${of(job)}/now`);
  const said = { lines: found.said, langs: found.said_in, at: Date.now() };
  await change(`job ${job}`, NO_JOB, (one) => ({ ...one, said }));
  return found;
}

/** The table of the gate in the language of the page, kept for when there is no signal. Raises NoAnswer. */
export async function fetchPours(job: string, key: string): Promise<JobMemory> {
  const [language, at] = [w("languageIs"), Date.now()];
  const table = await ask<Pours>(key, `${of(job)}/pours`);
  return change(`job ${job}`, NO_JOB, (one) => ({ ...one, pours: { table, language, at } }));
}

/** The sample day as it is planned; it asks for no plan. Raises NoAnswer. */
export async function fetchSamples(job: string, key: string): Promise<JobMemory> {
  const { course } = await ask<{ course: Course }>(key, `${of(job)}/sample-day`);
  return change(`job ${job}`, NO_JOB, (one) => ({ ...one, key, samples: course }));
}

/** One question to the gate. Raises NoAnswer. */
export async function fetchVerdict(job: string, key: string, things: string[], vessel: string): Promise<Answer> {
  const asked = new URLSearchParams([["vessel", vessel], ...things.map((one) => ["thing", one])]);
  return ask<Answer>(key, `${of(job)}/pour?${asked}`);
}

/** What each room asks for after its rinses, by the book. Raises NoAnswer. */
export const fetchWashing = async (job: string, key: string): Promise<Record<string, Step>> =>
  (await ask<{ rooms: Record<string, Step> }>(key, `${of(job)}/washing`)).rooms;

/**
 * The rest of the day, where the book laid it anew from more than this phone has seen. To ask is to
 * have it laid: the book does so when the plan no longer holds. Raises NoAnswer.
 */
export async function fetchRest(job: string, key: string): Promise<JobMemory> {
  const rest = await ask<Rest>(key, `${of(job)}/sheet/rest`);
  return change(`job ${job}`, NO_JOB, (one) => ({
    ...one, rest: rest.upto > (one.rest?.upto ?? -1) ? { ...rest, sheet: rest.sheet ?? one.rest?.sheet ?? null } : one.rest,
  }));
}
