// The keyboard on the floor: a cross that arrows move, Enter for a click, arrows move what is picked.
import { lengthTold, stepOf } from "./pure/lengths.ts";
import { corners, type Drawn, type Picked, type Point } from "./pure/nouns.ts";
import { cutMoved, fixtureMoved, openingSlid, removed, stepAlong } from "./pure/edits.ts";
import { add, dot, outward, times, unit, walls } from "./pure/points.ts";
import { cornerMoved, wallMoved } from "./pure/walls.ts";
import { roomCarried, roomLaid } from "./pure/whole.ts";
import { look, looking, pixel } from "./board.ts";
import { sketch } from "./marks.ts";
import { hit } from "./hit.ts";
import { back, clicked, finish, hover, isMaking, lastCorner, making, stop, typed, whyTold } from "./making.ts";
import { carriedTold } from "./names.ts";
import { here, tell, units, w } from "./page.ts";
import { store } from "./store.ts";
import { pictureMoved, scaleClicked } from "./underlay.ts";
import { viewOfAll, zoomed } from "./view.ts";
import { size } from "./board.ts";

const board = here("board");
const field = here<HTMLInputElement>("typed");
let cursor: Point | null = null;
const KEY_PX = 7;
const WAYS: Readonly<Record<string, Point>> = {
  ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1],
};
const cross = (): Point => (cursor ??= lastCorner() ?? looking().centre);
const reach = (): number => KEY_PX * pixel();

export function zoom(by: number): void {
  look(zoomed(looking(), by, looking().centre));
  store.say("picked");
}
export function all(): void {
  look(viewOfAll(store.shown, size()));
  store.say("picked");
}

board.addEventListener("keydown", (event) => {
  if (event.altKey) return;
  if (event.ctrlKey || event.metaKey) return;
  const way = WAYS[event.key];
  if (way) {
    event.preventDefault();
    const step = stepOf(units, event.shiftKey);
    if (store.tool === "picture") return pictureMoved(times(way, step));
    if (store.tool === "pick" && store.picked) return movePicked(times(way, step));
    return moveCross(times(way, step));
  }
  if (/^[0-9.]$/.test(event.key) && (isMaking() || store.picked)) {
    event.preventDefault();
    field.value = event.key;
    field.focus();
    return;
  }
  const act = ACTS[event.key];
  if (!act) return;
  event.preventDefault();
  act();
});

const ACTS: Readonly<Record<string, () => void>> = {
  Enter: () => {
    if (store.tool === "scale") return scaleClicked(cross());
    if (isMaking()) return clicked(cross(), reach());
    store.pick(hit(store.shown, cross(), reach(), store.picked));
  },
  Backspace: () => (making() ? void back() : remove()),
  Delete: () => remove(),
  Escape: () => {
    if (making()) return stop();
    if (store.tool !== "pick") return store.use("pick");
    store.pick(null);
    sketch(null);
  },
  "+": () => zoom(1.4),
  "=": () => zoom(1.4),
  "-": () => zoom(1 / 1.4),
  End: () => finish(),
  Home: () => all(),
};

document.addEventListener("keydown", (event) => {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
  const inText = event.target instanceof HTMLInputElement && event.target.type === "text";
  const key = event.key.toLowerCase();
  if (inText || (key !== "z" && key !== "y")) return;
  event.preventDefault();
  if (key === "y" || event.shiftKey) store.redo();
  else store.undo();
});

export function remove(): void {
  const one = store.picked;
  if (one) store.change(removed(store.drawn, one), w("draw-removed"));
}

function moveCross(by: Point): void {
  cursor = add(cross(), by);
  keepInSight(cursor);
  const found = isMaking() ? hover(cursor, reach()) : null;
  if (!isMaking()) sketch({ line: [], closed: false, at: cursor, guides: [], word: "" });
  const at = found?.at ?? cursor;
  const where = w("draw-cross", { x: lengthTold(at[0], units), y: lengthTold(at[1], units) });
  tell([where, found ? whyTold(found) : ""].filter(Boolean).join(", "));
}

function keepInSight(p: Point): void {
  const view = looking();
  const { width, height } = size();
  const half: Point = [view.wide_m * 0.46, (view.wide_m * 0.46 * height) / width];
  const off = [0, 1].map((n) => {
    const d = (p[n] as number) - (view.centre[n] as number);
    return Math.sign(d) * Math.max(0, Math.abs(d) - (half[n] as number));
  });
  if (off[0] || off[1]) look({ ...view, centre: add(view.centre, off as unknown as Point) });
}

function movePicked(by: Point): void {
  const one = store.picked as Picked;
  if (one.list === "rooms" && one.corner === undefined && one.wall === undefined) return moveRoom(one.id, by);
  const now = moved(store.drawn, one, by);
  if (!now || now === store.drawn) return tell(w("draw-cannot-move"));
  store.change(now, w("draw-moved"));
}

/** A whole room, a step: it settles where that is nearer than half the step, and leaves again with the next. */
function moveRoom(id: string, by: Point): void {
  const laid = roomLaid(store.drawn, id, by, { reach: 0.45 * Math.hypot(...by), grid: 0 });
  const found = roomCarried(store.drawn, id, laid.by);
  const why = laid.words.map((one) => w(`draw-snap-${one}`));
  store.change(found.drawn, [carriedTold(found.drawn, found.changed), ...why].join(" "));
}

function moved(drawn: Drawn, one: Picked, by: Point): Drawn | null {
  const room = one.list === "rooms" ? drawn.rooms.find((thing) => thing.id === one.id) : undefined;
  const alone = here<HTMLInputElement>("alone").checked;
  if (room && one.corner !== undefined) {
    const at = corners(room.polygon)[one.corner];
    return at ? cornerMoved(drawn, one.id, one.corner, add(at, by), !alone) : null;
  }
  if (room && one.wall !== undefined) {
    const line = walls(corners(room.polygon))[one.wall];
    if (!line) return null;
    const off = dot(by, outward(...line));
    return Math.abs(off) < 1e-6 ? drawn : wallMoved(drawn, { room: one.id, wall: one.wall }, off, alone);
  }
  if (one.list === "openings") {
    const opening = drawn.openings.find((thing) => thing.id === one.id);
    if (!opening) return null;
    return openingSlid(drawn, one.id, stepAlong(opening.line, dot(by, unit(...opening.line))), store.storey);
  }
  if (one.list === "fixtures") return fixtureMoved(drawn, one.id, by);
  if (one.list === "saw_cuts") return cutMoved(drawn, one.id, by);
  return null;
}

// The typed length: Enter takes it towards the cross, an arrow straight that way.
field.addEventListener("keydown", (event) => {
  const way = WAYS[event.key];
  const sideways = way && way[0] !== 0;
  if (event.key === "Escape") {
    field.value = "";
    return board.focus();
  }
  if (event.key !== "Enter" && !(way && making() && (!sideways || field.selectionStart === field.value.length))) return;
  if (way && !making()) return;
  event.preventDefault();
  if (typed(field.value, cross(), way)) {
    if (store.tool !== "opening") field.value = "";
    field.removeAttribute("aria-invalid");
    cursor = lastCorner() ?? cursor;
    board.focus();
  } else {
    field.setAttribute("aria-invalid", "true");
    tell(w("draw-no-length"));
  }
});
store.on((change) => {
  if (change === "tool") cursor = null;
});
