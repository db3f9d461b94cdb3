/** Fingers, wireless keys, and the file that leaves the phone. */
import { wake } from "./alarm.ts";
import type { Entry } from "./pure/entry.ts";
import { once } from "./pure/gloves.ts";

/** A wireless button sends one of these; a phone's own volume keys reach a page in few browsers. */
const KEYS = ["Enter", " ", "AudioVolumeUp", "AudioVolumeDown", "VolumeUp", "VolumeDown",
  "MediaPlayPause", "MediaTrackNext", "PageDown"];

export interface Does {
  tap: (told: string) => void;
  /** Whether the big key is on the page. */
  hasMain: () => boolean;
  pressed: () => void;
  lifted: () => void;
}

/** Listens; back comes what a key of a headset is to call. */
export function listenToHands(does: Does): () => void {
  const counts = once();
  const main = () => {
    if (does.hasMain() && counts("main", performance.now())) does.tap("main");
  };
  document.addEventListener("pointerdown", does.pressed);
  for (const end of ["pointerup", "pointercancel"]) document.addEventListener(end, does.lifted);
  document.addEventListener("click", (event) => {
    const button = (event.target as Element).closest<HTMLElement>("[data-do]");
    const told = button?.dataset["do"];
    if (!button || told === undefined) return;
    wake();
    if (event.detail) button.blur(); // by a finger: a wireless key is not to press it once more
    if (counts(told, performance.now())) does.tap(told);
  });
  document.addEventListener("keydown", (event) => {
    const target = event.target as Element;
    const typing = target.matches("input, textarea");
    if (typing || !does.hasMain() || !KEYS.includes(event.key)) return;
    if (target.matches("button:focus") && ["Enter", " "].includes(event.key)) return;
    event.preventDefault();
    wake();
    if (!event.repeat) main();
  });
  return main;
}

/** Entries as a file of JSON lines, in the order of tapping; before them the photos that lie here. */
export function save(entries: Entry[], photos: Map<string, ArrayBuffer>, device: string): void {
  const pictures = [...photos].map(([sha, content]) => `${JSON.stringify({ photo: sha, content: base64(content) })}\n`);
  const lines = entries.sort((a, b) => a.number - b.number).map((one) => `${JSON.stringify(one)}\n`);
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([...pictures, ...lines], { type: "application/x-ndjson" }));
  link.download = `logged-${device}.jsonl`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

function base64(content: ArrayBuffer): string {
  const bytes = new Uint8Array(content);
  let text = "";
  for (let from = 0; from < bytes.length; from += 0x8000) {
    text += String.fromCharCode(...bytes.subarray(from, from + 0x8000));
  }
  return btoa(text);
}
