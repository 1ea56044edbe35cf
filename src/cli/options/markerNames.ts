import { InvalidArgumentError } from "commander";
import type { FootMarkers } from "../../force/index.js";
import type { Side } from "../../recording/index.js";
import { list, pairs } from "./readers.js";

/** Markers at both ends of each foot. */
export type Feet = Readonly<Partial<Record<Side, FootMarkers>>>;

/** Reads names of markers whose mean is taken for the centre of mass, with commas between. */
export function markerNames(text: string): readonly string[] {
  const names = list(text);
  if (names.length === 0) {
    throw new InvalidArgumentError("It must name at least one marker, with commas between several.");
  }
  return refuseTwice(names);
}

/** Reads the markers of each foot, heel before toe, a plus between those whose mean counts: `left=HEEL:TOE1+TOE2`. */
export function feet(text: string): Feet {
  return Object.fromEntries(
    Object.entries(pairs(text)).map(([side, ends]) => {
      if (side !== "left" && side !== "right") {
        throw new InvalidArgumentError(`"${side}" is no foot; it must be left or right.`);
      }
      return [side, footOf(side, ends)];
    }),
  );
}

/** Names may hold colons of their own, as many in that of the heel as in that of the toe: the middle one parts them. */
function footOf(side: Side, ends: string): FootMarkers {
  const parts = ends.split(":");
  const half = parts.length / 2;
  const heel = plusNames(parts.slice(0, half).join(":"));
  const toe = plusNames(parts.slice(half).join(":"));
  if (parts.length % 2 === 0 && heel.length > 0 && toe.length > 0) return { heel, toe };
  throw new InvalidArgumentError(
    `"${side}=${ends}" must name two markers, ${side}=HEEL:TOE, with one colon between them.`,
  );
}

function plusNames(text: string): readonly string[] {
  return refuseTwice(
    text
      .split("+")
      .map((name) => name.trim())
      .filter((name) => name !== ""),
  );
}

function refuseTwice(names: readonly string[]): readonly string[] {
  const twice = names.find((name, i) => names.indexOf(name) < i);
  if (twice !== undefined) throw new InvalidArgumentError(`"${twice}" stands twice.`);
  return names;
}
