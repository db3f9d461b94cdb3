/** The pages behind a key that asks where, why or how much. */
import type { Reading } from "../pure/reading.ts";
import { volume } from "../pure/say.ts";
import { w } from "../pure/words.ts";
import { key, safe, top, type Shown } from "./shown.ts";

const WHERE = {
  "sheen-lost": "whereSheen", "still-damp": "whereDamp", dry: "whereDry",
  "room-closed": "whereClosed", "room-free": "whereFree",
} as const;

/** The rooms to choose from: those of the fields begun; all of them where a room is closed or free. */
export function rooms(s: Shown, word: string): string {
  const closing = word.startsWith("room-");
  const own = s.sheet.fields.filter((one) => closing || s.day.floor.begun.includes(one.id));
  const names = [...new Set(own.flatMap((one) => one.rooms))];
  const keys = names.map((room) => key(`room ${room}`, safe(s.sheet.rooms[room] ?? room)));
  const title = w(WHERE[word as keyof typeof WHERE] ?? "whereDry");
  return `${top()}<h1>${title}</h1>
<p>${w("forMoment")}</p><div class="two">${keys.join("")}${closing ? "" : key("room ", w("allOfIt"))}</div>`;
}

export const reasons = () =>
  (["reason0", "reason1", "reason2", "reason3", "reason4", "reason5"] as const).map((one) => w(one));

export function stopped(): string {
  const keys = reasons().map((text, n) => key(`because ${n}`, text));
  return `${top()}<h1>${w("why")}</h1><p>${w("whyMore")}</p><div class="two">${keys.join("")}</div>`;
}

export function tank(s: Shown, reading: Reading): string {
  const part = (name: "tank" | "tub") => {
    const value = reading[name];
    const shown = value === null ? w("notRead") : volume(value, s.units);
    const half = s.units === "us" ? "½" : "1";
    const tenth = s.units === "us" ? "0.1" : "¼";
    return `<h2>${w(name === "tank" ? "inTank" : "inTub")}</h2><p class="read" id="${name}">${shown}</p><div class="four">${
      key(`step ${name} -2`, `−${half}`)}${key(`step ${name} -1`, `−${tenth}`)}${
      key(`step ${name} 1`, `+${tenth}`)}${key(`step ${name} 2`, `+${half}`)}</div>`;
  };
  return `${top()}<h1 class="unseen">${w("tankTub")}</h1>${part("tank")}${part("tub")}
<div class="foot">${reading.tank === null && reading.tub === null
  ? `<button class="main" data-do="read" disabled>${w("nothingRead")}</button>` : key("read", w("enter"), "main")}</div>`;
}

export function note(s: Shown): string {
  const photo = `<label class="key">${w("takePhoto")}<input id="photo" type="file" accept="image/*" capture="environment"></label><p>${
      s.trouble ? safe(s.trouble) : w("photoSmall")}</p>`;
  return `${top()}<h1>${w("noteKey")}</h1>${photo}
<div class="two">${key("pick room-closed", w("closedKey"))}${key("pick room-free", w("freeKey"))}</div>
<div class="two">${key("respirator on", w("respiratorOn"))}${key("respirator off", w("respiratorOff"))}</div>
${key("looked", w("lookedIn"))}
<textarea id="text" rows="3" maxlength="190" aria-label="${w("noteText")}"></textarea>
<div class="foot">${key("noted", w("enter"), "main")}</div>`;
}
