// The time of day, for what is due: it runs only while something shows it.
import { signal } from "@preact/signals";

const kTick = 5_000; // milliseconds

export const now = signal(Date.now());

/// Starts it; what is handed back stops it.
export function runClock(): () => void {
  now.value = Date.now();
  const clock = setInterval(() => (now.value = Date.now()), kTick);
  return () => clearInterval(clock);
}

/// The device's day, "2026-05-09".
export function dayNow(): string {
  const at = new Date();
  const two = (part: number): string => String(part).padStart(2, "0");
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}

/// "2026-05-09 14:20" in milliseconds; undefined for any other text.
export function timeOf(when: string): number | undefined {
  const parts = /^(\d{4})-(\d{2})-(\d{2}) (\d{2}):(\d{2})$/.exec(when);
  if (parts === null) return undefined;
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0] = parts.slice(1).map(Number);
  return new Date(year, month - 1, day, hour, minute).getTime();
}
