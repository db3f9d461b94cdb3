/** The screen: pages drawn when something changed, figures between drawings, alarms as time runs down. */
import { call } from "./alarm.ts";
import { mixing } from "./mixing.ts";
import { eyes } from "./pages/eyes.ts";
import { book, helper, label, look } from "./pages/helper.ts";
import { note, rooms, stopped, tank } from "./pages/logging.ts";
import { askKey, phone, waiting, who } from "./pages/phone.ts";
import { washing, washRead, washRoom } from "./pages/washing.ts";
import { pour, pourList, pourWhere } from "./pages/pouring.ts";
import { run } from "./pages/run.ts";
import { top, type Mixing, type Shown, type Told } from "./pages/shown.ts";
import { hasPaper } from "./paper.ts";
import { dayOf, type Day } from "./pure/day.ts";
import { big, callBetween, clock, countdown, QUIET_MIN } from "./pure/say.ts";
import { batchRefused, type Reason } from "./pure/pouring.ts";
import { washOf } from "./pure/rinsing.ts";
import { roomsOf, type Sheet } from "./pure/sheet.ts";
import type { Happened } from "./pure/story.ts";
import { w } from "./pure/words.ts";
import { alone, away, fresh, freshWashing, happened, lastOwn, minute, now, photosWaiting, pourTable, status, units, using, waiting as unsent } from "./state.ts";

const root = document.getElementById("page")!;
let leftBefore = Infinity;

/** The minute of the edge and who says so. */
function edgeOf(found: Day): { due: number | null; by: string } {
  const book_ = fresh();
  const told = book_ && book_.field === (found.begun ? found.field?.id : "");
  const theirs = told ? book_.alarms.find((one) => one.kind === "edge") : undefined;
  if (theirs) return { due: theirs.at_min, by: w("byBook") };
  const s = using()!;
  const at = s === now.sheet ? "" : clock(s, now.mine.rest!.at);
  if (found.due !== null) return { due: found.due, by: at ? w("byRest", { at }) : w("byPlan") };
  return { due: found.careful, by: found.careful === null ? "" : w("byLast") };
}

function toldBy(s: Sheet): Told {
  const { said, rest } = now.mine;
  const laid = rest?.sheet ? { at: rest.at, entries: rest.entries } : null;
  return {
    lines: said?.lines ?? [], langs: said?.langs ?? [], at: said ? minute(s, said.at) : null, laid, no: rest?.no ?? [],
  };
}

function mixedAt(all: Happened[], coat: string): number | null {
  const last = all.filter(({ entry }) => entry.word === "mixed" && entry.about["coat"] === coat).pop();
  return last ? last.at : null;
}

function shown(s: Sheet): Shown {
  const all = happened(s);
  const known = now.answer?.told.now;
  let found = dayOf(s, all);
  if (known && known.coat === found.coat) found = dayOf(s, all, known.open_low_min || null);
  now.day = found;
  const at = minute(s);
  const edge = edgeOf(found);
  const mix = mixing(s, found, fresh());
  now.due = edge.due;
  const stops = fresh()?.advice.some((one) => one.stop);
  const past = edge.due !== null && edge.due < at && at - edge.due <= QUIET_MIN;
  // The book's first line is the stop, in words: `NOW 9:42 am: STOP. Feather it out.`
  const stop = stops ? (now.answer!.told.said[0] ?? "").replace(/^\S+ \d+:\d\d[^:]*: /, "") : wetBelow(s, found, at) || (past ? w("past") : refusedField(s, found));
  return {
    sheet: s, day: found, now: at, big: big(s, found, edge.due, at), by: edge.by, stop, status: status(), away: away(s),
    waits: unsent().length > 0,
    last: lastOwn(), wishes: now.wishes, units: units(), lot: now.mine.lot, mixedAt: mixedAt(all, found.coat), alone, paper: hasPaper(),
    turned: Object.values(now.memory.phone.turned).flat(), photos: photosWaiting(), trouble: now.trouble,
    mixing: mix, refused: refusedBy(s, mix), wash: s.washing ? washOf(s, all) : null, washBook: freshWashing(), told: toldBy(s), room: free,
  };
}

/** NO, before a field is begun that cannot be done as planned. */
const refusedField = (s: Sheet, { field, begun }: Day): string =>
  field?.cannot && !begun ? w("cannotField", { rooms: roomsOf(s, field) }) : "";

/** STOP, where a coat is entered on one that is still wet; a tap by mistake is undone. */
const wetBelow = (s: Sheet, { wet, field }: Day, at: number): string =>
  wet && field && at < wet.until ? w("wetBelow", { rooms: roomsOf(s, wet.field), at: clock(s, wet.until) }) : "";

/** Why the gate refuses what is to be mixed next, by the table that lies here. */
function refusedBy(s: Sheet, { parts }: Mixing): Reason | null {
  const coat = s.coats.find((one) => one.id === parts?.coat);
  const table = pourTable();
  return parts && coat && table ? batchRefused(table.pours, coat.stain, parts.acid_l > 0) : null;
}

/** The room that the picture has: what the rest of the page leaves. */
let free = { wide: 0, high: 0 };

export function resized(): void {
  free = { wide: 0, high: 0 };
  draw();
}

function measure(): void {
  const pic = root.querySelector<HTMLElement>(".pic");
  if (!pic) return;
  const then = { wide: pic.clientWidth, high: Math.floor(pic.clientHeight) };
  if (then.wide === free.wide && then.high === free.high) return;
  free = then;
  draw();
}

function pageOf(s: Sheet): string {
  const one = shown(s);
  const [name, more = ""] = now.view.split(" ");
  const made: Record<string, () => string> = {
    run: () => run(one), helper: () => helper(one), label: () => label(one), look: () => look(one), book: () => book(one),
    eyes, note: () => note(one), phone: () => phone(one), who: () => who(one), stopped,
    pour: () => pour(one, now.pour, pourTable()), pourwhere: () => pourWhere(pourTable()),
    pourlist: () => pourList(pourTable(), more === "brought"),
    wash: () => washing(one), washroom: () => washRoom(one, now.wash.room), washread: () => washRead(one, now.wash),
    tank: () => tank(one, now.reading), rooms: () => rooms(one, more), paper: () => top(),
  };
  return (made[name!] ?? made["run"]!)();
}

let last = "";

/** The page of the sample day: given by `acts.ts`, for it enters what is tapped. */
let samplesShown = () => "";
export function drawSamplesBy(page: () => string): void {
  samplesShown = page;
}

export function draw(): void {
  if (!now.memory) return; // the one file has its plan before its memory, and windows are resized early
  const s = using();
  const html = now.view.startsWith("sample") && now.mine.key && !alone ? samplesShown()
    : s ? pageOf(s)
    : now.view === "eyes" ? eyes()
      : now.mine.key ? waiting(now.trouble || w("fetching")) : askKey(now.trouble);
  document.body.dataset["view"] = s || now.view.startsWith("sample") ? now.view.split(" ")[0]! : "";
  if (html !== last) put(html);
  if (s) document.title = w("title", { job: s.job });
  figures();
  measure();
}

/** The page anew; a key that had the focus of the keyboard has it again. */
function put(html: string): void {
  last = html;
  const had = document.activeElement as HTMLElement | null;
  const [id, does] = [had?.id, had?.dataset["do"]];
  root.innerHTML = html;
  if (!had || had === document.body) return;
  const again = [...root.querySelectorAll<HTMLElement>("[data-do], [id]")]
    .find((one) => (does ? one.dataset["do"] === does : id ? one.id === id : false));
  again?.focus({ preventScroll: true });
}

/** A key that is drawn anew under a finger loses its tap: news waits until the finger is off. */
let pressed = false;
let late = false;

export function redraw(): void {
  late = pressed;
  if (!pressed) draw();
}

export function press(): void {
  pressed = true;
}

export function lift(): void {
  pressed = false;
  setTimeout(() => { if (late) redraw(); }, 50); // after the click that comes of it
}

export function show(next: string): void {
  now.view = next;
  draw();
  window.scrollTo(0, 0);
}

/** After a tap all calls of the edge come anew. */
export function callAnew(): void {
  leftBefore = Infinity;
}

/** Every 200 ms: calls as the edge runs down, and the figures. */
export function tick(): void {
  const s = using();
  if (!s || !now.day) return;
  if (now.due === null) {
    leftBefore = Infinity;
  } else {
    const left = now.due - minute(s);
    const found = callBetween(leftBefore, left);
    if (found) call(found[1], found[0] < 0.6, now.wishes);
    const ended = leftBefore > 0 && left <= 0;
    leftBefore = left;
    if (ended && now.view === "run") redraw();
  }
  figures();
}

/** Between drawings only the figures run. */
function figures(): void {
  const s = using();
  const output = document.getElementById("big");
  if (!s || !now.day || !output) return;
  const at = minute(s);
  const told = big(s, now.day, now.due, at);
  const text = told.until === null ? told.word : countdown(told.until - at);
  if (output.textContent !== text) output.textContent = text;
  output.classList.toggle("long", text.length > 5);
  output.classList.toggle("longer", text.length > 6);
  output.classList.toggle("out", told.edge && told.until !== null && told.until - at < 1);
  const share = now.due === null ? 0 : Math.min(Math.max((now.due - at) / Math.max(now.day.low, 1e-9), 0), 1);
  document.getElementById("left")?.setAttribute("width", String(share * 100));
}
