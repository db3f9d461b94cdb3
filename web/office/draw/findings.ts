// Pins and the list beside them: faults that keep the floor from being planned, notes of the import.
import { type Answer, corners, type Drawn, type ListName, type Point } from "./pure/nouns.ts";
import * as edits from "./pure/edits.ts";
import { join } from "./rooms.ts";
import { dist } from "./pure/points.ts";
import { look, looking, size } from "./board.ts";
import { pins, sketch } from "./marks.ts";
import { type Fault, given, here, htmlOf, type Note, tell, w } from "./page.ts";
import { store } from "./store.ts";
import { viewOfAll } from "./view.ts";

let faults: readonly Fault[] = given.faults;
const NEAR_M = 1.2;
const SIDE_M = 0.6;

export function setFaults(now: readonly Fault[]): void {
  faults = now;
  show();
}

const open = (note: Note): boolean => !store.drawn.answers[note.number];

export function show(): void {
  here("faults-part").hidden = faults.length === 0;
  here("faults").replaceChildren(...faults.map(faultRow));
  here("notes-part").hidden = given.notes.length === 0;
  const left = given.notes.filter(open).length;
  here("notes-left").textContent = left ? w("draw-notes-left", { n: left }) : w("draw-notes-none");
  const list = here("notes");
  const focused = (document.activeElement as HTMLElement | null)?.dataset["answer"];
  list.replaceChildren(...given.notes.map(noteRow));
  if (focused) list.querySelector<HTMLElement>(`[data-answer="${focused}"]`)?.focus();
  pin();
}

function pin(): void {
  const found = faults.flatMap((one, n) => (one.at ? [{ at: one.at as Point, label: String(n + 1), no: true, open: true }] : []));
  const notes = given.notes.flatMap((one) => (one.at ? [{ at: one.at as Point, label: letter(one), no: false, open: open(one) }] : []));
  pins([...notes.filter((one) => one.open), ...found]);
}

/** Notes have letters, faults numbers: a, b, … z, aa. */
function letter(note: Note): string {
  let n = given.notes.indexOf(note) + 1;
  let text = "";
  for (; n > 0; n = Math.floor((n - 1) / 26)) text = String.fromCharCode(97 + ((n - 1) % 26)) + text;
  return text;
}

function faultRow(one: Fault, n: number): HTMLElement {
  const row = htmlOf("li", {}, htmlOf("span", { class: "mark wrong", "aria-hidden": "true" }, String(n + 1)), " ", htmlOf("span", { class: "what" }, `${one.elsewhere && one.where ? `${one.where}: ` : ""}${one.what} ${one.remedy}`));
  if (one.act === "way-out") row.append(" ", act(one.act_told, mendWayOut));
  if (one.at) row.append(" ", act(w("draw-show"), () => showAt(one.at as Point, one)));
  return row;
}

function noteRow(note: Note): HTMLElement {
  const answer = store.drawn.answers[note.number];
  const row = htmlOf("li", { class: answer ? "answered" : "" }, htmlOf("span", { class: "mark", "aria-hidden": "true" }, letter(note)), " ", htmlOf("span", { class: "what" }, note.what), " ");
  const said = htmlOf("span", { class: "answers" });
  if (note.yes) said.append(answerButton(note, "yes", note.yes, answer));
  if (note.no) said.append(answerButton(note, "no", note.no, answer));
  if (note.at) said.append(act(w("draw-show"), () => showAt(note.at as Point, null)));
  row.append(said);
  return row;
}

/** To the row of a pin: its first answer gets the focus. */
export function toRow(label: string): void {
  const rows = [...here("faults").children, ...here("notes").children];
  const row = rows.find((one) => one.querySelector(".mark")?.textContent === label);
  row?.scrollIntoView({ block: "nearest" });
  row?.querySelector<HTMLElement>("button")?.focus();
  const words = row?.querySelector(".what")?.textContent;
  if (words) tell(words);
}

function act(words: string, work: () => void): HTMLButtonElement {
  const one = htmlOf("button", { type: "button", class: "plain" }, words);
  one.addEventListener("click", work);
  return one;
}

function answerButton(note: Note, answer: Answer, words: string, now: Answer | undefined): HTMLButtonElement {
  const one = act(words, () => {
    if (store.drawn.answers[note.number] === answer) return void store.change(edits.answered(store.drawn, note.number, ""), w("draw-answer-back"));
    reply(note, answer);
  });
  one.dataset["answer"] = `${note.number}-${answer}`;
  one.setAttribute("aria-pressed", String(now === answer));
  return one;
}

function showAt(at: Point, fault: Fault | null): void {
  look({ ...looking(), centre: at });
  const thing = fault?.thing;
  if (thing && thing.list !== "exits" && store.drawn[thing.list as ListName]?.some((one) => one.id === thing.id)) {
    store.use("pick");
    store.pick({ list: thing.list as ListName, id: thing.id });
  } else store.say("picked");
  sketch({ line: [], closed: false, at, guides: [], word: "" });
  here("board").focus();
}

/** The answer and what it does, as one step that can be undone. */
function reply(note: Note, answer: Answer): void {
  const name = answer === "yes" ? note.yes_act : note.no_act;
  if (name === "unit") {
    here("unit-part").hidden = false;
    here("unit").focus();
    return;
  }
  if (name === "join-here") return void joinHere(note, answer);
  const work = ACTS[name];
  const done = work ? work(note) : store.drawn;
  if (!done) return tell(w("draw-repair-not"));
  store.change(edits.answered(done, note.number, answer), w("draw-answered"));
  AFTER[name]?.(note);
}

/** The two rooms nearest to the note's place, as one; the answer with them. */
async function joinHere(note: Note, answer: Answer): Promise<void> {
  const [first, second] = edits.roomsNear(store.drawn, near(note));
  const now = first && second ? await join(first.id, second.id) : null;
  if (now) store.change(edits.answered(now, note.number, answer), w("draw-answered"));
  else if (!first || !second) tell(w("draw-repair-not"));
}

/** The way out that a fault asks for: the widest outside door, else one that is put next. */
function mendWayOut(): void {
  if (store.change(wayOut(), w("draw-exit-on"))) setFaults(faults.filter((one) => one.act !== "way-out"));
  putWayOut();
}

/** The room that the page is asked to begin at, picked; all of its storey is in view. */
export function beginAt(id: string): void {
  const room = store.drawn.rooms.find((one) => one.id === id);
  if (!room) return;
  store.storey = room.storey ?? "";
  look(viewOfAll(store.shown, size()));
  store.pick({ list: "rooms", id });
}

const near = (note: Note): Point => (note.at as Point | null) ?? looking().centre;

function openingNear(drawn: Drawn, note: Note): string | null {
  return edits.openingAt(drawn, near(note), NEAR_M)?.id ?? null;
}

const ACTS: Readonly<Record<string, (note: Note) => Drawn | null>> = {
  "wide-here": (note) => {
    const wide_m = Number(/(\d+(?:\.\d+)?) m wide/.exec(note.what)?.[1] ?? 0.8128);
    return edits.openingAdded(store.drawn, near(note), { kind: "wide", width_m: wide_m, reach: NEAR_M, storey: store.storey }).drawn;
  },
  "fixture-here": (note) => {
    const [x, y] = near(note);
    const half = SIDE_M / 2;
    const kind = /“([^”]+)”/.exec(note.what)?.[1] ?? w("draw-fixture-kind");
    if (note.shape) return edits.fixtureAdded(store.drawn, corners(note.shape), kind.toLowerCase().slice(0, 40)).drawn;
    const ring: Point[] = [[x - half, y - half], [x + half, y - half], [x + half, y + half], [x - half, y + half]];
    return edits.fixtureAdded(store.drawn, ring, kind.toLowerCase().slice(0, 40)).drawn;
  },
  "exit-here": (note) => {
    const id = openingNear(store.drawn, note);
    return id ? edits.exitSet(store.drawn, id, true) : null;
  },
  "no-exit-here": (note) => {
    const id = openingNear(store.drawn, note);
    return id ? edits.exitSet(store.drawn, id, false) : null;
  },
  "leaf-here": (note) => {
    const id = openingNear(store.drawn, note);
    return id ? edits.openingOfKind(store.drawn, id, "door") : null;
  },
  "room-here": (note) => {
    if (!note.shape) return store.drawn;
    const name = /“([^”]+)”/.exec(note.what)?.[1] ?? (/^(.+?) \(/.exec(note.what)?.[1] || w("draw-room-name", { n: store.drawn.rooms.length + 1 }));
    return edits.roomAdded(store.drawn, corners(note.shape), name, store.storey).drawn;
  },
  "strike-room": (note) => {
    const room = edits.roomAt(store.drawn, near(note));
    return room ? edits.removed(store.drawn, { list: "rooms", id: room.id }) : null;
  },
  "way-out": () => wayOut(),
};

/** What is begun by an answer and ended by hand. */
const AFTER: Readonly<Record<string, (note: Note) => void>> = {
  "room-here": (note) => {
    if (note.shape) return;
    store.nextName = /“([^”]+)”/.exec(note.what)?.[1] ?? "";
    store.use("rectangle");
    if (note.at) look({ ...looking(), centre: note.at as Point });
    store.say("picked");
    here("board").focus();
    tell(store.nextName ? w("draw-room-begin", { name: store.nextName }) : w("draw-hint-rectangle"));
  },
  "door-here": (note) => {
    store.use("opening");
    if (note.at) look({ ...looking(), centre: note.at as Point });
    store.say("picked");
    here("board").focus();
    tell(w("draw-hint-opening"));
  },
  "pick-opening": (note) => {
    const id = openingNear(store.drawn, note);
    if (id) store.pick({ list: "openings", id });
    here("board").focus();
  },
  trace: () => {
    store.use("rectangle");
    here("board").focus();
  },
  "name-room": (note) => {
    const room = edits.roomAt(store.drawn, near(note));
    if (!room) return;
    store.pick({ list: "rooms", id: room.id });
    document.getElementById("hand-name")?.scrollIntoView({ block: "nearest" });
    document.querySelector<HTMLInputElement>('[data-field="name"]')?.select();
  },
  "pick-fixture": () => {
    const one = store.drawn.fixtures[0];
    if (one) store.pick({ list: "fixtures", id: one.id });
    here("things").focus();
  },
  "fixture-here": () => pickLast("fixtures"),
  "wide-here": () => pickLast("openings"),
  "way-out": () => putWayOut(),
};

/** The floor with its widest outside opening as a way out; as it is where it has none. */
function wayOut(): Drawn {
  const outside = store.drawn.openings.filter((one) => one.kind === "outside");
  const widest = outside.sort((a, b) => dist(...b.line) - dist(...a.line))[0];
  return widest ? edits.exitSet(store.drawn, widest.id, true) : store.drawn;
}

function putWayOut(): void {
  if (store.drawn.exits.length) return;
  here<HTMLSelectElement>("new-kind").value = "outside";
  store.nextExit = true;
  store.use("opening");
  here("board").focus();
  tell(w("draw-put-way-out"));
}

function pickLast(list: "fixtures" | "openings"): void {
  const one = store.drawn[list].at(-1);
  if (one) store.pick({ list, id: one.id });
}

