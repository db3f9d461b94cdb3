/** Drawing a floor: lengths, snapping, walls, doors, undo; by hand and by laws. */
import assert from "node:assert/strict";
import { test } from "node:test";
import * as edits from "../office/draw/pure/edits.ts";
import { gapOf, placed } from "../office/draw/pure/doors.ts";
import { freeOf } from "../office/draw/pure/free.ts";
import { begun, done, type History, redone, undone } from "../office/draw/pure/history.ts";
import { areaTold, lengthOf, lengthTold, stepOf } from "../office/draw/pure/lengths.ts";
import { corners, type Drawn, empty, type Point, polygon, type Ring, WALL_M } from "../office/draw/pure/nouns.ts";
import { merged } from "../office/draw/pure/merged.ts";
import { area, box, dist, holds, inside, meeting, rectangle, sound, turned } from "../office/draw/pure/points.ts";
import { groundOf, settle } from "../office/draw/pure/snap.ts";
import { cornerMoved, wallMoved, wallOf, wallSized } from "../office/draw/pure/walls.ts";
import { roomCarried, roomLaid } from "../office/draw/pure/whole.ts";
import { viewOfAll, WORDS_OUT_M } from "../office/draw/view.ts";

const IN = 0.0254;
const FT = 0.3048;
const near = (a: number | null, b: number, within = 1e-9): void => assert.ok(a !== null && Math.abs(a - b) <= within, `${a} is not ${b}`);

test("lengths are read as people write them", () => {
  const told: [string, number][] = [
    [`12' 6 1/2"`, 12 * FT + 6.5 * IN], ["12ft6", 12 * FT + 6 * IN], ["12' 6", 12 * FT + 6 * IN], [`12'-6"`, 12 * FT + 6 * IN],
    [`12′ 6½″`, 12 * FT + 6.5 * IN], ["12 ft 6 in", 12 * FT + 6 * IN], [`6"`, 6 * IN], ["6 1/2 in", 6.5 * IN], [`½"`, 0.5 * IN],
    ["12'", 12 * FT], ["12.5", 12.5 * FT], ["3.81 m", 3.81], ["3,81 m", 3.81], ["381cm", 3.81], ["3810 mm", 3.81], ["12 pies 6 pulg", 12 * FT + 6 * IN],
    [`12' 1/4"`, 12 * FT + 0.25 * IN], ["0", 0],
  ];
  for (const [text, metres] of told) near(lengthOf(text, "us"), metres);
  near(lengthOf("3.81", "metric"), 3.81);
});

test("what is no length is none", () => {
  for (const text of ["", " ", "twelve", "-3 m", "12 6", "6 1/0 in", "1/2", "99999 m", "1e3", "12'6'6", "m", "'", `"`]) {
    assert.equal(lengthOf(text, "us"), null, text);
  }
});

test("a told length is read back as itself, to a sixteenth of an inch", () => {
  for (let n = 1; n < 4000; n += 7) {
    const metres = n * 0.0123;
    near(lengthOf(lengthTold(metres, "us"), "us"), metres, IN / 16 + 1e-9);
    near(lengthOf(lengthTold(metres, "metric"), "metric"), metres, 5.1e-4);
  }
  assert.equal(lengthTold(12 * FT + 6.5 * IN, "us"), "12′ 6½″");
  assert.equal(lengthTold(12 * FT + 0.5 * IN, "us"), "12′ ½″");
  assert.equal(lengthTold(3.81, "metric"), "3.81 m");
  assert.equal(areaTold(10, "us"), "108 ft²");
  near(stepOf("us", true), FT);
});

const ROOM: Ring = [[0, 0], [4, 0], [4, 3], [0, 3]];
/** Two rooms side by side, a wall apart, with a door between them and a way out of the first. */
function two(): Drawn {
  let drawn = edits.roomAdded(empty(), ROOM, "A").drawn;
  drawn = edits.roomAdded(drawn, rectangle([4 + WALL_M, 0], [7, 3]), "B").drawn;
  drawn = edits.openingAdded(drawn, [4.05, 1.5], { kind: "door", width_m: 0.8, reach: 0.3 }).drawn;
  drawn = edits.openingAdded(drawn, [2, 3], { kind: "outside", width_m: 0.9, reach: 0.3 }).drawn;
  return edits.exitSet(drawn, "outside", true);
}

test("a point settles on a corner before a wall, on a wall before a line", () => {
  const ground = groundOf(two());
  const wish = { reach: 0.1, grid: 0.01 };
  assert.deepEqual(settle([3.95, 2.97], ground, wish), { at: [4, 3], words: ["corner"], guides: [] });
  const wall = settle([1.234, 0.06], ground, wish);
  assert.deepEqual([wall.words, wall.at[1]], [["edge"], 0]);
  const line = settle([9, 3.05], ground, wish);
  assert.deepEqual([line.words, line.at], [["axis"], [9, 3]]);
  assert.deepEqual(settle([9.003, 1.337], ground, wish).at, [9, 1.34]);
});

test("a wall apart is one wall's depth outside", () => {
  const ground = groundOf(edits.roomAdded(empty(), ROOM, "A").drawn);
  const found = settle([4.13, 1.5], ground, { reach: 0.05, grid: 0.01 });
  assert.deepEqual(found.words, ["apart"]);
  near(found.at[0], 4 + WALL_M, 1e-4);
});

test("where a whole house is seen a room still begins a wall's depth off", () => {
  // Twelve pixels of the board are then more than a wall: what is nearer to the hand decides.
  const ground = groundOf(edits.roomAdded(empty(), ROOM, "A").drawn);
  const wish = { reach: 0.24, grid: 0.01 };
  for (const y of [1.5, 0.01, 2.98]) {
    const found = settle([4 + WALL_M + 0.004, y], ground, wish);
    assert.ok(found.words.includes("apart"), `${y}: ${found.words}`);
    near(found.at[0], 4 + WALL_M, 1e-4);
  }
  near(settle([4 + WALL_M, 0.01], ground, wish).at[1], 0);
  assert.deepEqual(settle([4.02, 0.01], ground, wish).words, ["corner"]);
  assert.deepEqual(settle([4.03, 1.5], ground, wish).words, ["edge"]);
});

test("a room by its two sides lies on no other", () => {
  const house = two();
  assert.deepEqual(freeOf(house, [2, 1], [3, 3]), [7 + WALL_M, 0].map((n) => Math.round(n * 1e4) / 1e4));
  assert.deepEqual(freeOf(house, [9, 2], [3, 3]), [9, 2]);
  assert.deepEqual(freeOf(house, [0, 3], [4, 2]), [0, 3], "side by side is free");
  const notched = edits.roomAdded(empty(), [[0, 0], [6, 0], [6, 2], [2, 2], [2, 6], [0, 6]], "L").drawn;
  assert.deepEqual(freeOf(notched, [3, 3], [2, 2]), [3, 3], "in the notch of an L");
  assert.deepEqual(freeOf(notched, [-1, 1], [8, 3]), [6 + WALL_M, 0].map((n) => Math.round(n * 1e4) / 1e4));
});

test("two who draw on one floor lose nothing of either", () => {
  const base = two();
  const mine = edits.roomNamed(edits.roomAdded(base, rectangle([0, 3.2], [4, 6]), "C").drawn, "a", "Great room");
  const theirs = edits.fixtureAdded(edits.roomAdded(base, rectangle([9, 0], [12, 3]), "C").drawn, rectangle([5, 1], [6, 2]), "tub").drawn;
  const found = merged(base, mine, theirs);
  assert.deepEqual(found.both, []);
  assert.deepEqual(found.drawn.rooms.map((one) => [one.id, one.name]), [["a", "Great room"], ["b", "B"], ["c", "C"], ["c-2", "C"]]);
  assert.deepEqual(found.drawn.fixtures.map((one) => one.id), ["tub"]);
  assert.deepEqual([found.drawn.openings, found.drawn.exits], [base.openings, base.exits]);
  assert.deepEqual(merged(base, base, theirs).drawn, theirs);
  assert.deepEqual(merged(base, mine, base).drawn, mine);
  assert.deepEqual(merged(base, mine, JSON.parse(JSON.stringify(mine)) as Drawn), { drawn: mine, both: [] });
});

test("what both changed is told, and what hangs on a room that is gone goes", () => {
  const base = two();
  const mine = edits.roomNamed(base, "b", "Bath");
  assert.deepEqual(merged(base, mine, edits.roomNamed(base, "b", "Bed")).both, [{ list: "rooms", id: "b" }]);
  assert.equal(merged(base, mine, edits.roomNamed(base, "b", "Bed")).drawn.rooms[1]?.name, "Bath");
  const gone = edits.removed(base, { list: "rooms", id: "b" });
  assert.deepEqual(merged(base, gone, base).drawn, gone);
  assert.deepEqual(merged(base, base, gone).drawn, gone);
  const kept = merged(base, mine, gone);
  assert.deepEqual(kept.both, [{ list: "rooms", id: "b" }]);
  assert.deepEqual(kept.drawn.rooms.map((one) => one.name), ["A", "Bath"]);
  const noDoor = edits.removed(base, { list: "openings", id: "outside" });
  assert.deepEqual(merged(base, noDoor, edits.roomNamed(base, "a", "Hall")).drawn.exits, []);
});

test("a new door of each with the same id is two doors, the way out on its own", () => {
  const base = edits.removed(two(), { list: "openings", id: "outside" });
  const put = (p: Point): Drawn => edits.exitSet(edits.openingAdded(base, p, { kind: "outside", width_m: 0.9, reach: 0.3 }).drawn, "outside", true);
  const found = merged(base, put([2, 0]), put([2, 3])).drawn;
  assert.equal(found.openings.filter((one) => one.kind === "outside").length, 2);
  assert.deepEqual(new Set(found.exits.map((one) => one.opening)), new Set(["outside", "outside-2"]));
});

test("a third corner stands squarely to the last wall, also where the house is askew", () => {
  const before: Point = [0, 0];
  const from: Point = [3, 1];
  const found = settle([2.02, 3.95], { corners: [], edges: [], apart: [] }, { reach: 0.2, grid: 0, from, before });
  assert.deepEqual(found.words, ["square"]);
  near((found.at[0] - 3) * 3 + (found.at[1] - 1), 0, 1e-3);
});

test("a settled point is never farther off than it may be", () => {
  const ground = groundOf(two());
  for (let n = 0; n < 500; n += 1) {
    const p: Point = [(n * 0.377) % 8, (n * 0.731) % 4];
    const found = settle(p, ground, { reach: 0.1, grid: 0.01, from: [1, 1], before: [0, 1] });
    assert.ok(dist(found.at, p) <= 0.151, `${p} went to ${found.at}`);
  }
});

test("a door finds the rooms on its sides, and its threshold fills the wall", () => {
  const [door, out] = two().openings;
  assert.equal(door?.kind, "door");
  assert.deepEqual([...(door?.rooms ?? [])].sort(), ["a", "b"]);
  near(door?.line[0][0] ?? 0, 4 + WALL_M / 2, 1e-4);
  near(area(corners(door!.threshold!)), 0.8 * WALL_M, 1e-3);
  assert.equal(out?.kind, "outside");
  assert.deepEqual(out?.rooms, ["a"]);
  assert.ok((out?.line[0][1] ?? 0) > 3);
});

test("an outside door is no door between rooms, and the other way round", () => {
  const drawn = two();
  assert.equal(placed(drawn, [4.05, 1.5], { kind: "outside", width_m: 0.8, reach: 0.2 })?.kind, "door");
  assert.equal(placed(drawn, [0, 1.5], { kind: "wide", width_m: 0.8, reach: 0.2 })?.kind, "outside");
  assert.equal(placed(drawn, [2, 1.5], { kind: "door", width_m: 0.8, reach: 0.2 }), null);
  assert.equal(edits.openingOfKind(drawn, "door", "outside"), drawn);
  assert.equal(edits.openingOfKind(drawn, "door", "cased").openings[0]?.kind, "cased");
});

test("an opening stays on its wall, as wide, however far it is dragged", () => {
  const drawn = two();
  for (const y of [-5, 0.2, 1.1, 2.9, 9]) {
    const now = edits.openingSlid(drawn, "door", [4.05, y]).openings[0]!;
    near(dist(...now.line), 0.8, 1e-3);
    assert.ok(Math.min(now.line[0][1], now.line[1][1]) >= -1e-6 && Math.max(now.line[0][1], now.line[1][1]) <= 3 + 1e-6);
    assert.deepEqual([...now.rooms].sort(), ["a", "b"]);
  }
});

test("a wall is moved with what faces it, its door and the cut that ends there", () => {
  const drawn = edits.cutAdded(two(), [[2, 0], [4, 1]]).drawn;
  const right = wallOf(drawn, { room: "a", wall: 1 });
  assert.deepEqual(right.map((one) => one.room).sort(), ["a", "b"]);
  const now = wallMoved(drawn, { room: "a", wall: 1 }, 0.5)!;
  near(area(corners(now.rooms[0]!.polygon)), 4.5 * 3, 1e-3);
  near(area(corners(now.rooms[1]!.polygon)), (7 - 4.5 - WALL_M) * 3, 1e-3);
  near(now.openings[0]!.line[0][0], 4.5 + WALL_M / 2, 1e-4);
  assert.deepEqual(now.openings[1], drawn.openings[1]);
  assert.deepEqual(now.saw_cuts[0]?.line, [[2, 0], [4.5, 1]]);
});

test("moved there and back a floor is the same; too far it is none", () => {
  const drawn = two();
  for (const by of [0.3, -0.7, 1.2]) {
    const there = wallMoved(drawn, { room: "a", wall: 1 }, by)!;
    assert.deepEqual(wallMoved(there, { room: "a", wall: 1 }, -by), drawn);
  }
  assert.equal(wallMoved(drawn, { room: "a", wall: 1 }, 5), null);
  assert.equal(wallMoved(drawn, { room: "a", wall: 1 }, -4.2), null);
});

test("alone a face leaves the other room as it is", () => {
  const now = wallMoved(two(), { room: "a", wall: 1 }, -0.5, true)!;
  near(area(corners(now.rooms[0]!.polygon)), 3.5 * 3, 1e-3);
  assert.equal(now.rooms[1], two().rooms[1] === undefined ? undefined : now.rooms[1]);
  near(area(corners(now.rooms[1]!.polygon)), (7 - 4 - WALL_M) * 3, 1e-3);
});

test("a slanted neighbour keeps its slant when a wall moves", () => {
  const slanted: Ring = [[0, 0], [4, 0], [3, 3], [0, 3]];
  const drawn = edits.roomAdded(empty(), slanted, "S").drawn;
  const ring = corners(wallMoved(drawn, { room: "s", wall: 2 }, 0.6)!.rooms[0]!.polygon);
  near(ring[2]![0], 4 - 3.6 / 3, 1e-3);
  near(ring[2]![1], 3.6, 1e-3);
});

test("a corner takes both its walls along, or goes alone", () => {
  const square = cornerMoved(two(), "a", 0, [-1, -0.5], true)!;
  near(area(corners(square.rooms[0]!.polygon)), 5 * 3.5, 1e-3);
  const alone = cornerMoved(two(), "a", 0, [-1, -0.5], false)!;
  assert.ok(area(corners(alone.rooms[0]!.polygon)) < 5 * 3.5);
  assert.equal(cornerMoved(two(), "a", 0, [5, 5], false), null);
});

test("a wall is made as long as it is typed", () => {
  const now = wallSized(two(), "a", 0, 3.2)!;
  const ring = corners(now.rooms[0]!.polygon);
  near(dist(ring[0]!, ring[1]!), 3.2, 1e-3);
  near(corners(now.rooms[1]!.polygon)[0]![0], 3.2 + WALL_M, 1e-3);
});

test("a whole room goes with what stands in it, its cut, its way out and its door", () => {
  let drawn = edits.fixtureAdded(two(), rectangle([1, 1], [2, 2]), "island").drawn;
  drawn = edits.cutAdded(drawn, [[0, 2], [4, 2]]).drawn;
  drawn = edits.cutAdded(drawn, [[3, 1], [6, 1]]).drawn;
  const { drawn: now, changed } = roomCarried(drawn, "a", [0, -1]);
  assert.deepEqual(changed, []);
  assert.deepEqual(corners(now.rooms[0]!.polygon)[0], [0, -1]);
  assert.deepEqual(now.rooms[1], drawn.rooms[1]);
  assert.deepEqual(corners(now.fixtures[0]!.polygon)[0], [1, 0]);
  assert.deepEqual(now.saw_cuts.map((one) => one.line), [[[0, 1], [4, 1]], [[3, 1], [6, 1]]]);
  const [door, out] = now.openings;
  near(out!.line[0][1], drawn.openings[1]!.line[0][1] - 1, 1e-4);
  assert.deepEqual([out!.kind, now.exits], ["outside", drawn.exits]);
  assert.deepEqual([door!.kind, [...door!.rooms].sort()], ["door", ["a", "b"]]);
  near(dist(...door!.line), 0.8, 1e-3);
  near((door!.line[0][1] + door!.line[1][1]) / 2, 0.5, 1e-3); // 1 m down, still between both rooms
});

test("a door whose other room is left behind leads outside, and is named", () => {
  const { drawn: now, changed } = roomCarried(two(), "b", [2, 0]);
  assert.deepEqual(changed, ["door"]);
  const door = now.openings.find((one) => one.id === "door")!;
  assert.deepEqual([door.kind, door.rooms], ["outside", ["b"]]);
  assert.ok(door.line[0][0] > 5.8 && door.line[0][0] < 4 + WALL_M + 2);
});

test("an outside door that a room is laid against leads into it, and is no way out any more", () => {
  const drawn = edits.roomAdded(two(), rectangle([0, 6], [4, 8]), "C").drawn;
  const { drawn: now, changed } = roomCarried(drawn, "c", [0, 3 + WALL_M - 6]);
  assert.deepEqual(changed, ["outside"]);
  const out = now.openings.find((one) => one.id === "outside")!;
  assert.deepEqual([out.kind, [...out.rooms].sort()], ["door", ["a", "c"]]);
  assert.deepEqual(now.exits, []);
});

test("a room moved there and back is where it was, with doors of the same rooms", () => {
  const drawn = two();
  for (const by of [[0.5, -0.4], [0, 1.2], [-1, 0.25]] as Point[]) {
    const there = roomCarried(drawn, "b", by).drawn;
    const back = roomCarried(there, "b", [-by[0], -by[1]]).drawn;
    assert.deepEqual(back.rooms, drawn.rooms);
    assert.deepEqual(back.openings.map((one) => [...one.rooms].sort()), drawn.openings.map((one) => [...one.rooms].sort()));
  }
  assert.equal(roomCarried(drawn, "b", [0, 0]).drawn, drawn);
  assert.equal(roomCarried(drawn, "none", [1, 0]).drawn, drawn);
});

test("a room settles a wall off its neighbour and in line with it, else on the grid", () => {
  const drawn = edits.roomAdded(edits.roomAdded(empty(), ROOM, "A").drawn, rectangle([6, 5], [8, 7]), "B").drawn;
  const wish = { reach: 0.1, grid: 0.05 };
  const apart = roomLaid(drawn, "b", [-1.93, -4.96], wish);
  near(apart.by[0], 4 + WALL_M - 6, 1e-9);
  near(apart.by[1], -5, 1e-9);
  assert.deepEqual([...apart.words].sort(), ["apart", "axis"]);
  assert.equal(apart.guides.length, 2);
  const free = roomLaid(drawn, "b", [1.234, 3.456], wish);
  near(free.by[0], 1.25, 1e-9);
  near(free.by[1], 3.45, 1e-9);
  assert.deepEqual(free.words, []);
});

test("a neighbour that a room does not lie beside holds nothing off, and another storey neither", () => {
  const drawn = edits.roomAdded(edits.roomAdded(empty(), ROOM, "A").drawn, rectangle([6, 9], [8, 11]), "B").drawn;
  assert.ok(!roomLaid(drawn, "b", [-1.93, 0.3], { reach: 0.1, grid: 0.01 }).words.includes("apart"));
  const above = { ...drawn, rooms: drawn.rooms.map((one) => (one.id === "a" ? { ...one, storey: "up" } : one)) };
  assert.deepEqual(roomLaid(above, "b", [-1.93, -8.98], { reach: 0.1, grid: 0.01 }).words, []);
});

test("a slanted room settles along its own walls", () => {
  const turn = (p: Point): Point => [0.8 * p[0] - 0.6 * p[1], 0.6 * p[0] + 0.8 * p[1]];
  let drawn = edits.roomAdded(empty(), ROOM.map(turn), "A").drawn;
  drawn = edits.roomAdded(drawn, rectangle([6, 0], [9, 3]).map(turn), "B").drawn;
  const laid = roomLaid(drawn, "b", turn([-1.95, 0]), { reach: 0.1, grid: 0 });
  near(dist(laid.by, turn([4 + WALL_M - 6, 0])), 0, 1e-3);
});

test("an arrow moves a room off what it settled on", () => {
  const drawn = two();
  const step = 0.0254;
  const laid = roomLaid(drawn, "b", [step, 0], { reach: 0.45 * step, grid: 0 });
  near(laid.by[0], step, 1e-9);
  near(laid.by[1], 0, 1e-9);
});

test("without a room its openings, ways out and fixtures go too", () => {
  const drawn = edits.fixtureAdded(two(), rectangle([1, 1], [2, 2]), "island").drawn;
  const now = edits.removed(drawn, { list: "rooms", id: "a" });
  assert.deepEqual([now.rooms.length, now.openings.length, now.exits.length, now.fixtures.length], [1, 0, 0, 0]);
  assert.equal(edits.removed(two(), { list: "openings", id: "outside" }).exits.length, 0);
});

test("ids are never given twice", () => {
  let drawn = empty();
  for (let n = 0; n < 5; n += 1) drawn = edits.roomAdded(drawn, rectangle([n * 5, 0], [n * 5 + 4, 3]), "Baño 1").drawn;
  assert.deepEqual(drawn.rooms.map((one) => one.id), ["bano-1", "bano-1-2", "bano-1-3", "bano-1-4", "bano-1-5"]);
});

test("a line that crosses itself is no room", () => {
  assert.equal(sound([[0, 0], [4, 0], [0, 3], [4, 3]]), false);
  assert.equal(edits.roomAdded(empty(), [[0, 0], [4, 3], [4, 0], [0, 3]], "X").thing, null);
  assert.equal(sound(ROOM), true);
  assert.ok(area(turned([...ROOM].reverse())) > 0);
});

test("the place for a name lies inside, also in a room like an L", () => {
  const ell: Ring = [[0, 0], [6, 0], [6, 1], [1, 1], [1, 6], [0, 6]];
  assert.ok(holds(ell, inside(ell)));
  assert.deepEqual(meeting([[0, 0], [1, 0]], [[2, -1], [2, 1]]), [2, 0]);
  assert.equal(meeting([[0, 0], [1, 0]], [[0, 1], [1, 1]]), null);
});

/** Numbers that look like chance and are the same each time (LCG of Numerical Recipes, from memory). */
function dice(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Any edit by chance. */
function anyEdit(drawn: Drawn, roll: () => number): Drawn {
  const p: Point = [roll() * 12 - 2, roll() * 8 - 2];
  const one = <T extends { id: string }>(all: readonly T[]): string => all[Math.floor(roll() * all.length)]?.id ?? "none";
  const acts: (() => Drawn)[] = [
    () => edits.roomAdded(drawn, rectangle(p, [p[0] + 1 + roll() * 3, p[1] + 1 + roll() * 3]), "R").drawn,
    () => edits.openingAdded(drawn, p, { kind: "door", width_m: 0.8, reach: 1 }).drawn,
    () => edits.fixtureAdded(drawn, rectangle(p, [p[0] + 0.6, p[1] + 0.6]), "tub").drawn,
    () => edits.cutAdded(drawn, [p, [p[0] + 1, p[1] + roll()]]).drawn,
    () => wallMoved(drawn, { room: one(drawn.rooms), wall: Math.floor(roll() * 4) }, roll() - 0.5) ?? drawn,
    () => cornerMoved(drawn, one(drawn.rooms), Math.floor(roll() * 4), p, roll() < 0.5) ?? drawn,
    () => edits.openingSlid(drawn, one(drawn.openings), p),
    () => edits.exitSet(drawn, one(drawn.openings), roll() < 0.7),
    () => edits.removed(drawn, { list: roll() < 0.5 ? "openings" : "rooms", id: one(drawn.rooms) }),
    () => edits.answered(drawn, String(Math.floor(roll() * 5)), roll() < 0.5 ? "yes" : ""),
  ];
  return acts[Math.floor(roll() * acts.length)]!();
}

test("undo of all is the beginning, redo of all the end; every state holds together", () => {
  for (let seed = 1; seed <= 60; seed += 1) {
    const roll = dice(seed);
    const first = two();
    const told = JSON.stringify(first);
    let history: History<Drawn> = begun(first);
    for (let n = 0; n < 40; n += 1) {
      if (roll() < 0.15) history = undone(history);
      else if (roll() < 0.1) history = redone(history);
      else history = done(history, anyEdit(history.now, roll));
      holdsTogether(history.now);
    }
    const last = history.now;
    let back = history;
    while (back.past.length) back = undone(back);
    assert.equal(back.now, first);
    assert.equal(JSON.stringify(back.now), told, "an edit changed a floor in place");
    let on = back;
    while (on.next.length && on.now !== last) on = redone(on);
    assert.equal(on.now, last);
  }
});

/** Names lead to things, outlines are sound, ids are single. */
function holdsTogether(drawn: Drawn): void {
  const rooms = new Set(drawn.rooms.map((one) => one.id));
  const openings = new Map(drawn.openings.map((one) => [one.id, one]));
  assert.equal(rooms.size, drawn.rooms.length);
  assert.equal(openings.size, drawn.openings.length);
  for (const one of drawn.openings) {
    assert.ok(one.rooms.every((room) => rooms.has(room)));
    assert.equal(one.rooms.length, one.kind === "outside" ? 1 : 2);
  }
  for (const way of drawn.exits) assert.equal(openings.get(way.opening)?.kind, "outside");
  for (const room of drawn.rooms) assert.ok(sound(corners(room.polygon)), room.id);
}

test("the rooms nearest to a place are found, the one that holds it first", () => {
  const room = (id: string, x: number): Drawn["rooms"][number] => ({ id, polygon: polygon([[x, 0], [x + 3, 0], [x + 3, 3], [x, 3]]) });
  const drawn: Drawn = { ...empty(), rooms: [room("far", 10), room("left", 0), room("right", 3.1)] };
  assert.deepEqual(edits.roomsNear(drawn, [3.2, 1]).map((one) => one.id), ["right", "left"]);
  assert.deepEqual(edits.roomsNear(drawn, [7.5, 1]).map((one) => one.id), []);
});

test("the words of a way out are inside the board, on a floor however small", () => {
  const shape = { width: 840, height: 540 };
  const sides: [Point, Point][] = [[[1, 3], [1.9, 3]], [[1, 0], [1.9, 0]], [[0, 1], [0, 1.9]], [[4, 1], [4, 1.9]]];
  for (const line of sides) {
    const drawn = {
      ...two(), exits: [{ id: "out", opening: "out" }],
      openings: [{ id: "out", kind: "outside", line, rooms: ["a"] }],
    } as unknown as Drawn;
    const { low, high } = box(drawn.rooms.flatMap((one) => corners(one.polygon)));
    const view = viewOfAll(drawn, shape);
    const m = view.wide_m / shape.width;
    const ends = [view.centre[0] - view.wide_m / 2, view.centre[0] + view.wide_m / 2, view.centre[1] - (shape.height / 2) * m, view.centre[1] + (shape.height / 2) * m];
    const off = [low[0] - (ends[0] ?? 0), (ends[1] ?? 0) - high[0], low[1] - (ends[2] ?? 0), (ends[3] ?? 0) - high[1]];
    const beside = [line[0][0] - low[0], high[0] - line[0][0], line[0][1] - low[1], high[1] - line[0][1]];
    const side = beside.indexOf(Math.min(...beside));
    assert.ok((off[side] ?? 0) >= WORDS_OUT_M + 14 * m, `side ${side}: ${off[side]} m`);
  }
});

test("an opening whose threshold nobody told is a gap across its wall all the same", () => {
  const door = { id: "d", kind: "door", line: [[6.06, 2], [6.06, 3]], rooms: ["a", "b"] } as const;
  const [ring] = gapOf(door);
  near(Math.abs(area(ring as Ring)), 0.16);
  const { low, high } = box(ring as Ring);
  near(low[0], 5.98);
  near(high[0], 6.14);
  const told = { ...door, threshold: polygon([[6, 2], [6.12, 2], [6.12, 3], [6, 3]]) };
  assert.deepEqual(gapOf(told), [corners(told.threshold)]);
});
