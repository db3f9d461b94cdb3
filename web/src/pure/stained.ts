/** Whether the log says that the floor is stained, though the sheet has more: `job/live/stained.py`. Pure. */
import type { Happened } from "./story.ts";

/** mixed, field-started, and whatever is done. */
const SPRAYS = /^mix|^field|-done$/;
/** neutralised, sealed. */
const ENDS = /^neu|^sealed/;
/** Nobody neutralises so soon after the last stroke of a coat that is not whole. */
const SLIP_MIN = 30;

/** laid: the coat that was begun last, whole: whether it is done. */
export function isStained(happened: Happened[], laid: string, whole: boolean): boolean {
  let [end, from] = [NaN, -Infinity];
  let next: unknown;
  for (const { entry: { word, about }, at } of happened) {
    const judged = word === "coat-judged";
    if (judged) next = about["next"];
    if (SPRAYS.test(word)) from = at;
    if (ENDS.test(word) || (whole && (judged ? next === "enough" && about["coat"] === laid : word === "rinsed"))) end = at;
  }
  return next !== "another" && end >= from + (whole ? 0 : SLIP_MIN);
}
