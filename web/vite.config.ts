import { createHash } from "node:crypto";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build, defineConfig, type Plugin } from "vite";

const OUT = "../src/farwall/web/slab/dist";
const HELD = ["index.html", "slab.js", "samples.js", "slab.css", "slab.webmanifest"];
const TARGET = "es2021";

/** The page with what must begin before its script is there: without comments and indents, inside it. */
function page(): string {
  const here = (name: string) => readFileSync(join(import.meta.dirname, name), "utf-8");
  const early = here("early.js").split("\n").map((line) => line.trim()).filter((line) => line && !line.startsWith("//"));
  return here("index.html").replace("EARLY", () => early.join("\n"));
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
      writeFileSync(join(out, "index.html"), page());
      for (const name of HELD) hash.update(readFileSync(join(out, name)));
      const worker = join(out, "sw.js");
      const text = readFileSync(worker, "utf-8").replace("VERSION", hash.digest("hex").slice(0, 12));
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
    modulePreload: false,
    lib: { entry: "src/main.ts", formats: ["iife"], name: "slab", fileName: () => "slab.js", cssFileName: "slab" },
  },
});
