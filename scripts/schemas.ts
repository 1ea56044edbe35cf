import { writeFileSync } from "node:fs";
import { COMPARISON_SHAPE } from "../src/exchange/comparisonShape.js";
import { RELIABILITY_SHAPE } from "../src/exchange/reliabilityShape.js";
import { RUNNERS_SHAPE } from "../src/exchange/runnersShape.js";
import { SESSIONS_SHAPE } from "../src/exchange/sessionsShape.js";
import { TRIAL_SHAPE } from "../src/exchange/trialShape.js";
import { schemaOf } from "../tests/exchange/schemaOf.js";

/** Writes the JSON Schemas of results anew, from their shapes and the comments of their types. */
const write = (name: string, schema: object): void =>
  writeFileSync(`schemas/${name}-1.schema.json`, `${JSON.stringify(schema, null, 2)}\n`);

write(
  "trial",
  schemaOf({ file: "src/trial/trial.ts", type: "Trial" }, TRIAL_SHAPE, "urn:gait-kinetics:trial:1"),
);
write(
  "comparison",
  schemaOf(
    { file: "src/compare/comparison.ts", type: "Comparison" },
    COMPARISON_SHAPE,
    "urn:gait-kinetics:comparison:1",
  ),
);
write(
  "reliability",
  schemaOf(
    { file: "src/compare/reliability/reliabilityResult.ts", type: "Reliability" },
    RELIABILITY_SHAPE,
    "urn:gait-kinetics:reliability:1",
  ),
);
write(
  "runners",
  schemaOf(
    { file: "src/compare/runners/runnersComparison.ts", type: "RunnersComparison" },
    RUNNERS_SHAPE,
    "urn:gait-kinetics:runners:1",
  ),
);
write(
  "sessions",
  schemaOf(
    { file: "src/compare/sessions/sessionSeries.ts", type: "SessionSeries" },
    SESSIONS_SHAPE,
    "urn:gait-kinetics:sessions:1",
  ),
);
