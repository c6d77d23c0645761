import { existsSync } from "node:fs";
import { defineConfig, type Plugin } from "vite";

/// The service worker comes with the build, never with `vite dev`.
async function offline(): Promise<Plugin[]> {
  if (!existsSync(new URL("./offline/precache_plugin.ts", import.meta.url))) return [];
  const { precache } = await import("./offline/precache_plugin");
  return [precache()];
}

export default defineConfig(async () => ({
  base: "./",
  plugins: await offline(),
  build: {
    target: "es2022",
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 700,
  },
  worker: { format: "es" as const },
  server: { fs: { allow: [".."] } },
}));
