// Unit tests run in Node; those in tests/browser belong to Playwright.
import { defineConfig } from "vitest/config";

export default defineConfig({ test: { include: ["tests/unit/**/*.test.ts"] } });
