/** The sample day: where each sample stands, what now. As `job/colour/sample_day/standing.py`. Pure. */
import { AFTER, folded, marksOf, text, unknown, type Marks } from "./sample_marks.ts";
import { STEPS, type Course, type Planned, type Running, type SampleDay, type Stand, type Step, type Task, type WaitName } from "./sample_nouns.ts";
import type { Happened } from "./story.ts";

export type * from "./sample_nouns.ts";

const FIRST = ["weigh", "sheen!", "lay", "sheen", "dry", "wash", "wet", "seal", "day", "lamp", "judge", "sign"];

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
