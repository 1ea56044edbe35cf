import { element } from "../markup/element.js";
import { escapeMarkup } from "../markup/escapeMarkup.js";
import { typographic } from "../markup/typographic.js";
import { paragraph } from "./paragraph.js";
import { STYLE_SHEET } from "./styleSheet.js";

/** The parts of a page, in order. */
export interface PageParts {
  /** Plain text. */
  readonly title: string;
  /** Plain text over the heading: what kind of page, of what. */
  readonly kind: string;
  /** Plain text. */
  readonly heading: string;
  /** Plain text: the answer in its first sentence, then what belongs to it. */
  readonly answer: string;
  /** Markup of the sections. */
  readonly sections: readonly string[];
  /** Version of the library that computed the numbers. */
  readonly version: string;
}

/** Puts a page together: one self-contained file that loads nothing and runs nothing. */
export function page({ title, kind, heading, answer, sections, version }: PageParts): string {
  const head = [
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<meta name="generator" content="${escapeMarkup(`gait-kinetics ${version}`)}">`,
    // Nothing may load and nothing may run, whatever stands in a file's text.
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">`,
    element("title", {}, escapeMarkup(title)),
    `<style>${STYLE_SHEET}</style>`,
  ].join("\n");
  const [first = "", rest = ""] = firstSentence(answer);
  const header = element(
    "header",
    {},
    element("p", { class: "kind" }, escapeMarkup(kind)),
    element("h1", {}, escapeMarkup(heading)),
    element("p", { class: "answer" }, escapeMarkup(typographic(first))),
    rest === "" ? "" : paragraph(rest),
  );
  const body = element("main", {}, header, "\n", sections.filter((section) => section !== "").join("\n"));
  return `<!doctype html>\n<html lang="en-GB">\n<head>\n${head}\n</head>\n<body>\n${body}\n</body>\n</html>\n`;
}

/** Splits behind the first sentence: a full stop before a capital letter. */
function firstSentence(text: string): readonly string[] {
  const match = /^(.*?[.!?])\s+(?=\p{Lu})(.*)$/su.exec(text);
  return match === null ? [text] : match.slice(1);
}
