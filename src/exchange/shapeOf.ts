import { COMPARISON_SHAPE } from "./comparisonShape.js";
import { RELIABILITY_SHAPE } from "./reliabilityShape.js";
import type { Result } from "./result.js";
import { RUNNERS_SHAPE } from "./runnersShape.js";
import { SESSIONS_SHAPE } from "./sessionsShape.js";
import type { AnyShape } from "./shape.js";
import { TRIAL_SHAPE } from "./trialShape.js";

/** A kind of result: its word in messages, what it is called with an article, and its shape. */
export interface Known {
  readonly word: string;
  readonly called: string;
  readonly shape: AnyShape;
}

/** Results by the name of their schema. */
export const SCHEMAS: Readonly<Record<Result["schema"], Known>> = {
  "gait-kinetics/trial/1": { word: "trial", called: "a trial", shape: TRIAL_SHAPE },
  "gait-kinetics/comparison/1": { word: "comparison", called: "a comparison", shape: COMPARISON_SHAPE },
  "gait-kinetics/reliability/1": { word: "reliability", called: "a reliability", shape: RELIABILITY_SHAPE },
  "gait-kinetics/runners/1": { word: "runners", called: "a comparison of runners", shape: RUNNERS_SHAPE },
  "gait-kinetics/sessions/1": { word: "sessions", called: "a series of sessions", shape: SESSIONS_SHAPE },
};

/** The kind of result that a value says it is; `undefined` where it names no schema that this version knows. */
export function shapeOf(value: unknown): Known | undefined {
  if (typeof value !== "object" || value === null || !Object.hasOwn(value, "schema")) return undefined;
  const { schema } = value as { readonly schema: unknown };
  return typeof schema === "string" && Object.hasOwn(SCHEMAS, schema)
    ? SCHEMAS[schema as Result["schema"]]
    : undefined;
}
