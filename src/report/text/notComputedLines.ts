import type { NotComputed } from "../../trial/index.js";
import { capitalised } from "../wording/capitalised.js";
import { reasonGroups } from "../wording/reasonGroups.js";
import { wrap } from "./wrap.js";

/** Lists what is not there under its heading, a reason an entry; nothing where all is. */
export function notComputedLines(
  heading: string,
  notComputed: readonly NotComputed[],
  nameOf: (id: string) => string,
): string[] {
  if (notComputed.length === 0) return [];
  const groups = reasonGroups(notComputed, nameOf);
  return [
    heading,
    ...groups.flatMap(({ reason, names }) => wrap(capitalised(`${names.join(", ")}: ${reason}`), "- ")),
    "",
  ];
}
