// The sheet of words: what is in hand with its lengths, and the list of all things.
import { lengthOf, lengthTold } from "./pure/lengths.ts";
import { corners, type Drawn, type Fixture, type Line, type ListName, type Opening, type OpeningKind, type Picked, type Room, type SawCut } from "./pure/nouns.ts";
import * as edits from "./pure/edits.ts";
import { box, dist, outward, walls } from "./pure/points.ts";
import { wallMoved, wallSized } from "./pure/walls.ts";
import { roomTold } from "./board.ts";
import { longOf, named } from "./names.ts";
import { htmlOf, here, tell, units, w } from "./page.ts";
import { store } from "./store.ts";
import { remove } from "./keys.ts";
import { besides, join } from "./rooms.ts";

const KINDS: readonly OpeningKind[] = ["door", "cased", "wide"];
const list = here("things");
const panel = here("hand");

/** The list of things; only rows that changed are touched. */
export function showList(drawn: Drawn): void {
  const rows: { key: string; text: string }[] = [];
  for (const name of ["rooms", "openings", "fixtures", "saw_cuts"] as const) {
    for (const one of drawn[name]) rows.push({ key: `${name}/${one.id}`, text: named(drawn, name, one.id) });
  }
  const there = new Map([...list.children].map((row) => [(row as HTMLElement).dataset["thing"], row as HTMLElement]));
  const wanted = rows.map(({ key, text }) => {
    const row = there.get(key) ?? htmlOf("li", { role: "option", "data-thing": key, id: `thing-${key.replace(/[^\w-]/g, "-")}` });
    if (row.textContent !== text) row.textContent = text;
    return row;
  });
  if (wanted.length !== list.children.length || wanted.some((row, n) => list.children[n] !== row)) list.replaceChildren(...wanted);
  here("things-none").hidden = wanted.length > 0;
  list.hidden = wanted.length === 0;
  markPicked();
}

export function markPicked(): void {
  const key = store.picked ? `${store.picked.list}/${store.picked.id}` : "";
  list.removeAttribute("aria-activedescendant");
  for (const row of list.children) {
    const mine = (row as HTMLElement).dataset["thing"] === key;
    row.setAttribute("aria-selected", String(mine));
    if (mine) list.setAttribute("aria-activedescendant", row.id);
  }
}

function pickRow(row: Element | null | undefined): void {
  const key = (row as HTMLElement | null)?.dataset["thing"] ?? "";
  const at = key.indexOf("/");
  if (at < 0) return;
  store.use("pick");
  store.pick({ list: key.slice(0, at) as ListName, id: key.slice(at + 1) });
  (row as HTMLElement).scrollIntoView({ block: "nearest" });
}

list.addEventListener("click", (event) => pickRow((event.target as Element).closest("li")));
list.addEventListener("keydown", (event) => {
  const now = list.querySelector('[aria-selected="true"]');
  const to: Readonly<Record<string, Element | null | undefined>> = {
    ArrowDown: now ? now.nextElementSibling : list.firstElementChild,
    ArrowUp: now ? now.previousElementSibling : list.lastElementChild,
    Home: list.firstElementChild, End: list.lastElementChild,
  };
  if (event.key in to) {
    event.preventDefault();
    pickRow(to[event.key]);
  } else if (event.key === "Enter" || event.key === " ") {
    event.preventDefault();
    if (!now) pickRow(list.firstElementChild);
    here("board").focus();
  } else if (event.key === "Delete") remove();
});

/** What is in hand, with all that can be said of it. */
export function showHand(drawn: Drawn): void {
  const one = store.picked;
  const thing = one && drawn[one.list].find((found) => found.id === one.id);
  here("hand-part").hidden = !thing;
  // Typing goes on in the field that has the focus.
  const focused = document.activeElement?.closest("#hand") ? (document.activeElement as HTMLElement).dataset["field"] : undefined;
  panel.replaceChildren();
  if (!one || !thing) return;
  here("hand-name").textContent = named(drawn, one.list, one.id);
  if (one.list === "rooms") roomFields(thing as Room, one);
  else if (one.list === "openings") openingFields(drawn, thing as Opening);
  else if (one.list === "fixtures") fixtureFields(thing as Fixture);
  else cutFields(thing as SawCut);
  panel.append(htmlOf("p", {}, button("draw-remove", remove)));
  if (focused) panel.querySelector<HTMLElement>(`[data-field="${focused}"]`)?.focus();
}

function button(key: string, act: () => void, name = key): HTMLButtonElement {
  const one = htmlOf("button", { type: "button", class: "plain", "data-field": name }, w(key));
  one.addEventListener("click", act);
  return one;
}

function field(name: string, label: string, value: string, put: (text: string) => boolean): HTMLElement {
  const id = `held-${name}`;
  const input = htmlOf("input", { id, "data-field": name, autocomplete: "off", spellcheck: "false", value });
  const take = (): void => {
    if (input.value === value) return;
    if (put(input.value)) return;
    input.setAttribute("aria-invalid", "true");
    tell(w("draw-no-length"));
  };
  input.addEventListener("change", take);
  input.addEventListener("keydown", (event) => {
    if (event.key === "Enter") take();
    if (event.key === "Escape") input.value = value;
  });
  return htmlOf("p", { class: "pair" }, htmlOf("label", { for: id }, label), input);
}

function lengthField(name: string, label: string, length_m: number, put: (length_m: number) => Drawn | null): HTMLElement {
  return field(name, label, lengthTold(length_m, units), (text) => {
    const read = lengthOf(text.replace("−", "-"), units);
    const now = read === null ? null : put(read);
    return now !== null && (now === store.drawn || store.change(now, w("draw-sized")));
  });
}

/** `upper`, `left`: which wall of its room it is; numbered where there are several such. */
function wallNames(ring: Room["polygon"]["coordinates"][number]): string[] {
  const sides = walls(ring).map(([a, b]) => {
    const [x, y] = outward(a, b);
    return Math.abs(x) > Math.abs(y) ? (x > 0 ? "right" : "left") : y > 0 ? "upper" : "lower";
  });
  return sides.map((side, n) => {
    const many = sides.filter((one) => one === side).length > 1;
    const place = sides.slice(0, n + 1).filter((one) => one === side).length;
    return many ? w("draw-wall-n", { side: w(`draw-wall-${side}`), n: place }) : w(`draw-wall-${side}`);
  });
}

function roomFields(room: Room, picked: Picked): void {
  const ring = corners(room.polygon);
  const names = wallNames(ring);
  panel.append(field("name", w("draw-name"), room.name ?? "", (text) => store.change(edits.roomNamed(store.drawn, room.id, text.trim().slice(0, 80)), w("draw-named"))));
  const wall = picked.wall;
  if (wall !== undefined && walls(ring)[wall]) {
    here("hand-name").textContent = w("draw-wall-of", { wall: names[wall] ?? "", room: room.name || room.id });
    panel.append(
      lengthField("long", w("draw-long"), dist(...(walls(ring)[wall] as Line)), (m) => wallSized(store.drawn, room.id, wall, m)),
      pushField(room, wall, "out", 1), pushField(room, wall, "in", -1),
    );
  }
  panel.append(...asOne(room));
  if (ring.length > 16) return;
  const rows = walls(ring).map((line, n) =>
    htmlOf("li", {}, lengthField(`wall-${n}`, names[n] ?? "", dist(...line), (m) => wallSized(store.drawn, room.id, n, m)), wallButton(room, n, names[n] ?? "", wall === n)),
  );
  panel.append(htmlOf("h3", {}, w("draw-walls")), htmlOf("ul", { class: "walls-list" }, ...rows));
  const at = ring.map((_, n) => cornerButton(room, n, picked.corner === n));
  panel.append(htmlOf("h3", {}, w("draw-corners")), htmlOf("p", { class: "corners-list" }, ...at));
}

/** Joining it with another room of its storey, and splitting it. */
function asOne(room: Room): HTMLElement[] {
  const others = besides(store.drawn, room);
  const cut = htmlOf("p", {}, button("draw-split", () => {
    store.splitting = room.id;
    store.use("split");
    here("board").focus();
  }));
  if (!others.length) return [cut];
  const select = htmlOf("select", { id: "held-join", "data-field": "join" });
  for (const one of others) select.append(htmlOf("option", { value: one.id }, roomTold(one)));
  const put = button("draw-join-put", () => void join(room.id, select.value));
  return [htmlOf("p", { class: "pair join" }, htmlOf("label", { for: "held-join" }, w("draw-join")), htmlOf("span", {}, select, " ", put)), cut];
}

function pushField(room: Room, wall: number, way: "out" | "in", sign: number): HTMLElement {
  return field(`push-${way}`, w(`draw-push-${way}`), "", (text) => {
    const read = lengthOf(text, units);
    const alone = here<HTMLInputElement>("alone").checked;
    const now = read === null ? null : wallMoved(store.drawn, { room: room.id, wall }, sign * read, alone);
    return now !== null && store.change(now, w("draw-moved-wall"));
  });
}

function wallButton(room: Room, n: number, name: string, taken: boolean): HTMLElement {
  const one = button("draw-take", () => {
    store.pick({ list: "rooms", id: room.id, wall: n });
    here("board").focus();
  }, `take-${n}`);
  one.setAttribute("aria-pressed", String(taken));
  one.setAttribute("aria-label", w("draw-take-wall", { wall: name }));
  return one;
}

function cornerButton(room: Room, n: number, taken: boolean): HTMLElement {
  const one = button("draw-corner-n", () => {
    store.pick({ list: "rooms", id: room.id, corner: n });
    here("board").focus();
  }, `corner-${n}`);
  one.textContent = String(n + 1);
  one.setAttribute("aria-pressed", String(taken));
  one.setAttribute("aria-label", w("draw-corner-n", { n: n + 1 }));
  return one;
}

function openingFields(drawn: Drawn, one: Opening): void {
  if (one.kind !== "outside") {
    const select = htmlOf("select", { id: "held-kind", "data-field": "kind" });
    for (const kind of KINDS) select.append(htmlOf("option", { value: kind, selected: kind === one.kind }, w(`draw-kind-${kind}`)));
    select.addEventListener("change", () => store.change(edits.openingOfKind(store.drawn, one.id, select.value as OpeningKind), w("draw-sized")));
    panel.append(htmlOf("p", { class: "pair" }, htmlOf("label", { for: "held-kind" }, w("draw-kind")), select));
  } else {
    const tick = htmlOf("input", { type: "checkbox", "data-field": "exit", checked: drawn.exits.some((way) => way.opening === one.id) });
    tick.addEventListener("change", () => store.change(edits.exitSet(store.drawn, one.id, tick.checked), tick.checked ? w("draw-exit-on") : w("draw-exit-off")));
    panel.append(htmlOf("p", {}, htmlOf("label", {}, tick, " ", w("draw-exit"))));
  }
  panel.append(lengthField("wide", w("draw-wide"), one.width_m ?? dist(...one.line), (m) => (m < 0.3 ? null : edits.openingSized(store.drawn, one.id, m, store.storey))));
  const room = drawn.rooms.find((found) => found.id === one.rooms[0]);
  if (room) panel.append(htmlOf("p", { class: "soft" }, w("draw-slide-hint")));
}

function fixtureFields(one: Fixture): void {
  const { low, high } = box(corners(one.polygon));
  const [wide, deep] = [high[0] - low[0], high[1] - low[1]];
  panel.append(
    field("kind", w("draw-fixture"), one.kind, (text) => store.change(edits.fixtureNamed(store.drawn, one.id, text), w("draw-named"))),
    lengthField("wide", w("draw-wide"), wide, (m) => edits.fixtureSized(store.drawn, one.id, m, deep)),
    lengthField("deep", w("draw-deep"), deep, (m) => edits.fixtureSized(store.drawn, one.id, wide, m)),
  );
}

function cutFields(one: SawCut): void {
  panel.append(htmlOf("p", {}, lengthTold(longOf(one.line), units)));
}
