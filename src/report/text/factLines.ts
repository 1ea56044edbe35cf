import type { Fact } from "../wording/fact.js";
import { wrap } from "./wrap.js";

/** Columns that the labels of facts take. */
const LABELS = 19;

/** Sets a fact behind its label; a long label pushes its first line alone to the right. */
export function factLines({ label, text }: Fact): string[] {
  return wrap(text, label.length < LABELS ? label.padEnd(LABELS) : `${label}  `, " ".repeat(LABELS));
}
