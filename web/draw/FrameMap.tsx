// The whole of a drawing that its frame shows a part of, in little and without lettering: where the frame stands, and a
// press moves it there.
import { useComputed, useSignal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import type { DrawingHead } from "../engine/contract";
import type { Size, Spot } from "./frame";
import { held } from "./holding";

/// The map's own size at most, CSS pixels.
const kMost: Size = { width: 64, height: 40 };

/// The engine's picture without letters: those would be too small to read.
function withoutLettering(svg: string): string {
  return svg.replaceAll(/<text[^>]*>[^<]*<\/text>\n?/g, "");
}

export function FrameMap(props: {
  readonly svg: string;
  readonly head: DrawingHead;
  /// The drawing as it stands, CSS pixels.
  readonly paper: Size;
  readonly frame: Size;
  readonly moved: Spot;
  /// Where the figures begin, as a share of the drawing.
  readonly corner: Spot;
  readonly go: (share: Spot) => void;
}) {
  const { head, paper, frame, moved, corner } = props;
  const address = useSignal("");
  const moving = useComputed(() => held.value !== undefined);
  // While a hand moves something the map waits.
  useEffect(() => {
    if (moving.value) return;
    const made = URL.createObjectURL(new Blob([withoutLettering(props.svg)], { type: "image/svg+xml" }));
    address.value = made;
    return () => URL.revokeObjectURL(made);
  }, [props.svg, moving.value, address]);
  const scale = Math.min(kMost.width / head.width, kMost.height / head.height);
  const own = { width: head.width * scale, height: head.height * scale };
  const part = (at: number, whole: number, size: number): number => (whole === 0 ? 0 : (at / whole) * size);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: arrow keys move the frame itself
    // biome-ignore lint/a11y/useKeyWithClickEvents: as above
    <div
      class="map"
      aria-hidden="true"
      style={{ "--width": `${own.width}px`, "--height": `${own.height}px` }}
      onClick={(event) => {
        const box = event.currentTarget.getBoundingClientRect();
        props.go({ x: (event.clientX - box.left) / box.width, y: (event.clientY - box.top) / box.height });
      }}
    >
      {address.value === "" ? null : <img src={address.value} alt="" draggable={false} />}
      <i
        class="map-part"
        style={{
          left: `${part(moved.x, paper.width, own.width)}px`,
          top: `${part(moved.y, paper.height, own.height)}px`,
          width: `${part(Math.min(frame.width, paper.width), paper.width, own.width)}px`,
          height: `${part(Math.min(frame.height, paper.height), paper.height, own.height)}px`,
        }}
      />
      <i class="map-corner" style={{ left: `${corner.x * own.width}px`, top: `${corner.y * own.height}px` }} />
    </div>
  );
}
