/** The words of the page come apart, so that a first load carries one language. */
import { give, knows, LANGUAGES, type Language } from "./pure/words.ts";
import { early } from "./store.ts";
import type { Words } from "./words/en.ts";

const AGAIN_MS = 2000;
/** Which language the page spoke last: its words are asked for before anything else is known. */
const SPOKEN = "farwall-slab-speaks";
const inside = document.getElementById("words");

/** The one file carries them all. */
if (inside) {
  const all = JSON.parse(inside.textContent ?? "{}") as Record<Language, Words>;
  for (const language of LANGUAGES) give(language, all[language]);
}

async function words(language: Language, begun?: Promise<Response>): Promise<void> {
  const answer = await (begun ?? fetch(`/slab/files/${language}.json`));
  if (!answer.ok) throw new Error(`no words: ${answer.status}`);
  give(language, await answer.json() as Words);
}

/** When the page can speak at all. Without words nothing can be shown: it asks until they come. */
export async function canSpeak(): Promise<void> {
  if (inside) return;
  const begun = early()?.words;
  for (let asked = begun?.told; ; asked = undefined) {
    try {
      return await words(begun?.language ?? "en", asked);
    } catch {
      await new Promise((later) => { setTimeout(later, AGAIN_MS); });
    }
  }
}

/** Fetch a language, where it is not here. Back comes whether it can be spoken. */
export async function learn(language: Language): Promise<boolean> {
  if (!knows(language)) await words(language).catch(() => undefined);
  return knows(language);
}

/** All languages, so that they can be changed without signal. */
export async function learnAll(): Promise<void> {
  for (const language of LANGUAGES) await learn(language);
}

export function spoken(language: string): void {
  try {
    localStorage.setItem(SPOKEN, language);
  } catch {
    // a browser that keeps nothing: the next page begins with what the phone speaks
  }
}
