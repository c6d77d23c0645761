/// Acts when the browser has nothing else to do; not every browser tells when that is.
export function whenIdle(act: () => void): void {
  if (typeof requestIdleCallback === "function") requestIdleCallback(act);
  else setTimeout(act, 0);
}
