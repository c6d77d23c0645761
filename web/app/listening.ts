// Keys and files that belong to the whole page: undo, redo, and a job file dropped anywhere.
import { redo, undo } from "./actions";
import { dropFile } from "./keeping";

function typing(target: EventTarget | null): boolean {
  return target instanceof HTMLInputElement && target.type !== "checkbox";
}

export function listenForKeys(): void {
  window.addEventListener("keydown", (event) => {
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
