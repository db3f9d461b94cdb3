/** What to mix next, and who says so. */
import type { Mixing } from "./pages/shown.ts";
import type { Day } from "./pure/day.ts";
import { roomsOf, type Sheet } from "./pure/sheet.ts";
import { w } from "./pure/words.ts";
import type { NowAnswer } from "./send.ts";

/** By the book where it has just answered, else (null) by the plan. */
export function mixing(s: Sheet, found: Day, book: NowAnswer["now"] | null): Mixing {
  if (!book || book.coat !== found.coat) {
    if (!found.mix) return { parts: null, by: w("mixPlanNone") };
    return { parts: found.mix, by: w("mixPlan") };
  }
  const { first_batch, more_mix } = book;
  if (first_batch) return { parts: { ...first_batch, coat: found.coat }, by: w("mixBook") };
  const cut = s.mixes.find((one) => one.coat === found.coat);
  if (!more_mix || more_mix.how === "no" || !cut) {
    return { parts: null, by: w("mixBookNone") };
  }
  if (more_mix.how === "look") return { parts: null, by: w("mixBookLook") };
  const part = more_mix.litres / (cut.stain_l + cut.water_l + cut.acid_l);
  const parts = { coat: cut.coat, stain_l: cut.stain_l * part, water_l: cut.water_l * part, acid_l: cut.acid_l * part };
  const before = s.fields.find((one) => one.id === more_mix.before_field);
  return { parts, by: before ? w("mixBookBefore", { n: before.no, rooms: roomsOf(s, before) }) : w("mixBook") };
}
