import type { Contact, Gait, ThresholdRule } from "../events/index.js";
import type { MarkerSettings, PlateSettings } from "../force/index.js";
import type { Curve, CurvesBySide, Trial } from "../trial/index.js";
import {
  ABSENCES,
  CAUTIONS,
  COUNT,
  FILTER,
  FROM_ZERO,
  FROM_ZERO_OR_NULL,
  INTERVAL_OR_NULL,
  NUMBER,
  NUMBER_OR_NULL,
  SHARE,
  SPREAD,
  TEXT,
  TEXTS,
  TRUTH,
} from "./commonShapes.js";
import type { FieldsShape, NumberShape, Shape } from "./shape.js";

/** Points of a mean curve over stance: 0 to 100 %. */
const POINTS = 101;

const PERCENT: NumberShape = { kind: "number", from: 0, to: 100 };

const SIDE: Shape<Contact["side"]> = { kind: "words", words: { left: true, right: true, unknown: true } };

const GAIT: Shape<Gait> = {
  kind: "words",
  words: { running: true, walking: true, jumping: true, standing: true },
};

const THRESHOLD_RULE: Shape<ThresholdRule> = {
  kind: "words",
  words: { default: true, stated: true, "share of body weight": true, "noise in flight": true },
};

const CONTACTS: Shape<readonly Contact[]> = {
  kind: "list",
  of: {
    kind: "fields",
    always: { side: SIDE, initialContact: NUMBER, toeOff: NUMBER, threshold: NUMBER },
    maybe: {
      plate: COUNT,
      shared: TRUTH,
      singleSupport: { kind: "fields", always: { from: NUMBER, to: NUMBER }, maybe: {} },
    },
  },
};

const BY_DIRECTION: Shape<Readonly<Partial<Record<"forward" | "up" | "right", number>>>> = {
  kind: "fields",
  always: {},
  maybe: { forward: NUMBER, up: NUMBER, right: NUMBER },
};

const PLATE: Shape<PlateSettings> = {
  kind: "fields",
  always: {
    name: TEXT,
    zero: { kind: "words", words: { stated: true, file: true, flights: true, none: true } },
    driftRemoved: TRUTH,
    flights: COUNT,
  },
  maybe: {
    side: { kind: "words", words: { left: true, right: true } },
    offset: BY_DIRECTION,
    momentOffset: BY_DIRECTION,
    forceOn: { kind: "words", words: { runner: true, platform: true } },
    originNegated: TRUTH,
  },
};

const FOOT_MARKERS: Shape<NonNullable<NonNullable<MarkerSettings["feet"]>["left"]>> = {
  kind: "fields",
  always: { heel: TEXTS, toe: TEXTS },
  maybe: {},
};

const MARKERS: Shape<MarkerSettings> = {
  kind: "fields",
  always: { sampleRate: FROM_ZERO },
  maybe: {
    centreOfMass: TEXTS,
    feet: { kind: "fields", always: {}, maybe: { left: FOOT_MARKERS, right: FOOT_MARKERS } },
  },
};

const CURVE: Shape<Curve> = {
  kind: "fields",
  always: {
    mean: { kind: "list", of: NUMBER, length: POINTS },
    sd: { kind: "or null", value: { kind: "list", of: FROM_ZERO, length: POINTS } },
    n: COUNT,
  },
  maybe: {},
};

const CURVES: Shape<CurvesBySide> = {
  kind: "fields",
  always: {},
  maybe: { left: CURVE, right: CURVE, unknown: CURVE },
};

/** What JSON of a {@link Trial} looks like; `schemas/trial-1.schema.json` says the same. */
export const TRIAL_SHAPE: FieldsShape<Trial> = {
  kind: "fields",
  always: {
    schema: { kind: "words", words: { "gait-kinetics/trial/1": true } },
    settings: {
      kind: "fields",
      always: {
        version: TEXT,
        sampleRate: FROM_ZERO,
        duration: FROM_ZERO,
        mass: NUMBER_OR_NULL,
        massStated: TRUTH,
        massByForce: NUMBER_OR_NULL,
        gravity: FROM_ZERO,
        speed: FROM_ZERO_OR_NULL,
        surface: { kind: "or null", value: { kind: "words", words: { ground: true, belt: true } } },
        footwear: { kind: "or null", value: TEXT },
        grade: NUMBER,
        filter: FILTER,
        landing: {
          kind: "or null",
          value: {
            kind: "fields",
            always: {
              method: { kind: "words", words: { force: true, measured: true } },
              footLevel: FROM_ZERO,
              toe: { kind: "words", words: { curve: true, line: true } },
              balance: NUMBER,
              margin: {
                kind: "fields",
                always: { touchdown: FROM_ZERO, takeOff: FROM_ZERO },
                maybe: {},
              },
            },
            maybe: {},
          },
        },
        airDrag: NUMBER_OR_NULL,
        gait: { kind: "or null", value: GAIT },
        gaitStated: TRUTH,
        events: {
          kind: "fields",
          always: {
            threshold: NUMBER,
            thresholdRule: THRESHOLD_RULE,
            thresholdShare: NUMBER_OR_NULL,
            noiseFactor: NUMBER_OR_NULL,
            fallLevel: NUMBER,
            cutoff: FROM_ZERO_OR_NULL,
            shortestContact: FROM_ZERO,
            shortestFlight: FROM_ZERO,
            sides: TEXT,
          },
          maybe: {},
        },
        force: {
          kind: "fields",
          always: { offset: { kind: "named", of: NUMBER }, driftRemoved: TRUTH, flights: COUNT },
          maybe: { plates: { kind: "list", of: PLATE }, apart: TEXTS, markers: MARKERS },
        },
        level: SHARE,
        interval: TEXT,
      },
      maybe: {},
    },
    subject: { kind: "fields", always: {}, maybe: { mass: FROM_ZERO, height: FROM_ZERO } },
    contacts: CONTACTS,
    partialContacts: CONTACTS,
    steps: {
      kind: "list",
      of: {
        kind: "fields",
        always: {
          side: SIDE,
          initialContact: NUMBER,
          toeOff: NUMBER,
          values: { kind: "named", of: NUMBER_OR_NULL },
        },
        maybe: {},
      },
    },
    summary: {
      kind: "fields",
      always: {
        strides: COUNT,
        impactPeakShare: { kind: "or null", value: SHARE },
        metrics: {
          kind: "named",
          of: {
            kind: "fields",
            always: { n: COUNT, mean: NUMBER, sd: FROM_ZERO_OR_NULL, interval: INTERVAL_OR_NULL, unit: TEXT },
            maybe: {
              normalised: {
                kind: "fields",
                always: {
                  n: COUNT,
                  mean: NUMBER,
                  sd: FROM_ZERO_OR_NULL,
                  interval: INTERVAL_OR_NULL,
                  unit: TEXT,
                },
                maybe: {},
              },
              left: SPREAD,
              right: SPREAD,
            },
          },
        },
      },
      maybe: {},
    },
    curves: {
      kind: "fields",
      always: { percent: { kind: "list", of: PERCENT, length: POINTS }, up: CURVES },
      maybe: { forward: CURVES, right: CURVES },
    },
    notComputed: ABSENCES,
    cautions: CAUTIONS,
  },
  maybe: {},
};
