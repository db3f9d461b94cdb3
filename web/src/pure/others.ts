/** What the book told of a job's log, put with what was known of it. Pure. */
import type { FromBook } from "./entry.ts";

interface Known {
  others: FromBook[];
  pulled: number;
}

/**
 * With what came. What is known stays where the book no longer has it, for it happened all the same; how
 * far a clock is off is as it was told last, for all that its device told in that era. anew: an older book
 * was put back, whose places are not those of before.
 */
export function withOthers<T extends Known>(one: T, came: FromBook[], anew: boolean): T {
  const all = new Map(one.others.map((each) => [each.entry.id, anew ? { ...each, place: 0 } : each]));
  const clock = ({ entry }: FromBook) => `${entry.era} ${entry.device}`;
  const offs = new Map(came.map((each) => [clock(each), each.clock_off_s]));
  for (const each of came) all.set(each.entry.id, each);
  const others = [...all.values()].map((each) => ({ ...each, clock_off_s: offs.get(clock(each)) ?? each.clock_off_s }));
  const pulled = came.reduce((last, each) => Math.max(last, each.place), anew ? 0 : one.pulled);
  return { ...one, others, pulled };
}
