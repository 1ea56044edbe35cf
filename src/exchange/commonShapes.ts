import type { Interval } from "../statistics/index.js";
import type { NotComputed, Spread } from "../trial/index.js";
import type { Caution } from "../units/index.js";
import type { ListShape, NumberShape, Shape, TextShape, TruthShape } from "./shape.js";

/** Any finite number. */
export const NUMBER: NumberShape = { kind: "number" };
/** Zero or above. */
export const FROM_ZERO: NumberShape = { kind: "number", from: 0 };
/** From 0 to 1. */
export const SHARE: NumberShape = { kind: "number", from: 0, to: 1 };
/** A whole number from 0. */
export const COUNT: NumberShape = { kind: "number", from: 0, whole: true };
/** Any text. */
export const TEXT: TextShape = { kind: "text" };
/** Yes or no. */
export const TRUTH: TruthShape = { kind: "truth" };
/** A number or nothing. */
export const NUMBER_OR_NULL: Shape<number | null> = { kind: "or null", value: NUMBER };
/** A number from 0 or nothing. */
export const FROM_ZERO_OR_NULL: Shape<number | null> = { kind: "or null", value: FROM_ZERO };
/** Any number of texts. */
export const TEXTS: ListShape<string> = { kind: "list", of: TEXT };

/** An interval with its level. */
export const INTERVAL: Shape<Interval> = {
  kind: "fields",
  always: { low: NUMBER, high: NUMBER, level: SHARE },
  maybe: {},
};

/** An interval, or none with fewer than two values. */
export const INTERVAL_OR_NULL: Shape<Interval | null> = { kind: "or null", value: INTERVAL };

/** A mean with spread and interval. */
export const SPREAD: Shape<Spread> = {
  kind: "fields",
  always: { n: COUNT, mean: NUMBER, sd: FROM_ZERO_OR_NULL, interval: INTERVAL_OR_NULL },
  maybe: {},
};

/** Whichever filter, or none. */
export const FILTER: Shape<{ readonly cutoff: number; readonly order: number } | null> = {
  kind: "or null",
  value: { kind: "fields", always: { cutoff: FROM_ZERO, order: COUNT }, maybe: {} },
};

/** Metrics that are not there, with the reason. */
export const ABSENCES: Shape<readonly NotComputed[]> = {
  kind: "list",
  of: { kind: "fields", always: { id: TEXT, code: TEXT, message: TEXT }, maybe: {} },
};

/** What is suspect but not wrong. */
export const CAUTIONS: Shape<readonly Caution[]> = {
  kind: "list",
  of: {
    kind: "fields",
    always: { code: TEXT, message: TEXT },
    maybe: {
      where: TEXT,
      values: { kind: "named", of: { kind: "or null", value: { kind: "scalar" } } },
    },
  },
};
