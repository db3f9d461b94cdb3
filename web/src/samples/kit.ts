/** What the page of the run sheet lends the sample day, and what it gets: they share no code but this. */
import type { Photo } from "../photo.ts";
import type { Entry } from "../pure/entry.ts";
import type { Course } from "../pure/sampling.ts";
import type { Happened } from "../pure/story.ts";

/** Read before a sample is laid, kept on the phone until the entry carries it: SI, kilograms. */
export interface Draft {
  clean?: boolean;
  drop_s?: number;
  slab_c?: number;
  air_c?: number;
  rh_percent?: number;
  before?: Record<string, number>;
  /** When each figure was read, or left out on purpose, by this phone's clock. */
  read?: Record<string, number>;
  /** Weights that are left out on purpose and not asked again. */
  skipped?: string[];
}

export interface Kit {
  key: (act: string, html: string, kind?: string) => string;
  safe: (text: string) => string;
  language: () => "en" | "es";
  units: () => "us" | "metric";
  course: () => Course | null;
  happened: (startsAt: string) => Happened[];
  /** The minute of the course that it is, by the corrected clock. */
  minute: (startsAt: string) => number;
  draft: () => Draft;
  keepDraft: (draft: Draft) => Promise<void>;
  log: (word: string, about: Entry["about"], then: string, taken?: Photo) => Promise<void>;
  smaller: (file: Blob) => Promise<Photo | null>;
  show: (view: string) => void;
  redraw: () => void;
  view: () => string;
  /** Whether there is a plan to go back to. */
  planned: () => boolean;
  status: () => { text: string; waits: boolean };
  /** The key that strikes this phone's last entry; empty where there is none. */
  undo: () => string;
  eyes: () => string;
  call: (text: string) => void;
}

export interface Sampling {
  page: (view: string) => string;
  act: (told: string) => unknown;
  filled: (input: HTMLInputElement) => Promise<void>;
}
