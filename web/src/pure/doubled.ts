/** One thing that two phones entered counts once: the steps of `job/story/doubled.py`. Pure. */
import { twoSpray, type Sheet } from "./sheet.ts";
import type { Happened } from "./story.ts";

const SAME_MIN = 4;
const HAIR = 0.05;
/** The words that add up, with what tells one thing from another. */
const ADDS_UP: Record<string, string> = { mixed: "coat", filled: "sprayer", rinsed: "room" };

/** What happened, each thing once, with all that the phones carry of it. */
export function once(sheet: Sheet, happened: Happened[]): Happened[] {
  const two = twoSpray(sheet);
  const kept: Happened[] = [];
  const devices = new Map<string, Set<string>>();
  for (const one of happened) {
    const { id, device, word, about } = one.entry;
    const key = ADDS_UP[word];
    const at = key === undefined || !device || (word === "filled" && two && !about["sprayer"]) ? -1
      : kept.findIndex(({ entry, at: then }) => entry.word === word && entry.device && one.at - then < SAME_MIN
        && (entry.about[key] ?? "") === (about[key] ?? "")
        && !devices.get(entry.id)!.has(device)
        && Object.entries(about).every(([name, value]) => !(name in entry.about) || same(entry.about[name], value)));
    const first = kept[at];
    if (first) {
      kept[at] = { ...first, entry: { ...first.entry, about: { ...about, ...first.entry.about } } };
      devices.get(first.entry.id)!.add(device);
    } else {
      kept.push(one);
      devices.set(id, new Set([device]));
    }
  }
  return kept;
}

const same = (first: unknown, other: unknown): boolean =>
  typeof first === "number" && typeof other === "number" ? Math.abs(first - other) < HAIR : first === other;
