import { printable } from "./printable.js";

/**
 * Makes text harmless inside Markdown: no character of it begins markup, a link, a table cell or HTML, and addresses are not
 * made into links.
 *
 * @example
 * escapeMarkdown("[a](b) | <i> *c*") // "\\[a\\](b) \\| &lt;i&gt; \\*c\\*"
 */
export function escapeMarkdown(text: string): string {
  return printable(text)
    .trim()
    .replace(/[\\`*_{}[\]#|~!]/g, "\\$&")
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/^([-+]|\d+[.)])(?=\s|$)/, (mark) => `${mark.slice(0, -1)}\\${mark.slice(-1)}`)
    .replace(/^([-=]{3,})/, "\\$1")
    .replace(/(:)(?=\/\/)/g, "&#58;")
    .replace(/www\./gi, (start) => `${start.slice(0, 3)}&#46;`)
    .replace(/@/g, "&#64;");
}
