// The drawn floor in hand: kept states to undo, what is only being dragged, what is picked.
import { begun, done, type History, redone, undone } from "./pure/history.ts";
import type { Drawn, Picked } from "./pure/nouns.ts";
import { first, tell, w } from "./page.ts";

export type Tool = "pick" | "corners" | "rectangle" | "opening" | "fixture" | "cut" | "split" | "scale" | "picture";
export type Change = "drawn" | "dragged" | "picked" | "tool" | "noted";

class Store {
  private history: History<Drawn> = begun(first);
  private held: Drawn | null = null;
  private listeners: ((change: Change) => void)[] = [];
  picked: Picked | null = null;
  tool: Tool = "pick";
  /** The state that the book has. */
  kept: Drawn = first;
  /** A name for the next room, where the import knows one. */
  nextName = "";
  /** The room that the next line splits. */
  splitting = "";
  /** Whether the next outside opening that is put is a way out. */
  nextExit = false;
  storey = first.rooms[0]?.storey ?? "";
  private seen: { of: Drawn; storey: string; shown: Drawn } | null = null;

  /** What is drawn of the storey that is looked at; fixtures and cuts say no storey. */
  get shown(): Drawn {
    const of = this.drawn;
    if (this.seen?.of === of && this.seen.storey === this.storey) return this.seen.shown;
    const rooms = of.rooms.filter((one) => (one.storey ?? "") === this.storey);
    const there = new Set(rooms.map((one) => one.id));
    const all = rooms.length === of.rooms.length;
    const shown = all ? of : { ...of, rooms, openings: of.openings.filter((one) => one.rooms.some((room) => there.has(room))) };
    this.seen = { of, storey: this.storey, shown };
    return shown;
  }

  get drawn(): Drawn {
    return this.held ?? this.history.now;
  }
  get settled(): Drawn {
    return this.history.now;
  }
  get canUndo(): boolean {
    return this.history.past.length > 0;
  }
  get canRedo(): boolean {
    return this.history.next.length > 0;
  }
  get unsaved(): boolean {
    return this.history.now !== this.kept;
  }
  on(listener: (change: Change) => void): void {
    this.listeners.push(listener);
  }
  say(change: Change): void {
    for (const one of this.listeners) one(change);
  }
  /** Show a floor that is only being dragged. */
  hold(drawn: Drawn): void {
    if (drawn === this.drawn) return;
    this.held = drawn;
    this.say("dragged");
  }
  /** What was dragged stays, as one step. */
  letGo(words: string): void {
    const held = this.held;
    this.held = null;
    if (held) this.change(held, words);
  }
  drop(): void {
    if (!this.held) return;
    this.held = null;
    this.say("drawn");
  }
  /** One step; false where nothing changed. */
  change(drawn: Drawn, words: string): boolean {
    this.held = null;
    const before = this.history;
    this.history = done(before, drawn);
    if (this.history === before) {
      this.say("drawn");
      return false;
    }
    this.forget();
    this.say("drawn");
    tell(words);
    return true;
  }
  undo(): void {
    this.step(undone(this.history), w("draw-undone"));
  }
  redo(): void {
    this.step(redone(this.history), w("draw-redone"));
  }
  private step(history: History<Drawn>, words: string): void {
    this.held = null;
    if (history === this.history) return;
    this.history = history;
    this.forget();
    this.say("drawn");
    tell(words);
  }
  /** Nothing stays picked that is no longer there. */
  private forget(): void {
    const one = this.picked;
    if (one && !this.drawn[one.list].some((thing) => thing.id === one.id)) this.picked = null;
  }
  pick(one: Picked | null): void {
    this.picked = one;
    this.say("picked");
  }
  use(tool: Tool): void {
    this.tool = tool;
    if (tool !== "pick") this.picked = null;
    this.say("tool");
  }
}

export const store = new Store();
