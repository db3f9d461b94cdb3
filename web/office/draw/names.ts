// What things of a drawing are called, in the list and in what is told of them.
import { lengthTold } from "./pure/lengths.ts";
import type { Drawn, Line, ListName } from "./pure/nouns.ts";
import { dist } from "./pure/points.ts";
import { roomTold } from "./board.ts";
import { units, w } from "./page.ts";

/** What a thing is called. */
export function named(drawn: Drawn, name: ListName, id: string): string {
  if (name === "rooms") {
    const room = drawn.rooms.find((one) => one.id === id);
    return room ? roomTold(room) : id;
  }
  if (name === "openings") {
    const one = drawn.openings.find((thing) => thing.id === id);
    if (!one) return id;
    const rooms = one.rooms.map((room) => roomName(drawn, room));
    const where = rooms.length === 2 ? w("draw-between", { one: rooms[0] ?? "", other: rooms[1] ?? "" }) : w("draw-out-of", { room: rooms[0] ?? "" });
    const out = drawn.exits.some((way) => way.opening === id) ? `, ${w("draw-way-out")}` : "";
    return `${w(`draw-kind-${one.kind}`)}, ${where}${out}`;
  }
  if (name === "fixtures") return drawn.fixtures.find((one) => one.id === id)?.kind ?? id;
  const cut = drawn.saw_cuts.find((one) => one.id === id);
  return cut ? `${w("draw-thing-cut")}, ${lengthTold(longOf(cut.line), units)}` : id;
}

export const roomName = (drawn: Drawn, id: string): string => drawn.rooms.find((one) => one.id === id)?.name || id;
export const longOf = (line: readonly (readonly [number, number])[]): number =>
  line.slice(1).reduce((sum, p, n) => sum + dist(line[n] as Line[0], p), 0);

/** What is told of a room that was moved: its openings that lead elsewhere since are named. */
export function carriedTold(drawn: Drawn, changed: readonly string[]): string {
  if (!changed.length) return w("draw-moved-room");
  const openings = changed.map((id) => named(drawn, "openings", id)).join("; ");
  return w("draw-moved-room-look", { openings });
}
