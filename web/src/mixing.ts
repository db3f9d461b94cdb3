/** What to mix next, and who says so. */
import type { Mixing } from "./pages.ts";
import type { Day } from "./pure/day.ts";
import { roomsOf, type Sheet } from "./pure/sheet.ts";
import type { NowAnswer } from "./send.ts";

/** By the book where it has just answered, else (null) by the plan. */
export function mixing(s: Sheet, found: Day, book: NowAnswer["now"] | null): Mixing {
  if (!book || book.coat !== found.coat) {
    if (!found.mix) return { parts: null, by: "By the plan: nothing more for this coat." };
    return { parts: found.mix, by: "By the plan." };
  }
  const { first_batch, more_mix } = book;
  if (first_batch) return { parts: { ...first_batch, coat: found.coat }, by: "By the book." };
  const cut = s.mixes.find((one) => one.coat === found.coat);
  if (!more_mix || more_mix.how === "no" || !cut) {
    return { parts: null, by: "By the book: nothing more to mix now." };
  }
  if (more_mix.how === "look") return { parts: null, by: "By the book: nothing now, look into the tub as below." };
  const part = more_mix.litres / (cut.stain_l + cut.water_l + cut.acid_l);
  const parts = { coat: cut.coat, stain_l: cut.stain_l * part, water_l: cut.water_l * part, acid_l: cut.acid_l * part };
  const before = s.fields.find((one) => one.id === more_mix.before_field);
  return { parts, by: before ? `By the book, before field ${before.no}, ${roomsOf(s, before)}.` : "By the book." };
}
