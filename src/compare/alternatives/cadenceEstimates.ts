import { type CadenceRunner, cadenceWhatIf, type WhatIfRange } from "../../models/index.js";
import type { Trial } from "../../trial/index.js";
import { isGaitKineticsError } from "../../units/index.js";
import type { AlternativeEffect } from "./alternative.js";
import { strideMean } from "./pair.js";

/** A runner's estimated range, as an effect holds it. */
export type EstimateRange = NonNullable<AlternativeEffect["estimate"]>;

/** What a runner's quantities may become at another cadence and the same speed. */
export interface CadenceEstimates {
  /** By metric id; empty where the model cannot be fed. */
  readonly quantities: Readonly<
    Record<string, { readonly range: EstimateRange; readonly perKilometre: EstimateRange | null }>
  >;
  readonly stepsPerKilometre: EstimateRange | null;
  /** Why the model has no estimate; `null` where it has. */
  readonly missing: string | null;
}

/** Feeds the model with a trial's means; a baseline that lacks some of them has no estimate, and says which. */
export function cadenceEstimates(trial: Trial, change: number): CadenceEstimates {
  const { settings, subject } = trial;
  const speed = settings.speed;
  const cadence = strideMean(trial, "cadence");
  const moved =
    speed === null || cadence === null
      ? { stepLength: null, stepsPerKilometre: null }
      : {
          stepLength: exactly("m", (60 * speed) / cadence, 1 / (1 + change)),
          stepsPerKilometre: exactly("steps/km", (1000 * cadence) / (60 * speed), 1 + change),
        };
  const given = {
    mass: settings.massByForce ?? settings.mass,
    speed,
    cadence,
    "contact time": strideMean(trial, "contactTime"),
    height: subject.height ?? null,
  };
  const unknown = Object.entries(given).flatMap(([name, value]) => (value === null ? [name] : []));
  const stepLength =
    moved.stepLength === null ? {} : { stepLength: { range: moved.stepLength, perKilometre: null } };
  if (unknown.length > 0) {
    return {
      quantities: stepLength,
      stepsPerKilometre: moved.stepsPerKilometre,
      missing: `${unknown.join(", ")} not known`,
    };
  }
  const measured = Object.fromEntries(
    ["peakVerticalForce", "verticalOscillation", "legStiffness", "peakBrakingForce", "brakingImpulse"].map(
      (id) => [id, positive(strideMean(trial, id))],
    ),
  );
  const modelled = modelledQuantities(
    { ...measured, ...given, contactTime: given["contact time"] } as CadenceRunner,
    change,
    settings.gravity,
  );
  return {
    quantities: { ...stepLength, ...modelled },
    stepsPerKilometre: moved.stepsPerKilometre,
    missing: modelled === null ? "the spring-mass model does not fit these numbers" : null,
  };
}

/** `null` where the model has no step like the runner's, or none at the new cadence. */
function modelledQuantities(
  runner: CadenceRunner,
  change: number,
  gravity: number,
): CadenceEstimates["quantities"] | null {
  try {
    const quantities = cadenceWhatIf(runner, { changes: [change], gravity }).changes[0]?.quantities ?? [];
    if (quantities.length === 0) return null;
    return Object.fromEntries(
      quantities.map(({ id, perKilometre, ...range }) => [
        id,
        { range: estimate(range), perKilometre: perKilometre && estimate(perKilometre) },
      ]),
    );
  } catch (error) {
    if (isGaitKineticsError(error)) return null;
    throw error;
  }
}

function estimate({ unit, baseline, low, high }: WhatIfRange): EstimateRange {
  return { unit, from: baseline, low, high };
}

function exactly(unit: string, from: number, factor: number): EstimateRange {
  return { unit, from, low: from * factor, high: from * factor };
}

function positive(value: number | null): number | undefined {
  return value === null || value <= 0 ? undefined : value;
}
