/** The gate on the phone: what stands there, what is poured in, in what; and the answer. */
import { byTable, TABLE_MS, UNKNOWN, type Answer, type Pours } from "../pure/pouring.ts";
import { clock } from "../pure/say.ts";
import { isWord, w } from "../pure/words.ts";
import { eyesKey, key, safe, top, type Shown } from "./shown.ts";

/** The question in hand: things in the order of pouring, the vessel; and the book's answer to it. */
export interface Asked {
  things: string[];
  vessel: string;
  answer: Answer | null;
  /** When the book was asked [ms]. */
  at: number;
  asking: boolean;
}

export const NO_QUESTION: Asked = { things: [], vessel: "open tub", answer: null, at: 0, asking: false };
const MOST = 6;

/** The table in hand and how old it is by now; null where its day is not known. */
export interface Table {
  pours: Pours;
  age: number | null;
  at: number | null;
}

export function pour(s: Shown, asked: Asked, table: Table | null): string {
  const head = `${top(true, asked.things.length ? key("pour-anew", w("pourAnew")) : "<span></span>")}<h1>${w("pourKey")}</h1>`;
  if (!table) return `${head}<p class="verdict">${w("pour-")}</p><p>${w("pourNoList")}</p><p>${w("pourWins")}</p>`;
  const { things, vessels } = table.pours;
  const name = (id: string) => things.find(([one]) => one === id)?.[1] ?? id;
  const there = vessels.find(([one]) => one === asked.vessel)?.[1] ?? asked.vessel;
  const said = asked.things.length ? `<p>${safe(w("pourIn", { things: orderOf(asked.things.map(name)), vessel: there }))}</p>${verdict(s, asked, table)}`
    : `<p>${w("pourHint")}</p>`;
  const more = asked.things.length < MOST ? key("pour-list own", w(asked.things.length ? "pourNext" : "pourFirst"), "main") : "";
  return `${head}${said}<div class="foot stack">${key("go pourwhere", safe(w("pourVessel", { vessel: there })))}${more}</div>`;
}

const orderOf = (names: string[]) => names.slice(1).reduce((one, other) => w("pourThen", { one, other }), names[0] ?? "");

function verdict(s: Shown, asked: Asked, table: Table): string {
  const told = asked.answer ?? byTable(table.pours, asked.things, asked.vessel, table.age);
  const word = `pour-${told.word}`;
  const no = told.word === "" || told.word === "refused";
  const reasons = told.reasons.slice(0, 2).map(([, what, instead, rests]) =>
    `<p class="reason">${safe(what)} <b>${safe(instead)}</b> ${rests ? `(${safe(rests)})` : ""}</p>`);
  const old = table.age !== null && table.age > TABLE_MS;
  const why = told.word === "" ? `<p>${w(old ? "pourOld" : "pourUnknown")}</p>` : "";
  return `<p class="verdict${no ? " no" : ""}" role="status">${isWord(word) ? w(word) : w("pour-")}</p>${reasons.join("")}${why}
<p>${by(s, asked, told, table)} ${w("pourWins")}</p>`;
}

function by(s: Shown, asked: Asked, told: Answer, table: Table): string {
  if (asked.answer) return w("pourByBook", { at: clock(s.sheet, s.now - (Date.now() - asked.at) / 60_000) });
  const asking = asked.asking ? ` ${w("asking")}` : "";
  if (told === UNKNOWN || told.word === "") return asking.trim();
  const list = table.at === null ? w("pourByPlan") : w("pourByList", { at: clock(s.sheet, table.at) });
  return `${safe(list)}${asking}`;
}

/** What is poured: on this job, or brought. */
export function pourList(table: Table | null, brought: boolean): string {
  if (!table) return top();
  const own = table.pours.things.filter(([, , other]) => other === brought);
  const keys = own.map(([id, name]) => key(`pour-add ${id}`, safe(name)));
  const other = brought ? key("pour-list own", w("pourOwn")) : key("pour-list brought", w("pourBrought"));
  return `${back()}<h1>${w(brought ? "pourBrought" : "pourOwn")}</h1><div class="two rooms">${keys.join("")}</div><div class="foot stack">${other}</div>`;
}

export function pourWhere(table: Table | null): string {
  if (!table) return top();
  const keys = table.pours.vessels.map(([id, name]) => key(`pour-where ${id}`, safe(name)));
  return `${back()}<h1>${w("pourWhere")}</h1><div class="two rooms">${keys.join("")}</div>`;
}

const back = () => `<div class="three">${key("go pour", w("back"))}<span></span>${eyesKey()}</div>`;
