import type {
  ComponentName,
  ComponentReading,
  OverallReading,
  SmallestDetectableChange,
} from "../compare/index.js";
import { FROM_ZERO, TEXT } from "./commonShapes.js";
import type { FieldsShape, WordsShape } from "./shape.js";

/** A change or margin with its source. */
export const SMALLEST_CHANGE: FieldsShape<SmallestDetectableChange> = {
  kind: "fields",
  always: { value: FROM_ZERO, source: TEXT },
  maybe: {},
};

/** What is said of one component. */
export const COMPONENT_READING: WordsShape<ComponentReading> = {
  kind: "words",
  words: { lower: true, higher: true, similar: true, unsettled: true },
};

/** What is said of the load as a whole. */
export const OVERALL_READING: WordsShape<OverallReading> = {
  kind: "words",
  words: { shifted: true, reduced: true, raised: true, unsettled: true, "no clear change": true },
};

/** The components. */
export const COMPONENT: WordsShape<ComponentName> = {
  kind: "words",
  words: { vertical: true, anteroposterior: true, mediolateral: true },
};

/** Which way is more load. */
export const MORE_LOAD: WordsShape<"higher" | "lower" | "none"> = {
  kind: "words",
  words: { higher: true, lower: true, none: true },
};
