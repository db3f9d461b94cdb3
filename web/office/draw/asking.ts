// What the server says: a preview of the floor while it moves, and what becomes of keeping it.
import { type Drawn, empty } from "./pure/nouns.ts";
import { merged } from "./pure/merged.ts";
import { ages } from "./board.ts";
import { type Fault, given, here, htmlOf, w } from "./page.ts";
import { setFaults } from "./findings.ts";
import { named } from "./names.ts";
import { store } from "./store.ts";

interface Told {
  readonly passed?: boolean;
  readonly waiting?: boolean;
  readonly head?: string;
  readonly lines?: readonly string[];
  readonly no?: boolean;
  readonly rooms?: Readonly<Record<string, { text: string; no: boolean }>>;
}
let version = given.version;
let seen = given.seen;
let wanted: { drawn: Drawn; moving: boolean } | null = null;
let asking = false;
const AGAIN_MS = 1500;
const PASSED_MS = 250;

const textOf = (drawn: Drawn): string => {
  const { answers: _, ...floor } = drawn;
  return JSON.stringify(floor);
};

/** Ask what this floor does. One question at a time; what was passed over meanwhile is never asked. */
export function ask(drawn: Drawn, moving: boolean): void {
  if (!version) return;
  wanted = { drawn, moving };
  if (!asking) void askAll();
}

async function askAll(): Promise<void> {
  asking = true;
  while (wanted) {
    const { drawn, moving }: { drawn: Drawn; moving: boolean } = wanted;
    wanted = null;
    try {
      const body = new URLSearchParams({ version: String(version), drawn: textOf(drawn), moving: moving ? "yes" : "no" });
      const answer = await fetch(`${given.path}/preview`, { method: "POST", body });
      if (answer.redirected) break;
      if (answer.ok) {
        const told = (await answer.json()) as Told;
        if (told.waiting) setTimeout(() => ask(store.drawn, false), AGAIN_MS);
        // Passed over for somebody else's newer floor of this house: once more, if it is still ours.
        if (told.passed && !wanted) setTimeout(() => ask(store.drawn, false), PASSED_MS);
        if (!told.passed) show(told);
      }
    } catch {
      // out of reach: the next change asks again
    }
  }
  asking = false;
}

function show(told: Told): void {
  here("verdict-head").textContent = told.head ?? "";
  here("verdict-head").classList.toggle("danger", told.no ?? false);
  const lines = told.lines ?? [];
  here("verdict-lines").replaceChildren(...lines.map((line) => htmlOf("p", {}, line)));
  ages(new Map(Object.entries(told.rooms ?? {})));
}

interface Kept {
  readonly version?: number;
  readonly faults?: Fault[];
  readonly said: string;
  readonly planned?: boolean;
  /** Of what the book has: who keeps another drawing over it would keep it unseen. */
  readonly seen?: string;
  /** What somebody else kept meanwhile. */
  readonly theirs?: Omit<Drawn, "answers"> & { answers?: Drawn["answers"] };
}

/** What somebody else kept meanwhile and what is drawn here, as one step; nothing is kept by it. */
function laidTogether(told: Kept, now: Drawn): void {
  const theirs: Drawn = { ...empty(), ...told.theirs };
  const found = merged(store.kept, now, theirs);
  if (told.version !== undefined) version = told.version;
  store.kept = theirs;
  store.change(found.drawn, w("draw-together"));
  const both = found.both.map((one) => named(found.drawn, one.list, one.id)).join("; ");
  kept(both ? `${told.said} ${w("draw-both", { things: both })}` : told.said, false, false);
  ask(found.drawn, false);
}

/** Keep what is drawn. Refused, it is kept as a drawing and all that is wrong is shown at its place. */
export async function keep(event: Event): Promise<void> {
  event.preventDefault();
  const now = store.settled;
  const drop = here<HTMLInputElement>("drop-elsewhere").checked ? "yes" : "";
  const body = new URLSearchParams({ version: String(version), drawn: textOf(now), answers: JSON.stringify(now.answers), drop, seen });
  const button = here<HTMLButtonElement>("keep");
  button.disabled = true;
  kept(w("draw-keeping"), true, false);
  try {
    const answer = await fetch(given.path, { method: "POST", body });
    if (answer.redirected) return location.reload();
    if (!answer.headers.get("content-type")?.includes("json")) throw new Error();
    const told = (await answer.json()) as Kept;
    if (told.seen) seen = told.seen;
    if (told.theirs) return void laidTogether(told, now);
    if (told.faults) {
      setFaults(told.faults);
      here("drop-part").hidden = !told.faults.some((one) => one.elsewhere && one.where.includes("room"));
    }
    if (answer.ok || told.faults) store.kept = now;
    if (told.version) version = told.version;
    kept(told.said, answer.ok, told.planned ?? false);
    store.say("drawn");
    if (answer.ok) ask(now, false);
  } catch {
    kept(w("draw-out-of-reach"), false, false);
  } finally {
    button.disabled = false;
  }
}

function kept(said: string, well: boolean, planned: boolean): void {
  const part = here("kept");
  part.classList.toggle("danger", !well);
  part.replaceChildren(said);
  if (planned) part.append(" ", htmlOf("a", { href: given.path.replace(/\/draw$/, "") }, w("draw-see-plan")));
}
