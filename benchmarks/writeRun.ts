import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { toGroundReaction } from "../src/force/index.js";
import { CATALOGUE } from "../src/metrics/index.js";
import { syntheticRun } from "../src/synthetic/index.js";

/** Threshold of both sides, N. */
const THRESHOLD = 20;

/**
 * Writes a treadmill run with noise for programs to read, whose runner varies from step to step: `samples.f64`, three forces
 * and three moments at 1 kHz one after the other, and `run.json`.
 *
 * @returns The folder, and the size of the samples in bytes.
 */
export function writeRun(minutes: number): { readonly folder: string; readonly bytes: number } {
  const folder = mkdtempSync(join(tmpdir(), "run-"));
  const { recording } = syntheticRun({
    duration: 60 * minutes,
    noise: { force: 2, cop: 0.001, freeMoment: 0.3 },
    variability: {
      stepTime: 0.01,
      contactTime: 0.02,
      impactAmplitude: 0.05,
      brakingAmplitude: 0.05,
      medialAmplitude: 0.08,
      lateralAmplitude: 0.1,
    },
    seed: 1,
  });
  const { force, moment, ...ground } = toGroundReaction(recording);
  const channels = [force, moment].flatMap((part) => [part?.forward, part?.up, part?.right]);
  let bytes = 0;
  for (const samples of channels) {
    if (samples === undefined) throw new Error("the synthetic run lacks a channel");
    writeFileSync(join(folder, "samples.f64"), samples, { flag: "a" });
    bytes += samples.byteLength;
  }
  const run = {
    sampleRate: ground.sampleRate,
    speed: ground.speed,
    mass: ground.subject.mass,
    height: ground.subject.height,
    firstFoot: recording.firstFoot,
    threshold: THRESHOLD,
    // Those that need no foot, no coefficient and no walker.
    metrics: Object.fromEntries(
      CATALOGUE.filter(
        ({ family, needs }) =>
          family !== "walking" && !needs.includes("foot") && !needs.includes("coefficient"),
      ).map(({ id, unit }) => [id, unit]),
    ),
    ground,
  };
  writeFileSync(join(folder, "run.json"), JSON.stringify(run));
  return { folder, bytes };
}
