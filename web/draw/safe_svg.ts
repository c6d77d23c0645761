// The engine's SVG as a node of the page. The engine escapes every text of a job; this is the second fence.

const kAllowed = new Set([
  "svg",
  "title",
  "desc",
  "g",
  "path",
  "circle",
  "text",
  "tspan",
  "defs",
  "pattern",
  "rect",
  "line",
  "clipPath",
]);
const kSvg = "http://www.w3.org/2000/svg";

function lawful(element: Element): boolean {
  if (element.namespaceURI !== kSvg || !kAllowed.has(element.localName)) return false;
  for (const { name, value } of element.attributes) {
    if (name.toLowerCase().startsWith("on") || name.toLowerCase().endsWith("href")) return false;
    if (name === "style" && value !== "font-kerning:none") return false;
    if (value.includes("url(") && !/^url\(#[\w-]+\)$/.test(value)) return false;
  }
  return true;
}

/// The drawing, or undefined when it is not SVG or holds anything but shapes and letters.
export function drawingFrom(svg: string): SVGSVGElement | undefined {
  const root = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement;
  if (root.localName !== "svg" || !lawful(root)) return undefined;
  for (const element of root.getElementsByTagName("*")) if (!lawful(element)) return undefined;
  return document.importNode(root as unknown as SVGSVGElement, true);
}
