/** The page of the run sheet: taps in, entries on the disk, what to do next on the screen. */
import "./slab.css";
import { call, keepAwake } from "./alarm.ts";
import { listenToHands, save } from "./hands.ts";
import { mixing } from "./mixing.ts";
import * as pages from "./pages.ts";
import { dayOf, type Day } from "./pure/day.ts";
import type { Entry } from "./pure/entry.ts";
import { guess, stepped, type Reading } from "./pure/reading.ts";
import { big, callBetween, countdown, QUIET_MIN } from "./pure/say.ts";
import type { Sheet } from "./pure/sheet.ts";
import { inOrder, struck } from "./pure/story.ts";
import { fetchNow, fetchOthers, fetchSheet, NO_JOB, NoAnswer, offer, type NowAnswer } from "./send.ts";
import { change, emptyMemory, enter, read, WISHES, type JobMemory, type Memory, type Wishes } from "./store.ts";

const EVERY_MS = 20_000;
const SHEET_EVERY_MS = 300_000;
const FRESH_MS = 90_000;
const root = document.getElementById("page")!;
const inside = document.getElementById("sheet");

let sheet: Sheet | null = inside ? (JSON.parse(inside.textContent ?? "null") as Sheet) : null;
const alone = sheet !== null;
const job = sheet ? sheet.id : decodeURIComponent(location.pathname.split("/")[2] ?? "");
let memory: Memory;
let mine: JobMemory = NO_JOB;
let wishes: Wishes = WISHES;
let answer: { told: NowAnswer; at: number } | null = null;
let lastTap = 0;
let sheetAt = 0;
let signal: "" | "none" | "ok" = "";
let trouble = "";
let view = "run";
let pickedAt = 0;
let reading: Reading = { tank: null, tub: null };
let leftBefore = Infinity;
let sending = false;
let due: number | null = null;
let day: Day | null = null;

const own = (): Entry[] =>
  [...Object.values(memory.phone.kept).map(([one]) => one), ...Object.values(memory.phone.waiting)]
    .filter((one) => one.job === job);
const unsent = () => Object.values(memory.phone.waiting).filter((one) => one.job === job).length;
const off = () => memory.offs[memory.era] ?? 0;
const minute = (s: Sheet) => (Date.now() - off() * 1000 - Date.parse(s.starts_at)) / 60_000;
const fresh = () => answer !== null && Date.now() - answer.at < FRESH_MS && answer.at > lastTap && !unsent();

function lastOwn(): Entry | null {
  const gone = struck(own());
  const left = own().filter((one) => one.word !== "struck" && !gone.has(one.id));
  return left.sort((a, b) => a.number - b.number).pop() ?? null;
}

function status(): string {
  const n = unsent();
  const many = n === 1 ? "1 entry" : `${n} entries`;
  if (alone) return n ? `${many} on this phone: save them` : "Nothing logged on this phone yet";
  const turned = Object.keys(memory.phone.turned).length;
  if (turned) return `${many} not sent, ${turned} turned away: see Phone`;
  if (n) return `${many} on this phone not sent yet`;
  if (trouble) return trouble;
  return signal === "none" ? "No signal · nothing waits here" : signal === "ok" ? "All is sent" : "Asking the book …";
}

/** The minute of the edge and who says so. */
function edgeOf(found: Day): { due: number | null; by: string } {
  const told = fresh() && answer!.told.now.field === (found.begun ? found.field?.id : "");
  const theirs = told ? answer!.told.now.alarms.find((one) => one.kind === "edge") : undefined;
  if (theirs) return { due: theirs.at_min, by: "by the book" };
  if (found.due !== null) return { due: found.due, by: "by this phone, from the plan" };
  return { due: found.careful, by: found.careful === null ? "" : "by this phone, from the last band" };
}

function shown(s: Sheet): pages.Shown {
  const all = inOrder(s.starts_at, own(), mine.others, memory.offs);
  const book = answer?.told.now;
  let found = dayOf(s, all);
  if (book && book.coat === found.coat) found = dayOf(s, all, book.open_low_min || null);
  day = found;
  const now = minute(s);
  const edge = edgeOf(found);
  due = edge.due;
  const stops = fresh() ? book!.advice.filter((one) => one.stop) : [];
  const past = due !== null && due < now && now - due <= QUIET_MIN;
  const stop = stops[0]
    ? `STOP. ${stops[0].do}`
    : past ? "Past its time. Where the gloss is gone: stop and feather it out dry." : "";
  const turned = Object.values(memory.phone.turned).flat();
  return {
    sheet: s, day: found, now, big: big(s, found, due, now), by: edge.by, stop, status: status(),
    last: lastOwn(), wishes, turned, alone,
    mixing: mixing(s, found, fresh() ? book! : null),
    room: room(),
  };
}

/** The room that the picture has: what the rest of the page leaves. */
let free = { wide: 0, high: 0 };
const room = () => free;

function measure(): void {
  const pic = root.querySelector<HTMLElement>(".pic");
  if (!pic) return;
  const then = { wide: pic.clientWidth, high: Math.floor(pic.clientHeight) };
  if (then.wide === free.wide && then.high === free.high) return;
  free = then;
  draw();
}

function draw(): void {
  if (!sheet) {
    root.innerHTML = view === "eyes" ? pages.eyes()
      : mine.key ? pages.waiting(trouble || "Fetching the plan …") : pages.askKey(trouble);
    return;
  }
  const s = shown(sheet);
  const [name, more = ""] = view.split(" ");
  const made: Record<string, () => string> = {
    run: () => pages.run(s), helper: () => pages.helper(s), eyes: pages.eyes, note: pages.note,
    phone: () => pages.phone(s), stopped: pages.stopped, tank: () => pages.tank(s, reading),
    rooms: () => pages.rooms(s, more),
  };
  root.innerHTML = (made[name!] ?? made["run"]!)();
  document.title = `${s.sheet.job} · run sheet`;
  measure();
}

/** A key that is drawn anew under a finger loses its tap: news waits until the finger is off. */
let pressed = false;
let late = false;

function redraw(): void {
  late = pressed;
  if (!pressed) draw();
}

function lifted(): void {
  pressed = false;
  setTimeout(() => { if (late) redraw(); }, 50); // after the click that comes of it
}

function show(next: string): void {
  view = next;
  draw();
}

/** Between drawings only the figures run. */
function tick(): void {
  if (!sheet || !day) return;
  const now = minute(sheet);
  if (due !== null) {
    const left = due - now;
    const found = callBetween(leftBefore, left);
    if (found) call(found[1], found[0] < 0.6, wishes);
    if (leftBefore > 0 && left <= 0 && view === "run") redraw();
    leftBefore = left;
  } else {
    leftBefore = Infinity;
  }
  if (view !== "run") return;
  const at = big(sheet, day, due, now);
  const text = at.until === null ? at.word : countdown(at.until - now);
  const output = document.getElementById("big");
  if (output && output.textContent !== text) output.textContent = text;
  output?.classList.toggle("out", at.edge && at.until !== null && at.until - now < 1);
  const bar = document.getElementById("left");
  if (bar && due !== null) {
    const share = Math.min(Math.max((due - now) / Math.max(day.low, 1e-9), 0), 1);
    bar.setAttribute("width", String(share * 100));
  }
}

async function log(word: string, about: Entry["about"], at = Date.now()): Promise<void> {
  memory = await enter({ job, word, about, at, who: wishes.who });
  lastTap = Date.now();
  leftBefore = Infinity;
  show("run");
  void sync();
}

const sprayedCoat = () => {
  const last = sheet?.fields.filter((one) => day?.floor.begun.includes(one.id)).pop();
  return last?.coat ?? day?.coat ?? "";
};

/** Every key of every page: what it does. */
async function act(told: string): Promise<void> {
  const [word = "", ...rest] = told.split(" ");
  const arg = rest.join(" ");
  if (word === "key") return opened((document.getElementById("key") as HTMLInputElement).value.trim());
  if (word === "hurt" || word === "near") return other(word, arg);
  if (!sheet || !day) return word === "go" ? show(arg) : undefined;
  if (word === "go") {
    if (arg === "tank") reading = { tank: null, tub: null };
    return show(arg);
  }
  if (word === "main") {
    if (view === "run" && day.band) await log("band-done", { band: day.band.id });
  } else if (word === "undo") {
    const last = lastOwn();
    if (last) await log("struck", { entry: last.id });
  } else if (word === "filled") {
    const then = day.fills[0]?.tank;
    await log("filled", then == null ? {} : { tank_l: then });
  } else if (word === "mixed") {
    const { parts } = mixing(sheet, day, fresh() ? answer!.told.now : null);
    if (!parts) return;
    const litres = Number((parts.stain_l + parts.water_l + parts.acid_l).toFixed(2));
    await log("mixed", { coat: parts.coat, litres });
  } else if (word === "drip") {
    const where = day.begun ? day.field?.rooms[0] : undefined;
    await log("drip", where ? { room: where } : {});
  } else if (word === "pick") {
    pickedAt = Date.now();
    show(arg === "stopped" ? "stopped" : `rooms ${arg}`);
  } else if (word === "room") {
    await log(view.split(" ")[1]!, { ...(arg ? { room: arg } : {}), coat: sprayedCoat() }, pickedAt);
  } else if (word === "because") {
    const band = day.begun && day.band ? { band: day.band.id } : {};
    await log("stopped", { because: pages.REASONS[Number(arg)] ?? "not said", ...band }, pickedAt);
  } else {
    await other(word, arg);
  }
}

async function other(word: string, arg: string): Promise<void> {
  if (word === "step") {
    const [name, by] = arg.split(" ") as ["tank" | "tub", string];
    const from = guess(sheet!, day!, sprayedCoat(), name);
    reading = stepped(reading, name, Number(by), from, sheet!.tank_l, wishes.units);
    draw();
  }
  else if (word === "read") await logReading();
  else if (word === "noted") {
    const text = (document.getElementById("text") as HTMLTextAreaElement).value.trim();
    if (text) await log("note", { text });
  } else if (word === "hurt") await log("hurt", { what: "stain in eyes, on skin or breathed in" });
  else if (word === "near") await log("near-miss", { what: "a spill" });
  else if (word === "save") save(own(), memory.phone.device);
  else if (word === "send") await sync();
  else if (word === "wish") await wish({ [arg]: !wishes[arg as "tone"] });
  else if (word === "units") await wish({ units: wishes.units === "us" ? "metric" : "us" });
}

async function wish(changed: Partial<Wishes>): Promise<void> {
  wishes = await change("wishes", WISHES, (one) => ({ ...one, ...changed }));
  void keepAwake(wishes.awake);
  if (view === "phone" && !("who" in changed)) draw();
}

async function logReading(): Promise<void> {
  const about: Entry["about"] = {};
  if (reading.tank !== null) about["tank_l"] = Number(reading.tank.toFixed(3));
  if (reading.tub !== null) about["tub_l"] = Number(reading.tub.toFixed(3));
  if (Object.keys(about).length) await log("tank-weighed", about);
}

/** All that is asked of the book, one round at a time. */
async function sync(): Promise<void> {
  if (alone || sending || !mine.key) return;
  sending = true;
  const before = `${status()}${answer?.told.place}${mine.pulled}${sheet?.inputs_hash}`;
  try {
    await offer(mine.key);
    memory = await read("memory", memory);
    if (Date.now() - sheetAt > SHEET_EVERY_MS) {
      mine = await fetchSheet(job, mine.key);
      sheet = mine.sheet;
      sheetAt = Date.now();
    }
    mine = await fetchOthers(job, mine.key);
    const asked = Date.now();
    answer = { told: await fetchNow(job, mine.key), at: asked };
    [signal, trouble] = ["ok", ""];
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error;
    signal = error.signal ? "ok" : "none";
    trouble = error.signal ? error.message : "";
    if (error.status === 401) return keyWanted("That is not the key of this book. `farwall serve` prints it.");
  } finally {
    sending = false;
    memory = await read("memory", memory);
    const after = `${status()}${answer?.told.place}${mine.pulled}${sheet?.inputs_hash}`;
    if (!sheet || ((before !== after || view === "run") && ["run", "helper"].includes(view))) redraw();
  }
}

function keyWanted(told: string): void {
  trouble = told;
  if (!sheet) mine = { ...mine, key: "" };
  draw();
}

async function opened(key: string): Promise<void> {
  if (!key) return;
  mine = await change(`job ${job}`, NO_JOB, (one) => ({ ...one, key }));
  view = "run";
  draw();
  await sync();
}

function listen(): void {
  listenToHands({
    tap: (told) => { void keepAwake(wishes.awake); void act(told); },
    hasMain: () => view === "run",
    pressed: () => { pressed = true; },
    lifted,
  });
  document.addEventListener("change", (event) => {
    const input = event.target as HTMLInputElement;
    if (input.id === "who") void wish({ who: input.value.trim() });
  });
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState !== "visible") return;
    void keepAwake(wishes.awake);
    void sync();
  });
  window.addEventListener("online", () => void sync());
  window.addEventListener("resize", () => { free = { wide: 0, high: 0 }; draw(); });
  window.addEventListener("hashchange", () => void takeKey());
}

/** The key out of the address into the page's memory. */
async function takeKey(): Promise<void> {
  const key = location.hash.slice(1);
  if (!key || alone) return;
  mine = await change(`job ${job}`, NO_JOB, (one) => ({ ...one, key: decodeURIComponent(key) }));
  history.replaceState(null, "", location.pathname);
}

async function begin(): Promise<void> {
  memory = await change("memory", emptyMemory(), (one) => one);
  wishes = { ...WISHES, ...(await read("wishes", WISHES)) };
  if (!alone) {
    mine = await read(`job ${job}`, NO_JOB);
    await takeKey();
    sheet = mine.sheet;
  }
  listen();
  if (!alone && !mine.key) keyWanted("`farwall serve` prints it, and a link that carries it.");
  else draw();
  setInterval(tick, 200);
  setInterval(() => void sync(), EVERY_MS);
  setInterval(() => { if (sheet && ["run", "helper"].includes(view)) redraw(); }, 15_000);
  void sync();
  if (!alone && "serviceWorker" in navigator) {
    navigator.serviceWorker.register("/slab/files/sw.js", { scope: "/slab/" }).catch(() => undefined);
  }
  void navigator.storage?.persist?.();
}

void begin().catch((error: unknown) => {
  root.innerHTML = `<h1>This page cannot keep entries here</h1><p>${pages.safe(String(error))}</p><p>Use the paper run sheet and enter it later.</p>`;
});
