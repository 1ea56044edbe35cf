import { element } from "../markup/element.js";
import { escapeMarkup } from "../markup/escapeMarkup.js";
import { typographic } from "../markup/typographic.js";
import type { Fact } from "../wording/fact.js";

/** Writes facts as a list of terms and descriptions. */
export function factList(facts: readonly Fact[]): string {
  return element(
    "dl",
    {},
    ...facts.map(
      ({ label, text }) =>
        element("dt", {}, escapeMarkup(label)) + element("dd", {}, escapeMarkup(typographic(text))),
    ),
  );
}
