/** One thing that happened, as the log wants it: the keys of `facts/log.py`. */
export interface Entry {
  id: string;
  job: string;
  word: string;
  at: string;
  who: string;
  device: string;
  number: number;
  era: number;
  about: Record<string, string | number | boolean>;
  version: number;
}

/** An entry of the book, made on some other device, with how far that device's clock is ahead. */
export interface FromBook {
  entry: Entry;
  place: number;
  clock_off_s: number | null;
}
