/** The sample day: what is known of each sample, where it stands, what now. As `job/colour/sample_day`. Pure. */
import type { Happened } from "./story.ts";

export const STEPS = ["lay", "sheen", "dry", "wash", "wet", "seal", "day", "lamp", "judge"] as const;
export type Step = (typeof STEPS)[number] | "weigh" | "sign" | "done" | "out";
export type WaitName = "sheen" | "dry" | "dwell" | "dry-down";

/** What the book sends of the day as it is planned: `web/slab/sampling.py`. */
export interface Course {
  version: number;
  name: string;
  starts_at: string;
  units: "us" | "metric";
  language: string;
  rooms: Record<string, string>;
  stains: Record<string, string>;
  sealer: string;
  samples: Planned[];
  waits: Wait[];
  told: Record<string, string[]>;
  /** By language and step: name, short name, what to do, caution. */
  says: Record<string, Record<string, [string, string, string, string]>>;
  figures: Record<string, Record<string, string>>;
  held: Record<string, Record<string, string>>;
  wins: Record<string, string>;
}

export interface Planned {
  id: string;
  coat: string;
  stain: string;
  cut: string;
  rung: "weaker" | "planned" | "stronger" | "";
  over: string;
  room: string;
  area_m2: number;
  stain_ml: number | null;
  water_ml: number | null;
}

export interface Wait {
  coat: string;
  name: WaitName;
  low_min: number | null;
  likely_min: number | null;
  high_min: number | null;
  rank: string;
}

export interface Running { name: WaitName; from: number; wait: Wait }

export interface Stand {
  sample: string;
  step: Step;
  /** From when on it is to be done; null: now. */
  from: number | null;
  /** The sample that comes first; empty: none. */
  waits: string;
  running: Running[];
  missing: string[];
}

export interface Task { sample: string; step: Step; from: number | null }

export interface SampleDay {
  samples: Planned[];
  stands: Stand[];
  tasks: Task[];
  begun: boolean;
  signed: string;
  marks: Record<string, Marks>;
}

export interface Marks {
  marks: Set<string>;
  laid: number | null;
  dry: number | null;
  washed: number | null;
  verdict: string;
  order: number | null;
}

const AFTER: Record<string, (typeof STEPS)[number]> = {
  weighed: "lay", slab: "lay", air: "lay", humidity: "lay", drop: "lay", sheen: "sheen", dry: "dry",
  dwell: "wash", scrubs: "wash", ph: "wash", rag: "wash", held: "wash", wet: "wet", sealer: "seal",
  day: "day", lamp: "lamp", verdict: "judge",
};
const DOES: Record<string, string> = {
  "sample-laid": "lay", "sample-sheen-lost": "sheen", "sample-dry": "dry", "sample-washed": "wash",
  "sample-sealed": "seal", "sample-judged": "judge", "sample-approved": "signed",
};
const CARRIES: Record<string, Record<string, string>> = {
  "sample-laid": { laid_ml: "weighed", before_kg: "before", after_kg: "after", slab_c: "slab", air_c: "air", rh_percent: "humidity", drop_s: "drop" },
  "sample-sheen-lost": { after_min: "sheen" },
  "sample-dry": { after_min: "dry" },
  "sample-washed": { dwell_h: "dwell", scrubs: "scrubs", ph: "ph", rag: "rag", held: "held" },
  "sample-judged": { verdict: "verdict" },
};
const LOOKS = ["photo", "sample-seen"];
const FIRST = ["weigh", "sheen!", "lay", "sheen", "dry", "wash", "wet", "seal", "day", "lamp", "judge", "sign"];

const unknown = (marks: string[] = []): Marks =>
  ({ marks: new Set(marks), laid: null, dry: null, washed: null, verdict: "", order: null });
const text = (one: Happened, key: string) => {
  const value = one.entry.about[key];
  return typeof value === "string" ? value : "";
};
const folded = (name: string) => name.toLowerCase();

/** By sample what is known, facts first. */
export function marksOf(told: Course["told"], happened: Happened[]): Record<string, Marks> {
  const found: Record<string, Marks> = Object.fromEntries(Object.entries(told).map(([name, marks]) => [name, unknown(marks)]));
  for (const one of Object.values(found)) {
    one.verdict = [...one.marks].find((mark) => mark.startsWith("verdict="))?.split("=")[1] ?? "";
  }
  let laid = 0;
  for (const one of happened) {
    const { word } = one.entry;
    const name = text(one, "sample").trim();
    if (!name || !(word in DOES || LOOKS.includes(word))) continue;
    const called = Object.keys(found).find((each) => folded(each) === folded(name)) ?? name;
    const mine = found[called] ??= unknown();
    if (LOOKS.includes(word)) looked(mine, one);
    else took(mine, one);
    if (word === "sample-laid" && mine.order === null) mine.order = laid++;
  }
  return found;
}

function took(mine: Marks, one: Happened): void {
  const { word, about } = one.entry;
  mine.marks.add(DOES[word]!);
  for (const [key, figure] of Object.entries(CARRIES[word] ?? {})) {
    if (about[key] !== undefined && about[key] !== null && about[key] !== "") mine.marks.add(figure);
  }
  if (mine.marks.has("before") && mine.marks.has("after")) mine.marks.add("weighed");
  if (word === "sample-sealed") mine.marks.add("sealer");
  if (word === "sample-judged") mine.verdict = text(one, "verdict");
  if (word === "sample-laid") mine.laid ??= one.at;
  if (word === "sample-dry") mine.dry ??= one.at;
  if (word === "sample-washed" && mine.washed === null) {
    mine.washed = one.at;
    if (mine.laid !== null) mine.marks.add("dwell");
  }
}

function looked(mine: Marks, one: Happened): void {
  const state = text(one, "state");
  if (state === "clean wet") mine.marks.add("wet");
  if (state === "sealed") mine.marks.add(text(one, "light") === "lamp" ? "lamp" : "day");
}

/** The course's samples, then those of the log alone, in the order of laying. */
function samplesIn(course: Course, happened: Happened[]): Planned[] {
  const known = new Set(course.samples.map((one) => folded(one.id)));
  const more: Planned[] = [];
  for (const one of happened) {
    const id = text(one, "sample").trim();
    if (one.entry.word !== "sample-laid" || !id || known.has(folded(id))) continue;
    known.add(folded(id));
    const area = one.entry.about["area_m2"];
    more.push({
      id, coat: text(one, "coat"), stain: text(one, "stain"), cut: text(one, "cut"), rung: "", over: text(one, "over"),
      room: text(one, "room"), area_m2: typeof area === "number" ? area : 0, stain_ml: null, water_ml: null,
    });
  }
  return [...course.samples, ...more];
}

/** The day as it stands at a minute of the course. */
export function sampleDay(course: Course, happened: Happened[], at: number): SampleDay {
  const samples = samplesIn(course, happened);
  const names = new Map(samples.map((one) => [folded(one.id), one.id]));
  const marks: Record<string, Marks> = Object.fromEntries(
    Object.entries(marksOf(course.told, happened)).map(([name, one]) => [names.get(folded(name)) ?? name, one]),
  );
  const of = (id: string) => marks[id] ?? unknown();
  const above = new Map(samples.filter((one) => one.over).map((one) => [one.over, one]));
  const wait = (coat: string, name: WaitName) => course.waits.find((one) => one.coat === coat && one.name === name);
  const lastDone = (mine: Marks) => STEPS.reduce((last, step, n) => (mine.marks.has(step) ? n : last), -1);

  function stepOf(one: Planned): Step {
    const last = lastDone(of(one.id));
    if (last < 0) return one.over && of(one.over).marks.has("wash") ? "out" : "lay";
    return STEPS[last + 1] ?? "done";
  }
  function top(one: Planned): Planned {
    const seen = new Set([one.id]);
    for (let next = above.get(one.id); next && !seen.has(next.id) && of(next.id).order !== null; next = above.get(one.id)) {
      one = next;
      seen.add(one.id);
    }
    return one;
  }
  function due(from: number | null, coat: string, name: WaitName, end: "low_min" | "likely_min"): number | null {
    const lasts = wait(coat, name)?.[end] ?? null;
    return from === null || lasts === null ? null : Math.round((from + lasts) * 1e4) / 1e4;
  }
  function fromOf(one: Planned, step: Step): [number | null, string] {
    const mine = of(one.id);
    const beneath = of(one.over).marks;
    if (step === "lay" && one.over && !beneath.has("dry") && !beneath.has("wash")) return [null, one.over];
    if (step === "dry") return [due(mine.laid, one.coat, "dry", "low_min"), ""];
    if (step === "wash") {
      const next = above.get(one.id);
      if (next && stepOf(next) === "lay") return [null, next.id];
      const last = top(one);
      return [due(of(last.id).laid, last.coat, "dwell", "likely_min"), ""];
    }
    if (step === "seal") return [due(mine.washed, one.coat, "dry-down", "low_min"), ""];
    return [null, ""];
  }
  function runningOf(one: Planned, step: Step): Running[] {
    const mine = of(one.id);
    const all: [WaitName, number | null, string][] = [];
    if (step === "sheen" || step === "dry") all.push([step, mine.laid, one.coat]);
    if (["sheen", "dry", "wash"].includes(step)) all.push(["dwell", of(top(one).id).laid, top(one).coat]);
    if (step === "seal") all.push(["dry-down", mine.washed, one.coat]);
    return all.flatMap(([name, from, coat]) => {
      const found = wait(coat, name);
      return from !== null && found ? [{ name, from, wait: found }] : [];
    });
  }
  function standOf(one: Planned): Stand {
    const step = stepOf(one);
    const [from, waits] = fromOf(one, step);
    const mine = of(one.id);
    const last = lastDone(mine);
    const missing = Object.entries(AFTER).filter(([figure, after]) => STEPS.indexOf(after) <= last && !mine.marks.has(figure));
    return { sample: one.id, step, from, waits, running: runningOf(one, step), missing: missing.map(([figure]) => figure) };
  }
  const stands = samples.map(standOf);
  const signed = Object.keys(marks).find((id) => marks[id]!.marks.has("signed")) ?? "";
  const begun = Object.values(marks).some((one) => one.order !== null);
  return { samples, stands, tasks: tasksOf(stands, marks, signed, at), begun, signed, marks };
}

/** What can be done now by what cannot wait, then what waits by its time. */
function tasksOf(stands: Stand[], marks: Record<string, Marks>, signed: string, at: number): Task[] {
  const found: [number[], Task][] = [];
  const add = (rank: string, task: Task, nth: number) => {
    const late = task.from !== null && task.from > at;
    const order = marks[task.sample]?.order ?? nth;
    found.push([late ? [1, task.from!, nth] : [0, FIRST.indexOf(rank), order], task]);
  };
  stands.forEach((stand, nth) => {
    const { sample, step, from } = stand;
    if ((marks[sample]?.laid ?? null) !== null && stand.missing.includes("weighed") && step === "sheen") {
      add("weigh", { sample, step: "weigh", from: null }, nth);
    }
    if (step === "done" || step === "out" || stand.waits) return;
    const sheen = stand.running.find((one) => one.name === "sheen");
    const low = sheen?.wait.low_min ?? null;
    const soon = step === "sheen" && sheen && low !== null && at >= sheen.from + low;
    add(soon ? "sheen!" : step, { sample, step, from }, nth);
  });
  // judged right when it was sealed: no other one is signed
  const right = Object.keys(marks).filter((id) => {
    const { verdict, marks: known } = marks[id]!;
    return verdict === "right" && known.has("seal") && known.has("judge");
  });
  if (right.length && !signed) add("sign", { sample: right[right.length - 1]!, step: "sign", from: null }, stands.length);
  return found.sort(([a], [b]) => a[0]! - b[0]! || a[1]! - b[1]! || a[2]! - b[2]!).map(([, task]) => task);
}
