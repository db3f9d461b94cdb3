/** What is known of each sample: marks and minutes. As `job/colour/sample_day/marks.py`. Pure. */
import type { Course, STEPS } from "./sample_nouns.ts";
import type { Happened } from "./story.ts";

export interface Marks {
  marks: Set<string>;
  laid: number | null;
  dry: number | null;
  washed: number | null;
  verdict: string;
  order: number | null;
}

/** By figure the step after which it is missing where it is not there. */
export const AFTER: Record<string, (typeof STEPS)[number]> = {
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

export const unknown = (marks: string[] = []): Marks =>
  ({ marks: new Set(marks), laid: null, dry: null, washed: null, verdict: "", order: null });
export const text = (one: Happened, key: string) => {
  const value = one.entry.about[key];
  return typeof value === "string" ? value : "";
};
export const folded = (name: string) => name.toLowerCase();

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
