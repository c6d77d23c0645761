// Puts a drawing into its host. Two drawings of a drag differ in few groups: those are exchanged, the rest stays.
import { drawingFrom } from "./safe_svg";

function sameAttributes(a: Element, b: Element): boolean {
  if (a.attributes.length !== b.attributes.length) return false;
  for (const { name, value } of b.attributes) if (a.getAttribute(name) !== value) return false;
  return true;
}

function copyAttributes(to: Element, from: Element): void {
  for (const { name } of [...to.attributes]) if (!from.hasAttribute(name)) to.removeAttribute(name);
  for (const { name, value } of from.attributes) if (to.getAttribute(name) !== value) to.setAttribute(name, value);
}

function alike(a: Element, b: Element): boolean {
  return a.localName === b.localName && a.id === b.id;
}

/// Makes `old` equal to `next`, keeping nodes that are equal. `next` is used up.
function merge(old: Element, next: Element): void {
  if (!sameAttributes(old, next)) copyAttributes(old, next);
  const olds = [...old.children];
  const nexts = [...next.children];
  if (nexts.length === 0 || olds.length === 0) {
    if (old.textContent !== next.textContent || olds.length !== nexts.length) old.replaceChildren(...next.childNodes);
    return;
  }
  nexts.forEach((child, index) => {
    const before = olds[index];
    if (before === undefined) old.append(child);
    else if (before.isEqualNode(child)) return;
    else if (alike(before, child)) merge(before, child);
    else before.replaceWith(child);
  });
  for (const extra of olds.slice(nexts.length)) extra.remove();
}

/// True when the drawing stands in the host; false when it was refused and the host is left as it was.
export function patched(host: Element, svg: string): boolean {
  const next = drawingFrom(svg);
  if (next === undefined) return false;
  const old = host.firstElementChild;
  if (old !== null && old.localName === "svg" && old.id === next.id) merge(old, next);
  else host.replaceChildren(next);
  return true;
}
