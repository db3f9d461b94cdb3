/**
 * SHA-256 [FIPS 180-4] for the pages that a browser gives no `crypto.subtle`: those over plain http.
 * A library for it was tried: 2.4 KB more on the wire, past the room that the page keeps for a plan.
 * Roots of primes as its section 4.2.2 and 5.3.3 have them, reckoned here.
 */
const PRIMES = ((): number[] => {
  const found: number[] = [];
  for (let n = 2; found.length < 64; n += 1) if (found.every((one) => n % one)) found.push(n);
  return found;
})();
/** The first 32 bits of the fraction; doubles hold 53, so that none is lost below 2^9. */
const bits = (root: number) => Math.floor((root - Math.floor(root)) * 2 ** 32) >>> 0;
const K = PRIMES.map((one) => bits(Math.cbrt(one)));
const FIRST = PRIMES.slice(0, 8).map((one) => bits(Math.sqrt(one)));

const turned = (x: number, n: number) => (x >>> n) | (x << (32 - n));

/** The digest as 64 hexadecimal digits. */
export function sha256(content: Uint8Array): string {
  const padded = new Uint8Array((((content.length + 8) >> 6) + 1) << 6);
  padded.set(content);
  padded[content.length] = 0x80;
  const view = new DataView(padded.buffer);
  view.setUint32(padded.length - 8, Math.floor(content.length / 2 ** 29));
  view.setUint32(padded.length - 4, content.length << 3);
  const hash = Uint32Array.from(FIRST);
  const told = new Uint32Array(64);
  for (let at = 0; at < padded.length; at += 64) block(view, at, told, hash);
  return Array.from(hash, (one) => one.toString(16).padStart(8, "0")).join("");
}

function block(view: DataView, at: number, told: Uint32Array, hash: Uint32Array): void {
  for (let n = 0; n < 16; n += 1) told[n] = view.getUint32(at + 4 * n);
  for (let n = 16; n < 64; n += 1) {
    const [x, y] = [told[n - 15]!, told[n - 2]!];
    const low = turned(x, 7) ^ turned(x, 18) ^ (x >>> 3);
    const high = turned(y, 17) ^ turned(y, 19) ^ (y >>> 10);
    told[n] = told[n - 16]! + low + told[n - 7]! + high;
  }
  let [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = hash;
  for (let n = 0; n < 64; n += 1) {
    const one = (h + (turned(e, 6) ^ turned(e, 11) ^ turned(e, 25)) + ((e & f) ^ (~e & g)) + K[n]! + told[n]!) | 0;
    const two = ((turned(a, 2) ^ turned(a, 13) ^ turned(a, 22)) + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    [h, g, f, e, d, c, b, a] = [g, f, e, (d + one) | 0, c, b, a, (one + two) | 0];
  }
  [a, b, c, d, e, f, g, h].forEach((one, n) => { hash[n] = hash[n]! + one; });
}
