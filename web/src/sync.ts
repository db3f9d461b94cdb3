/** All that is asked of the book, one round at a time. */
import { draw, redraw } from "./draw.ts";
import { leftBehind } from "./pure/phone.ts";
import { w } from "./pure/words.ts";
import { fetchNow, fetchOthers, fetchRest, fetchPours, fetchSamples, fetchSheet, fetchWashing, NoAnswer, offer } from "./send.ts";
import { alone, freshWashing, job, now, speakAsWished, status, using, washes } from "./state.ts";
import { change, NO_JOB, read } from "./store.ts";

/** Pages that are drawn anew when something is heard. */
const LIVE = ["run", "helper", "book", "phone", "wash", "washroom", "pour", "samples", "samplesall"];
const SHEET_EVERY_MS = 300_000;
let sheetAt = 0;
let sending = false;
/** What was asked for while a round was going on: another one, or that no tap is left behind by it. */
type Again = "" | "round" | "taps";
let again: Again = "";
/** The first round brings what a tap needs; the table of the gate comes with the next. */
let poursAt = -Infinity;
let fetching = false;
let firstRound = true;
const QUIET_MS = 5000;
/** Up to which place of the log this page has had the rest of the day laid anew. */
let askedUpto = -1;

const seen = () => [status(), now.answer?.told.place, JSON.stringify(freshWashing()), now.mine.pulled, now.mine.pours?.at, now.mine.rest?.upto, using()?.inputs_hash].join();

/** After a tap (`taps`) the round that goes on is enough where it still took the tap along. */
export async function sync(wanted: "round" | "taps" = "round"): Promise<void> {
  if (alone || !now.mine.key) return;
  if (sending) {
    if (again !== "round") again = wanted; // it goes right after, not with the next look
    return;
  }
  [sending, again] = [true, "" as Again];
  const before = seen();
  try {
    await rounds(now.mine.key);
    [now.signal, now.trouble] = ["ok", ""];
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error;
    now.signal = error.signal ? "ok" : "none";
    now.trouble = error.status === 404 && !using() ? w("noJob") : error.signal ? error.message : "";
    if (error.status === 401) return keyWanted(w("keyWrong"));
  } finally {
    sending = false;
    now.memory = await read("memory", now.memory);
    const shown = LIVE.includes(now.view);
    if ((!using() && !now.view.startsWith("sample")) || (shown && (before !== seen() || now.view === "run"))) redraw();
    const due = again === "round" || (again === "taps" && leftBehind(now.memory.phone));
    if (due && now.signal === "ok" && now.mine.key) void sync();
    else if (now.signal === "ok") void freshPours(now.mine.key).then(freshSamples);
  }
}

async function freshSheet(key: string): Promise<void> {
  now.mine = await fetchSheet(job, key);
  now.sheet = now.mine.sheet;
  await speakAsWished();
  sheetAt = Date.now();
}

/** The table of the gate, beside the rounds: nothing of the day waits for it, and it for all taps. */
async function freshPours(key: string): Promise<void> {
  const asked = now.view.startsWith("pour");
  const quiet = !firstRound && Date.now() - now.lastTap > QUIET_MS;
  firstRound = false;
  const { pours } = now.mine;
  const old = !pours || pours.language !== w("languageIs") || Date.now() - poursAt > SHEET_EVERY_MS;
  if (!old || fetching || !(asked || quiet)) return;
  fetching = true;
  try {
    now.mine = await fetchPours(job, key);
    poursAt = Date.now();
    if (asked) redraw();
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error; // the next round asks again
  } finally {
    fetching = false;
  }
}

let samplesAt = 0;
/** As the table of the gate it comes with the second round, when there is something to tap. */
let quietRounds = 0;

/** With signal and quiet it comes by itself, so that it lies here when there is none. */
async function freshSamples(): Promise<void> {
  const quiet = Date.now() - now.lastTap > QUIET_MS;
  quietRounds += 1;
  if (alone || !quiet || quietRounds < 2 || (samplesAt && Date.now() - samplesAt < SHEET_EVERY_MS)) return;
  samplesAt = Date.now();
  now.mine = await fetchSamples(job, now.mine.key).catch((error: unknown) => {
    if (error instanceof NoAnswer) return now.mine; // a book of before knows no sample day
    throw error;
  });
}

/** The sample day comes before there is a plan: it waits for none, and its entries do not either. */
async function sampleRound(key: string): Promise<void> {
  if (!now.mine.samples || Date.now() - samplesAt > SHEET_EVERY_MS) {
    now.mine = await fetchSamples(job, key);
    samplesAt = Date.now();
    redraw();
  }
  await offer(key);
  now.memory = await read("memory", now.memory);
  now.mine = await fetchOthers(job, key);
}

async function rounds(key: string): Promise<void> {
  if (now.view.startsWith("sample")) await sampleRound(key);
  if (!using() || !now.mine.sheet) { // with the plan there is something to tap: all else comes after
    const alike = now.view.startsWith("sample");
    const none = await freshSheet(key).then(() => false, (error: unknown) => {
      if (alike && error instanceof NoAnswer && error.signal && error.status !== 401) return true;
      throw error;
    });
    if (none) return; // samples are made before there is a plan
    redraw();
  }
  await offer(key);
  now.memory = await read("memory", now.memory);
  if (Date.now() - sheetAt > SHEET_EVERY_MS) await freshSheet(key);
  now.mine = await fetchOthers(job, key);
  const asked = Date.now();
  const told = await fetchNow(job, key);
  now.answer = { told, at: asked };
  now.mine = await read(`job ${job}`, now.mine);
  if (washes(using()!)) now.washed = { rooms: await fetchWashing(job, key), at: asked };
  const newer = told.rest_upto !== null && told.rest_upto > (now.mine.rest?.upto ?? -1);
  const due = told.again.word === "again" && told.place > askedUpto && (told.rest_upto ?? -1) < told.place;
  if (due) askedUpto = told.place;
  if (newer || due) now.mine = await fetchRest(job, key);
}

export function keyWanted(told: string): void {
  now.trouble = told;
  if (!using()) now.mine = { ...now.mine, key: "" };
  draw();
}

export async function opened(key: string): Promise<void> {
  if (!key) return;
  now.mine = await change(`job ${job}`, NO_JOB, (one) => ({ ...one, key }));
  if (!now.view.startsWith("sample")) now.view = "run";
  draw();
  await sync();
}

/** The key out of the address into the page's memory. */
export async function takeKey(): Promise<void> {
  const key = location.hash.slice(1);
  if (!key || alone) return;
  now.mine = await change(`job ${job}`, NO_JOB, (one) => ({ ...one, key: decodeURIComponent(key) }));
  history.replaceState(null, "", location.pathname + location.search);
}
