// The engine's SVG in the page. Groups that did not change keep their nodes, so a frame of a drag touches little.
import { useLayoutEffect, useRef } from "preact/hooks";
import { words } from "../words/words";
import { patched } from "./patch";

/// A drawing that is not the first to be looked at gives the first one way when the page starts.
export function Ink(props: { readonly svg: string; readonly chosen: string | undefined; readonly later: boolean }) {
  const host = useRef<HTMLDivElement>(null);
  const shown = useRef("");
  useLayoutEffect(() => {
    const element = host.current;
    if (element === null || shown.current === props.svg) return;
    const draw = (): void => {
      shown.current = props.svg;
      if (!patched(element, props.svg)) element.textContent = words.trouble.svgRefused;
    };
    if (!props.later || shown.current !== "") return draw();
    const soon = setTimeout(draw, 30);
    return () => clearTimeout(soon);
  }, [props.svg, props.later]);
  useLayoutEffect(() => {
    const element = host.current;
    if (element === null) return;
    for (const group of element.querySelectorAll(".shown")) group.classList.remove("shown");
    const { chosen } = props;
    if (chosen === undefined) return;
    for (const title of element.querySelectorAll("g > title")) {
      if (title.textContent === chosen) title.parentElement?.classList.add("shown");
    }
  }, [props.chosen, props.svg]);
  return <div class="ink" ref={host} />;
}
