import { defineConfig } from "vite";
import { precache } from "./offline/precache_plugin.ts";
import { exampleQuestionsPlugin, firstScreenPlugin } from "./tools/first_screen_plugin.ts";

// Paths are relative, so that the build works in any folder of any static host.
export default defineConfig({
  base: "./",
  plugins: [firstScreenPlugin(), exampleQuestionsPlugin(), precache()],
  build: {
    target: "es2022",
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 700,
  },
  worker: { format: "es" },
  server: { fs: { allow: [".."] } },
});
