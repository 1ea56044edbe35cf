import type { Step } from "../../src/events/index.js";
import { CATALOGUE, metricById } from "../../src/metrics/index.js";
import feet from "../../tests/fixtures/metrics/feet.json" with { type: "json" };
import running from "../../tests/fixtures/metrics/running.json" with { type: "json" };
import models from "../../tests/fixtures/models/models.json" with { type: "json" };
import { sampledRun } from "../../tests/metrics/runs.js";

/** A metric beside an independent computation of the same samples. */
export interface NumpyRow {
  readonly id: string;
  readonly n: number;
  /** Largest relative difference. */
  readonly worst: number;
}

/** A number that NumPy or SciPy worked out of a contact of the sampled run. */
interface Theirs {
  readonly id: string;
  readonly threshold: number;
  readonly index: number;
  readonly value: number;
}

/** What NumPy and SciPy gave, beside what the library gives of the same samples, contact by contact. */
export function againstNumpy(): readonly NumpyRow[] {
  const runs = new Map([20, 50].map((threshold) => [threshold, sampledRun(threshold)]));
  const theirs = [...sampled(), ...motion(), ...placed(), ...spring()];
  return CATALOGUE.flatMap(({ id }): NumpyRow[] => {
    const own = theirs.filter((one) => one.id === id);
    if (own.length === 0) return [];
    const differences = own.map(({ threshold, index, value }) => {
      const { ground, steps } = runs.get(threshold) as ReturnType<typeof sampledRun>;
      const ours = metricById(id).compute(ground, steps[index] as Step) ?? Number.NaN;
      return Math.abs(ours / value - 1);
    });
    return [{ id, n: own.length, worst: Math.max(...differences) }];
  });
}

function sampled(): Theirs[] {
  const counts = new Map<number, number>();
  return running.sampled.flatMap((row) => {
    const { threshold } = row;
    const index = counts.get(threshold) ?? 0;
    counts.set(threshold, index + 1);
    return Object.entries(row).flatMap(([id, value]) =>
      CATALOGUE.some((entry) => entry.id === id) && typeof value === "number"
        ? [{ id, threshold, index, value }]
        : [],
    );
  });
}

function motion(): Theirs[] {
  return running.motion
    .filter(({ grade }) => grade === 0)
    .flatMap(({ index, atSamples: { verticalOscillation, mediolateralExcursion, step } }) => {
      const values: Readonly<Record<string, number | undefined>> = {
        verticalOscillation,
        mediolateralExcursion,
        positiveExternalWork: step.external[0],
        positiveWorkForward: step.forward[0],
        positiveWorkVertical: step.vertical[0],
        positiveWorkLateral: step.lateral[0],
      };
      return Object.entries(values).map(([id, value]) => ({
        id,
        threshold: 20,
        index,
        value: value as number,
      }));
    });
}

function placed(): Theirs[] {
  const ids = [
    "peakResultantForce",
    "peakFreeMoment",
    "freeMomentImpulse",
    "strikeIndex",
    "stepWidth",
  ] as const;
  return feet.contacts.flatMap((row) =>
    ids.flatMap((id) => {
      const value = (row as Partial<Record<string, number | null>>)[id] ?? null;
      return value === null ? [] : [{ id, threshold: 20, index: row.index, value }];
    }),
  );
}

function spring(): Theirs[] {
  const { steps } = sampledRun(20);
  return models.force.flatMap(({ index, peakForce, drop, push }) => {
    const { contact } = steps[index] as Step;
    const time = contact.toeOff - contact.initialContact;
    const values = {
      verticalStiffness: peakForce / drop,
      elasticEnergy: (peakForce * drop) / 2,
      pushToBrakeTimeRatio: push / (time - push),
    };
    return Object.entries(values).map(([id, value]) => ({ id, threshold: 20, index, value }));
  });
}
