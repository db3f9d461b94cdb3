/** What the pages of the sample day are drawn from, and the parts they share. */
import { sampleDay, type Course, type Planned, type SampleDay, type Stand, type Step, type Task } from "../pure/sampling.ts";
import type { Asked } from "./figures.ts";
import type { Kit } from "./kit.ts";
import { rankIn, worded, type Key } from "./words.ts";

/** What is picked for the wash that is to be entered. */
export interface Washed { scrubs: number | null; ph_before: number | null; ph: number | null; rag: string; held: string }
export const NO_WASH: Washed = { scrubs: null, ph_before: null, ph: null, rag: "", held: "" };

/** What the pages remember between two taps; none of it outlives the page, and nothing is lost with it. */
export interface Hand { sample: string; asked: Asked; wash: Washed; trouble: string; name: string }
export const newHand = (): Hand =>
  ({ sample: "", asked: { figure: "", sample: "", typed: "" }, wash: NO_WASH, trouble: "", name: "" });

export interface Shown {
  kit: Kit;
  course: Course;
  day: SampleDay;
  at: number;
  hand: Hand;
  t: (key: Key, values?: Record<string, string | number>) => string;
}

export function shownBy(kit: Kit, course: Course, hand: Hand): Shown {
  const at = kit.minute(course.starts_at);
  const day = sampleDay(course, kit.happened(course.starts_at), at);
  return { kit, course, day, at, hand, t: (key, values) => worded(kit.language(), key, values) };
}

/** What is in hand: the sample that was picked, also where it waits or is done, else the first task of all. */
export function taskOf(s: Shown): Task | null {
  const { tasks } = s.day;
  const mine = tasks.find((one) => one.sample === s.hand.sample);
  const stand = standOf(s, s.hand.sample);
  return mine ?? (stand ? { sample: stand.sample, step: stand.step, from: stand.from } : tasks[0] ?? null);
}

export const standOf = (s: Shown, id: string): Stand | undefined => s.day.stands.find((one) => one.sample === id);
export const sampleOf = (s: Shown, id: string): Planned | undefined => s.day.samples.find((one) => one.id === id);

/** Of a step: name, short name, what to do, caution, in the language of the page. */
export const says = (s: Shown, step: string): [string, string, string, string] =>
  s.course.says[s.kit.language()]?.[step] ?? ["", step, "", ""];

export const figureName = (s: Shown, figure: string): string => s.course.figures[s.kit.language()]?.[figure] ?? figure;

/** `B1 · 1:1 · planned`. */
export function nameOf(s: Shown, one: Planned): string {
  const rung = one.rung ? s.t(one.rung) : "";
  const cut = one.cut === "neat" ? s.t("neat") : one.cut;
  return [one.id, cut, rung].filter(Boolean).join(" · ");
}

/** Those that stand at this very step. */
export const besides = (s: Shown, step: Step): string[] =>
  s.day.stands.filter((one) => one.step === step && !one.waits).map((one) => one.sample);

/** `7:42`, from an hour on `1:07 h`. */
export function watch(minutes: number): string {
  const seconds = Math.max(Math.floor(minutes * 60), 0);
  const two = (n: number) => String(n).padStart(2, "0");
  const hours = Math.floor(seconds / 3600);
  return hours ? `${hours}:${two(Math.floor(seconds / 60) % 60)} h` : `${Math.floor(seconds / 60)}:${two(seconds % 60)}`;
}

/** A wait in words: minutes up to two hours, then hours to the half. */
export function lasts(minutes: number): string {
  return minutes < 120 ? `${Math.round(minutes)} min` : `${Math.round(minutes / 30) / 2} h`;
}

/** The hour on the wall as the units in use have it, with the day of the month where it is another. */
export function clockAt(s: Shown, minute: number): string {
  const then = new Date(Date.now() + (minute - s.at) * 60_000);
  const hourCycle = s.kit.units() === "us" ? "h12" : "h23";
  const hour = then.toLocaleTimeString(s.kit.language(), { hour: "numeric", minute: "2-digit", hourCycle });
  const today = then.toDateString() === new Date().toDateString();
  return today ? hour : `${then.toLocaleDateString(s.kit.language(), { weekday: "short" })} ${hour}`;
}

/** How long it usually takes, low to high, and the rank of that. */
export function usually(s: Shown, stand: Stand, name: string): string {
  const wait = stand.running.find((one) => one.name === name)?.wait;
  if (!wait) return "";
  if (wait.low_min === null || wait.likely_min === null) return s.t("noClock");
  const high = wait.high_min === null ? "…" : lasts(wait.high_min);
  return s.t("usually", { low: lasts(wait.low_min), high, likely: lasts(wait.likely_min), rank: rankIn(s.kit.language(), wait.rank) });
}

/** The head of each page behind the day's: back to it, eyes and spills. */
export const head = (s: Shown, to = "go samples"): string =>
  `<div class="three">${s.kit.key(to, s.t("back"))}<span></span>${s.kit.eyes()}</div>`;
