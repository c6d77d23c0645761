// What the brief module can answer.
import type { Request } from "./contract";

const kBeyond = ["merge", "course", "solids", "piece", "set", "sheets", "offers"] as const;
/// Other drawings stand only where something was read.
const kDrawn = /^(plan-course|elevation)-/;

/// Without a search, and nothing that is told of a layout later.
export function isBrief(request: Request): boolean {
  if (request.lengths !== undefined) return true;
  const further = kBeyond.some((one) => request[one] !== undefined && request[one] !== false);
  return request.budget === 0 && !further && (request.drawings ?? []).every((name) => kDrawn.test(name));
}
