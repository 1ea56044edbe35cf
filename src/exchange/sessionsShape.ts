import type { SessionSeries } from "../compare/index.js";
import {
  ABSENCES,
  CAUTIONS,
  COUNT,
  FILTER,
  FROM_ZERO,
  INTERVAL,
  NUMBER,
  SHARE,
  SPREAD,
  TEXT,
  TEXTS,
} from "./commonShapes.js";
import { MORE_LOAD, SMALLEST_CHANGE } from "./compareShapes.js";
import type { FieldsShape } from "./shape.js";

/** What JSON of a {@link SessionSeries} looks like; `schemas/sessions-1.schema.json` says the same. */
export const SESSIONS_SHAPE: FieldsShape<SessionSeries> = {
  kind: "fields",
  always: {
    schema: { kind: "words", words: { "gait-kinetics/sessions/1": true } },
    settings: {
      kind: "fields",
      always: {
        version: TEXT,
        level: SHARE,
        baseline: { kind: "words", words: { first: true, moving: true } },
        baselineSessions: COUNT,
        speedTolerance: FROM_ZERO,
        interval: TEXT,
        filter: FILTER,
      },
      maybe: {},
    },
    metrics: {
      kind: "list",
      of: {
        kind: "fields",
        always: {
          id: TEXT,
          unit: TEXT,
          moreLoad: MORE_LOAD,
          sessions: {
            kind: "list",
            of: {
              kind: "fields",
              always: {
                name: TEXT,
                session: SPREAD,
                against: {
                  kind: "or null",
                  value: {
                    kind: "fields",
                    always: {
                      baseline: NUMBER,
                      sessions: COUNT,
                      difference: NUMBER,
                      interval: INTERVAL,
                      smallestDetectableChange: SMALLEST_CHANGE,
                      place: { kind: "words", words: { above: true, below: true, within: true } },
                    },
                    maybe: {},
                  },
                },
              },
              maybe: {},
            },
          },
        },
        maybe: {},
      },
    },
    notCompared: ABSENCES,
    sentences: TEXTS,
    cautions: CAUTIONS,
  },
  maybe: {},
};
