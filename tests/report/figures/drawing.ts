/** An element of a drawing as a strict reader of XML builds it. */
export interface Drawn {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly Drawn[];
  /** Of this element alone. */
  readonly text: string;
}

const ENTITIES: Readonly<Record<string, string>> = {
  "&lt;": "<",
  "&gt;": ">",
  "&quot;": '"',
  "&#39;": "'",
  "&amp;": "&",
};

/** Reads a drawing; throws on whatever is not well-formed XML of elements, quoted attributes, text and the five entities. */
export function drawingOf(svg: string): Drawn {
  let at = 0;
  const wrong = (what: string): never => {
    throw new Error(`${what} at ${at}: ${svg.slice(at, at + 60)}`);
  };
  const unescaped = (text: string): string => {
    if (/[<]|&(?!lt;|gt;|quot;|#39;|amp;)/.test(text)) wrong(`bare markup in "${text}"`);
    if (/[^\t\n\r\P{Cc}]/u.test(text)) wrong("control character");
    return text.replace(/&(?:lt|gt|quot|#39|amp);/g, (entity) => ENTITIES[entity] ?? "");
  };
  const element = (): Drawn => {
    const open = /^<([a-z][\w-]*)((?: [\w:-]+="[^"<]*")*)>/.exec(svg.slice(at));
    if (open === null) return wrong("no element");
    at += open[0].length;
    const [, tag = "", list = ""] = open;
    const attributes: Record<string, string> = {};
    for (const [, name = "", value = ""] of list.matchAll(/ ([\w:-]+)="([^"]*)"/g)) {
      if (name in attributes) wrong(`attribute ${name} twice`);
      attributes[name] = unescaped(value);
    }
    const children: Drawn[] = [];
    let text = "";
    while (!svg.startsWith("</", at)) {
      const next = svg.indexOf("<", at);
      if (next < 0) wrong("no end");
      text += unescaped(svg.slice(at, next));
      at = next;
      if (!svg.startsWith("</", at)) children.push(element());
    }
    const close = `</${tag}>`;
    if (!svg.startsWith(close, at)) wrong(`no ${close}`);
    at += close.length;
    return { tag, attributes, children, text };
  };
  const root = element();
  if (at !== svg.length) wrong("more after the end");
  return root;
}

/** All elements in it, itself first. */
export function elementsOf(drawn: Drawn): readonly Drawn[] {
  return [drawn, ...drawn.children.flatMap(elementsOf)];
}

/** Its text and that of all in it, no-break spaces as spaces. */
export function wordsOf(drawn: Drawn): string {
  return (drawn.text + drawn.children.map(wordsOf).join("")).replace(/\u00a0/g, " ");
}

/** The marks that can be read. */
export function marksOf(drawn: Drawn): readonly Drawn[] {
  return elementsOf(drawn).filter(({ attributes }) => attributes.class === "mark");
}

/** What a mark reads, with plain spaces. */
export function readOf(mark: Drawn): string {
  return (mark.attributes["data-read"] ?? "").replace(/\u00a0/g, " ");
}

/** An attribute as a number. */
export function numberAt(drawn: Drawn | undefined, name: string): number {
  return Number(drawn?.attributes[name] ?? Number.NaN);
}

/** Places by value of ticks: text elements at a height, or at a horizontal place. */
export function ticksOf(
  drawn: Drawn,
  where: { readonly x?: number; readonly y?: number },
): ReadonlyMap<number, Drawn> {
  const found = new Map<number, Drawn>();
  for (const one of elementsOf(drawn)) {
    if (one.tag !== "text") continue;
    if (where.x !== undefined && numberAt(one, "x") !== where.x) continue;
    if (where.y !== undefined && numberAt(one, "y") !== where.y) continue;
    const text = one.text.replace("−", "-").replace("+", "");
    if (/^-?[\d.]+$/.test(text)) found.set(Number(text), one);
  }
  return found;
}

const NUMERIC =
  /^(?:x|y|x1|x2|y1|y2|cx|cy|r|width|height|font-size|stroke-width|[a-z]+-opacity|font-weight)$/;

/**
 * What is wrong with a drawing as such; empty where nothing is: an image with a title and a description of its own ids, only
 * finite numbers, no size below zero, a title in every mark that says what the mark reads, no word below a readable size.
 */
export function faultsOf(svg: string): readonly string[] {
  const root = drawingOf(svg);
  const all = elementsOf(root);
  const faults: string[] = [];
  const ids = all.flatMap(({ attributes }) => attributes.id ?? []);
  const labels = (root.attributes["aria-labelledby"] ?? "").split(" ");
  if (root.tag !== "svg" || root.attributes.role !== "img") faults.push("no image");
  if (new Set(ids).size !== ids.length) faults.push("an id twice");
  if (labels.length !== 2 || labels.some((label) => !ids.includes(label))) faults.push("no label");
  for (const tag of ["title", "desc"]) {
    const own = root.children.find((child) => child.tag === tag);
    if (own === undefined || own.text.trim().length < 10) faults.push(`no ${tag}`);
  }
  for (const { tag, attributes, children } of all) {
    for (const [name, value] of Object.entries(attributes)) {
      if (
        name === "d"
          ? !/^M[\d.,\sMLVHZCA-]+$/.test(value)
          : NUMERIC.test(name) && !Number.isFinite(Number(value))
      ) {
        faults.push(`${tag} ${name}="${value}"`);
      }
      if ((name === "width" || name === "height" || name === "r") && Number(value) < 0)
        faults.push(`${tag} ${name} below 0`);
    }
    if (tag === "text" && attributes["font-size"] !== undefined && Number(attributes["font-size"]) < 12)
      faults.push("tiny text");
    if (attributes.class === "mark") {
      const title = children.find((child) => child.tag === "title");
      if (title === undefined || title.text !== attributes["data-read"])
        faults.push("a mark without its title");
    }
    if (tag === "script" || Object.keys(attributes).some((name) => name.startsWith("on")))
      faults.push("something that runs");
  }
  if (/NaN|Infinity|undefined|null|\[object/.test(svg)) faults.push("a word that no reader should see");
  return faults;
}
