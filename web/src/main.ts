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
import { alone, job, now, speakAsWished, using } from "./state.ts";
import { change, emptyMemory, forgetPhotos, NO_JOB, read, WISHES } from "./store.ts";
import { keyWanted, sync, takeKey } from "./sync.ts";

const EVERY_MS = 20_000;

function listen(): void {
  const main = listenToHands({
    tap: (told) => { void keepAwake(now.wishes.awake); void act(told); },
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

async function begin(): Promise<void> {
  const [memory, wishes, mine] = await Promise.all([
    change("memory", emptyMemory(), (one) => one), read("wishes", WISHES), read(`job ${job}`, NO_JOB),
  ]);
  now.memory = memory;
  now.wishes = { ...WISHES, ...wishes, headset: false };
  now.mine = { ...NO_JOB, ...mine };
  if (!alone) {
    await takeKey();
    now.sheet = now.mine.sheet;
  }
  speakAsWished();
  listen();
  if (!alone && !now.mine.key) keyWanted(w("keyTold"));
  else draw();
  setInterval(tick, 200);
  setInterval(() => void sync(), EVERY_MS);
  setInterval(() => { if (using() && ["run", "helper"].includes(now.view)) redraw(); }, 15_000);
  void sync();
  if (!alone && "serviceWorker" in navigator) {
    navigator.serviceWorker.register("/slab/files/sw.js", { scope: "/slab/" }).catch(() => undefined);
  }
  void navigator.storage?.persist?.();
  tidy();
  await unpack();
}

void begin().catch((error: unknown) => {
  const page = document.getElementById("page")!;
  page.innerHTML = `<h1>${w("cannotKeep")}</h1><p>${safe(String(error))}</p><p>${w("usePaper")}</p>`;
});
