import { InvalidArgumentError } from "commander";
import { CATALOGUE } from "../../metrics/index.js";
import { pairs } from "./readers.js";

/** A change as it was typed. */
export interface TypedChange {
  readonly value: number;
  readonly unit: string;
}

/** Reads changes by metric: `brakingImpulse=8 %,peakVerticalForce=60 N`. */
export function smallestChanges(text: string): Readonly<Record<string, TypedChange>> {
  return Object.fromEntries(Object.entries(pairs(text)).map(([id, change]) => [id, changeOf(id, change)]));
}

function changeOf(id: string, text: string): TypedChange {
  const metric = CATALOGUE.find((entry) => entry.id === id);
  if (metric === undefined) {
    const known = CATALOGUE.map((entry) => entry.id).join(", ");
    throw new InvalidArgumentError(`"${id}" is no metric; the metrics are ${known}.`);
  }
  const { unit: own, normalised } = metric;
  const perBody = normalised !== undefined && normalised.by !== "mass and distance" ? [normalised.unit] : [];
  const units = ["%", own, ...perBody];
  const [, digits = "", unit = ""] = /^(\+?\d+(?:\.\d+)?)\s*(\S.*)$/.exec(text) ?? [];
  if (!units.includes(unit)) {
    throw new InvalidArgumentError(
      `"${id}=${text}" must be a number from zero with its unit, ${units.join(" or ")}; % is of the baseline's mean.`,
    );
  }
  return { value: Number(digits), unit };
}
