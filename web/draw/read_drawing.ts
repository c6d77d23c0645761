// The engine's SVG read as a tree of slices of its text, without the browser's parser: a drag draws sixty times a second,
// and most of a drawing's text is the text of the frame before. Only shapes and letters are read; whatever else stands in
// the text makes the whole drawing unread. The engine escapes every text of a job; this is the second fence.

export interface Attribute {
  readonly name: string;
  readonly value: string;
}

export interface Drawn {
  readonly tag: string;
  readonly id: string;
  /// The start tag's attributes, as written.
  readonly written: string;
  readonly children: readonly Drawn[];
  /// Text inside, as written; only where there are no children.
  readonly words: string;
  /// All of it, from start tag to end tag.
  readonly whole: string;
  /// The node that shows it; given when it is drawn.
  node?: Element;
}

const kAllowed = new Set("svg title desc g path circle text tspan defs pattern rect line clipPath".split(" "));
const kStartTag = /<([A-Za-z]+)((?:\s+[A-Za-z][\w:-]*="[^"<]*")*)\s*(\/?)>/y;
const kEndTag = /<\/([A-Za-z]+)>/y;
const kId = /(?:^|\s)id="([^"<&]*)"/;
/// What may be a handler, a link, a style or an address that leads out of the drawing: those tags are looked at closely.
const kDoubtful = /\son|href|style="(?!font-kerning:none")|url\((?!#[\w-]+\)")/i;
const kEntities: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

/// Written text as it reads.
export function unescaped(written: string): string {
  if (!written.includes("&")) return written;
  return written.replaceAll(/&(?:#(\d{1,7})|#x([\da-f]{1,6})|(\w+));/gi, (all, decimal, hex, name) => {
    if (name !== undefined) return kEntities[name] ?? all;
    const code = Number.parseInt(decimal ?? hex, decimal === undefined ? 16 : 10);
    return code <= 0x10ffff ? String.fromCodePoint(code) : all;
  });
}

function allowed({ name, value }: Attribute): boolean {
  const low = name.toLowerCase();
  if (low.startsWith("on") || low.endsWith("href")) return false;
  if (low === "style" && value !== "font-kerning:none") return false;
  return low === "id" || low.startsWith("aria-") || !/url\(/i.test(value) || /^url\(#[\w-]+\)$/.test(value);
}

/// Names and values of a start tag in turn, as written.
function pairs(written: string): readonly string[] {
  const found: string[] = [];
  for (let at = 0, to = written.indexOf('="'); to >= 0; to = written.indexOf('="', at)) {
    const end = written.indexOf('"', to + 2);
    found.push(written.slice(at, to).trimStart(), written.slice(to + 2, end));
    at = end + 1;
  }
  return found;
}

function read(found: readonly string[]): readonly Attribute[] {
  const attributes: Attribute[] = [];
  for (let at = 0; at + 1 < found.length; at += 2) {
    attributes.push({ name: found[at] ?? "", value: unescaped(found[at + 1] ?? "") });
  }
  return attributes;
}

/// The attributes of a start tag; those that an escape made not allowed are left out.
export function attributesOf(drawn: Drawn): readonly Attribute[] {
  return read(pairs(drawn.written)).filter(allowed);
}

/// What is to be set, and what is to be taken away, where `old` becomes `next`.
export interface Changes {
  readonly put: readonly Attribute[];
  readonly gone: readonly string[];
}

export function changesBetween(old: Drawn, next: Drawn): Changes {
  const had = pairs(old.written);
  const wanted = pairs(next.written);
  const differing: string[] = [];
  const gone = new Set<string>();
  for (let at = 0; at < had.length; at += 2) if (had[at] !== wanted[at]) gone.add(had[at] ?? "");
  for (let at = 0; at < wanted.length; at += 2) {
    const [name = "", value = ""] = [wanted[at], wanted[at + 1]];
    if (had[at] === name && had[at + 1] === value) continue;
    differing.push(name, value);
    gone.delete(name);
  }
  const put = read(differing);
  const refused = put.filter((attribute) => !allowed(attribute)).map(({ name }) => name);
  return { put: put.filter(allowed), gone: [...gone, ...refused] };
}

interface Begun {
  readonly tag: string;
  readonly written: string;
  readonly start: number;
  readonly inside: number;
  readonly children: Drawn[];
}

function ended(begun: Begun, svg: string, inside: number, end: number): Drawn | undefined {
  const { tag, written, children, start } = begun;
  const words = children.length === 0 ? svg.slice(begun.inside, inside) : "";
  const id = kId.exec(written)?.[1] ?? "";
  return { tag, id, written, children, words, whole: svg.slice(start, end) };
}

function startAt(svg: string, at: number): { begun: Begun; closed: boolean } | undefined {
  kStartTag.lastIndex = at;
  const found = kStartTag.exec(svg);
  if (found === null) return undefined;
  const [all, tag = "", written = "", slash] = found;
  if (!kAllowed.has(tag) || (kDoubtful.test(written) && !read(pairs(written)).every(allowed))) return undefined;
  return { begun: { tag, written, start: at, inside: at + all.length, children: [] }, closed: slash === "/" };
}

/// The drawing as a tree; undefined when the text holds anything but shapes and letters.
export function readDrawing(svg: string): Drawn | undefined {
  const open: Begun[] = [];
  let root: Drawn | undefined;
  let at = 0;
  const put = (drawn: Drawn | undefined): boolean => {
    const around = open.at(-1);
    if (drawn === undefined || (around === undefined && root !== undefined)) return false;
    if (around === undefined) root = drawn;
    else around.children.push(drawn);
    return true;
  };
  while (at < svg.length) {
    const next = svg.indexOf("<", at);
    const end = next < 0 ? svg.length : next;
    const around = open.at(-1);
    // Words stand alone in their element: between elements there is only blank.
    const between = around === undefined || around.children.length > 0 || svg[next + 1] !== "/";
    if (end > at && between && svg.slice(at, end).trim() !== "") return undefined;
    if (next < 0) break;
    if (svg[next + 1] === "/") {
      kEndTag.lastIndex = next;
      const found = kEndTag.exec(svg);
      const begun = open.pop();
      if (found === null || begun === undefined || found[1] !== begun.tag) return undefined;
      at = next + found[0].length;
      if (!put(ended(begun, svg, next, at))) return undefined;
      continue;
    }
    const started = startAt(svg, next);
    if (started === undefined) return undefined;
    at = started.begun.inside;
    if (!started.closed) open.push(started.begun);
    else if (!put(ended(started.begun, svg, at, at))) return undefined;
  }
  return open.length === 0 && root?.tag === "svg" ? root : undefined;
}
