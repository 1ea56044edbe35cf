import { expect } from "vitest";
import type { PlatformReaction } from "../../src/force/index.js";

export const LAB: { readonly x: "right"; readonly y: "forward"; readonly z: "up" } = {
  x: "right",
  y: "forward",
  z: "up",
};
export const codes = ({ cautions }: { readonly cautions: readonly { code: string }[] }): string[] =>
  cautions.map(({ code }) => code);
export const forceAt = ({ force }: PlatformReaction, i: number): number[] =>
  [force.forward[i], force.up[i], force.right[i]] as number[];
export const momentAt = ({ moment }: PlatformReaction, i: number): number[] =>
  moment === null ? [] : ([moment.forward[i], moment.up[i], moment.right[i]] as number[]);
export const vector = (p: { forward: number; up: number; right: number } | undefined): number[] =>
  p === undefined ? [] : [p.forward, p.up, p.right];
export const near = (given: readonly number[], wanted: readonly number[], within: number): void => {
  expect(given.length).toBe(wanted.length);
  given.forEach((value, k) => {
    expect(
      Math.abs(value - (wanted[k] as number)),
      `value ${k}: ${value} for ${wanted[k]}`,
    ).toBeLessThanOrEqual(within);
  });
};
