/** The sample day in the page of the run sheet: its script is fetched when it is first shown. */
import { call } from "./alarm.ts";
import { draw, redraw, show } from "./draw.ts";
import { eyesKey, key, safe } from "./pages/shown.ts";
import { smaller } from "./photo.ts";
import type { Entry } from "./pure/entry.ts";
import { inOrder } from "./pure/story.ts";
import { w } from "./pure/words.ts";
import type { Kit, Sampling } from "./samples/kit.ts";
import { job, lastOwn, now, off, own, status, units, using, waiting } from "./state.ts";
import { change, NO_JOB } from "./store.ts";

type Log = (word: string, about: Entry["about"], at: number, taken: Parameters<Kit["log"]>[3] | null, then: string) => Promise<void>;

const STEP_OF: Record<string, string> = {
  "sample-laid": "lay", "sample-sheen-lost": "sheen", "sample-dry": "dry", "sample-washed": "wash",
  "sample-sealed": "seal", "sample-judged": "judge", "sample-approved": "sign",
};
const SCRIPT = "/slab/files/samples.js";
let held: Sampling | null = null;
let asked = false;

/** Whether the sample day is what is looked at. */
export const sampling = () => now.view.startsWith("sample");

export const sampleAct = (told: string): unknown => held?.act(told);
export const sampleFilled = (input: HTMLInputElement): unknown => held?.filled(input);

/** The page of the day, or that it is on its way. */
export function samplePage(log: Log): string {
  if (held) return held.page(now.view);
  if (!asked) fetchPage(log);
  return `<div class="three">${using() ? key("go phone", w("back")) : "<span></span>"}<span></span>${eyesKey()}</div><h1>${w("samplesKey")}</h1><p>${safe(now.trouble || w("fetching"))}</p>`;
}

function fetchPage(log: Log): void {
  asked = true;
  const script = document.createElement("script");
  script.src = SCRIPT;
  script.onload = () => {
    held = (window as unknown as { samples: { begin: (kit: Kit) => Sampling } }).samples.begin(kitOf(log));
    draw();
  };
  script.onerror = () => { asked = false; script.remove(); };
  document.head.append(script);
}

const kitOf = (log: Log): Kit => ({
  key, safe, units, show, redraw, smaller,
  language: () => (w("languageIs") === "es" ? "es" : "en"),
  course: () => now.mine.samples ?? null,
  happened: (startsAt) => inOrder(startsAt, own(), now.mine.others, now.memory.offs),
  minute: (startsAt) => (Date.now() - off() * 1000 - Date.parse(startsAt)) / 60_000,
  draft: () => now.mine.draft ?? {},
  keepDraft: async (draft) => { now.mine = await change(`job ${job}`, NO_JOB, (one) => ({ ...one, draft })); },
  log: (word, about, then, taken) => log(word, about, Date.now(), taken ?? null, then),
  view: () => now.view,
  planned: () => using() !== null,
  status: () => ({ text: status(), waits: waiting().length > 0 }),
  undo: () => {
    const last = lastOwn();
    const short = last && now.mine.samples?.says[w("languageIs")]?.[STEP_OF[last.word] ?? ""]?.[1];
    return last ? key("undo", `${w("undo")}<b>${safe(`${short ?? ""} ${String(last.about["sample"] ?? "")}`.trim())}</b>`) : "";
  },
  eyes: eyesKey,
  call: (text) => call(text, true, now.wishes),
});
