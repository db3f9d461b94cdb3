/**
 * What a device without signal holds: the same steps as `web/phone.py`, held together by
 * the cases that both run. Pure: nothing leaves before the book has acknowledged it.
 */
import type { Entry } from "./entry.ts";

export const KEPT_DAYS = 30;
export const MOST_AT_ONCE = 200;
const DAY_MS = 86_400_000;

export interface Phone {
  device: string;
  /** Not acknowledged, by id, in the order of tapping. */
  waiting: Record<string, Entry>;
  /** Why the book did not keep one of them. */
  turned: Record<string, string[]>;
  /** Acknowledged, with the day of it. */
  kept: Record<string, [Entry, string]>;
  /** The last place of the book that was heard of. */
  places: number;
  /** The day on which the book was last asked for all it acknowledged. */
  asked_on: string;
}

export function newPhone(device: string): Phone {
  return { device, waiting: {}, turned: {}, kept: {}, places: 0, asked_on: "" };
}

/** With an entry more; one that it has already changes nothing. */
export function tapped(phone: Phone, entry: Entry): Phone {
  if (entry.id in phone.waiting || entry.id in phone.kept) return phone;
  return { ...phone, waiting: { ...phone.waiting, [entry.id]: entry } };
}

/** What to send next, oldest first; what was turned away comes last, for it may pass now. */
export function toOffer(phone: Phone, most: number = MOST_AT_ONCE): Entry[] {
  const all = Object.entries(phone.waiting);
  const fresh = all.filter(([id]) => !(id in phone.turned));
  const again = all.filter(([id]) => id in phone.turned);
  return [...fresh, ...again].slice(0, most).map(([, entry]) => entry);
}

/** Whether an entry waits that the book was not asked to keep. */
export const leftBehind = (phone: Phone): boolean => Object.keys(phone.waiting).some((id) => !(id in phone.turned));

export interface Answer {
  taken: string[];
  turned: Record<string, string[]>;
  places: number;
  today: string;
}

/** After the book's answer; a last place that went down is an older book: all is offered again. */
export function answered(phone: Phone, { taken, turned, places, today }: Answer): Phone {
  const gone = new Set(taken);
  const waiting = only(phone.waiting, (id) => !gone.has(id));
  const kept = { ...phone.kept };
  for (const id of taken) {
    const entry = phone.waiting[id];
    if (entry) kept[id] = [entry, today];
  }
  const still = only(phone.turned, (id) => id in waiting);
  const refused = only(turned, (id) => id in waiting);
  let then: Phone = { ...phone, waiting, kept, turned: { ...still, ...refused }, places };
  if (places < phone.places) then = lost(then, Object.keys(kept));
  return forgetting(then, today);
}

/** Ids to ask the book for once a day. */
export function toAsk(phone: Phone, today: string): string[] {
  return phone.asked_on === today ? [] : Object.keys(phone.kept);
}

/** After the book said which of the ids asked for it does not have. */
export function told(phone: Phone, missing: string[], today: string): Phone {
  return { ...lost(phone, missing), asked_on: today };
}

/** With these acknowledged entries waiting again, before what waits already. */
export function lost(phone: Phone, ids: string[]): Phone {
  const asked = new Set(ids);
  const again: Record<string, Entry> = {};
  for (const [id, [entry]] of Object.entries(phone.kept)) if (asked.has(id)) again[id] = entry;
  const kept = only(phone.kept, (id) => !(id in again));
  return { ...phone, waiting: { ...again, ...phone.waiting }, kept };
}

/** Without what was acknowledged more than 30 days ago. */
export function forgetting(phone: Phone, today: string): Phone {
  const oldest = Date.parse(today) - KEPT_DAYS * DAY_MS;
  const kept = only(phone.kept, (_, [, day]) => Date.parse(day) >= oldest);
  return Object.keys(kept).length === Object.keys(phone.kept).length ? phone : { ...phone, kept };
}

function only<T>(all: Record<string, T>, fits: (id: string, one: T) => boolean): Record<string, T> {
  return Object.fromEntries(Object.entries(all).filter(([id, one]) => fits(id, one)));
}
