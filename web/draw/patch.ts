// Puts a drawing into its host. Two drawings of a drag differ in few groups: those are changed, the rest keeps its nodes
// and is not even looked at, because its text is the same.
import { pairsOf } from "./pairing";
import { type Attribute, attributesOf, changesBetween, type Drawn, readDrawing, unescaped } from "./read_drawing";

const kSvg = "http://www.w3.org/2000/svg";
const kXml = "http://www.w3.org/XML/1998/namespace";
/// What each host shows now.
const kShown = new WeakMap<Element, Drawn>();

/// The one style that a drawing has stands in look/drawing.css: the page's policy lets no text style anything.
function setAttribute(node: Element, { name, value }: Attribute): void {
  if (name === "xmlns" || name === "style") return;
  if (name.startsWith("xml:")) node.setAttributeNS(kXml, name, value);
  else node.setAttribute(name, value);
}

function made(drawn: Drawn): Element {
  const node = document.createElementNS(kSvg, drawn.tag);
  for (const attribute of attributesOf(drawn)) setAttribute(node, attribute);
  if (drawn.children.length === 0) node.textContent = unescaped(drawn.words);
  else node.append(...drawn.children.map(made));
  drawn.node = node;
  return node;
}

function changeAttributes(node: Element, old: Drawn, next: Drawn): void {
  const { put, gone } = changesBetween(old, next);
  for (const attribute of put) setAttribute(node, attribute);
  for (const name of gone) node.removeAttribute(name);
}

function changeChildren(node: Element, old: Drawn, next: Drawn): void {
  const matched = pairsOf(old.children, next.children);
  // What is gone goes first: what stays then mostly stands in its place already.
  const kept = new Set(matched);
  for (const part of old.children) if (!kept.has(part)) part.node?.remove();
  let place = node.firstElementChild;
  next.children.forEach((child, at) => {
    const same = matched[at];
    const put = same?.node === undefined ? made(child) : changed(same.node, same, child);
    if (put === place) place = place.nextElementSibling;
    else node.insertBefore(put, place);
  });
}

/// Keeps what the nodes of an unchanged part are for the next comparison.
function handOver(old: Drawn, next: Drawn): void {
  if (old.node !== undefined) next.node = old.node;
  next.children.forEach((child, at) => {
    const from = old.children[at];
    if (from !== undefined) handOver(from, child);
  });
}

/// Makes the node of `old` show `next`.
function changed(node: Element, old: Drawn, next: Drawn): Element {
  if (old.whole === next.whole) {
    handOver(old, next);
    return node;
  }
  next.node = node;
  if (old.written !== next.written) changeAttributes(node, old, next);
  const leaf = old.children.length === 0 || next.children.length === 0;
  if (!leaf) changeChildren(node, old, next);
  else if (next.children.length > 0) node.replaceChildren(...next.children.map(made));
  else if (old.words !== next.words || old.children.length > 0) node.textContent = unescaped(next.words);
  return node;
}

/// True when the drawing stands in the host; false when it was refused and the host is left as it was.
export function patched(host: Element, svg: string): boolean {
  const next = readDrawing(svg);
  if (next === undefined) return false;
  const old = kShown.get(host);
  const node = host.firstElementChild;
  if (old?.node !== undefined && old.node === node && old.id === next.id) changed(node, old, next);
  else host.replaceChildren(made(next));
  kShown.set(host, next);
  return true;
}
