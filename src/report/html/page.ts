import { element } from "../markup/element.js";
import { escapeMarkup } from "../markup/escapeMarkup.js";
import { typographic } from "../markup/typographic.js";
import { PAGE_SCRIPT, PAGE_SCRIPT_HASH } from "./pageScript.js";
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
  /** Plain text: how sure the answer is; said behind its first sentence. Empty where that says it. */
  readonly uncertainty?: string;
  /** Markup of the sections. */
  readonly sections: readonly string[];
  /** Version of the library that computed the numbers. */
  readonly version: string;
}

/** Only the page's own script may run, named by its hash, and nothing may load, whatever stands in a file's text. */
function policy(): string {
  return `default-src 'none'; style-src 'unsafe-inline'; script-src '${PAGE_SCRIPT_HASH}'; base-uri 'none'; form-action 'none'`;
}

/** Puts a page together: one self-contained file that loads nothing. */
export function page(parts: PageParts): string {
  const { title, kind, heading, answer, uncertainty = "", sections, version } = parts;
  const head = [
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${policy()}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    '<meta name="color-scheme" content="light dark">',
    `<meta name="generator" content="${escapeMarkup(`gait-kinetics ${version}`)}">`,
    element("title", {}, escapeMarkup(title)),
    `<style>${STYLE_SHEET}</style>`,
    `<script>${PAGE_SCRIPT}</script>`,
  ].join("\n");
  const [first, rest] = firstSentence(answer);
  const sure = uncertainty === "" ? "" : ` ${element("span", { class: "sure" }, plain(uncertainty))}`;
  const header = element(
    "header",
    {},
    element("p", { class: "kind" }, escapeMarkup(kind)),
    element("h1", {}, escapeMarkup(heading)),
    element("p", { class: "answer" }, plain(first), sure),
    rest === "" ? "" : paragraph(rest),
    element("p", { class: "hint" }, "Point at a figure, or move the slider under it, to read its values."),
  );
  const body = element("main", {}, header, "\n", sections.filter((section) => section !== "").join("\n"));
  return `<!doctype html>\n<html lang="en-GB">\n<head>\n${head}\n</head>\n<body>\n${body}\n</body>\n</html>\n`;
}

function plain(text: string): string {
  return escapeMarkup(typographic(text));
}

/** Splits behind the first sentence: a full stop before a capital letter. */
function firstSentence(text: string): readonly [string, string] {
  const match = /^(.*?[.!?])\s+(?=\p{Lu})(.*)$/su.exec(text);
  return match === null ? [text, ""] : [match[1] ?? "", match[2] ?? ""];
}
