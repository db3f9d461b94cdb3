import { createHash } from "node:crypto";
import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build, defineConfig, type Plugin } from "vite";
import { EN } from "./src/words/en.ts";
import { ES } from "./src/words/es.ts";

const OUT = "../src/farwall/web/slab/dist";
const HELD = ["index.html", "slab.js", "samples.js", "en.json", "es.json", "slab.webmanifest"];
const TARGET = "es2021";

/**
 * The page with its style, which would be one more request, and what must begin before its script is
 * there: without comments and indents, inside it.
 */
function page(style: string): string {
  const here = (name: string) => readFileSync(join(import.meta.dirname, name), "utf-8");
  const early = here("early.js").split("\n").map((line) => line.trim()).filter((line) => line && !line.startsWith("//"))
    .map((line) => line.replace(/ \/\/ .*$/, ""));
  return here("index.html").replace("EARLY", () => early.join("\n")).replace("STYLE", () => style.trim());
}

/** The worker is named after what it keeps, so that a new build is fetched whole. */
function named(): Plugin {
  return {
    name: "named-worker",
    async closeBundle() {
      // The sample day apart: a first load of the run sheet does not wait for it.
      await build({
        configFile: false, publicDir: false, root: import.meta.dirname, logLevel: "warn",
        build: {
          outDir: OUT, emptyOutDir: false, target: TARGET, modulePreload: false,
          lib: { entry: "src/samples.ts", formats: ["iife"], name: "samples", fileName: () => "samples.js" },
        },
      });
      const out = join(import.meta.dirname, OUT);
      const hash = createHash("sha256");
      const style = join(out, "slab.css");
      writeFileSync(join(out, "index.html"), page(readFileSync(style, "utf-8")));
      rmSync(style);
      // One language at a time: a first load does not wait for the other.
      for (const [name, words] of Object.entries({ en: EN, es: ES })) writeFileSync(join(out, `${name}.json`), JSON.stringify(words));
      for (const name of HELD) hash.update(readFileSync(join(out, name)));
      const worker = join(out, "sw.js");
      const bare = readFileSync(worker, "utf-8").split("\n").filter((line) => line.trim() && !line.trim().startsWith("//")).join("\n");
      const text = bare.replace("VERSION", hash.digest("hex").slice(0, 12));
      writeFileSync(worker, text);
    },
  };
}

export default defineConfig({
  plugins: [named()],
  build: {
    outDir: OUT,
    emptyOutDir: true,
    target: TARGET,
    cssTarget: ["chrome87", "firefox92", "safari14.1"], // as old as the script's; none needs ten names for its own letters
    modulePreload: false,
    lib: { entry: "src/main.ts", formats: ["iife"], name: "slab", fileName: () => "slab.js", cssFileName: "slab" },
  },
});
