// The screen kept awake while the wall view stands open; the truth about it, for it may fail without a word.
import { signal } from "@preact/signals";

export const awake = signal(false);

let wanted = false;
let lock: WakeLockSentinel | undefined;

async function take(): Promise<void> {
  if (!wanted || lock !== undefined || document.visibilityState !== "visible" || !("wakeLock" in navigator)) return;
  try {
    const taken = await navigator.wakeLock.request("screen");
    if (!wanted) return void taken.release();
    lock = taken;
    awake.value = true;
    taken.addEventListener("release", () => {
      lock = undefined;
      awake.value = false;
    });
  } catch {
    awake.value = false; // battery saver, an old browser: the view says that the screen may sleep
  }
}

const onReturn = (): void => void take();

export function keepAwake(): void {
  wanted = true;
  document.addEventListener("visibilitychange", onReturn);
  void take();
}

export function letSleep(): void {
  wanted = false;
  document.removeEventListener("visibilitychange", onReturn);
  void lock?.release();
  lock = undefined;
  awake.value = false;
}
