// Where the grips of a handle lie over the drawing, in CSS pixels. Each is at least a thumb wide.
import type { Handle, OpeningHandle, SideHandle } from "../engine/contract";
import type { Grip } from "./drag";

export interface GripPlace {
  readonly grip: Grip;
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /// How far inside the grip the drawn thing lies.
  readonly insetX: number;
  readonly insetY: number;
  /// Along the paper's width, or up and down it.
  readonly lies: "lying" | "standing";
  /// An edge's mark is at the grip's start or its end.
  readonly side: "before" | "after" | "";
}

export const kThumb = 44;
/// A dimension's text on paper, micrometres: its middle so far outside the wall's face (texts stand above their line, read
/// from below or from the right), so long, so high.
const kDimension = { near: 9_100, far: 14_900, along: 66_000, across: 6_600 } as const;

type Box = Pick<Handle, "x" | "y" | "width" | "height">;

function spread(from: number, size: number): readonly [number, number, number] {
  const least = Math.max(size, kThumb);
  const inset = (least - size) / 2;
  return [from - inset, least, inset];
}

function placed(grip: Grip, box: Box, pixels: number, lies: GripPlace["lies"]): GripPlace {
  const [left, width, insetX] = spread(box.x * pixels, box.width * pixels);
  const [top, height, insetY] = spread(box.y * pixels, box.height * pixels);
  return { grip, left, top, width, height, insetX, insetY, lies, side: "" };
}

function edge(body: GripPlace, grip: "from" | "to", handle: OpeningHandle, pixels: number): GripPlace {
  const [ax, ay] = handle.along;
  const far = grip === "to";
  const after = ax + ay > 0 === far;
  const lies = body.lies;
  const centreX = (handle.x + handle.width / 2) * pixels;
  const centreY = (handle.y + handle.height / 2) * pixels;
  const x = after ? (handle.x + handle.width) * pixels : handle.x * pixels - kThumb;
  const y = after ? (handle.y + handle.height) * pixels : handle.y * pixels - kThumb;
  const left = lies === "lying" ? x : centreX - kThumb / 2;
  const top = lies === "lying" ? centreY - kThumb / 2 : y;
  return {
    grip,
    left,
    top,
    width: kThumb,
    height: kThumb,
    insetX: 0,
    insetY: 0,
    lies,
    side: after ? "after" : "before",
  };
}

/// The body of an opening, then its two edges.
export function openingGrips(handle: OpeningHandle, pixels: number): readonly [GripPlace, GripPlace, GripPlace] {
  const lies = handle.along[0] !== 0 ? "lying" : "standing";
  const body = placed("body", handle, pixels, lies);
  return [body, edge(body, "from", handle, pixels), edge(body, "to", handle, pixels)];
}

/// A side is taken by its dimension.
export function sideGrip(handle: SideHandle, pixels: number): GripPlace {
  const [ox, oy] = handle.outward;
  const lies = ox === 0 ? "lying" : "standing";
  const out = ox > 0 || oy > 0 ? kDimension.near : kDimension.far;
  const half = (lies === "lying" ? handle.height : handle.width) / 2 + out;
  const long = Math.min(kDimension.along, lies === "lying" ? handle.width : handle.height);
  const centreX = handle.x + handle.width / 2 + ox * half;
  const centreY = handle.y + handle.height / 2 + oy * half;
  const wide = lies === "lying" ? long : kDimension.across;
  const high = lies === "lying" ? kDimension.across : long;
  return placed("side", { x: centreX - wide / 2, y: centreY - high / 2, width: wide, height: high }, pixels, lies);
}
