/** Where the day stands, from the sheet and the log alone: next band, edge, fill, wait. Pure. */
import { oldestOf, type Oldest } from "./edge.ts";
import { bandsOf, handOf, twoSpray, type Band, type Clock, type Field, type Fill, type Look, type Mix, type Sheet } from "./sheet.ts";
import { sprayed, type Floor } from "./spraying.ts";
import { isStained } from "./stained.ts";
import type { Happened } from "./story.ts";

export interface Day {
  floor: Floor;
  coat: string;
  /** The field in hand, or the next one; null when all is sprayed, or stained by the log. */
  field: Field | null;
  band: Band | null;
  /** Whether that field is begun. */
  begun: boolean;
  /** Minute by which to go on; null when no live edge waits. */
  due: number | null;
  /** The band that meets the oldest part of the live edge, and the one sprayed there. */
  oldest: Pick<Oldest, "by" | "met"> | null;
  /**
   * The same where the plan's oldest ages all lie inside bands that are to come: what was sprayed
   * last is live all the same, as `job/live/edges.py` has it.
   */
  careful: number | null;
  low: number;
  /** Minutes that the day is behind the plan; null when nothing is sprayed in this coat. */
  late: number | null;
  fills: (Fill & { then: number })[];
  mix: Mix | null;
  /** The next look into the last field of the coat, where the plan has one. */
  look: Look | null;
  wait: { clock: Clock; from: number } | null;
  /** The field entered over a coat that cannot be dry yet, and until when: `job/live/coat_rules.py`. */
  wet: { field: Field; below: string; until: number } | null;
}

/** low: minutes an edge lives by the book, where it has said so for this coat; never longer. */
export function dayOf(sheet: Sheet, happened: Happened[], low: number | null = null): Day {
  const floor = sprayed(sheet, happened);
  const left = (field: Field) => field.bands.some((row) => !floor.done.has(row[0]));
  const coats = sheet.coats.map((one) => one.id);
  const open = coats.filter((coat) => sheet.fields.some((f) => f.coat === coat && left(f)));
  const has = (coat: string) => floor.begun.some((id) => coatOf(sheet, id) === coat);
  const laid = coats.filter(has).pop() ?? "";
  const stained = isStained(happened, laid, !!laid && !open.includes(laid));
  const coat = (stained && laid) || (open.filter(has).pop() ?? open[0] ?? coats.at(-1) ?? "");
  const ahead = stained ? "" : coat;
  const own = sheet.fields.filter((f) => f.coat === ahead).sort((a, b) => a.no - b.no);
  const hands = own.filter((f) => floor.begun.includes(f.id) && left(f));
  hands.sort((a, b) => floor.begun.indexOf(a.id) - floor.begun.indexOf(b.id));
  const inHand = hands.at(-1) ?? null;
  const closed = closedRooms(happened);
  const toCome = own.filter((f) => !floor.begun.includes(f.id) && left(f));
  const free = toCome.find((f) => !f.rooms.some((room) => closed.has(room)));
  const field = inHand ?? free ?? toCome[0] ?? null;
  const bands = field ? bandsOf(field).filter((b) => !floor.done.has(b.id)) : [];
  const band = bands.sort((a, b) => a.start - b.start)[0] ?? null;
  const budget = Math.min(field?.low ?? 0, low ?? Infinity);
  const oldest = inHand ? oldestOf(inHand, floor.done, budget) : null;
  const last = inHand ? lastBand(inHand, floor) : null;
  return {
    floor, coat, field, band, begun: inHand !== null,
    oldest: oldest ?? (last && band ? { by: band, met: last } : null),
    due: oldest ? oldest.due : null,
    careful: last ? floor.done.get(last.id)!.start + budget : null,
    low: budget,
    late: lateness(sheet, floor, coat),
    fills: fillsToCome(sheet, floor, happened, ahead),
    mix: nextMix(sheet, floor, happened, ahead),
    look: nextLook(sheet, floor, ahead),
    wait: waitFor(sheet, floor, coat),
    wet: onWet(sheet, floor, happened),
  };
}

/** What was sprayed last of a field that is not done; its edge is counted from its first stroke. */
function lastBand(field: Field, floor: Floor): Band | null {
  const made = bandsOf(field).filter((one) => floor.done.has(one.id));
  if (!made.length || made.length === field.bands.length) return null;
  const end = (one: Band) => floor.done.get(one.id)!.end;
  return made.reduce((last, one) => (end(one) > end(last) ? one : last));
}

function coatOf(sheet: Sheet, field: string): string {
  return sheet.fields.find((one) => one.id === field)?.coat ?? "";
}

function closedRooms(happened: Happened[]): Set<string> {
  const closed = new Set<string>();
  for (const { entry } of happened) {
    const room = String(entry.about["room"] ?? "");
    if (entry.word === "room-closed") closed.add(room);
    if (entry.word === "room-free") closed.delete(room);
  }
  return closed;
}

/** By how much the band of this coat that was sprayed last is behind the plan. */
function lateness(sheet: Sheet, floor: Floor, coat: string): number | null {
  const end = (one: Band) => floor.done.get(one.id)!.end;
  const made = sheet.fields.filter((f) => f.coat === coat).flatMap(bandsOf).filter((one) => floor.done.has(one.id));
  const last = made.sort((a, b) => end(a) - end(b)).pop();
  return last ? end(last) - last.end : null;
}

/**
 * Fills whose band is not sprayed and that nobody entered, with the minute they will be due. One that was
 * entered for a sprayer is the next of his; one for nobody is the next of all.
 */
function fillsToCome(
  sheet: Sheet, floor: Floor, happened: Happened[], coat: string,
): (Fill & { then: number })[] {
  const ends = [...floor.done].filter(([id]) => bandCoat(sheet, id) !== coat).map(([, s]) => s.end);
  const since = Math.max(-Infinity, ...ends);
  const filled = happened.filter((one) => one.entry.word === "filled" && one.at > since);
  const count = (hand: string) => filled.filter(({ entry }) => entry.about["sprayer"] === hand).length;
  const named: Record<string, number> = twoSpray(sheet) ? { 1: count("1"), 2: count("2") } : {};
  const late = lateness(sheet, floor, coat) ?? 0;
  let bare = filled.length - (named[1] ?? 0) - (named[2] ?? 0);
  const left = sheet.fills.filter((one) => one.coat === coat).sort((a, b) => a.at - b.at).filter((one) => {
    const passed = floor.done.has(one.band);
    const his = (named[handOf(one)] ?? 0) > 0;
    if (his) named[handOf(one)]! -= 1;
    else if (passed) bare -= 1;
    return !passed && !his;
  });
  return left.slice(Math.max(bare, 0)).map((one) => ({ ...one, then: one.at + late }));
}

function bandCoat(sheet: Sheet, band: string): string {
  return sheet.fields.find((one) => one.bands.some((row) => row[0] === band))?.coat ?? "";
}

/** The batch to mix next in this coat: the first of the plan that was not entered. */
function nextMix(sheet: Sheet, floor: Floor, happened: Happened[], coat: string): Mix | null {
  const told = happened.filter((o) => o.entry.word === "mixed" && o.entry.about["coat"] === coat);
  const own = sheet.mixes.filter((one) => one.coat === coat);
  const made = (one: Mix) => one.before_band ? floor.done.has(one.before_band) : floor.begun.includes(one.before);
  const begun = own.filter((one, n) => n > 0 && made(one)).length;
  const first = floor.begun.some((id) => coatOf(sheet, id) === coat) ? 1 : 0;
  return own[Math.max(told.length, begun + first)] ?? null;
}

/** The next look into tub and tanks of this coat whose band is not done; null: none. */
function nextLook(sheet: Sheet, floor: Floor, coat: string): Look | null {
  return (sheet.looks ?? []).find((one) => one.coat === coat && !floor.done.has(one.band)) ?? null;
}

/** Between coats: the wait for the coat below, from the minute that it ended. */
function waitFor(sheet: Sheet, floor: Floor, coat: string): Day["wait"] {
  const coats = sheet.coats.map((one) => one.id);
  const done = (id: string) => sheet.fields.filter((f) => f.coat === id).flatMap((f) => f.bands);
  const has = (row: Field["bands"][number]) => floor.done.has(row[0]);
  const all = done(coat).every(has);
  const begun = done(coat).some(has);
  const below = all ? coat : begun ? null : coats[coats.indexOf(coat) - 1];
  if (below === null || below === undefined) return null;
  const ends = done(below).map((row) => floor.done.get(row[0])?.end ?? -Infinity);
  const from = Math.max(...ends);
  const name = all ? "dry to neutralise" : "dry to recoat";
  const clock = sheet.clocks.find((one) => one.coat === below && one.name === name);
  return clock && Number.isFinite(from) ? { clock, from } : null;
}

/** The field begun last, where it was entered sooner than the coat below dries there, with no look that found it dry there. */
function onWet(sheet: Sheet, floor: Floor, happened: Happened[]): Day["wet"] {
  const coats = sheet.coats.map((one) => one.id);
  const field = sheet.fields.find((one) => one.id === floor.begun.at(-1));
  const below = coats[coats.indexOf(field?.coat ?? "") - 1];
  const low = sheet.clocks.find((one) => one.coat === below && one.name === "dry to recoat")?.low_min;
  if (!field || low == null) return null;
  const under = sheet.fields.filter((f) => f.coat === below && f.rooms.some((room) => field.rooms.includes(room))).flatMap((f) => f.bands);
  const from = Math.max(...under.map((row) => floor.done.get(row[0])?.end ?? -Infinity));
  const first = Math.min(...field.bands.map((row) => floor.done.get(row[0])?.end ?? Infinity));
  const looks = happened.filter(({ entry: { word, about }, at }) => ["dry", "still-damp"].includes(word) && at >= from + (word === "dry" ? low / 4 : 0)
    && (about["clock"] ?? "recoat") === "recoat" && (about["coat"] ?? below) === below);
  const dry = field.rooms.every((room) => looks.filter(({ entry: { about } }) => (about["room"] ?? room) === room).pop()?.entry.word === "dry");
  return first < from + low && !dry ? { field, below: below!, until: from + low } : null;
}
