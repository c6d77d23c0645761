// The page in real Chromium, from the built folder: three files at a time, each in a browser of its own; the tests wait
// for a third of their time. Those of one file come one after another. Without --disable-gpu every page is painted by a
// graphics card that is made in software: a fifth of all processor time; units in space are drawn by it all the same.
import { defineConfig } from "@playwright/test";

const kPort = Number(process.env["PAGE_PORT"] ?? 8491);
/// Another built folder than web/dist.
const kBuilt = process.env["PAGE_BUILT"] ?? "dist";
const kChromium = process.env["CHROMIUM"] ?? "/usr/bin/chromium";

export default defineConfig({
  testDir: "tests/browser",
  workers: 3,
  timeout: 90_000,
  expect: { timeout: 20_000 }, // other builds may run beside
  forbidOnly: true,
  retries: 1, // what passes only then is told by ./check as unsteady, and is to be mended
  reporter: [["list"]],
  use: {
    baseURL: `http://127.0.0.1:${kPort}/`,
    viewport: { width: 1280, height: 800 },
    serviceWorkers: "block",
    launchOptions: {
      executablePath: kChromium,
      args: [
        "--no-sandbox",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--disable-gpu",
        "--enable-unsafe-swiftshader",
      ],
    },
  },
  webServer: {
    command: `node tools/serve_dist.mjs ${kPort} ${kBuilt}`,
    url: `http://127.0.0.1:${kPort}/`,
    reuseExistingServer: false,
  },
});
