/** The page of the day: one sample in hand, its stopwatch, one big key; the stopwatches that run besides. */
import type { Planned, Stand, Task } from "../pure/sampling.ts";
import { answered, readBefore } from "./figures.ts";
import { besides, clockAt, nameOf, sampleOf, says, standOf, taskOf, usually, watch, type Shown } from "./shown.ts";

/** What is to be read before the cut in hand is laid: the first that is not, or not any more. */
export function beforeFirst(s: Shown): string {
  const task = taskOf(s);
  if (task?.step !== "lay") return "";
  if (!s.day.begun && !s.kit.draft().clean) return "clean";
  return readBefore(sampleOf(s, task.sample)?.over ?? "").find((one) => !answered(s.kit, one)) ?? "";
}

export function dayPage(s: Shown): string {
  const { kit, t } = s;
  const back = kit.planned() ? kit.key("go phone", t("back")) : "<span></span>";
  const { text, waits } = kit.status();
  return `<div class="three">${back}${kit.undo() || "<span></span>"}${kit.eyes()}</div>
<h1 class="where">${kit.safe(`${t("title")} · ${s.course.name}`)}</h1>
<p class="line status${waits ? " waits" : ""}">${kit.safe(text)}</p>
${beforeFirst(s) ? first(s, beforeFirst(s)) : inHand(s)}
<div class="two">${kit.key("go samplesall", t("all"))}${kit.key("go samplehow", t("how"))}</div>`;
}

/** Before the first cut: clean, drop, slab, air. */
function first(s: Shown, what: string): string {
  const { kit, t } = s;
  const step = what === "humidity" ? "air" : what;
  const [name, , how] = says(s, step);
  const main = what === "clean" ? kit.key("sample clean", t("cleanKey"), "main")
    : kit.key(`sample ask ${what}`, kit.safe(what === "humidity" ? s.course.figures[kit.language()]!["humidity"]! : name), "main");
  const skip = what === "clean" ? "" : `<div class="one">${kit.key(`sample skip ${what}`, t("skip"))}</div>`;
  return `<p class="soft">${s.day.begun ? kit.safe(taskOf(s)?.sample ?? "") : t("first")}</p><p class="asks">${kit.safe(name)}</p><p>${kit.safe(how)}</p>
<div class="foot">${main}</div>${skip}`;
}

function inHand(s: Shown): string {
  const { kit, t } = s;
  const task = taskOf(s);
  const one = task && sampleOf(s, task.sample);
  const stand = task && standOf(s, task.sample);
  if (!task || !one || !stand) {
    const signed = s.day.signed ? t("signed", { id: s.day.signed }) : "";
    return `<div class="big word">${t("allDone")}</div><p class="label">${kit.safe(signed)}</p><span class="foot"></span>`;
  }
  const [name, , how, caution] = says(s, task.step);
  const mix = task.step === "lay" ? `<p class="mix">${kit.safe(mixOf(s, one))}</p>` : "";
  return `<p class="sample">${kit.safe(nameOf(s, one))}<br><span class="soft">${kit.safe(placeOf(s, one))}</span></p>
${figureOf(s, task, stand)}${stand.waits && task.step !== "lay" ? `<p class="label">${kit.safe(t("waitsFor", { id: stand.waits }))}</p>` : ""}
<p class="asks">${kit.safe(name)}</p>${mix}
<p class="how">${kit.safe(how)}</p>${caution ? `<p class="care">${kit.safe(caution)}</p>` : ""}
<div class="foot">${mainKey(s, task, one)}</div>${running(s, task)}`;
}

export function mixOf(s: Shown, one: Planned): string {
  if (one.stain_ml === null || one.water_ml === null) return one.cut;
  return s.t(one.water_ml ? "mix" : "mixNeat", { water: one.water_ml, stain: one.stain_ml });
}

function placeOf(s: Shown, one: Planned): string {
  const area = s.kit.units() === "us" ? `${(one.area_m2 / 0.09290304).toFixed(1)} ft²` : `${one.area_m2.toFixed(2)} m²`;
  const stain = s.course.stains[one.stain] ?? one.stain;
  const room = s.course.rooms[one.room] ?? one.room;
  const over = one.over ? s.t("over", { id: one.over }) : "";
  return [stain, area, over, room].filter(Boolean).join(", ");
}

/** The big figure: since when, or how long still. */
function figureOf(s: Shown, task: Task, stand: Stand): string {
  const run = stand.running.find((one) => one.name === task.step) ?? stand.running[0];
  if (!run || task.step === "weigh") return "";
  const waits = task.from !== null && task.from > s.at;
  const till = task.step === "wash" || task.step === "seal" ? task.from : null;
  const said = usually(s, stand, run.name);
  if (waits && till !== null) {
    const what = s.t(`wait-${run.name}` as "wait-dwell");
    return `<div class="big" role="timer" data-till="${till}">${watch(till - s.at)}</div>
<p class="label">${s.kit.safe(s.t("left", { what }))}, ${s.kit.safe(s.t("from", { at: clockAt(s, till) }))}<br>${s.kit.safe(said)}</p>`;
  }
  const since = s.t(run.name === "dry-down" ? "sinceWash" : "since");
  return `<div class="big" role="timer" data-since="${run.from}">${watch(s.at - run.from)}</div>
<p class="label">${s.kit.safe(since)}<br>${s.kit.safe(said)}</p>`;
}

/** The one big key of a task. */
function mainKey(s: Shown, task: Task, one: Planned): string {
  const { kit, t } = s;
  const id = one.id;
  const says_ = (key: Parameters<typeof t>[0]) => kit.safe(t(key, { id }));
  switch (task.step) {
    case "lay": {
      const kg = kit.draft().before?.[id];
      if (kg === undefined) return `${kit.key(`sample ask before ${id}`, says_("weighBefore"), "main")}<div class="one gap">${kit.key(`sample laid ${id}`, t("laidUnweighed"))}</div>`;
      return kit.key(`sample laid ${id}`, `${says_("laidKey")}<b>${t("weighedBefore", { kg: Math.round(kg * 1000) })}</b>`, "main");
    }
    case "weigh": return `${kit.key(`sample ask weighed ${id}`, says_("weighAfter"), "main")}<div class="one gap">${kit.key(`sample unweighed ${id}`, t("notNow"))}</div>`;
    case "sheen": return kit.key(`sample sheen ${id}`, says_("sheenKey"), "main");
    case "dry": return kit.key(`sample dry ${id}`, says_("dryKey"), "main");
    case "wash": return kit.key(`sample wash ${id}`, says_("washKey"), "main");
    case "seal": {
      const many = besides(s, "seal").length;
      return `${kit.key(`sample sealed ${id}`, says_("sealKey"), "main")}${many > 1 ? `<div class="one gap">${kit.key("sample sealedall", t("sealAll", { n: many }))}</div>` : ""}`;
    }
    case "wet": case "day": case "lamp":
      return `${photoKey(s, task.step, id)}${s.hand.trouble ? `<p>${kit.safe(s.hand.trouble)}</p>` : ""}`;
    case "judge": return verdicts(s, id);
    case "sign": return kit.key(`sample sign ${id}`, says_("signKey"), "main");
    default: return "";
  }
}

export const verdicts = (s: Shown, id: string): string =>
  `<div class="three">${(["light", "right", "dark"] as const).map((one) => s.kit.key(`sample verdict ${one} ${id}`, s.t(one), "main")).join("")}</div>`;

export const photoKey = (s: Shown, step: string, id: string, kind = " big-key"): string =>
  `<label class="key${kind}">${s.kit.safe(s.t("photoKey", { id }))}, ${s.kit.safe(says(s, step)[1])}<input type="file" accept="image/*" capture="environment" data-sample="${s.kit.safe(id)}" data-step="${step}"></label>`;

/** The other stopwatches, each with the key that stops it. */
function running(s: Shown, task: Task): string {
  const others = s.day.stands.filter((one) => one.sample !== task.sample && (one.step === "sheen" || one.step === "dry"));
  const keys = others.slice(0, 4).map((one) => {
    const since = one.running[0]?.from ?? null;
    const told = s.t(one.step === "sheen" ? "sheenKey" : "dryKey", { id: one.sample });
    const time = since === null ? "" : `<b data-since="${since}">${watch(s.at - since)}</b>`;
    return s.kit.key(`sample ${one.step} ${one.sample}`, `${s.kit.safe(told)}${time}`);
  });
  return keys.length ? `<div class="two">${keys.join("")}</div>` : "";
}
