/** What the page knows between two taps, and what can be told from it. */
import { inOrder, struck, type Happened } from "./pure/story.ts";
import type { Day } from "./pure/day.ts";
import { once } from "./pure/doubled.ts";
import { NO_QUESTION, type Asked, type Table } from "./pages/pouring.ts";
import type { Picked } from "./pages/washing.ts";
import type { Step } from "./pure/rinsing.ts";
import type { Entry } from "./pure/entry.ts";
import { offOf } from "./pure/era.ts";
import type { Reading } from "./pure/reading.ts";
import { clockAway, type Units } from "./pure/say.ts";
import type { Sheet } from "./pure/sheet.ts";
import { languageOf, speak, w } from "./pure/words.ts";
import { learn, spoken } from "./tongue.ts";
import { photosOf, type NowAnswer } from "./send.ts";
import { NO_JOB, WISHES, type JobMemory, type Memory, type Wishes } from "./store.ts";

const FRESH_MS = 90_000;
const inside = document.getElementById("sheet");
const given = inside ? (JSON.parse(inside.textContent ?? "null") as Sheet) : null;

/** The one file that needs no server carries its plan. */
export const alone = given !== null;
export const job = given ? given.id : decodeURIComponent(location.pathname.split("/")[2] ?? "");

export const now = {
  sheet: given,
  memory: null as unknown as Memory,
  mine: NO_JOB as JobMemory,
  wishes: WISHES as Wishes,
  answer: null as { told: NowAnswer; at: number } | null,
  lastTap: 0,
  signal: "" as "" | "none" | "ok",
  trouble: "",
  view: "run",
  pickedAt: 0,
  reading: { tank: null, tub: null } as Reading,
  /** The room whose washing is in hand, and what is picked for its next entry. */
  wash: { room: "", what: "rinse", ph: null, rag: "" } as Picked,
  /** What the book said of washing, and when. */
  washed: null as { rooms: Record<string, Step>; at: number } | null,
  /** The question to the gate in hand. */
  pour: NO_QUESTION as Asked,
  day: null as Day | null,
  due: null as number | null,
};

/** The plan in hand: the rest of the day where the book laid it anew, else the morning's. */
export function using(): Sheet | null {
  const rest = now.mine.rest?.sheet;
  return rest && now.sheet && rest.inputs_hash === now.sheet.inputs_hash ? rest : now.sheet;
}

/** The table of the gate: fetched apart, or in the one file, where nobody knows how old it is. */
export function pourTable(): Table | null {
  const { pours } = now.mine;
  if (pours) return { pours: pours.table, age: Date.now() - pours.at, at: minute(now.sheet!, pours.at) };
  return given?.pours ? { pours: given.pours, age: null, at: null } : null;
}

export const units = (): Units => now.wishes.units || now.sheet?.units || "us";

/** Speak as was chosen, as the job has it, or as the phone does; as before where those words cannot be had. */
export async function speakAsWished(): Promise<void> {
  const language = languageOf(now.wishes.language, now.sheet?.language ?? "", navigator.languages);
  if (await learn(language)) speak(language);
  spoken(w("languageIs"));
  document.documentElement.lang = w("languageIs");
  document.body.classList.toggle("sun", now.wishes.sun);
}

export const own = (): Entry[] => {
  const { kept, waiting } = now.memory.phone;
  return [...Object.values(kept).map(([one]) => one), ...Object.values(waiting)].filter((one) => one.job === job);
};
export const waiting = () => Object.values(now.memory.phone.waiting).filter((one) => one.job === job);
export const off = () => offOf(now.memory.offs, now.memory.era) ?? 0;
export const minute = (s: Sheet, at = Date.now()) => (at - off() * 1000 - Date.parse(s.starts_at)) / 60_000;

/** What the book said, where it has answered since the last tap. */
export function fresh(): NowAnswer["now"] | null {
  return isFresh(now.answer) ? now.answer!.told.now : null;
}

/** The same of what each room asks for. */
export function freshWashing(): Record<string, Step> | null {
  return isFresh(now.washed) && Object.keys(now.washed!.rooms).length ? now.washed!.rooms : null;
}

const isFresh = (told: { at: number } | null) =>
  told !== null && Date.now() - told.at < FRESH_MS && told.at > now.lastTap && !waiting().length;

const WASHING = ["neutralised", "scrubbed", "vacuumed", "rinsed", "strip-read", "dry-swiped"];

/** Whether the book is to be asked about washing. */
export const washes = (s: Sheet) => Boolean(s.washing)
  && (now.view.startsWith("wash") || happened(s).some(({ entry }) => WASHING.includes(entry.word)));

export const happened = (s: Sheet): Happened[] =>
  once(s, inOrder(s.starts_at, own(), now.mine.others, now.memory.offs));

/** What `undo` would strike: the last entry of this phone that holds. */
export function lastOwn(): Entry | null {
  const all = own();
  const gone = struck(all);
  const left = all.filter((one) => one.word !== "struck" && !gone.has(one.id));
  return left.sort((a, b) => a.number - b.number).pop() ?? null;
}

export function status(): string {
  const n = waiting().length;
  const many = n === 1 ? w("entry1") : w("entries", { n });
  if (alone) return n ? w("aloneSome", { many }) : w("aloneNone");
  const turned = Object.keys(now.memory.phone.turned).length;
  if (turned) return w("turnedAway", { many, n: turned });
  if (n) return w("notSent", { many });
  if (now.trouble) return now.trouble;
  return w(now.signal === "none" ? "noSignal" : now.signal === "ok" ? "allSent" : "asking");
}

/** Behind the status: that this phone's own clock shows another time than the floor's, if it does. */
export function away(s: Sheet): string {
  const found = clockAway(s, off(), Date.now(), -new Date().getTimezoneOffset());
  return found ? w("clockAway", found) : "";
}

export const photosWaiting = () => photosOf(waiting()).length;
