import { element } from "../../markup/element.js";

/** Sets pieces of markup beside each other where page or paper is wide enough; those without content are left out. */
export function twoColumns(...pieces: readonly string[]): string {
  const filled = pieces.filter((piece) => piece !== "");
  return filled.length < 2
    ? filled.join("")
    : element("div", { class: "columns" }, ...filled.map((piece) => element("div", {}, piece)));
}
