import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Curve, Spread, Trial } from "../src/trial/index.js";

/** What the NumPy side writes. */
interface Theirs {
  readonly start: readonly number[];
  readonly end: readonly number[];
  readonly values: Readonly<Record<string, readonly (number | null)[]>>;
  /** Of strides, of strides normalised, of the left and of the right foot: mean, SD, interval. */
  readonly summary: Readonly<Record<string, readonly (readonly number[])[]>>;
  /** By component, of the left and of the right foot: mean and SD. */
  readonly curves: Readonly<Record<"forward" | "up" | "right", readonly (readonly (readonly number[])[])[]>>;
}

/** How far both sides lie apart. */
export interface Agreement {
  readonly metrics: number;
  readonly values: number;
  /** Largest relative difference of a single value, and whose it is. */
  readonly worst: number;
  readonly worstOf: string;
  /** Of a mean, a standard deviation, an interval's end. */
  readonly worstSummary: number;
  readonly worstCurve: number;
}

/** Sets the numbers of both sides beside each other; throws where one has what the other has not. */
export function compareNumbers(folder: string): Agreement {
  const ours = JSON.parse(readFileSync(join(folder, "ours.json"), "utf8")) as Trial;
  const theirs = JSON.parse(
    readFileSync(join(folder, "numpy.json"), "utf8").replaceAll("NaN", "null"),
  ) as Theirs;
  if (ours.steps.length !== theirs.start.length) {
    throw new Error(`${ours.steps.length} contacts here, ${theirs.start.length} there`);
  }
  const ids = Object.keys(theirs.summary);
  const missing = Object.keys(ours.summary.metrics).filter((id) => !ids.includes(id));
  if (missing.length > 0) throw new Error(`NumPy lacks ${missing.join(", ")}`);
  let [values, worst, worstOf] = [0, 0, ""];
  const see = (name: string, a: number, b: number, size: number) => {
    values++;
    const difference = Math.abs(a - b) / size;
    if (!(difference <= worst)) [worst, worstOf] = [difference, name];
  };
  ours.steps.forEach((row, k) => {
    see("initialContact", row.initialContact, theirs.start[k] as number, row.initialContact);
    see("toeOff", row.toeOff, theirs.end[k] as number, row.toeOff);
    for (const id of ids) {
      const [a, b] = [row.values[id] ?? null, theirs.values[id]?.[k] ?? null];
      if (a === null && b === null) continue;
      if (a === null || b === null) throw new Error(`${id} of contact ${k}: ${a} here, ${b} there`);
      // A difference of two impulses is near 0: what it differs by is a share of one of them.
      const size = id === "netForwardImpulse" ? row.values.brakingImpulse : a;
      see(id, a, b, Math.abs(size ?? a));
    }
  });
  return {
    metrics: ids.length,
    values,
    worst,
    worstOf,
    worstSummary: Math.max(...ids.map((id) => summaryDifference(ours, theirs, id))),
    worstCurve: Math.max(
      ...(["forward", "up", "right"] as const).flatMap((direction) => [
        curveDifference(ours.curves[direction]?.left, theirs.curves[direction][0]),
        curveDifference(ours.curves[direction]?.right, theirs.curves[direction][1]),
      ]),
    ),
  };
}

function summaryDifference({ summary }: Trial, theirs: Theirs, id: string): number {
  const own = summary.metrics[id];
  if (own === undefined) throw new Error(`${id} is not in the summary`);
  const pairs = [own, own.normalised, own.left, own.right].flatMap((spread: Spread | undefined, k) => {
    if (spread === undefined) return [];
    const { mean, sd, interval } = spread;
    const [size, ours] = [Math.abs(mean) + (sd ?? 0), [mean, sd, interval?.low, interval?.high]];
    return ours.map(
      (value, part) => Math.abs((value ?? Number.NaN) - (theirs.summary[id]?.[k]?.[part] as number)) / size,
    );
  });
  return Math.max(...pairs);
}

function curveDifference(own: Curve | undefined, other: readonly (readonly number[])[] | undefined): number {
  if (own === undefined || other === undefined) throw new Error("a curve is missing");
  const size = Math.max(...own.mean.map(Math.abs));
  return Math.max(
    ...own.mean.map((value, p) => Math.abs(value - (other[0]?.[p] as number)) / size),
    ...(own.sd ?? []).map((value, p) => Math.abs(value - (other[1]?.[p] as number)) / size),
  );
}
