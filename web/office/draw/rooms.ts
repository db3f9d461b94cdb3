// Rooms joined and split: the sums are the server's, the step is the screen's and can be undone.
import type { Drawn, Line, Room } from "./pure/nouns.ts";
import { given, tell, w } from "./page.ts";
import { store } from "./store.ts";

interface Told {
  readonly drawn?: Omit<Drawn, "answers">;
  readonly said: string;
}

/** Ask for the changed floor; what was drawn meanwhile is not overwritten. */
async function changed(told: Readonly<Record<string, string>>): Promise<Drawn | null> {
  const before = store.settled;
  const { answers, ...floor } = before;
  try {
    const body = new URLSearchParams({ drawn: JSON.stringify(floor), ...told });
    const answer = await fetch(`${given.path}/rooms`, { method: "POST", body });
    if (answer.redirected) {
      location.reload();
      return null;
    }
    const found = (await answer.json()) as Told;
    if (!answer.ok || !found.drawn) {
      tell(found.said);
      return null;
    }
    if (store.settled !== before) return null;
    const now = { ...found.drawn, answers };
    store.change(now, found.said);
    return now;
  } catch {
    tell(w("draw-rooms-failed"));
    return null;
  }
}

export async function join(first: string, second: string): Promise<Drawn | null> {
  const now = await changed({ act: "join", first, second });
  if (now) store.pick({ list: "rooms", id: first });
  return now;
}

export async function split(room: string, line: Line): Promise<Drawn | null> {
  const now = await changed({ act: "split", first: room, line: JSON.stringify(line) });
  store.use("pick");
  if (now) store.pick({ list: "rooms", id: room });
  return now;
}

/** The other rooms of the same storey, those with an opening to it first. */
export function besides(drawn: Drawn, room: Room): Room[] {
  const joined = new Set(drawn.openings.filter((one) => one.rooms.includes(room.id)).flatMap((one) => one.rooms));
  const others = drawn.rooms.filter((one) => one.id !== room.id && (one.storey ?? "") === (room.storey ?? ""));
  return [...others.filter((one) => joined.has(one.id)), ...others.filter((one) => !joined.has(one.id))];
}
