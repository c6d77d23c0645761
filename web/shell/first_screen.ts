// What stands on the page before its script runs: the first screen's sentence and drawing, written into the HTML when the
// page is built (tools/first_screen_plugin.ts). The script takes it over and puts it away in the same breath.

let drawing = "";

const screen = (): HTMLElement | null => document.getElementById("first");

/// Keeps the drawing that the page came with.
export function takeFirstScreen(): void {
  drawing = screen()?.querySelector("svg")?.outerHTML ?? "";
}

/// The drawing that the page came with; "" where there is none.
export function firstDrawing(): string {
  return drawing;
}

/// Not longer than this is a painting waited for, milliseconds: a browser that tells none keeps nobody waiting.
const kPatience = 400;

/// When the first screen has been painted; at once where none is to be seen. What is taken away before the browser has
/// shown it would count, and feel, as if it had never stood there.
export function firstScreenPainted(): Promise<void> {
  const stands = screen()?.checkVisibility?.() === true && document.visibilityState === "visible";
  if (!stands || !PerformanceObserver.supportedEntryTypes.includes("paint")) return Promise.resolve();
  return new Promise((done) => {
    setTimeout(done, kPatience);
    new PerformanceObserver((list) => {
      if (list.getEntriesByName("first-contentful-paint").length > 0) done();
    }).observe({ type: "paint", buffered: true });
  });
}

export function putFirstScreenAway(): void {
  screen()?.remove();
}
