import { COMPARISON_SHAPE } from "./comparisonShape.js";
import type { AnyShape } from "./shape.js";
import { TRIAL_SHAPE } from "./trialShape.js";

/** A kind of result: its word in messages, and its shape. */
export interface Known {
  readonly word: "trial" | "comparison";
  readonly shape: AnyShape;
}

/** Results by the name of their schema. */
export const SCHEMAS: Readonly<Record<string, Known>> = {
  "gait-kinetics/trial/1": { word: "trial", shape: TRIAL_SHAPE },
  "gait-kinetics/comparison/1": { word: "comparison", shape: COMPARISON_SHAPE },
};

/** The kind of result that a value says it is; `undefined` where it names no schema that this version knows. */
export function shapeOf(value: unknown): Known | undefined {
  if (typeof value !== "object" || value === null || !Object.hasOwn(value, "schema")) return undefined;
  const { schema } = value as { readonly schema: unknown };
  return typeof schema === "string" && Object.hasOwn(SCHEMAS, schema) ? SCHEMAS[schema] : undefined;
}
