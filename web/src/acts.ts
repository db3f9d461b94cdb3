/** Every key of every page: what it does. */
import { call, keepAwake } from "./alarm.ts";
import { callAnew, draw, drawSamplesBy, show } from "./draw.ts";
import { save } from "./hands.ts";
import { headsetKeys } from "./headset.ts";
import { mixing } from "./mixing.ts";
import { NO_QUESTION } from "./pages/pouring.ts";
import { reasons } from "./pages/logging.ts";
import { smaller, type Photo } from "./photo.ts";
import type { Entry } from "./pure/entry.ts";
import { guess, stepped } from "./pure/reading.ts";
import { bandsOf, handOf, twoSpray, type Band, type Sheet } from "./pure/sheet.ts";
import { w } from "./pure/words.ts";
import { photosOf } from "./send.ts";
import { fresh, job, lastOwn, now, own, speakAsWished, units, using, waiting as unsent } from "./state.ts";
import { change, enter, NO_JOB, photo, WISHES, type Wishes } from "./store.ts";
import { POUR_KEYS } from "./pouring.ts";
import { sampleAct, sampleFilled, samplePage, sampling } from "./sampling.ts";
import { opened, sync } from "./sync.ts";
import { washKeys } from "./washing.ts";

/** Whom the book takes for the one who sprays, where nobody gave a name. */
const SPRAYER = "sprayer";
const CHOSEN = ["stopped", "rooms"];
let headset: () => void = () => undefined;

/** What a key of a headset calls. */
export function headsetCalls(main: () => void): void {
  headset = main;
}

/** Keep an entry; then the run is shown, or while washing the page named. */
async function log(word: string, about: Entry["about"], at = Date.now(), taken: Photo | null = null, then = "run"): Promise<void> {
  now.memory = await enter({ job, word, about, at, who: now.wishes.who }, taken);
  now.lastTap = Date.now();
  callAnew();
  show(then);
  void sync("taps");
}

drawSamplesBy(() => samplePage(log));

/** The coat that a look is at: the one sprayed last; where it lies on one that may be wet, that one. */
const lookedAt = () => now.day?.wet?.below ?? sprayedCoat();

const sprayedCoat = () => {
  const last = using()?.fields.filter((one) => now.day?.floor.begun.includes(one.id)).pop();
  return last?.coat ?? now.day?.coat ?? "";
};

const inHand = () => (now.day?.begun ? now.day.field?.rooms[0] : undefined);
const text = (id: string) => (document.getElementById(id) as HTMLInputElement).value.trim();

export async function act(told: string): Promise<void> {
  const [word = "", ...rest] = told.split(" ");
  const arg = rest.join(" ");
  if (word === "key") return opened(text("key"));
  const logs = KEYS[word];
  if (logs && (using() || ["go", "hurt", "near"].includes(word) || sampling())) await logs(arg, using()!);
}

const KEYS: Record<string, (arg: string, s: Sheet) => unknown> = { ...washKeys(log), ...POUR_KEYS,
  go: (arg) => {
    if (arg === "tank") now.reading = { tank: null, tub: null };
    if (arg === "note") now.trouble = "";
    if (arg === "pour" && !now.view.startsWith("pour")) now.pour = NO_QUESTION;
    show(arg);
    if (arg === "wash" || arg === "pour" || arg === "samples") void sync();
  },
  sample: (arg) => sampleAct(arg),
  main: (_, s) => now.view === "run" && now.day?.band ? bandDone(s, now.day.band) : undefined,
  undo: () => {
    const last = lastOwn();
    const here = now.view.startsWith("wash") ? now.view : sampling() ? "samples" : "run";
    return last ? log("struck", { entry: last.id }, Date.now(), null, here) : undefined;
  },
  filled: (_, s) => {
    const fill = now.day?.fills[0];
    if (fill && twoSpray(s)) return log("filled", { sprayer: handOf(fill) }); // as the key says
    return log("filled", fill?.tank == null ? {} : { tank_l: fill.tank });
  },
  mixed: (_, s) => {
    const { parts } = mixing(s, now.day!, fresh());
    if (!parts) return undefined;
    const litres = Number((parts.stain_l + parts.water_l + parts.acid_l).toFixed(2));
    return log("mixed", { coat: parts.coat, litres, ...(now.mine.lot ? { lot: now.mine.lot } : {}) });
  },
  drip: () => log("drip", inHand() ? { room: inHand()! } : {}),
  pick: (arg) => {
    now.pickedAt = Date.now();
    show(arg === "stopped" ? CHOSEN[0]! : `${CHOSEN[1]} ${arg}`);
  },
  room: (arg) => {
    const word = now.view.split(" ")[1]!;
    const coat = word.startsWith("room-") ? {} : { coat: lookedAt() };
    return log(word, { ...(arg ? { room: arg } : {}), ...coat }, now.pickedAt);
  },
  because: (arg) => {
    const band = now.day?.begun && now.day.band ? { band: now.day.band.id } : {};
    return log("stopped", { because: reasons()[Number(arg)] ?? "?", ...band }, now.pickedAt);
  },
  step: (arg, s) => {
    const [name, by] = arg.split(" ") as ["tank" | "tub", string];
    const from = guess(s, now.day!, sprayedCoat(), name);
    now.reading = stepped(now.reading, name, Number(by), from, s.tank_l, units());
    draw();
  },
  read: () => {
    const { tank, tub } = now.reading;
    const about: Entry["about"] = {};
    if (tank !== null) about["tank_l"] = Number(tank.toFixed(3));
    if (tub !== null) about["tub_l"] = Number(tub.toFixed(3));
    return Object.keys(about).length ? log("tank-weighed", about) : undefined;
  },
  noted: () => (text("text") ? log("note", { text: text("text") }) : undefined),
  respirator: (arg) => log(`respirator-${arg}`, { person: now.wishes.who || SPRAYER }),
  looked: () => log("looked-in", {
    person: SPRAYER, ...(now.wishes.who ? { by: now.wishes.who } : {}), well: true,
  }),
  hurt: () => log("hurt", { what: w("hurtWhat") }),
  near: () => log("near-miss", { what: w("nearWhat") }),
  wish: (arg) => {
    const name = arg as "tone" | "shake" | "speech" | "awake" | "sun" | "headset";
    const on = !now.wishes[name];
    if (name === "headset") headsetKeys(on, headset);
    if (name === "speech" && on) call(w("sayTry"), false, { ...now.wishes, tone: false, shake: false, speech: true });
    return wish({ [name]: on });
  },
  units: () => wish({ units: units() === "us" ? "metric" : "us" }),
  language: () => wish({ language: w("languageIs") === "en" ? "es" : "en" }),
  save: saveAll,
  send: () => sync(),
  print: () => window.print(),
};

/** What was logged here, and the photos that the book has not. */
async function saveAll(): Promise<void> {
  const found = new Map<string, ArrayBuffer>();
  for (const sha of photosOf(unsent())) {
    const content = await photo(sha);
    if (content) found.set(sha, content);
  }
  save(own(), found, now.memory.phone.device);
}

/**
 * In a field that was laid anew with other bands the book reads these names by the morning's: there
 * the last one tells the whole field done, so that nothing of it stays open in the book.
 */
function bandDone(s: Sheet, band: Band): Promise<void> {
  const field = now.day!.field!;
  const before = now.sheet?.fields.find((one) => one.id === field.id);
  const shape = (from: Sheet, one: typeof field) => JSON.stringify(bandsOf(one).map((b) => [b.id, from.shapes[b.shape]]));
  const other = before !== undefined && s !== now.sheet && shape(s, field) !== shape(now.sheet!, before);
  const left = field.bands.filter((row) => !now.day!.floor.done.has(row[0]));
  return other && left.length === 1 ? log("field-done", { field: field.id }) : log("band-done", { band: band.id });
}

export async function wish(changed: Partial<Wishes>): Promise<void> {
  now.wishes = await change("wishes", WISHES, (one) => ({ ...one, ...changed }));
  void keepAwake(now.wishes.awake);
  await speakAsWished();
  if (!("who" in changed)) draw();
}

/** A field of a page was changed: a name, a lot, a photo. */
export async function filledIn(input: HTMLInputElement): Promise<void> {
  if (input.id === "who") await wish({ who: input.value.trim() });
  if (input.id === "lot") {
    now.mine = await change(`job ${job}`, NO_JOB, (one) => ({ ...one, lot: input.value.trim() }));
    draw();
  }
  if (sampling()) await sampleFilled(input);
  const file = input.id === "photo" ? input.files?.[0] : undefined;
  if (!file) return;
  const taken = await smaller(file);
  if (!taken) {
    now.trouble = w("photoBad");
    return draw();
  }
  const room = inHand();
  await log("photo", { file: taken.sha, ...(room ? { room } : {}) }, Date.now(), taken);
}
