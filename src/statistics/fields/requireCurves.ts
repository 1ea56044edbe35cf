import { fail } from "../../units/index.js";
import { requireValues, type Values } from "../requireValues.js";

/** Curves over the same points, one a row. */
export type Curves = readonly Values[];

/** Checks that there are enough curves, equally long and finite, and gives their number of points. */
export function requireCurves(
  argument: string,
  curves: Curves,
  least: number,
  nodes: number | null = null,
): number {
  if (!Array.isArray(curves)) {
    fail(
      "wrong-type",
      `${argument} is ${curves === null ? "null" : typeof curves}; a list of curves is needed`,
      {
        argument,
      },
    );
  }
  if (curves.length < least) {
    fail("too-short", `${argument} holds ${curves.length} curves; at least ${least} are needed`, {
      argument,
      values: { given: curves.length, least },
    });
  }
  const expected = nodes ?? (curves[0] as Values | null)?.length ?? 0;
  curves.forEach((curve: Values, k) => {
    requireValues(`${argument}[${k}]`, curve, 2);
    if (curve.length !== expected) {
      fail(
        "unequal-lengths",
        `${argument}[${k}] has ${curve.length} points and the curves before it ${expected}; all must be equally long`,
        { argument, where: `curve ${k}`, values: { given: curve.length, expected } },
      );
    }
  });
  return expected;
}
