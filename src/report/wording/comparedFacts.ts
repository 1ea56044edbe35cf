import type { ComparedTrial, Comparison } from "../../compare/index.js";
import type { Fact } from "./fact.js";
import { plainNumber } from "./plainNumber.js";

/**
 * Says what was compared: strides, speeds and masses of both trials, and what a reading needs.
 *
 * @param comparison - As `compareTrials` gives it.
 * @param names - What the recordings are called, where they have names.
 */
export function comparedFacts(
  comparison: Comparison,
  names: { readonly baseline: string; readonly changed: string } | null,
): readonly [baseline: Fact, changed: Fact, needs: Fact] {
  const { settings } = comparison;
  return [
    { label: "Baseline", text: trialOf(comparison.baseline, names?.baseline) },
    { label: "Changed", text: trialOf(comparison.changed, names?.changed) },
    {
      label: "A reading needs",
      text: `${settings.minimumStrides} strides (${settings.minimumStridesCorrelated} where successive strides correlate above ${plainNumber(settings.correlatedAbove)}), its metric in ${percent(settings.leastShareOfContacts)} % of the contacts, speeds within ${percent(settings.speedTolerance)} %, forces on one scale (mass by force ÷ stated mass within ${percent(settings.massRatioTolerance)} %), and a difference above the smallest detectable change`,
    },
  ];
}

function percent(share: number): string {
  return plainNumber(100 * share);
}

function trialOf(
  { strides, effectiveStrides, speed, mass, massByForce }: ComparedTrial,
  name: string | undefined,
): string {
  const title = name === undefined ? "" : `${name}: `;
  const pace = speed === null ? "speed not stated" : `${plainNumber(speed)} m/s`;
  const own = mass === null ? "mass not known" : `${plainNumber(mass)} kg`;
  const byForce = massByForce === null ? "" : ` (${plainNumber(massByForce)} kg by force)`;
  return `${title}${strides} strides, worth ${Math.floor(effectiveStrides)} independent ones; ${pace}; ${own}${byForce}`;
}
