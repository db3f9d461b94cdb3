/** The queue by the same cases as tests/web/test_phone.py, from tests/web/slab/phone_cases.json. */
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import { type Case, held, lived } from "./living.ts";

const CASES = fileURLToPath(new URL("../../../tests/web/slab/phone_cases.json", import.meta.url));
const cases = JSON.parse(readFileSync(CASES, "utf-8")) as Case[];

test("there are cases", () => assert.ok(cases.length >= 6));
for (const one of cases) {
  test(one.name, () => assert.deepEqual(held(lived(one.steps), one), one.then));
}
