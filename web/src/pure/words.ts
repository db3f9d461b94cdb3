/** The words of the page, one language at a time; a table is given when it has come. */
import type { Words } from "../words/en.ts";

export type Language = "en" | "es";
export const LANGUAGES: Language[] = ["en", "es"];
const tables: Partial<Record<Language, Words>> = {};
let table = {} as Words;

/** The language of the page: as chosen on the phone, else of the job, else as the phone speaks. */
export function languageOf(chosen: string, job: string, phone: readonly string[]): Language {
  const all = [chosen, job, ...phone].map((one) => one.slice(0, 2).toLowerCase());
  return all.find((one): one is Language => LANGUAGES.includes(one as Language)) ?? "en";
}

/** From now on this language can be spoken; the first that comes is. */
export function give(language: Language, words: Words): void {
  tables[language] = words;
  if (!("languageIs" in table)) table = words;
}

export const knows = (language: Language) => language in tables;

/** Speak a language that is known; of one that is not nothing changes. */
export function speak(language: Language): void {
  table = tables[language] ?? table;
}

/** The words of a key with the values in their places. What ends with `p. m.` has no second point. */
export function w(key: keyof Words, values: Record<string, string | number> = {}): string {
  const whole = table[key].replace(/\{(\w+)\}/g, (_, name: string) => String(values[name] ?? ""));
  return whole.replace(/([ap]\.\u00a0m\.)\.$/, "$1");
}

export const isWord = (key: string): key is keyof Words => key in table;
