/** What a sample day is made of: `web/slab/sampling.py` sends the course; minutes count from its start. */
import type { Marks } from "./sample_marks.ts";

export const STEPS = ["lay", "sheen", "dry", "wash", "wet", "seal", "day", "lamp", "judge"] as const;
export type Step = (typeof STEPS)[number] | "weigh" | "sign" | "done" | "out";
export type WaitName = "sheen" | "dry" | "dwell" | "dry-down";

/** What the book sends of the day as it is planned: `web/slab/sampling.py`. */
export interface Course {
  version: number;
  name: string;
  starts_at: string;
  units: "us" | "metric";
  language: string;
  rooms: Record<string, string>;
  stains: Record<string, string>;
  sealer: string;
  samples: Planned[];
  waits: Wait[];
  told: Record<string, string[]>;
  /** By language and step: name, short name, what to do, caution. */
  says: Record<string, Record<string, [string, string, string, string]>>;
  figures: Record<string, Record<string, string>>;
  held: Record<string, Record<string, string>>;
  wins: Record<string, string>;
}

export interface Planned {
  id: string;
  coat: string;
  stain: string;
  cut: string;
  rung: "weaker" | "planned" | "stronger" | "";
  over: string;
  room: string;
  area_m2: number;
  stain_ml: number | null;
  water_ml: number | null;
}

export interface Wait {
  coat: string;
  name: WaitName;
  low_min: number | null;
  likely_min: number | null;
  high_min: number | null;
  rank: string;
}

export interface Running { name: WaitName; from: number; wait: Wait }

export interface Stand {
  sample: string;
  step: Step;
  /** From when on it is to be done; null: now. */
  from: number | null;
  /** The sample that comes first; empty: none. */
  waits: string;
  running: Running[];
  missing: string[];
}

export interface Task { sample: string; step: Step; from: number | null }

export interface SampleDay {
  samples: Planned[];
  stands: Stand[];
  tasks: Task[];
  begun: boolean;
  signed: string;
  marks: Record<string, Marks>;
}
