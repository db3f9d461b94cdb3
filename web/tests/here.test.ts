// What the page says of a server that does not answer.
import assert from "node:assert/strict";
import { test } from "node:test";
import { Asking } from "../office/house/here.ts";

test("a page says that nothing answers, and no longer once something does", async () => {
  const away = { hidden: true };
  const world = globalThis as unknown as Record<string, unknown>;
  world["document"] = { getElementById: (id: string) => (id === "away" ? away : null) };
  const told: string[] = [];
  const asking = new Asking((text) => told.push(text), () => undefined);
  world["fetch"] = async () => { throw new TypeError("out of reach"); };
  await asking.ask("/moment.svg?minute=1");
  assert.equal(away.hidden, false);
  assert.deepEqual(told, []);
  world["fetch"] = async () => ({ ok: true, redirected: false, text: async () => "drawn" });
  await asking.ask("/moment.svg?minute=2");
  assert.equal(away.hidden, true);
  assert.deepEqual(told, ["drawn"]);
});
