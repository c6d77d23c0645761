// A made-up language: every text of the page in marks and half as long again, so that one that stands in no table of texts
// shows, and a place that has no room for longer words too.

export const kOpen = "⟦";
export const kClose = "⟧";

/// Half as long again, in words as long as its own.
function longer(text: string): string {
  const words = text.split(" ");
  return [...words, ...words.slice(0, Math.ceil(words.length / 2))].join(" ");
}

/// The texts that other code reads, not people.
const kNotShown = new Set(["language"]);

/// A table of texts, marked. What makes a text out of values is marked as it makes it.
export function marked<T>(texts: T): T {
  if (typeof texts === "string") return (texts === "" ? texts : `${kOpen}${longer(texts)}${kClose}`) as T;
  if (typeof texts === "function") {
    const make = texts as unknown as (...values: readonly unknown[]) => unknown;
    return ((...values: readonly unknown[]) => marked(make(...values))) as unknown as T;
  }
  if (Array.isArray(texts)) return texts.map(marked) as unknown as T;
  if (typeof texts !== "object" || texts === null) return texts;
  return Object.fromEntries(
    Object.entries(texts).map(([name, text]) => [name, kNotShown.has(name) ? text : marked(text)]),
  ) as T;
}
