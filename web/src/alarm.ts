/** A short tone, a shake, a word, a screen kept awake: each as far as this browser can. */
import { w } from "./pure/words.ts";
import type { Wishes } from "./store.ts";

/** By then a tap is kept; no alarm is due so soon after one. */
const KEPT_MS = 400;
let sound: AudioContext | null = null;
let lock: WakeLockSentinel | null = null;

/**
 * Browsers let a page sound only after a tap: to be called from one. Making the sound ready takes a
 * slow phone a tenth of a second, so it is done when the tap lies on the disk and shows; a browser
 * still knows the tap then (those that count it by time give it a second or more; from memory).
 */
export function wake(): void {
  setTimeout(ready, sound ? 0 : KEPT_MS);
}

function ready(): void {
  try {
    sound ??= new AudioContext();
    if (sound.state === "suspended") void sound.resume();
  } catch {
    sound = null;
  }
}

function tone(pressing: boolean): void {
  if (!sound) return;
  const from = sound.currentTime;
  for (let n = 0; n < (pressing ? 3 : 1); n += 1) {
    const at = from + n * 0.25;
    const voice = sound.createOscillator();
    const loud = sound.createGain();
    voice.frequency.value = pressing ? 1320 : 880;
    loud.gain.setValueAtTime(0.0001, at);
    loud.gain.exponentialRampToValueAtTime(0.6, at + 0.02);
    loud.gain.exponentialRampToValueAtTime(0.0001, at + 0.2);
    voice.connect(loud).connect(sound.destination);
    voice.start(at);
    voice.stop(at + 0.22);
  }
}

export function call(text: string, pressing: boolean, wishes: Wishes): void {
  if (wishes.tone) tone(pressing);
  if (wishes.shake && "vibrate" in navigator) navigator.vibrate(pressing ? [200, 100, 200, 100, 200] : 200);
  if (wishes.speech && "speechSynthesis" in window) {
    speechSynthesis.cancel();
    const spoken = new SpeechSynthesisUtterance(text);
    spoken.lang = w("languageIs");
    speechSynthesis.speak(spoken);
  }
}

export async function keepAwake(wished: boolean): Promise<void> {
  if (!("wakeLock" in navigator) || document.visibilityState !== "visible") return;
  try {
    if (!wished) {
      await lock?.release();
      lock = null;
    } else if (!lock || lock.released) {
      lock = await navigator.wakeLock.request("screen");
    }
  } catch {
    lock = null; // the phone saves its battery: nothing to be done
  }
}

/** What this browser can, in words, for the page of this phone. */
export function abilities(): string[] {
  const can = (there: boolean, what: string) => w(there ? "can" : "cannot", { what });
  return [
    can(isSecureContext && "serviceWorker" in navigator, w("canReload")),
    can("vibrate" in navigator, w("canShake")),
    can("speechSynthesis" in window, w("canSpeak")),
    can("wakeLock" in navigator, w("canAwake")),
  ];
}
