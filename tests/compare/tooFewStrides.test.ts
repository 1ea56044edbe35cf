import { expect, it } from "vitest";
import { COMPARE_TRIALS_DEFAULTS } from "../../src/compare/index.js";
import { tooFewStrides } from "../../src/compare/readComponent.js";

const strides = (count: number) => Array.from({ length: count }, (_, i) => 10 + (i % 2 ? 1 : -1));
const settled = (baseline: number, changed: number) =>
  tooFewStrides({ baseline: strides(baseline), changed: strides(changed) }, COMPARE_TRIALS_DEFAULTS)
    ?.toSettle;

it.each([
  [44, 5, "at least 20 strides in the changed trial's recording: 15 more"],
  [5, 44, "at least 20 strides in the baseline's recording: 15 more"],
  [18, 18, "at least 20 strides in each recording: 2 more"],
  [
    18,
    9,
    "at least 20 strides in the baseline's recording: 2 more and at least 20 strides in the changed trial's recording: 11 more",
  ],
])(
  "2026-11-25: with %i and %i strides the recording that is short was not named",
  (baseline, changed, advice) => expect(settled(baseline, changed)).toEqual([advice]),
);

it("with strides enough there is nothing to settle", () => expect(settled(20, 20)).toBeUndefined());
