// Light or dark paper: what the device asks for, until the user says otherwise on this device.
import { effect, signal } from "@preact/signals";

export type Look = "light" | "dark";

const kKey = "stringcourse-look";

function asked(): Look {
  return matchMedia("(prefers-color-scheme: dark)").matches ? "dark" : "light";
}

function chosen(): Look | undefined {
  try {
    const kept = localStorage.getItem(kKey);
    return kept === "light" || kept === "dark" ? kept : undefined;
  } catch {
    return undefined;
  }
}

export const look = signal<Look>("light");

/// Starts to follow the device and writes the look to the page.
export function followLook(): void {
  look.value = chosen() ?? asked();
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => {
    if (chosen() === undefined) look.value = asked();
  });
  effect(() => {
    document.documentElement.setAttribute("data-look", look.value);
  });
}

/// The user's own choice, kept on the device where that is possible.
export function chooseLook(next: Look): void {
  look.value = next;
  try {
    localStorage.setItem(kKey, next);
  } catch {
    // A browser without a store: the choice lasts as long as the page.
  }
}
