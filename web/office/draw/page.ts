// What the page gives: its elements, words, addresses and what is drawn already.
import { type Drawn, empty, type Line, type Polygon } from "./pure/nouns.ts";
import type { Units } from "./pure/lengths.ts";

export interface Note {
  readonly number: string;
  readonly code: string;
  readonly what: string;
  readonly at: readonly [number, number] | null;
  /** The piece of floor that it is about, where the reader has it. */
  readonly shape?: Polygon | null;
  readonly yes: string;
  readonly yes_act: string;
  readonly no: string;
  readonly no_act: string;
}
export interface Fault {
  readonly what: string;
  readonly remedy: string;
  readonly where: string;
  readonly at: readonly [number, number] | null;
  readonly thing: { list: string; id: string } | null;
  readonly elsewhere: boolean;
  /** What a button beside it does, and its words. */
  readonly act: string;
  readonly act_told: string;
}
export interface Underlay {
  readonly file: string;
  readonly width_px: number;
  readonly height_px: number;
  readonly at: readonly [number, number];
  readonly m_per_px: number;
  readonly opacity: number;
}
interface Given {
  readonly version: number;
  /** Of what is drawn, as the book has it. */
  readonly seen: string;
  readonly units: Units;
  readonly path: string;
  readonly drawn: Omit<Drawn, "answers"> & { answers?: Drawn["answers"] };
  readonly windows: readonly { readonly line: Line }[];
  readonly notes: readonly Note[];
  readonly faults: readonly Fault[];
  readonly underlay: Underlay | null;
  /** The room that the page is asked to begin at. */
  readonly room: string;
  readonly words: Readonly<Record<string, string>>;
}

const root = document.getElementById("drawing");
if (!root) throw new Error("#drawing is not on this page");
export const page = root;
export const given = JSON.parse(root.dataset["given"] ?? "{}") as Given;
export const units: Units = given.units;
export const first: Drawn = { ...empty(), ...given.drawn };

/** An element that the page always has. */
export function here<T extends HTMLElement = HTMLElement>(id: string): T {
  const one = document.getElementById(id);
  if (!one) throw new Error(`#${id} is not on this page`);
  return one as T;
}

/** The words of a key with values in their places. */
export function w(key: string, values: Readonly<Record<string, string | number>> = {}): string {
  const told = given.words[key] ?? key;
  return told.replace(/\{(\w+)\}/g, (_, name: string) => String(values[name] ?? ""));
}

/** Tell who listens and does not look: politely, the newest only. */
export function tell(text: string): void {
  here("told").textContent = text;
}

const NS = "http://www.w3.org/2000/svg";
export function svgOf<K extends keyof SVGElementTagNameMap>(
  name: K, attributes: Readonly<Record<string, string | number>> = {},
): SVGElementTagNameMap[K] {
  const one = document.createElementNS(NS, name);
  for (const [key, value] of Object.entries(attributes)) one.setAttribute(key, String(value));
  return one;
}

type Child = Node | string;
export function htmlOf<K extends keyof HTMLElementTagNameMap>(
  name: K, attributes: Readonly<Record<string, string | boolean>> = {}, ...children: Child[]
): HTMLElementTagNameMap[K] {
  const one = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value === true) one.setAttribute(key, "");
    else if (value !== false) one.setAttribute(key, value);
  }
  one.append(...children);
  return one;
}
