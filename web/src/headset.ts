/**
 * The keys of a headset. A browser gives them to the page that plays something: here six seconds of
 * silence over and over. Without it they go to whatever played last.
 */
const HZ = 8000;
const SECONDS = 6;
let playing: HTMLAudioElement | null = null;

/** A WAV file of silence: 8 bit, one channel. */
function silence(): Blob {
  const size = HZ * SECONDS;
  const head = new DataView(new ArrayBuffer(44));
  const text = (at: number, word: string) => [...word].forEach((one, n) => head.setUint8(at + n, one.charCodeAt(0)));
  text(0, "RIFF"); head.setUint32(4, 36 + size, true);
  text(8, "WAVEfmt "); head.setUint32(16, 16, true); head.setUint16(20, 1, true); head.setUint16(22, 1, true);
  head.setUint32(24, HZ, true); head.setUint32(28, HZ, true); head.setUint16(32, 1, true); head.setUint16(34, 8, true);
  text(36, "data"); head.setUint32(40, size, true);
  return new Blob([head, new Uint8Array(size).fill(128)], { type: "audio/wav" });
}

/** Take the keys, or leave them; to be called from a tap, for a page may not play before one. */
export function headsetKeys(wished: boolean, pressed: () => void): void {
  if (!("mediaSession" in navigator)) return;
  const does = wished ? pressed : null;
  for (const key of ["play", "pause", "nexttrack"] as const) {
    try {
      navigator.mediaSession.setActionHandler(key, does);
    } catch { /* a browser that does not know this key */ }
  }
  if (!wished) {
    playing?.pause();
    playing = null;
  } else if (!playing) {
    playing = new Audio(URL.createObjectURL(silence()));
    playing.loop = true;
    playing.play().catch(() => { playing = null; });
  }
}
