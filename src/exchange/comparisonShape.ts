import type {
  ComparedTrial,
  ComparedValues,
  Comparison,
  ComponentReading,
  OverallComparison,
  SmallestDetectableChange,
} from "../compare/index.js";
import {
  ABSENCES,
  CAUTIONS,
  COUNT,
  FILTER,
  FROM_ZERO,
  FROM_ZERO_OR_NULL,
  INTERVAL,
  NUMBER,
  NUMBER_OR_NULL,
  SHARE,
  SPREAD,
  TEXT,
  TEXTS,
  TRUTH,
} from "./commonShapes.js";
import type { FieldsShape, Shape, WordsShape } from "./shape.js";

const SMALLEST_CHANGE: FieldsShape<SmallestDetectableChange> = {
  kind: "fields",
  always: { value: FROM_ZERO, source: TEXT },
  maybe: {},
};

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
  },
  maybe: {},
};

const READING: WordsShape<ComponentReading> = {
  kind: "words",
  words: { lower: true, higher: true, similar: true, unsettled: true },
};

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
  always: { lower: TEXTS, higher: TEXTS, unsettled: TEXTS },
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
        shownLevel: SHARE,
        readingLevel: SHARE,
        interval: TEXT,
        readingCorrelation: { kind: "fields", always: { correctBias: TRUTH, shared: TRUTH }, maybe: {} },
        leastShareOfContacts: SHARE,
        minimumStrides: COUNT,
        minimumStridesCorrelated: COUNT,
        correlatedAbove: NUMBER,
        smallestDetectableShare: FROM_ZERO,
        similarMargin: FROM_ZERO,
        speedTolerance: FROM_ZERO,
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
        always: {
          baseline: SPREAD,
          changed: SPREAD,
          difference: NUMBER,
          percent: NUMBER_OR_NULL,
          interval: INTERVAL,
          readingInterval: INTERVAL,
          smallestDetectableChange: SMALLEST_CHANGE,
          id: TEXT,
          unit: TEXT,
          effectSize: NUMBER_OR_NULL,
        },
        maybe: {
          normalised: {
            kind: "fields",
            always: { unit: TEXT, difference: NUMBER, interval: INTERVAL },
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
          component: {
            kind: "words",
            words: { vertical: true, anteroposterior: true, mediolateral: true },
          },
          metric: { kind: "or null", value: TEXT },
          moreLoad: {
            kind: "or null",
            value: { kind: "words", words: { higher: true, lower: true, none: true } },
          },
          reading: { kind: "or null", value: READING },
          perKilometre: { kind: "or null", value: READING },
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
        reading: {
          kind: "words",
          words: { shifted: true, reduced: true, raised: true, unsettled: true, "no clear change": true },
        },
        sentence: TEXT,
        lower: TEXTS,
        higher: TEXTS,
        unsettled: TEXTS,
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
          always: {
            baseline: SPREAD,
            changed: SPREAD,
            difference: NUMBER,
            percent: NUMBER_OR_NULL,
            interval: INTERVAL,
            readingInterval: INTERVAL,
            smallestDetectableChange: SMALLEST_CHANGE,
            unit: TEXT,
          },
          maybe: {},
        },
      },
    },
    cautions: CAUTIONS,
  },
  maybe: {},
};
