import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect } from "vitest";
import { run } from "../../src/cli/run.js";
import type { WatchedTerminal } from "./watchedTerminal.js";

/** What a command line did. */
export interface Outcome {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs a command line in this process. */
export async function command(...argv: readonly string[]): Promise<Outcome> {
  return commandAt(null, ...argv);
}

/** Runs a command line in this process, with or without a terminal that a person watches. */
export async function commandAt(
  watched: WatchedTerminal | null,
  ...argv: readonly string[]
): Promise<Outcome> {
  let out = "";
  let err = "";
  const code = await run(argv, {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
      watched?.write(text);
    },
    watched,
  });
  return { code, out, err };
}

/** Bad input leaves one line on standard error, nothing on standard output, and a code. */
export function expectRefused(
  { code, out, err }: Outcome,
  expected: number,
  ...words: readonly (string | RegExp)[]
): void {
  expect(out).toBe("");
  expect(err).toMatch(/^gait-kinetics: [^\n]+\n$/);
  expect(err).not.toMatch(/\s+at .*:\d+:\d+|undefined|\[object/);
  for (const word of words) expect(err).toMatch(word);
  expect(code).toBe(expected);
}

/** A new empty folder outside the project. */
export function emptyFolder(): string {
  return mkdtempSync(join(tmpdir(), "gait-kinetics-"));
}

/** Writes a file into a folder and gives its path. */
export function fileIn(folder: string, name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

/** Path of a file of this folder's fixtures. */
export const TREADMILL_RUN: string = new URL("../fixtures/treadmill-run/forces-2.5ms.txt", import.meta.url)
  .pathname;

/** How the treadmill run is read: axes, units, rate and runner as its README says. */
export const TREADMILL_OPTIONS: readonly string[] = [
  "--axes",
  "x=forward,y=up,z=right",
  "--units",
  "Fx=N,Fy=N,Fz=N,COPx=mm,COPy=mm,COPz=mm,Ty=N mm",
  "--ignore",
  "Time",
  "--rate",
  "300 Hz",
  "--mass",
  "80 kg",
  "--speed",
  "2.5 m/s",
  "--surface",
  "belt",
];

/** Path of the open walking trial in C3D: two platforms, 26 markers, events. */
export const WALK: string = new URL("../fixtures/c3d/standard/walk-pi.c3d", import.meta.url).pathname;

/** What that file does not say: where its axes point, as its README does. */
export const WALK_AXES: readonly string[] = ["--axes", "x=right,y=forward,z=up"];
