import { element } from "../markup/element.js";

/** Keeps off paper what a figure beside it says in numbers too. */
export function onScreen(content: string): string {
  return content === "" ? "" : element("div", { class: "screen" }, content);
}
