/** The pages as text. What comes from outside passes `safe`. */
import { picture } from "./picture.ts";
import { bandName, type Sheet } from "./pure/sheet.ts";
import { coatWords, clock, countdown, fillLine, short, volume, where, type Big, type Units } from "./pure/say.ts";
import type { Day } from "./pure/day.ts";
import type { Entry } from "./pure/entry.ts";
import type { Reading } from "./pure/reading.ts";
import type { Wishes } from "./store.ts";
import { abilities } from "./alarm.ts";

/** What to mix next and who says so; parts null when enough is mixed. */
export interface Mixing {
  parts: { coat: string; stain_l: number; water_l: number; acid_l: number } | null;
  by: string;
}

export interface Shown {
  sheet: Sheet;
  day: Day;
  now: number;
  big: Big;
  /** Where the big figure comes from. */
  by: string;
  stop: string;
  status: string;
  last: Entry | null;
  mixing: Mixing;
  wishes: Wishes;
  turned: string[];
  alone: boolean;
  room: { wide: number; high: number };
}

export const safe = (text: string) =>
  text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);

const key = (act: string, text: string, kind = "") =>
  `<button data-do="${safe(act)}"${kind ? ` class="${kind}"` : ""}>${text}</button>`;

const BACK = key("go run", "Back");
const EYES = key("go eyes", "Eyes, spills", "red");

export function run(s: Shown): string {
  const undo = s.last ? `Undo<b>${safe(short(s.sheet, s.last))}</b>` : "Undo";
  const fill = s.day.fills[0];
  return `<div class="three">${key("undo", undo)}${key("go helper", "Helper")}${EYES}</div>
<p class="where">${safe(where(s.sheet, s.day))}</p>
<p class="line status">${safe(s.status)}</p>
${s.stop ? `<p class="stop">${safe(s.stop)}</p>` : ""}
<div class="pic">${picture(s.sheet, s.day, s.now, s.room.wide, s.room.high)}</div>
${bigOf(s)}
<p class="next">${fill ? safe(fillLine(s.sheet, fill)) : "No fill to come in this coat"}</p>
${mainOf(s)}
<div class="three">${key("filled", "Tank filled")}${key("go tank", "Tank, tub")}${key("drip", "Drip", "red")}
${key("pick sheen-lost", "Sheen gone")}${key("pick still-damp", "Still damp")}${key("pick dry", "Dry")}
${key("pick stopped", "Stopped", "red")}${key("go note", "Note")}${key("go phone", "Phone")}</div>`;
}

function bigOf(s: Shown): string {
  const left = s.big.until === null ? null : s.big.until - s.now;
  const out = s.big.edge && left !== null && left < 1;
  const text = left === null ? s.big.word : countdown(left);
  const share = s.big.edge && left !== null ? Math.min(Math.max(left / Math.max(s.day.low, 1e-9), 0), 1) : 0;
  const bar = s.big.edge
    ? `<svg class="bar" viewBox="0 0 100 12" preserveAspectRatio="none" aria-hidden="true"><rect width="100" height="12" fill="#dbebef"/><rect id="left" width="${share * 100}" height="12" fill="#9a3412"/></svg>`
    : "";
  return `<output class="big${left === null ? " word" : ""}${out ? " out" : ""}" id="big">${safe(text)}</output>
<p class="label">${safe(s.big.label)}${s.by ? `<br>${safe(s.by)}` : ""}</p>${bar}`;
}

function mainOf(s: Shown): string {
  const { field, band } = s.day;
  if (!field || !band) return `<button class="main" data-do="main" disabled>All sprayed</button>`;
  return key("main", `Band ${bandName(field, band.id)} done`, "main");
}

/** Where to look into the tub next, and what to mix by what is left: a slab as thirsty as planned. */
function lookOf(s: Shown): string {
  const { sheet, day, wishes } = s;
  const look = day.look;
  const field = look && sheet.fields.find((one) => one.id === look.field);
  const [begin, goOn, ...told] = look?.ifs[0] ?? [];
  if (!look || !field || begin === undefined || goOn === undefined) return "";
  const v = (litres: number) => volume(litres, wishes.units);
  const pairs = told.flatMap((left, n) => (n % 2 ? [] : [{ left, mix: told[n + 1] ?? 0 }])).reverse();
  const rows = pairs.map(({ left, mix }) =>
    `<p class="fill"><strong>${v(left)} left</strong><span>mix ${v(mix)}, box it with all that is left</span></p>`);
  return `<h2>Look into the tub after band ${safe(bandName(field, look.after))}, ${clock(sheet, look.at + (day.late ?? 0))}</h2>
<p>With ${v(goOn)} or more in tub and tanks go on. Begun on ${v(begin)}; begun on more, all figures grow as much.</p>${rows.join("")}`;
}

export function helper(s: Shown): string {
  const { sheet, day, wishes } = s;
  const { parts, by } = s.mixing;
  const v = (litres: number) => volume(litres, wishes.units);
  const all = parts ? v(parts.stain_l + parts.water_l + parts.acid_l) : "";
  const acid = parts && parts.acid_l > 0 ? `, then ${v(parts.acid_l)} acid` : "";
  const mixing = parts
    ? `<h1>Mix next: ${all}</h1><p>${v(parts.water_l)} water first, then ${v(parts.stain_l)} stain into it${acid}; box it with what is left. ${safe(by)}</p>${key("mixed", `Mixed: ${all}`)}`
    : `<h1>Enough is mixed</h1><p>${safe(by)}</p>`;
  const fills = day.fills.slice(0, 2).map((one) =>
    `<p class="fill"><strong>${clock(sheet, one.then)}</strong><span>full tank to the ${safe(one.door)}, ${v(one.litres)} in</span></p>`);
  return `<div class="three">${BACK}<span></span>${EYES}</div>${mixing}
${lookOf(s)}
<h2>Next fills${day.late === null ? ", by the plan" : ", as late as the day is"}</h2>
${fills.join("") || "<p>No fill to come in this coat.</p>"}
<p class="jug"><b>Label:</b> ${safe(coatWords(sheet, day.coat))} · ${safe(sheet.job)} · mixed at … · ACID: burns eyes and skin; never with bleach</p>
<p>Goggles, face shield, gloves. Rag on the tip.</p>
<div class="foot">${key("filled", "Tank filled", "main")}</div>`;
}

export function eyes(): string {
  return `<div class="three">${BACK}</div>
<h1>In the eyes: water first</h1>
<p><b>Now, at once, for 15 minutes.</b> Lids held open; lenses out if that is easy, and go on rinsing. Then a doctor, with the sheet of the material. Somebody else calls.</p>
<h2>On the skin</h2><p>Water, clothes off under it, 15 minutes.</p>
<h2>Breathed in, or bleach or ammonia got into it</h2><p>Everybody out into fresh air. Call. Nobody goes back in for tools.</p>
<h2>Spilled</h2><p>People away; goggles and gloves on. Dam it. Bicarbonate till the fizz ends, soak up, shovel, label. Never into a drain or soil. On the slab: say so; do not wipe it dry there.</p>
<p>The sheet of the material in hand wins over these words (common practice).</p>
<div class="two foot">${key("hurt", "Enter: somebody was hurt", "red")}${key("near", "Enter: a spill, nobody hurt")}</div>`;
}

export function rooms(s: Shown, word: string): string {
  const own = s.sheet.fields.filter((one) => s.day.floor.begun.includes(one.id));
  const names = [...new Set(own.flatMap((one) => one.rooms))];
  const what = word.replace("-", " ");
  const keys = names.map((room) => key(`room ${room}`, safe(s.sheet.rooms[room] ?? room)));
  return `<div class="three">${BACK}<span></span>${EYES}</div><h1>Where is it ${safe(what === "sheen lost" ? "that the sheen is gone" : what)}?</h1>
<p>It is entered for the moment you tapped.</p><div class="two">${keys.join("")}${key("room ", "All of it")}</div>`;
}

export const REASONS = ["Another trade came in", "Pump or nozzle", "Out of mix", "Too hot or windy", "Wrong look", "Somebody needs help"];

export function stopped(): string {
  const keys = REASONS.map((text, n) => key(`because ${n}`, text));
  return `<div class="three">${BACK}<span></span>${EYES}</div><h1>Stopped: why?</h1><p>It is entered for the moment you tapped. The edge goes on counting.</p><div class="two">${keys.join("")}</div>`;
}

export function tank(s: Shown, reading: Reading): string {
  const part = (name: "tank" | "tub") => {
    const value = reading[name];
    const shown = value === null ? "not read" : volume(value, s.wishes.units);
    const half = s.wishes.units === "us" ? "½" : "1";
    const tenth = s.wishes.units === "us" ? "0.1" : "¼";
    return `<h2>In the ${name}</h2><p class="read" id="${name}">${shown}</p><div class="four">${
      key(`step ${name} -2`, `−${half}`)}${key(`step ${name} -1`, `−${tenth}`)}${
      key(`step ${name} 1`, `+${tenth}`)}${key(`step ${name} 2`, `+${half}`)}</div>`;
  };
  return `<div class="three">${BACK}<span></span>${EYES}</div>${part("tank")}${part("tub")}
<div class="foot">${reading.tank === null && reading.tub === null
  ? '<button class="main" data-do="read" disabled>Nothing read yet</button>' : key("read", "Enter", "main")}</div>`;
}

export function note(): string {
  return `<div class="three">${BACK}<span></span>${EYES}</div><h1>Note</h1><textarea id="text" rows="4" maxlength="190" aria-label="Note"></textarea>
<div class="foot">${key("noted", "Enter", "main")}</div>`;
}

export function phone(s: Shown): string {
  const on = (yes: boolean) => (yes ? "on" : "off");
  const w = s.wishes;
  const unit: Units = w.units;
  const turned = s.turned.map((why) => `<p class="stop">Turned away: ${safe(why)}</p>`).join("");
  return `<div class="three">${BACK}<span></span>${EYES}</div><h1>This phone</h1><p>${safe(s.status)}</p>${turned}
<div class="two">${key("wish tone", `Tone: ${on(w.tone)}`)}${key("wish shake", `Shake: ${on(w.shake)}`)}
${key("wish speech", `Speech: ${on(w.speech)}`)}${key("wish awake", `Stay awake: ${on(w.awake)}`)}
${key("units", unit === "us" ? "Gallons" : "Litres")}${key("save", "Save what was logged")}</div>
<label>Who taps here<input id="who" maxlength="60" autocomplete="off" value="${safe(w.who)}"></label>
<p>${abilities().join(" ")}</p><p>Plan ${safe(s.sheet.inputs_hash.slice(0, 8))}, ${safe(s.sheet.job)}. The plan as made: a plan laid anew on the day is not in here.</p>
${s.alone ? "<p>This file sends nothing: save what was logged and take it in with `farwall log JOB --from FILE`.</p>" : key("send", "Send now")}`;
}

export function askKey(told: string): string {
  return `<div class="three"><span></span><span></span>${EYES}</div><h1>The key of the book</h1><p>${safe(told)}</p><input id="key" autocomplete="off" autocapitalize="off" spellcheck="false" aria-label="Key"><div class="foot">${key("key", "Open", "main")}</div>`;
}

/** While there is no plan yet. */
export function waiting(told: string): string {
  return `<div class="three"><span></span><span></span>${EYES}</div><h1>Run sheet</h1><p>${safe(told)}</p>`;
}
