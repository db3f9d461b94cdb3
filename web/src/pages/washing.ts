/** The wash day: rooms with what each asks for, what was done in one, and strips. */
import { nextRoom, type Round, type Step, type Wash } from "../pure/rinsing.ts";
import { short as shortOf } from "../pure/say.ts";
import { isWord, w } from "../pure/words.ts";
import { key, safe, top, type Shown } from "./shown.ts";

/** What is read: a rinse with its rag, one more strip of it, the tap, the unstained patch. */
export type What = "rinse" | "strip" | "tap" | "bare";

/** The room in hand (empty: the whole floor) and what was picked for the entry to come. */
export interface Picked {
  room: string;
  what: What;
  ph: number | null;
  rag: "" | "clean" | "grey" | "coloured";
}

export const PHS = [4, 5, 5.5, 6, 6.5, 7, 7.5, 8, 8.5, 9, 10, 11];
const RAGS = ["clean", "grey", "coloured"] as const;

/** What a room asks for: by the book where it has just answered, else by this phone. */
const stepOf = (s: Shown, room: string): Step => s.washBook?.[room] ?? s.wash!.steps[room]!;

export function washing(s: Shown): string {
  const { wash } = s;
  if (!wash) return `${top()}<h1>${w("washKey")}</h1><p>${w("washNone")}</p>`;
  const order = s.sheet.washing!.order;
  const keys = order.map((room) => key(`wash-room ${room}`, `${safe(nameOf(s, room))}<b>${safe(short(s, room))}</b>`));
  const next = wash.over ? null : nextRoom(order, stepsOf(s), "");
  const told = wash.over ? w("washOver") : next === null ? w("allEnough") : begun(wash) ? `${w("nextRoom", { room: nameOf(s, next) })}.` : w("washFirst");
  const read = (name: "tapKey" | "bareKey", what: What, ph: number | null) =>
    key(`wash-read ${what}`, `${w(name)}<b>${ph === null ? w("notRead") : w("phShort", { ph })}</b>`);
  return `${top(true, undoKey(s))}<h1>${w("washKey")}</h1><p>${safe(told)} ${w(by(s))}</p>
<div class="two rooms">${keys.join("")}${key("wash-room ", w("allOfIt"))}</div>
<div class="two foot">${read("tapKey", "tap", wash.wanted.tap)}${read("bareKey", "bare", wash.wanted.bare)}</div>`;
}

const begun = (wash: Wash) => Object.values(wash.rounds).some((one) => one.length > 0);
const by = (s: Shown) => (s.washBook ? "washByBook" : "washByPhone");
const nameOf = (s: Shown, room: string) => (room ? s.sheet.rooms[room] ?? room : w("allOfIt"));
const undoKey = (s: Shown) => (s.last ? key("undo", `${w("undo")}<b>${safe(shortOf(s.sheet, s.last))}</b>`) : "<span></span>");

const stepsOf = (s: Shown): Record<string, Step> =>
  Object.fromEntries(s.sheet.washing!.order.map((room) => [room, stepOf(s, room)]));

/** `rinse again, 1 to 3`. */
function short(s: Shown, room: string): string {
  const { verdict, code, more } = stepOf(s, room);
  if (code === "not-rinsed") return w("short-not-rinsed");
  const what = w(code === "dry-swipe-passed" ? "short-dry" : `short-${verdict}`);
  if (!more) return what;
  return w(more[0] === more[2] ? "shortMoreOne" : "shortMore", { what, low: more[0], high: more[2] });
}

/** One room: what it asks for and why, and a key for each thing that is done in it. */
export function washRoom(s: Shown, room: string): string {
  const { wash } = s;
  if (!wash) return washing(s);
  const asks = room && !wash.over ? answer(s, room) : wash.over ? `<p>${w("washOver")}</p>` : "";
  const swipes = `${key("wash-swipe clean", w("cleanKey"))}${key("wash-swipe powder", w("powderKey"))}`;
  const step = room && !wash.over ? stepOf(s, room) : null;
  const next = step?.verdict === "enough" ? nextRoom(s.sheet.washing!.order, stepsOf(s), room) : null;
  const on = next === null ? "" : `<div class="one">${key(`wash-room ${next}`, safe(w("nextRoom", { room: nameOf(s, next) })))}</div>`;
  return `<div class="three">${key("go wash", w("back"))}${undoKey(s)}${key("go eyes", w("eyesKey"), "red")}</div>
<h1>${safe(nameOf(s, room))}</h1>${asks}${on}
<div class="foot">${key("wash-read rinse", w("rinsedKey"), "main")}</div>
<div class="three">${key("wash-did neutralised", w("neutralisedKey"))}${key("wash-did scrubbed", w("scrubbedKey"))}${key("wash-did vacuumed", w("vacuumedKey"))}
${key("wash-read strip", w("stripKey"))}${swipes}</div>`;
}

function answer(s: Shown, room: string): string {
  const rounds = s.wash!.rounds[room] ?? [];
  const step = stepOf(s, room);
  return `<p class="asks">${safe(doing(step))}</p><p>${safe(why(s, step, rounds, room))} ${safe(moreTold(step))}</p>
<p>${safe(soFar(rounds))} ${w(by(s))}${s.washBook || !asksMore(step) ? "" : ` ${w("moreByBook")}`}</p><p>${w("washRank")}</p>`;
}

function doing(step: Step): string {
  if (step.code === "new-concrete") return w(`sealer-${step.sealer}` as "sealer-null");
  const told = `do-${step.code}`;
  return isWord(told) ? w(told) : "";
}

function why(s: Shown, step: Step, rounds: Round[], room: string): string {
  const told = `why-${step.code}`;
  if (!isWord(told)) return "";
  const phs = rounds.at(-1)?.phs ?? [];
  const worst = ["acid", "low"].includes(step.code) ? Math.min(...phs) : Math.max(...phs);
  const { low, high } = s.wash!.wanted;
  return w(told, { ph: phs.length ? worst : "", low, high, read: phs.length, readings: s.sheet.washing!.readings[room] ?? 1 });
}

function moreTold({ more, code }: Step): string {
  if (!more) return "";
  const [low, likely, high] = more;
  const head = code === "not-rinsed" ? "first" : "more";
  return w(`${head}${likely === 1 ? "1" : ""}${low === high ? "" : "To"}`, { low, likely, high });
}

const asksMore = ({ verdict, code }: Step) => ["rinse", "scrub"].includes(verdict) || code === "not-rinsed";

function soFar(rounds: Round[]): string {
  const last = rounds.at(-1);
  if (!last) return "";
  const ph = last.phs.length ? Math.min(...last.phs) : w("nothing");
  return w("soFar", { n: rounds.length, ph, rag: last.rag ? w(last.rag) : w("nothing") });
}

const TITLES = { strip: "readStrip", tap: "readTap", bare: "readBare" } as const;

/** Strips: of a rinse with its rag, entered together; of all else one tap enters it. */
export function washRead(s: Shown, picked: Picked): string {
  const { room, what, ph, rag } = picked;
  const n = (s.wash?.rounds[room]?.length ?? 0) + 1;
  const title = what !== "rinse" ? w(TITLES[what]) : room ? w("readRinse", { n }) : w("readRinseAll");
  const strips = PHS.map((one) => {
    const act = what === "rinse" ? `wash-ph ${one}` : `wash-strip ${one}`;
    return `<button data-do="${act}" aria-pressed="${one === ph}">${one}</button>`;
  });
  const rags = RAGS.map((one) => `<button data-do="wash-rag ${one}" aria-pressed="${one === rag}">${w(one)}</button>`);
  const told = `${w("rinseWord")}${ph === null ? "" : w("rinseAnd", { ph })}${rag ? w("ragAnd", { rag: w(rag) }) : ""}`;
  const back = ["tap", "bare"].includes(what) ? "go wash" : `wash-room ${room}`;
  const where = room && what === "rinse" || what === "strip" ? `<p>${safe(nameOf(s, room))}</p>` : "";
  return `<div class="three">${key(back, w("back"))}<span></span>${key("go eyes", w("eyesKey"), "red")}</div>
<h1>${safe(title)}</h1>${where}
<h2>${w("phTitle")}</h2><div class="four strips">${strips.join("")}</div>
${what === "rinse" ? `<h2>${w("ragTitle")}</h2><div class="three">${rags.join("")}</div>
<div class="foot">${key("wash-enter", w("enterRinse", { what: told }), "main")}</div>` : `<p>${w("oneTap")}</p>`}`;
}
