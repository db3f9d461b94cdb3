/** `node replay.js KIND FILE`: what the phone makes of cases that a Python test drew. */
import { readFileSync } from "node:fs";
import { dayOf } from "../src/pure/day.ts";
import { once } from "../src/pure/doubled.ts";
import type { Entry, FromBook } from "../src/pure/entry.ts";
import type { Sheet } from "../src/pure/sheet.ts";
import { inOrder } from "../src/pure/story.ts";
import { byTable, type Pours } from "../src/pure/pouring.ts";
import { washOf } from "../src/pure/rinsing.ts";
import { sampleDay, type Course } from "../src/pure/sampling.ts";
import { EN } from "../src/words/en.ts";
import { ES } from "../src/words/es.ts";
import { type Case, held, lived } from "./living.ts";

interface Drawn {
  sheet: Sheet;
  days: { own: Entry[]; others: FromBook[]; low: number | null }[];
}

const [kind, file] = process.argv.slice(2);
const drawn = JSON.parse(readFileSync(file!, "utf-8")) as unknown;
if (kind === "phone") {
  console.log(JSON.stringify((drawn as Case[]).map((one) => held(lived(one.steps), one))));
} else if (kind === "wash") {
  const { sheet, days } = drawn as Drawn;
  console.log(JSON.stringify(days.map(({ own, others }) => {
    const { steps, rounds, wanted } = washOf(sheet, once(sheet, inOrder(sheet.starts_at, own, others, {})));
    return { steps, rounds, wanted };
  })));
} else if (kind === "sample") {
  const { course, days } = drawn as { course: Course; days: { own: Entry[]; at: number }[] };
  console.log(JSON.stringify(days.map(({ own, at }) => {
    const { stands, tasks, begun, signed } = sampleDay(course, inOrder(course.starts_at, own, [], {}), at);
    return { stands, tasks, begun, signed };
  })));
} else if (kind === "pour") {
  const { tables, asked } = drawn as { tables: Record<string, Pours>; asked: [string, string[], string, number | null][] };
  console.log(JSON.stringify(asked.map(([table, things, vessel, age]) => byTable(tables[table]!, things, vessel, age))));
} else if (kind === "words") {
  console.log(JSON.stringify({ en: EN, es: ES }));
} else {
  const { sheet, days } = drawn as Drawn;
  console.log(JSON.stringify(days.map(({ own, others, low }) => {
    const day = dayOf(sheet, once(sheet, inOrder(sheet.starts_at, own, others, {})), low);
    return {
      coat: day.coat, field: day.begun ? day.field!.id : "", band: day.band?.id ?? "", due: day.due ?? day.careful,
      fills: day.fills.map((one) => one.band), mix: day.mix?.id ?? "",
      done: Object.fromEntries([...day.floor.done].map(([id, one]) => [id, one.end])),
    };
  })));
}
