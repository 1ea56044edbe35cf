import { fail } from "../units/index.js";
import { findProblem } from "./findProblem.js";
import type { Result } from "./result.js";
import { SCHEMAS, shapeOf } from "./shapeOf.js";

/** Deepest nesting of lists and objects that is read; a result reaches 7. */
export const DEEPEST_NESTING = 32;

/**
 * Reads a result (a trial, a comparison, a reliability, runners, sessions) from JSON and checks every field of it by its schema.
 *
 * Units: those of the result: SI, or the unit named beside a metric.
 * Limits: an unknown field, an unknown version of a schema and a number out of the schema's bounds are refused, and so
 * are names that reach an object's prototype. Of a name that stands twice in an object the last counts, as in
 * `JSON.parse`. That the numbers belong together (a mean inside its interval) is not checked.
 * Source: format of this library; JSON by RFC 8259.
 * @param text - The file's text; a byte order mark passes.
 * @returns The result; `schema` tells which it is.
 * @throws GaitKineticsError `unreadable-file`: no JSON, another schema, or a field that the schema does not allow, whose
 * path is in `where`; `wrong-type`: no text.
 * @example
 * readJson(writeJson(trial)).schema // "gait-kinetics/trial/1"
 * readJson('{"schema":"gait-kinetics/trial/2"}') // throws unreadable-file
 */
export function readJson(text: string): Result {
  if (typeof text !== "string") {
    fail("wrong-type", `text is ${typeof text}; a string is needed (decode bytes with TextDecoder)`, {
      argument: "text",
    });
  }
  const plain = text.startsWith("\uFEFF") ? text.slice(1) : text;
  refuseDeepNesting(plain);
  const value = parsed(plain);
  const known = shapeOf(value);
  if (known === undefined) refuseSchema(value);
  const problem = findProblem(value, known.shape, known.word);
  if (problem !== null) {
    fail("unreadable-file", problem.message, { where: problem.where, values: problem.values });
  }
  return value as Result;
}

/** Some engines' parsers call themselves at each level, and end with the stack. */
function refuseDeepNesting(text: string): void {
  let depth = 0;
  for (let at = 0; at < text.length; at++) {
    const mark = text[at];
    if (mark === '"') at = endOfString(text, at);
    else if (mark === "[" || mark === "{") depth++;
    else if (mark === "]" || mark === "}") depth--;
    if (depth > DEEPEST_NESTING) {
      fail(
        "unreadable-file",
        `lists and objects are nested deeper than ${DEEPEST_NESTING} at character ${at + 1}; a result is not`,
        { where: `character ${at + 1}`, values: { allowed: DEEPEST_NESTING } },
      );
    }
  }
}

/** Place of the quote that ends the string begun at a place; the text's end where none does. */
function endOfString(text: string, start: number): number {
  for (let at = start + 1; at < text.length; at++) {
    if (text[at] === "\\") at++;
    else if (text[at] === '"') return at;
  }
  return text.length;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (caught) {
    const reason = caught instanceof Error ? caught.message.replace(/\s+/g, " ").slice(0, 160) : "";
    fail(
      "unreadable-file",
      `the text is no JSON (${reason}); a number that is not there is null, never NaN`,
      {
        argument: "text",
      },
    );
  }
}

function refuseSchema(value: unknown): never {
  const allowed = Object.keys(SCHEMAS);
  const given =
    typeof value === "object" && value !== null && Object.hasOwn(value, "schema")
      ? (value as { readonly schema: unknown }).schema
      : undefined;
  const known = allowed.join(", ");
  if (typeof given !== "string") {
    fail("unreadable-file", `the text names no schema; this version reads ${known}`, {
      where: "schema",
      values: { allowed },
    });
  }
  fail(
    "unreadable-file",
    `the text is of schema ${JSON.stringify(given.slice(0, 60))}; this version reads ${known}`,
    { where: "schema", values: { given: given.slice(0, 60), allowed } },
  );
}
