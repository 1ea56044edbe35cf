import type {
  RunnersComparison,
  RunnersComponent,
  RunnersCondition,
  RunnersMetric,
  RunnersValues,
} from "../compare/index.js";
import {
  ABSENCES,
  CAUTIONS,
  COUNT,
  FILTER,
  FROM_ZERO,
  FROM_ZERO_OR_NULL,
  INTERVAL,
  INTERVAL_OR_NULL,
  NUMBER,
  NUMBER_OR_NULL,
  SHARE,
  TEXT,
  TEXTS,
  TRUTH,
} from "./commonShapes.js";
import { COMPONENT, COMPONENT_READING, OVERALL_READING, SMALLEST_CHANGE } from "./compareShapes.js";
import type { FieldsShape } from "./shape.js";

const CONDITION: FieldsShape<RunnersCondition> = {
  kind: "fields",
  always: { runners: COUNT, mean: NUMBER, sd: FROM_ZERO_OR_NULL },
  maybe: {},
};

const VALUES: FieldsShape<RunnersValues>["always"] = {
  baseline: CONDITION,
  changed: CONDITION,
  difference: NUMBER,
  percent: NUMBER_OR_NULL,
  interval: INTERVAL,
  readingInterval: INTERVAL,
  degreesOfFreedom: FROM_ZERO,
  betweenRunners: FROM_ZERO,
  betweenTrials: FROM_ZERO_OR_NULL,
  margin: SMALLEST_CHANGE,
  noRiseBeyondMargin: { kind: "or null", value: TRUTH },
};

/** The fields of {@link RunnersValues} and more. */
function withValues<const T extends object>(more: T): FieldsShape<RunnersValues>["always"] & T {
  return { ...VALUES, ...more };
}

const METRIC: FieldsShape<RunnersMetric> = {
  kind: "fields",
  always: /* @__PURE__ */ withValues({
    id: TEXT,
    unit: TEXT,
    effectSize: NUMBER_OR_NULL,
    runners: {
      kind: "list",
      of: {
        kind: "fields",
        always: { runner: TEXT, difference: NUMBER, interval: INTERVAL_OR_NULL },
        maybe: {},
      },
    },
  }),
  maybe: { perKilometre: { kind: "fields", always: VALUES, maybe: {} } },
};

const RUNNERS_COMPONENT: FieldsShape<RunnersComponent> = {
  kind: "fields",
  always: {
    component: COMPONENT,
    metric: { kind: "or null", value: TEXT },
    reading: { kind: "or null", value: COMPONENT_READING },
    perKilometre: { kind: "or null", value: COMPONENT_READING },
    sentence: TEXT,
  },
  maybe: {},
};

/** What JSON of a {@link RunnersComparison} looks like; `schemas/runners-1.schema.json` says the same. */
export const RUNNERS_SHAPE: FieldsShape<RunnersComparison> = {
  kind: "fields",
  always: {
    schema: { kind: "words", words: { "gait-kinetics/runners/1": true } },
    settings: {
      kind: "fields",
      always: {
        version: TEXT,
        design: { kind: "words", words: { paired: true, independent: true } },
        shownLevel: SHARE,
        readingLevel: SHARE,
        similarMargin: FROM_ZERO,
        minimumRunners: COUNT,
        speedTolerance: FROM_ZERO,
        interval: TEXT,
        filter: FILTER,
      },
      maybe: {},
    },
    runners: { kind: "fields", always: { baseline: COUNT, changed: COUNT }, maybe: {} },
    metrics: { kind: "list", of: METRIC },
    notCompared: ABSENCES,
    components: { kind: "list", of: RUNNERS_COMPONENT },
    overall: {
      kind: "fields",
      always: {
        reading: OVERALL_READING,
        sentence: TEXT,
        lower: { kind: "list", of: COMPONENT },
        higher: { kind: "list", of: COMPONENT },
        unsettled: { kind: "list", of: COMPONENT },
      },
      maybe: { toSettle: TEXTS },
    },
    cautions: CAUTIONS,
  },
  maybe: {},
};
