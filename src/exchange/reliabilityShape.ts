import type { MetricReliability, Reliability } from "../compare/index.js";
import {
  ABSENCES,
  CAUTIONS,
  COUNT,
  FROM_ZERO,
  INTERVAL,
  INTERVAL_OR_NULL,
  NUMBER,
  NUMBER_OR_NULL,
  SHARE,
  TEXT,
} from "./commonShapes.js";
import type { FieldsShape, Shape } from "./shape.js";

const LIMITS: Shape<MetricReliability["limitsOfAgreement"]> = {
  kind: "or null",
  value: {
    kind: "fields",
    always: {
      bias: NUMBER,
      biasInterval: INTERVAL,
      low: NUMBER,
      lowInterval: INTERVAL,
      high: NUMBER,
      highInterval: INTERVAL,
    },
    maybe: {},
  },
};

/** What JSON of a {@link Reliability} looks like; `schemas/reliability-1.schema.json` says the same. */
export const RELIABILITY_SHAPE: FieldsShape<Reliability> = {
  kind: "fields",
  always: {
    schema: { kind: "words", words: { "gait-kinetics/reliability/1": true } },
    settings: { kind: "fields", always: { version: TEXT, level: SHARE, design: TEXT }, maybe: {} },
    metrics: {
      kind: "list",
      of: {
        kind: "fields",
        always: {
          id: TEXT,
          unit: TEXT,
          runners: COUNT,
          trials: COUNT,
          mean: NUMBER,
          correlations: {
            kind: "list",
            of: {
              kind: "fields",
              always: { form: TEXT, alsoCalled: TEXT, value: NUMBER, interval: INTERVAL },
              maybe: {},
            },
          },
          standardError: {
            kind: "fields",
            always: { agreement: FROM_ZERO, consistency: FROM_ZERO },
            maybe: {},
          },
          smallestDetectableChange: {
            kind: "fields",
            always: { value: FROM_ZERO, percent: NUMBER_OR_NULL, interval: INTERVAL_OR_NULL },
            maybe: {},
          },
          limitsOfAgreement: LIMITS,
        },
        maybe: {},
      },
    },
    notCompared: ABSENCES,
    smallestDetectableChange: {
      kind: "named",
      of: {
        kind: "fields",
        always: { value: FROM_ZERO, unit: TEXT, source: TEXT },
        maybe: { degreesOfFreedom: { kind: "number", from: 1 } },
      },
    },
    cautions: CAUTIONS,
  },
  maybe: {},
};
