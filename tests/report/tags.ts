/** The tags of a piece of markup in order, names only: what a parser would build, whatever the text says. */
export function tagsOf(markup: string): readonly string[] {
  return [...markup.matchAll(/<(\/?[a-zA-Z!][\w-]*)/g)].map(([, name]) => name ?? "");
}

/** Whether every element that is opened is closed, in order; elements of HTML that have no end are let pass. */
export function isBalanced(markup: string): boolean {
  const open: string[] = [];
  for (const tag of tagsOf(markup)) {
    if (tag === "!doctype" || tag === "meta") continue;
    if (!tag.startsWith("/")) open.push(tag);
    else if (open.pop() !== tag.slice(1)) return false;
  }
  return open.length === 0;
}

/** The text between tags, with entities read back and no-break spaces as spaces. */
export function textOf(markup: string): string {
  return markup
    .replace(/<(style|script)>.*?<\/\1>/gs, "")
    .replace(/<[^>]*>/g, " ")
    .replace(/&lt;/g, "<")
    .replace(/&gt;/g, ">")
    .replace(/&quot;/g, '"')
    .replace(/&#39;/g, "'")
    .replace(/&amp;/g, "&")
    .replace(/\u00a0/g, " ");
}
