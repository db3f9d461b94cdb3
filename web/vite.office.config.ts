import { readdirSync } from "node:fs";
import { join } from "node:path";
import { defineConfig } from "vite";

// One script for each screen that moves: office/NAME.ts becomes NAME.js, what two of them share a
// file of its own in `parts/`.
const names = readdirSync(join(import.meta.dirname, "office"))
  .filter((one) => one.endsWith(".ts") && !one.endsWith(".d.ts"))
  .map((one) => one.slice(0, -3));

export default defineConfig({
  publicDir: false,
  build: {
    outDir: "../src/farwall/web/static/built",
    emptyOutDir: true,
    target: "es2022",
    modulePreload: false,
    rolldownOptions: {
      input: Object.fromEntries(names.map((name) => [name, join(import.meta.dirname, "office", `${name}.ts`)])),
      output: { entryFileNames: "[name].js", chunkFileNames: "parts-[name]-[hash].js" },
    },
  },
});
