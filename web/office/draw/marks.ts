// Marks on the floor that come and go: what is in hand, what is being drawn, pins.
import { lengthTold } from "./pure/lengths.ts";
import { corners, type Drawn, type Fixture, type Line, type Picked, type Point, type Room } from "./pure/nouns.ts";
import { add, dist, middle, outward, times, walls } from "./pure/points.ts";
import { hold, layer, pixel } from "./board.ts";
import { svgOf, units } from "./page.ts";
import { n2, pathOf, S } from "./view.ts";

const [HAND, FILL, GUIDES, PINS] = ["hand", "in-hand", "guides", "pins"].map(layer) as [SVGGElement, SVGGElement, SVGGElement, SVGGElement];

/** The picked thing, with its corners to take hold of and the lengths that matter. */
export function hand(drawn: Drawn, picked: Picked | null): void {
  HAND.replaceChildren();
  FILL.replaceChildren();
  hold(picked?.list === "rooms" ? picked.id : "");
  if (!picked) return;
  const one = drawn[picked.list].find((thing) => thing.id === picked.id);
  if (!one) return;
  if (picked.list === "rooms") return roomInHand(one as Room, picked);
  const line = "line" in one ? one.line : corners((one as Fixture).polygon);
  HAND.append(svgOf("path", { class: "picked", d: pathOf([line as readonly Point[]], !("line" in one)) }));
}

function roomInHand(room: Room, picked: Picked): void {
  const ring = corners(room.polygon);
  FILL.append(svgOf("path", { d: pathOf([ring]) }));
  HAND.append(svgOf("path", { class: "outline", d: pathOf([ring]) }));
  const taken = new Set<string>();
  walls(ring).forEach((line, n) => {
    if (picked.wall === n) HAND.append(svgOf("path", { class: "picked wall", d: pathOf([line], false) }));
    const told = lengthTold(dist(...line), units);
    // Of two walls that face each other across a narrow room one is measured.
    const narrow = ring.length === 4 && dist(...(walls(ring)[(n + 1) % 4] as Line)) / pixel() < 64;
    if (dist(...line) / pixel() < 56 || ring.length > 24 || (narrow && taken.has(told) && n !== picked.wall)) return;
    taken.add(told);
    measure(line, n === picked.wall);
  });
  ring.forEach((p, n) => {
    const half = 4.5 * pixel() * S;
    HAND.append(svgOf("rect", {
      class: picked.corner === n ? "corner taken" : "corner", x: n2(p[0] * S - half), y: n2(-p[1] * S - half), width: n2(2 * half), height: n2(2 * half),
    }));
  });
}

/** The length of a wall, inside the room beside it. */
function measure(line: Line, strong: boolean): void {
  const at = add(middle(...line), times(outward(...line), -13 * pixel()));
  const upright = Math.abs(line[0][0] - line[1][0]) < Math.abs(line[0][1] - line[1][1]);
  const text = svgOf("text", { class: strong ? "measure strong" : "measure", x: n2(at[0] * S), y: n2(-at[1] * S) });
  if (upright) text.setAttribute("transform", `rotate(-90 ${n2(at[0] * S)} ${n2(-at[1] * S)})`);
  text.textContent = lengthTold(dist(...line), units);
  HAND.append(text);
}

export interface Sketch {
  readonly line: readonly Point[];
  readonly closed: boolean;
  readonly at: Point | null;
  readonly guides: readonly Line[];
  readonly word: string;
}
/** What is being drawn, the thin lines that say why it settles there, and the word for it. */
export function sketch(now: Sketch | null): void {
  GUIDES.replaceChildren();
  if (!now) return;
  for (const line of now.guides) GUIDES.append(svgOf("path", { class: "guide", d: pathOf([line], false) }));
  if (now.line.length > 1) GUIDES.append(svgOf("path", { class: "sketch", d: pathOf([now.line], now.closed) }));
  if (!now.at) return;
  const [x, y] = [n2(now.at[0] * S), n2(-now.at[1] * S)];
  const r = n2(7 * pixel() * S);
  GUIDES.append(svgOf("path", { class: "cross", d: `M${x - r} ${y}h${2 * r}M${x} ${y - r}v${2 * r}` }));
  if (!now.word) return;
  const text = svgOf("text", { class: "why", x: n2(x + 1.5 * r), y: n2(y - 1.2 * r) });
  text.textContent = now.word;
  GUIDES.append(text);
}

export interface Pin {
  readonly at: Point;
  readonly label: string;
  readonly no: boolean;
  readonly open: boolean;
}
let pinned: readonly Pin[] = [];

/** The pin whose head is at a point: heads stand 14 px above their places. */
export function pinAt(p: Point): Pin | undefined {
  const m = pixel();
  return pinned.findLast((one) => dist([one.at[0], one.at[1] + 14 * m], p) < 12 * m);
}

/** Numbered pins at the places of faults and notes. */
export function pins(all: readonly Pin[]): void {
  PINS.replaceChildren();
  pinned = all;
  for (const one of all) {
    const group = svgOf("g", { class: one.no ? "pin no" : "pin", transform: `translate(${n2(one.at[0] * S)} ${n2(-one.at[1] * S)})` });
    const text = svgOf("text", {});
    text.textContent = one.label;
    group.append(svgOf("path", { d: "M0 0L-4 -9A10 10 0 1 1 4 -9Z" }), text);
    PINS.append(group);
  }
}
