/** The words of the page in one language at a time. */
import { EN, type Words } from "../words/en.ts";
import { ES } from "../words/es.ts";

export type Language = "en" | "es";
const TABLES: Record<Language, Words> = { en: EN, es: ES };
let table: Words = EN;

/** The language of the page: as chosen on the phone, else of the job, else as the phone speaks. */
export function languageOf(chosen: string, job: string, phone: readonly string[]): Language {
  const all = [chosen, job, ...phone].map((one) => one.slice(0, 2).toLowerCase());
  return all.find((one): one is Language => one in TABLES) ?? "en";
}

export function speak(language: Language): void {
  table = TABLES[language];
}

/** The words of a key with the values in their places. */
export function w(key: keyof Words, values: Record<string, string | number> = {}): string {
  return table[key].replace(/\{(\w+)\}/g, (_, name: string) => String(values[name] ?? ""));
}

export const isWord = (key: string): key is keyof Words => key in EN;
