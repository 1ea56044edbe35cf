import { readFileSync } from "node:fs";
import type { Scope } from "./runExample.js";

type Exports = Readonly<Record<string, unknown>>;
type Call = (...parameters: unknown[]) => never;

/** Loads every entry of the built package and makes the names that examples may use without making them. */
export async function exampleScope(): Promise<Scope> {
  const { name, exports } = JSON.parse(readFileSync("package.json", "utf8")) as {
    name: string;
    exports: Readonly<Record<string, unknown>>;
  };
  const entries = new Map<string, Exports>();
  for (const path of Object.keys(exports)) {
    if (path === "./package.json" || path.includes("*")) continue;
    entries.set(name + path.slice(1), (await import(name + path.slice(1))) as Exports);
  }
  const all = Object.assign({}, ...entries.values()) as Record<string, unknown>;
  return { entries, names: { ...all, ...demoNames(all as Readonly<Record<string, Call>>) } };
}

/** The demo's two recordings and what each stage makes of the first. */
function demoNames(library: Readonly<Record<string, Call>>): Record<string, unknown> {
  const call = (name: string, ...parameters: unknown[]) => (library[name] as Call)(...parameters);
  const { usual, furtherAhead } = call("demoRecordings") as { usual: unknown; furtherAhead: unknown };
  const ground: unknown = call("toGroundReaction", usual);
  const contacts: readonly unknown[] = call("detectContacts", ground);
  const steps: readonly unknown[] = call("stepsOf", contacts);
  const trial: unknown = call("analyseTrial", ground);
  return {
    recording: usual,
    ground,
    contacts,
    contact: contacts[0],
    steps,
    step: steps[0],
    trial,
    baseline: trial,
    changed: call("analyseTrial", call("toGroundReaction", furtherAhead)),
    usualCsv: call("writeCsv", usual),
    furtherAheadCsv: call("writeCsv", furtherAhead),
  };
}
