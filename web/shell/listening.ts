// Keys, files and the name that belong to the whole page: undo, redo, a job file dropped anywhere, the tab's title.
import { effect } from "@preact/signals";
import { textAt } from "../job/pointer";
import { dropFile } from "../state/job_files";
import { takeInHand } from "../state/seeing";
import { inHand, job } from "../state/signals";
import { redo, undo } from "../state/undoing";
import { words } from "../words/words";

function typing(target: EventTarget | null): boolean {
  return target instanceof HTMLInputElement && target.type !== "checkbox";
}

export function listenForKeys(): void {
  window.addEventListener("keydown", (event) => {
    // What is selected is let go.
    if (event.key === "Escape" && inHand.value !== "" && !typing(event.target)) takeInHand("");
    if (!(event.ctrlKey || event.metaKey) || event.altKey || typing(event.target)) return;
    const key = event.key.toLowerCase();
    if (key !== "z" && key !== "y") return;
    event.preventDefault();
    if (key === "y" || event.shiftKey) redo();
    else undo();
  });
}

export function listenForDrops(): void {
  const mark = (on: boolean): void => void document.body.classList.toggle("dropping", on);
  window.addEventListener("dragover", (event) => {
    event.preventDefault();
    mark(true);
  });
  window.addEventListener("dragleave", (event) => {
    if (event.relatedTarget === null) mark(false);
  });
  window.addEventListener("drop", (event) => {
    event.preventDefault();
    mark(false);
    const file = event.dataTransfer?.files[0];
    if (file !== undefined) void dropFile(file);
  });
}

/// The tab is told from others by its job.
export function nameTheTab(): void {
  effect(() => {
    const name = textAt(job.value, "/name");
    document.title = name === "" ? words.product : `${name} · ${words.product}`;
  });
}
