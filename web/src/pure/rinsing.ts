/** What each room asks for after its rinses: the judgement of `acid/rinsing.py` and `job/rinses.py`. Pure. */
import type { Sheet } from "./sheet.ts";
import type { Happened } from "./story.ts";

/** Part of the sheet: order of rooms, readings wanted by room, what a rinsed floor is held against. */
export interface Washing {
  order: string[];
  readings: Record<string, number>;
  tap_ph: number | null;
  unstained_ph: number | null;
  least_ph: number | null;
  most_ph: number | null;
}

export interface Round {
  phs: number[];
  rag: "" | "clean" | "grey" | "coloured";
  powder: boolean | null;
}

/** `more`: low, likely and high of the rinses to come; only the book knows them. */
export interface Step {
  verdict: "read" | "rinse" | "scrub" | "new concrete" | "enough";
  code: string;
  more: [number, number, number] | null;
  sealer: boolean | null;
}

export interface Wanted {
  tap: number | null;
  bare: number | null;
  low: number;
  high: number;
}

export interface Wash {
  wanted: Wanted;
  rounds: Record<string, Round[]>;
  steps: Record<string, Step>;
  /** The room of the last entry about washing; empty before one. */
  last: string;
  /** Once sealed or handed over nothing is asked any more. */
  over: boolean;
}

const SCRUB_PH = 6.5;
const [LEAST_PH, MOST_PH, TAP_WITHIN, ALIKE_PH] = [7, 9, 1, 0.5];
const [LEAST_ROUNDS, GIVEN_UP] = [3, 2];
const RAGS = ["clean", "grey", "coloured"] as const;

export function washOf(sheet: Sheet, happened: Happened[]): Wash {
  const told = sheet.washing!;
  const wanted = wantedOf(told, happened);
  const rounds: Record<string, Round[]> = Object.fromEntries(told.order.map((room) => [room, []]));
  const number: Record<string, number> = {};
  let last = "";
  for (const { entry } of happened) {
    const { word, about } = entry;
    if (!["rinsed", "strip-read", "dry-swiped"].includes(word)) continue;
    const named = String(about["room"] ?? "");
    for (const room of told.order) {
      if (named && room !== named) continue;
      const own = rounds[room]!;
      if (word === "rinsed") {
        const round = about["round"] === undefined ? null : Number(about["round"]);
        if (!own.length || round === null || round !== number[room]) {
          own.push({ phs: [], rag: "", powder: null });
          number[room] = round ?? (number[room] ?? 0) + 1;
        }
        read(own.at(-1)!, about["ph"], about["rag"]);
      } else if (!own.length) {
        continue;
      } else if (word === "dry-swiped") {
        own.at(-1)!.powder = about["powder"] as boolean ?? null;
      } else if (about["of"] === "rinse water") {
        read(own.at(-1)!, about["ph"], undefined);
      } else {
        continue;
      }
      last = room;
    }
  }
  const steps = Object.fromEntries(
    told.order.map((room) => [room, stepOf(rounds[room]!, wanted, told, told.readings[room] ?? 1)]),
  );
  const over = happened.some(({ entry }) => ["sealed", "handed-over"].includes(entry.word));
  return { wanted, rounds, steps, last, over };
}

/** A reading more of a rinse; of two rags the dirtier counts. */
function read(round: Round, ph: unknown, rag: unknown): void {
  if (typeof ph === "number") round.phs.push(ph);
  const both = [round.rag, rag].map((one) => RAGS.indexOf(one as "clean"));
  round.rag = RAGS[Math.max(...both)] ?? "";
}

/** Strips of the day win over what the job tells; the sealer's sheet only narrows. */
function wantedOf(told: Washing, happened: Happened[]): Wanted {
  let [tap, bare] = [told.tap_ph, told.unstained_ph];
  for (const { entry: { word, about } } of happened) {
    if (word !== "strip-read" || typeof about["ph"] !== "number") continue;
    if (about["of"] === "tap") tap = about["ph"];
    if (about["of"] === "unstained patch") bare = about["ph"];
  }
  let [low, high] = [LEAST_PH, MOST_PH];
  if (tap !== null) {
    const around = [tap - TAP_WITHIN, tap + TAP_WITHIN] as const;
    const usual = LEAST_PH <= tap && tap <= MOST_PH;
    [low, high] = usual ? [Math.max(low, around[0]), Math.min(high, around[1])] : around;
  }
  low = Math.max(low, told.least_ph ?? low);
  high = Math.min(high, told.most_ph ?? high);
  return { tap, bare, low, high: Math.max(high, low) };
}

function stepOf(rounds: Round[], wanted: Wanted, told: Washing, readings: number): Step {
  const [verdict, code] = judged(rounds, wanted);
  const last = rounds.at(-1);
  const few = verdict === "enough" && last!.phs.length < readings;
  const borne = code === "new-concrete" && told.most_ph !== null ? Math.max(...last!.phs) <= told.most_ph : null;
  return few ? { verdict: "read", code: "few-readings", more: null, sealer: null }
    : { verdict, code, more: null, sealer: borne };
}

function judged(rounds: Round[], wanted: Wanted): [Step["verdict"], string] {
  const last = rounds.at(-1);
  if (!last) return ["read", "not-rinsed"];
  const [least, most] = [Math.min(...last.phs), Math.max(...last.phs)];
  if (!last.phs.length && !last.rag) return ["read", "nothing-read"];
  if (least < SCRUB_PH) return ["scrub", "acid"];
  if (last.rag === "coloured") return ["scrub", "coloured-rag"];
  if (last.rag === "grey") return rounds.length >= LEAST_ROUNDS ? ["scrub", "grey-rag"] : ["rinse", "grey-rag-early"];
  if (last.powder) return ["rinse", "powder"];
  if (!last.rag) return ["read", "no-rag"];
  if (!last.phs.length) return ["read", "no-pH"];
  if (least < wanted.low) return ["rinse", "low"];
  if (most > wanted.high) return alkaline(rounds, most, wanted);
  return ["enough", last.powder === false ? "dry-swipe-passed" : "clean"];
}

/** High pH on a clean rag: lime of the slab, or detergent and neutraliser still on it. */
function alkaline(rounds: Round[], most: number, wanted: Wanted): [Step["verdict"], string] {
  if (wanted.bare !== null) {
    return most <= wanted.bare + ALIKE_PH ? ["new concrete", "new-concrete"] : ["rinse", "alkaline"];
  }
  const before = rounds.slice(0, -1).filter((one) => one.phs.length).map((one) => Math.max(...one.phs)).pop();
  const falls = before === undefined || before - most >= ALIKE_PH;
  return falls && rounds.length < LEAST_ROUNDS + GIVEN_UP ? ["rinse", "alkaline"] : ["new concrete", "compare"];
}

/** The first room in the order of the wash day that is not enough; null: none. */
export function nextRoom(order: string[], steps: Record<string, Step>, but = ""): string | null {
  return order.find((room) => room !== but && steps[room]?.verdict !== "enough") ?? null;
}
