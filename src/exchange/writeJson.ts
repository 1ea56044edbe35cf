import { fail } from "../units/index.js";
import { findProblem } from "./findProblem.js";
import type { Result } from "./result.js";
import { SCHEMAS, shapeOf } from "./shapeOf.js";
import { significant } from "./significant.js";

/**
 * Writes a result (a trial, a comparison, a reliability, runners, sessions) as JSON in one line, which {@link readJson} and
 * the JSON Schemas of the package (`gait-kinetics/schemas/trial-1.schema.json` and its like) take.
 *
 * Formula: each number rounded to 12 significant digits, about which engines agree; written again, what was read back
 * gives the same bytes.
 * Units: those of the result: SI, or the unit named beside a metric.
 * Limits: a result that its schema would refuse is not written. −0 becomes 0.
 * Source: format of this library; JSON by RFC 8259, schemas by JSON Schema draft 2020-12.
 * @param value - From `analyseTrial`, `compareTrials` and its like, or read back.
 * @returns The text, without a line end.
 * @throws GaitKineticsError `wrong-type`, `not-finite`, `out-of-range`, `missing-value`, `unreadable-file`: the value is
 * no result, or one of its fields is not what the schema allows; `where` names it.
 * @example
 * writeJson(trial).startsWith('{"schema":"gait-kinetics/trial/1","settings":{') // true
 */
export function writeJson(value: Result): string {
  const known = shapeOf(value);
  if (known === undefined) {
    fail("wrong-type", `value is no result; its schema must be ${Object.keys(SCHEMAS).join(" or ")}`, {
      argument: "value",
      values: { allowed: Object.keys(SCHEMAS) },
    });
  }
  const problem = findProblem(value, known.shape, known.word);
  if (problem !== null) {
    const { code, message, where, values } = problem;
    fail(code, message, { argument: "value", where, values });
  }
  return JSON.stringify(value, (_, entry: unknown) =>
    typeof entry === "number" ? significant(entry) : entry,
  );
}
