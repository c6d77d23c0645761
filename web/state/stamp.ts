// Who entered something, and when: an id of its own for each entry of a log.

export function stamp(by: string): { readonly id: string; readonly when: string; readonly by: string } {
  const dice = [...crypto.getRandomValues(new Uint32Array(2))].map((part) => part.toString(36)).join("");
  const when = new Date();
  const two = (part: number): string => String(part).padStart(2, "0");
  const day = `${when.getFullYear()}-${two(when.getMonth() + 1)}-${two(when.getDate())}`;
  return { id: dice, when: `${day} ${two(when.getHours())}:${two(when.getMinutes())}`, by };
}
