/**
 * Makes text harmless inside HTML and SVG, between tags and inside quoted attributes.
 *
 * @example
 * escapeMarkup("<b> & \"c\"") // "&lt;b&gt; &amp; &quot;c&quot;"
 */
export function escapeMarkup(text: string): string {
  return text
    .replace(/(?![\t\n\r])\p{Cc}/gu, " ")
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;")
    .replace(/'/g, "&#39;");
}
