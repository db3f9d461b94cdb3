/** The keys of the gate: what is poured, in what, and the question to the book. */
import { draw, redraw, show } from "./draw.ts";
import { NO_QUESTION, type Asked } from "./pages/pouring.ts";
import { fetchVerdict, NoAnswer } from "./send.ts";
import { alone, job, now } from "./state.ts";

export const POUR_KEYS: Record<string, (arg: string) => unknown> = {
  "pour-anew": () => {
    now.pour = { ...NO_QUESTION, vessel: now.pour.vessel };
    draw();
  },
  "pour-list": (arg) => show(`pourlist ${arg}`),
  "pour-add": (arg) => asks({ ...now.pour, things: [...now.pour.things, arg] }),
  "pour-where": (arg) => asks({ ...now.pour, vessel: arg }),
};

/** The new question on the screen, with what the phone knows; then the book is asked. */
async function asks(question: Asked): Promise<void> {
  const { key } = now.mine;
  const asking = !alone && key !== "" && question.things.length > 0;
  const mine = now.pour = { ...question, answer: null, at: Date.now(), asking };
  show("pour");
  if (!asking) return;
  const answer = await fetchVerdict(job, key, mine.things, mine.vessel).catch((error: unknown) => {
    if (error instanceof NoAnswer) return null;
    throw error;
  });
  if (now.pour !== mine) return; // another question by now: this answer is none of it
  now.pour = { ...mine, answer: isAnswer(answer) ? answer : null, asking: false };
  if (now.view === "pour") redraw();
}

/** Whether this is a word of the gate; anything else is no answer. */
const isAnswer = (told: Asked["answer"]) =>
  told !== null && ["refused", "allowed with warning", "allowed"].includes(told.word) && Array.isArray(told.reasons);
