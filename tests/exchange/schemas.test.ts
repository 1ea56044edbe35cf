import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { COMPARISON_SHAPE } from "../../src/exchange/comparisonShape.js";
import { readJson, writeJson } from "../../src/exchange/index.js";
import { RELIABILITY_SHAPE } from "../../src/exchange/reliabilityShape.js";
import { RUNNERS_SHAPE } from "../../src/exchange/runnersShape.js";
import { SESSIONS_SHAPE } from "../../src/exchange/sessionsShape.js";
import { TRIAL_SHAPE } from "../../src/exchange/trialShape.js";
import { isGaitKineticsError } from "../../src/units/index.js";
import { arbitraryOf } from "./arbitraryOf.js";
import { COMPARISONS, RELIABILITIES, RUNNERS, SESSIONS, TRIALS } from "./documents.js";
import { type Schema, schemaOf } from "./schemaOf.js";

const published = (name: string): Schema =>
  JSON.parse(readFileSync(`schemas/${name}-1.schema.json`, "utf8")) as Schema;
const ajv = new Ajv2020({ strict: true, allowUnionTypes: true });
const KINDS = {
  trial: {
    schema: published("trial"),
    shape: TRIAL_SHAPE,
    declared: { file: "src/trial/trial.ts", type: "Trial" },
    documents: Object.values(TRIALS).map(writeJson),
  },
  comparison: {
    schema: published("comparison"),
    shape: COMPARISON_SHAPE,
    declared: { file: "src/compare/comparison.ts", type: "Comparison" },
    documents: Object.values(COMPARISONS).map(writeJson),
  },
  reliability: {
    schema: published("reliability"),
    shape: RELIABILITY_SHAPE,
    declared: { file: "src/compare/reliability/reliabilityResult.ts", type: "Reliability" },
    documents: Object.values(RELIABILITIES).map(writeJson),
  },
  runners: {
    schema: published("runners"),
    shape: RUNNERS_SHAPE,
    declared: { file: "src/compare/runners/runnersComparison.ts", type: "RunnersComparison" },
    documents: Object.values(RUNNERS).map(writeJson),
  },
  sessions: {
    schema: published("sessions"),
    shape: SESSIONS_SHAPE,
    declared: { file: "src/compare/sessions/sessionSeries.ts", type: "SessionSeries" },
    documents: Object.values(SESSIONS).map(writeJson),
  },
} as const;

/** Whether the library's own check takes a text; any error but its own is passed on. */
function isRead(text: string): boolean {
  try {
    readJson(text);
    return true;
  } catch (caught) {
    if (!isGaitKineticsError(caught)) throw caught;
    return false;
  }
}

/** Paths of every value inside a value, its own first. */
function* pathsOf(value: unknown, path: readonly string[] = []): Generator<readonly string[]> {
  yield path;
  if (typeof value !== "object" || value === null) return;
  for (const [name, entry] of Object.entries(value)) yield* pathsOf(entry, [...path, name]);
}

/** Puts a piece of JSON in the place of a value; takes the value out where the piece is empty. */
function patched(text: string, path: readonly string[], piece: string): string {
  if (path.length === 0) return piece === "" ? "null" : piece;
  const mark = "\u0001patch\u0001";
  const root = JSON.parse(text) as Record<string, unknown>;
  const holder = path.slice(0, -1).reduce((at, name) => at[name] as Record<string, unknown>, root);
  const last = path.at(-1) as string;
  if (piece !== "") holder[last] = mark;
  else if (Array.isArray(holder)) holder.splice(Number(last), 1);
  else delete holder[last];
  return JSON.stringify(root).replace(JSON.stringify(mark), () => piece);
}

/** Values that stand where they should not, or should; the last put a field beside those of an object. */
const PIECES = [
  "",
  "null",
  "true",
  "0",
  "1",
  "-1",
  "0.5",
  "-0",
  "1e999",
  "101",
  "1e300",
  '"NaN"',
  '"left"',
  '""',
  "[]",
  "{}",
  "[0]",
  "[{}]",
  '{"__proto__":1}',
  '{"constructor":null}',
  '{"n":1}',
  '"gait-kinetics/trial/1"',
  '"gait-kinetics/trial/2"',
  '"lower"',
];

describe.each(["trial", "comparison", "reliability", "runners", "sessions"] as const)(
  "the schema of a %s",
  (kind) => {
    const { schema, shape, declared, documents } = KINDS[kind];
    const validate = ajv.compile(schema);
    const agree = (text: string): boolean => {
      const verdict = validate(JSON.parse(text));
      // Another schema's name makes it another kind of document for the check, and none for this schema.
      expect({ text: text.slice(0, 300), read: isRead(text) }).toEqual({
        text: text.slice(0, 300),
        read: verdict,
      });
      return verdict;
    };

    it("says what the TypeScript type says: every field, its bounds, its description", () => {
      expect(schema).toEqual(schemaOf(declared, shape, `urn:gait-kinetics:${kind}:1`));
    });

    it("takes what the library computes", () => {
      for (const text of documents) {
        validate(JSON.parse(text));
        expect(validate.errors).toBeNull();
      }
    });

    it("property: takes whatever the library's check takes", () =>
      fc.assert(
        fc.property(arbitraryOf(shape), (document) => {
          expect(agree(writeJson(document as never))).toBe(true);
        }),
        { numRuns: 200, seed: 6 },
      ));

    it("property: a document with one value changed, added or gone is refused by both or by neither", () => {
      let refused = 0;
      fc.assert(
        fc.property(fc.nat(), fc.nat(), fc.constantFrom(...PIECES), (which, place, piece) => {
          const text = documents[which % documents.length] as string;
          const paths = [...pathsOf(JSON.parse(text))];
          if (!agree(patched(text, paths[place % paths.length] as readonly string[], piece))) refused++;
        }),
        { numRuns: 400, seed: 7 },
      );
      expect(refused).toBeGreaterThan(120);
    });

    it("refuses every object of a real document with one field gone, where it needs it, or one too many", () => {
      const text = documents[0] as string;
      const kinds = new Set<string>();
      let refused = 0;
      for (const path of pathsOf(JSON.parse(text))) {
        // One of each kind: entries of a list and values by name are alike.
        const name = path
          .map((part) => (/^\d+$/.test(part) ? "#" : part))
          .join(".")
          .replace(/(values|metrics)\.[a-zA-Z]+/, "$1.#");
        if (kinds.has(name) || path.length === 0) continue;
        kinds.add(name);
        if (!agree(patched(text, path, ""))) refused++;
        agree(patched(text, [...path.slice(0, -1), "surplus"], "1"));
        agree(patched(text, [...path.slice(0, -1), "constructor"], "1"));
      }
      // A series of sessions has the fewest fields: 53.
      expect(kinds.size).toBeGreaterThan(kind === "sessions" ? 50 : 70);
      expect(refused).toBeGreaterThan(kind === "sessions" ? 40 : 50);
    });
  },
);

it("neither schema takes the other's document", () => {
  expect(
    ajv.compile({ ...KINDS.trial.schema, $id: "urn:own:1" })(
      JSON.parse(KINDS.comparison.documents[0] as string),
    ),
  ).toBe(false);
  expect(
    ajv.compile({ ...KINDS.comparison.schema, $id: "urn:own:2" })(
      JSON.parse(KINDS.trial.documents[0] as string),
    ),
  ).toBe(false);
});
