import { escapeMarkup } from "./escapeMarkup.js";

/** Attributes by name; one that is `undefined` is left out. */
export type Attributes = Readonly<Record<string, string | number | undefined>>;

/**
 * Writes one element. Attribute values are escaped; the content is markup and is not.
 *
 * @param name - Of the element.
 * @param attributes - Numbers are cut to two decimals: coordinates of a figure.
 * @param content - Markup inside, in order.
 * @example
 * element("text", { x: 1.234 }, "a") // "<text x=\"1.23\">a</text>"
 */
export function element(name: string, attributes: Attributes, ...content: readonly string[]): string {
  const written = Object.entries(attributes).flatMap(([key, value]) =>
    value === undefined
      ? []
      : [` ${key}="${escapeMarkup(typeof value === "number" ? String(Number(value.toFixed(2))) : value)}"`],
  );
  return `<${name}${written.join("")}>${content.join("")}</${name}>`;
}
