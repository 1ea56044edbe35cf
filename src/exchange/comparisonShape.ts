import type {
  Alternative,
  ComparedTrial,
  ComparedValues,
  Comparison,
  ComponentName,
  Drift,
  OverallComparison,
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
  SPREAD,
  TEXT,
  TEXTS,
  TRUTH,
} from "./commonShapes.js";
import {
  COMPONENT,
  COMPONENT_READING,
  MORE_LOAD,
  OVERALL_READING,
  SMALLEST_CHANGE,
} from "./compareShapes.js";
import type { FieldsShape, Shape } from "./shape.js";

const VALUES: FieldsShape<ComparedValues> = {
  kind: "fields",
  always: {
    baseline: SPREAD,
    changed: SPREAD,
    difference: NUMBER,
    percent: NUMBER_OR_NULL,
    interval: INTERVAL,
    readingInterval: INTERVAL,
    smallestDetectableChange: SMALLEST_CHANGE,
    margin: SMALLEST_CHANGE,
    noRiseBeyondMargin: { kind: "or null", value: TRUTH },
  },
  maybe: {},
};

/** The fields of {@link ComparedValues} and more. */
function withValues<const T extends object>(more: T): FieldsShape<ComparedValues>["always"] & T {
  return { ...VALUES.always, ...more };
}

const DRIFT: Shape<Drift> = {
  kind: "fields",
  always: { change: NUMBER, interval: INTERVAL_OR_NULL, counts: TRUTH },
  maybe: {},
};

const COMPONENTS: Shape<readonly ComponentName[]> = { kind: "list", of: COMPONENT };

const TRIAL: Shape<ComparedTrial> = {
  kind: "fields",
  always: {
    strides: COUNT,
    effectiveStrides: FROM_ZERO,
    speed: FROM_ZERO_OR_NULL,
    mass: NUMBER_OR_NULL,
    massByForce: NUMBER_OR_NULL,
    threshold: NUMBER,
  },
  maybe: {},
};

const BY_READING: Shape<OverallComparison["perKilometre"]> = {
  kind: "fields",
  always: { lower: COMPONENTS, higher: COMPONENTS, unsettled: COMPONENTS },
  maybe: {},
};

const ALTERNATIVE: Shape<Alternative> = {
  kind: "fields",
  always: {
    id: TEXT,
    name: TEXT,
    sentence: TEXT,
    effects: {
      kind: "list",
      of: {
        kind: "fields",
        always: {
          metric: { kind: "or null", value: TEXT },
          quantity: TEXT,
          kind: { kind: "words", words: { load: true, cost: true, motion: true } },
          direction: { kind: "words", words: { lower: true, higher: true, unclear: true } },
          finding: TEXT,
          source: TEXT,
        },
        maybe: {
          estimate: {
            kind: "fields",
            always: { unit: TEXT, from: NUMBER, low: NUMBER, high: NUMBER },
            maybe: {},
          },
        },
      },
    },
    sources: TEXTS,
  },
  maybe: {},
};

/** What JSON of a {@link Comparison} looks like; `schemas/comparison-1.schema.json` says the same. */
export const COMPARISON_SHAPE: FieldsShape<Comparison> = {
  kind: "fields",
  always: {
    schema: { kind: "words", words: { "gait-kinetics/comparison/1": true } },
    settings: {
      kind: "fields",
      always: {
        version: TEXT,
        design: {
          kind: "fields",
          always: {
            kind: {
              kind: "words",
              words: { "one trial each": true, "baseline again": true, "several trials": true },
            },
            baselineTrials: COUNT,
            changedTrials: COUNT,
            variation: TEXT,
          },
          maybe: {},
        },
        method: { kind: "words", words: { student: true, bootstrap: true } },
        bootstrap: { kind: "fields", always: { resamples: COUNT, seed: COUNT }, maybe: {} },
        shownLevel: SHARE,
        readingLevel: SHARE,
        interval: TEXT,
        readingCorrelation: { kind: "fields", always: { correctBias: TRUTH, shared: TRUTH }, maybe: {} },
        leastShareOfContacts: SHARE,
        minimumStrides: COUNT,
        minimumStridesCorrelated: COUNT,
        correlatedAbove: NUMBER,
        smallestDetectableShare: FROM_ZERO,
        slowDriftShare: FROM_ZERO,
        thirdsLevel: SHARE,
        similarMargin: FROM_ZERO,
        speedTolerance: FROM_ZERO,
        speedEffect: { kind: "words", words: { kept: true, removed: true } },
        massRatioTolerance: FROM_ZERO,
        leastMeanForPercent: FROM_ZERO,
        threshold: NUMBER_OR_NULL,
        filter: FILTER,
      },
      maybe: {},
    },
    baseline: TRIAL,
    changed: TRIAL,
    metrics: {
      kind: "list",
      of: {
        kind: "fields",
        always: /* @__PURE__ */ withValues({ id: TEXT, unit: TEXT, effectSize: NUMBER_OR_NULL }),
        maybe: {
          normalised: {
            kind: "fields",
            always: { unit: TEXT, difference: NUMBER, interval: INTERVAL },
            maybe: {},
          },
          bootstrapInterval: INTERVAL,
          drift: { kind: "fields", always: { baseline: DRIFT, changed: DRIFT }, maybe: {} },
          speedAlone: {
            kind: "fields",
            always: { difference: NUMBER, source: TEXT, takenOff: TRUTH },
            maybe: {},
          },
          perKilometre: VALUES,
        },
      },
    },
    notCompared: ABSENCES,
    components: {
      kind: "list",
      of: {
        kind: "fields",
        always: {
          component: COMPONENT,
          metric: { kind: "or null", value: TEXT },
          moreLoad: {
            kind: "or null",
            value: MORE_LOAD,
          },
          reading: { kind: "or null", value: COMPONENT_READING },
          perKilometre: { kind: "or null", value: COMPONENT_READING },
          missing: {
            kind: "or null",
            value: { kind: "words", words: { "not recorded": true, "not compared": true } },
          },
          sentence: TEXT,
        },
        maybe: {},
      },
    },
    overall: {
      kind: "fields",
      always: {
        reading: OVERALL_READING,
        sentence: TEXT,
        lower: COMPONENTS,
        higher: COMPONENTS,
        unsettled: COMPONENTS,
        perKilometre: BY_READING,
      },
      maybe: { toSettle: TEXTS },
    },
    work: {
      kind: "fields",
      always: {
        reading: {
          kind: "words",
          words: { "less work": true, "more work": true, unsettled: true, "no clear change": true },
        },
        sentence: TEXT,
      },
      maybe: {
        perMetre: {
          kind: "fields",
          always: /* @__PURE__ */ withValues({ unit: TEXT }),
          maybe: {},
        },
      },
    },
    alternatives: { kind: "list", of: ALTERNATIVE },
    cautions: CAUTIONS,
  },
  maybe: {},
};
