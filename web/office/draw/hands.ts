// Mouse, pen and finger on the floor. Two fingers bring it nearer; one never scrolls the page.
import type { Picked, Point } from "./pure/nouns.ts";
import { middle, dist, add, sub } from "./pure/points.ts";
import { floorAt, look, looking, nameAt, pixel, svg } from "./board.ts";
import { pinAt, sketch } from "./marks.ts";
import { dragOf, type Drag } from "./dragging.ts";
import { hit } from "./hit.ts";
import { clicked, finish, hover, isMaking, making } from "./making.ts";
import { toRow } from "./findings.ts";
import { pictureDrag, scaleClicked } from "./underlay.ts";
import { here } from "./page.ts";
import { store } from "./store.ts";
import { zoomed } from "./view.ts";

const MOUSE_PX = 8;
const FINGER_PX = 20;
const STILL_PX = 4;
const fingers = new Map<number, Point>();
let drag: Drag | null = null;
let pan: Point | null = null;
let down: { x: number; y: number } | null = null;
let moved = false;
let pinch: { apart: number; at: Point } | null = null;
let waiting: (() => void) | null = null;

export const reachOf = (event: PointerEvent): number => (event.pointerType === "mouse" ? MOUSE_PX : FINGER_PX) * pixel();

/** The newest movement, once a frame. */
function soon(work: () => void): void {
  if (!waiting) requestAnimationFrame(() => {
    const now = waiting;
    waiting = null;
    now?.();
  });
  waiting = work;
}

svg.addEventListener("pointerdown", (event) => {
  if (event.button > 0) return;
  here("board").focus({ preventScroll: true });
  svg.setPointerCapture(event.pointerId);
  fingers.set(event.pointerId, [event.clientX, event.clientY]);
  if (fingers.size === 2) return beginPinch();
  down = { x: event.clientX, y: event.clientY };
  moved = false;
  const p = floorAt(event.clientX, event.clientY);
  if (isMaking()) {
    if (event.pointerType !== "mouse") hover(p, reachOf(event));
    // A rectangle may also be pulled open: its first corner is where the press began.
    if (isPulled()) if (!making()) clicked(p, reachOf(event));
    return;
  }
  if (store.tool === "scale") return;
  if (store.tool === "picture") {
    drag = pictureDrag(p);
    return;
  }
  if (pinAt(p)) return;
  const found = hit(store.shown, p, reachOf(event), store.picked);
  const held = found && (!isWhole(found) || isTaken(found.id, event));
  drag = held ? dragOf(found as Picked, p) : null;
  if (held) store.pick(found);
  else pan = p;
});

const isWhole = (one: Picked): boolean => one.list === "rooms" && one.wall === undefined && one.corner === undefined;

/** Whether a whole room is taken hold of: by its name, or inside once it is in hand; else the floor is shifted. */
function isTaken(room: string, event: PointerEvent): boolean {
  if (store.picked?.list === "rooms" && store.picked.id === room) return true;
  return nameAt(event.clientX, event.clientY, event.pointerType === "mouse" ? 2 : 8) === room;
}

svg.addEventListener("pointermove", (event) => {
  if (fingers.has(event.pointerId)) fingers.set(event.pointerId, [event.clientX, event.clientY]);
  const reach = reachOf(event);
  const { clientX, clientY, shiftKey } = event;
  if (down && Math.hypot(clientX - down.x, clientY - down.y) > STILL_PX) moved = true;
  if (pinch) return soon(pinched);
  if (isMaking()) return soon(() => void hover(floorAt(clientX, clientY), reach));
  if (drag && moved) return soon(() => drag?.to(floorAt(clientX, clientY), reach, shiftKey));
  if (pan && moved) soon(() => {
    if (!pan) return;
    const view = looking();
    look({ ...view, centre: add(view.centre, sub(pan, floorAt(clientX, clientY))) });
  });
});

svg.addEventListener("pointerup", (event) => {
  const p = floorAt(event.clientX, event.clientY);
  const reach = reachOf(event);
  fingers.delete(event.pointerId);
  if (pinch) {
    if (!fingers.size) pinch = null;
    return ended();
  }
  if (!down) return;
  if (store.tool === "scale" && !moved) scaleClicked(p);
  else if (isMaking()) tapped(p, reach);
  else if (drag) {
    waiting?.();
    waiting = null;
    if (moved && store.tool !== "picture") store.letGo(drag.words);
    else if (store.tool !== "picture") store.drop();
    sketch(null);
  } else if (!moved && pinAt(p)) toRow(pinAt(p)?.label ?? "");
  else if (!moved) store.pick(hit(store.shown, p, reach, store.picked));
  ended();
});

/** Whether two points make it, so that it may be pulled from one to the other. */
const isPulled = (): boolean => ["rectangle", "fixture", "cut", "split"].includes(store.tool);

function tapped(p: Point, reach: number): void {
  if (!isPulled()) return clicked(p, reach);
  if (moved || secondTap) clicked(p, reach);
  secondTap = making();
}
let secondTap = false;
store.on((change) => {
  if (change === "tool" || change === "drawn") secondTap = false;
});

function ended(): void {
  drag = null;
  pan = null;
  down = null;
}

svg.addEventListener("pointercancel", (event) => {
  fingers.delete(event.pointerId);
  pinch = null;
  store.drop();
  sketch(null);
  ended();
});
svg.addEventListener("dblclick", () => {
  if (store.tool === "corners" && making()) finish();
});

function beginPinch(): void {
  store.drop();
  sketch(null);
  ended();
  const [a, b] = [...fingers.values()] as [Point, Point];
  pinch = { apart: dist(a, b), at: floorAt(...(middle(a, b) as [number, number])) };
}
function pinched(): void {
  const [a, b] = [...fingers.values()];
  if (!pinch || !a || !b) return;
  const apart = Math.max(dist(a, b), 1);
  look(zoomed(looking(), apart / pinch.apart, pinch.at));
  const now = floorAt(...(middle(a, b) as [number, number]));
  const view = looking();
  look({ ...view, centre: add(view.centre, sub(pinch.at, now)) });
  pinch = { ...pinch, apart };
}

// A pinch on a trackpad comes as a wheel with ctrl; a bare wheel goes on scrolling the page.
svg.addEventListener("wheel", (event) => {
  if (!event.ctrlKey) return;
  event.preventDefault();
  look(zoomed(looking(), Math.exp(-event.deltaY / 200), floorAt(event.clientX, event.clientY)));
}, { passive: false });
