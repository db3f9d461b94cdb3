/** Lives through a case of the queue, as tests/web/slab/living.py does. */
import type { Entry } from "../src/pure/entry.ts";
import { answered, forgetting, lost, newPhone, tapped, toAsk, told, toOffer, type Phone } from "../src/pure/phone.ts";

export type Step =
  | { do: "tap"; id: string }
  | { do: "answered"; taken: string[]; turned: Record<string, string[]>; places: number; today: string }
  | { do: "told"; missing: string[]; today: string }
  | { do: "lost"; ids: string[] }
  | { do: "forgetting"; today: string };

export interface Case {
  name: string;
  steps: Step[];
  most: number;
  asks: string[];
  then: Held;
}

export interface Held {
  waiting: string[];
  turned: Record<string, string[]>;
  kept: [string, string][];
  places: number;
  offer: string[];
  ask: string[][];
}

export function entry(id: string): Entry {
  const at = "2026-06-08T08:00:00+00:00";
  return { id, job: "quince", word: "note", at, who: "", device: "phone-a", number: 0, era: 0, about: { text: "x" }, version: 1 };
}

export function lived(steps: Step[]): Phone {
  let phone = newPhone("phone-a");
  for (const step of steps) {
    if (step.do === "tap") phone = tapped(phone, entry(step.id));
    else if (step.do === "answered") phone = answered(phone, step);
    else if (step.do === "told") phone = told(phone, step.missing, step.today);
    else if (step.do === "lost") phone = lost(phone, step.ids);
    else phone = forgetting(phone, step.today);
  }
  return phone;
}

/** What a phone holds, in its order, as the cases write it. */
export function held(phone: Phone, { most, asks }: { most: number; asks: string[] }): Held {
  return {
    waiting: Object.keys(phone.waiting),
    turned: phone.turned,
    kept: Object.entries(phone.kept).map(([id, [, day]]) => [id, day]),
    places: phone.places,
    offer: toOffer(phone, most).map((one) => one.id),
    ask: asks.map((day) => toAsk(phone, day)),
  };
}
