/** The page of the run sheet: taps in, entries on the disk, what to do next on the screen. */
import "./slab.css";
import { act, filledIn, headsetCalls } from "./acts.ts";
import { keepAwake } from "./alarm.ts";
import { draw, lift, press, redraw, resized, tick } from "./draw.ts";
import { listenToHands } from "./hands.ts";
import { safe } from "./pages/shown.ts";
import { unpack } from "./paper.ts";
import { w } from "./pure/words.ts";
import { photosOf } from "./send.ts";
import type { Sheet } from "./pure/sheet.ts";
import { alone, job, now, speakAsWished, using } from "./state.ts";
import { change, early, emptyMemory, forgetPhotos, NO_JOB, read, WISHES } from "./store.ts";
import { keyWanted, sync, takeKey } from "./sync.ts";
import { canSpeak, learnAll } from "./tongue.ts";

const EVERY_MS = 20_000;
const CLAIM_MS = 15_000;

/** When there are words to speak with. */
const speaks = canSpeak();

/** Whether the memory holds nothing that would have changed what was drawn before it was read. */
let known: Promise<boolean> = Promise.resolve(true);
/** While what is shown was drawn before the memory was read. */
let guessed = false;

/** A tap on what was drawn before the memory was read counts only if the memory changes nothing. */
async function tapped(told: string): Promise<void> {
  const onGuess = guessed;
  if (!(await known) && onGuess) return;
  await act(told);
  void keepAwake(now.wishes.awake);
}

function listen(): void {
  const main = listenToHands({
    tap: (told) => { void tapped(told); },
    hasMain: () => now.view === "run",
    pressed: press,
    lifted: lift,
  });
  headsetCalls(main);
  document.addEventListener("change", (event) => void filledIn(event.target as HTMLInputElement));
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState !== "visible") return;
    void keepAwake(now.wishes.awake);
    void sync();
  });
  window.addEventListener("online", () => void sync());
  window.addEventListener("resize", resized);
  window.addEventListener("hashchange", () => void takeKey());
}

/** The photos of entries that are gone from this phone go too. */
function tidy(): void {
  const { kept, waiting } = now.memory.phone;
  const entries = [...Object.values(kept).map(([one]) => one), ...Object.values(waiting)];
  void forgetPhotos(new Set(photosOf(entries)));
}

const NEW = "farwall-slab-kept";

/** A page that was never kept on this phone: there is nothing to be read before it is drawn. */
function isNew(): boolean {
  try {
    return !alone && !localStorage.getItem(NEW);
  } catch {
    return false;
  }
}

function noLongerNew(): void {
  try {
    localStorage.setItem(NEW, "1");
  } catch {
    // a browser that keeps nothing: the next opening waits for the memory, as ever
  }
}

/** On a new phone the plan is drawn as soon as it comes, while the memory still opens. */
async function drawEarly(): Promise<boolean> {
  const begun = early();
  if (!begun?.told || !isNew()) return false;
  const answer = await begun.told.catch(() => null);
  if (!answer?.ok) return false;
  const sheet = await answer.clone().json() as Sheet;
  await speaks;
  if (now.memory) return false; // it was sooner
  now.memory = emptyMemory();
  now.mine = { ...NO_JOB, key: begun.key, sheet };
  now.sheet = sheet;
  await speakAsWished();
  guessed = true;
  draw();
  return true;
}

/** Reads what the phone kept. Returns whether what was drawn before it, if anything, still holds. */
async function remember(): Promise<boolean> {
  const [memory, wishes, mine] = await Promise.all([
    change("memory", emptyMemory(), (one) => one), read("wishes", WISHES), read(`job ${job}`, NO_JOB),
  ]);
  const { kept, waiting } = memory.phone;
  const held = ![kept, waiting].some((some) => Object.keys(some).length) && !mine.others.length && !mine.rest;
  now.memory = memory;
  now.wishes = { ...WISHES, ...wishes, headset: false };
  now.mine = { ...NO_JOB, ...mine };
  return held;
}

/** The page for when there is no signal: after the first round, for a tap and its way to the book come first. */
async function keepPage(): Promise<void> {
  if (alone) return;
  void navigator.storage?.persist?.();
  if ("serviceWorker" in navigator) await answeredFor(navigator.serviceWorker).catch(() => undefined);
  mayBeKept();
  await learnAll(); // with the worker there from its own store
}

/**
 * When the worker answers for this page: what is fetched before comes once more over the air, for a
 * worker is `ready` a moment before it has claimed the page. One that claims no page is not waited for.
 */
async function answeredFor(workers: ServiceWorkerContainer): Promise<void> {
  await workers.register("/slab/files/sw.js", { scope: "/slab/" });
  if (workers.controller) return;
  await new Promise<void>((done) => {
    workers.addEventListener("controllerchange", () => done(), { once: true });
    setTimeout(done, CLAIM_MS);
  });
}

/** What a phone needs to put the page among its own; asked for when all that matters is there. */
function mayBeKept(): void {
  const link = document.createElement("link");
  link.rel = "manifest";
  link.href = "/slab/files/slab.webmanifest";
  document.head.append(link);
}

async function begin(): Promise<void> {
  listen();
  if (location.search === "?samples") now.view = "samples";
  const drawn = drawEarly();
  known = remember();
  const [held] = await Promise.all([known, speaks]);
  if (!alone) {
    await takeKey();
    now.sheet = now.mine.sheet ?? now.sheet;
  }
  await speakAsWished();
  if (!alone && !now.mine.key) keyWanted(w("keyTold"));
  else if (!now.sheet || !held || now.view !== "run" || !(await drawn)) draw();
  guessed = false;
  setInterval(tick, 200);
  setInterval(() => void sync(), EVERY_MS);
  setInterval(() => { if (using() && ["run", "helper"].includes(now.view)) redraw(); }, 15_000);
  void sync().then(keepPage);
  noLongerNew();
  tidy();
  await unpack();
}

void begin().catch((error: unknown) => {
  const page = document.getElementById("page")!;
  page.innerHTML = `<h1>${w("cannotKeep")}</h1><p>${safe(String(error))}</p><p>${w("usePaper")}</p>`;
});
