import { fail } from "../units/index.js";
import { readJson } from "./readJson.js";
import type { Result } from "./result.js";
import { SCHEMAS } from "./shapeOf.js";

/**
 * Reads a result of one kind and refuses the others.
 *
 * @param text - The file's text.
 * @param schema - Name of the kind's schema.
 * @throws GaitKineticsError as {@link readJson}; `unreadable-file` where the text holds another kind.
 */
export function readAs<S extends Result["schema"]>(
  text: string,
  schema: S,
): Extract<Result, { readonly schema: S }> {
  const result = readJson(text);
  if (result.schema !== schema) {
    fail(
      "unreadable-file",
      `the text holds ${SCHEMAS[result.schema].called}; ${SCHEMAS[schema].called} is needed`,
      {
        argument: "text",
        values: { given: result.schema, allowed: schema },
      },
    );
  }
  return result as Extract<Result, { readonly schema: S }>;
}
