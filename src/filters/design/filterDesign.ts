import { fail, type Hertz } from "../../units/index.js";

/**
 * One second-order section with a₀ = 1: y[n] = b₀ x[n] + b₁ x[n−1] + b₂ x[n−2] − a₁ y[n−1] − a₂ y[n−2]. A section of
 * first order has b₂ = a₂ = 0.
 */
export type Section = readonly [b0: number, b1: number, b2: number, a0: number, a1: number, a2: number];

/** Whether a section is of first order. A second-order one may have a₂ = 0 too: a pole at 0. */
export const isFirstOrder = (section: Section): boolean => section[2] === 0 && section[5] === 0;

/** Which frequencies a filter lets through. */
export type FilterType = "low-pass" | "high-pass" | "band-pass" | "band-stop";

/** The family of shapes a filter is taken from. */
export type FilterFamily = "butterworth" | "critically-damped";

/** A filter ready to run: its sections and what they were designed for. */
export interface FilterDesign {
  readonly family: FilterFamily;
  readonly type: FilterType;
  /** Order of one pass. A band filter has twice as many poles. */
  readonly order: number;
  /** Number of passes whose net response has its −3 dB point at `cutoff`. */
  readonly passes: number;
  /** Where the net response of all passes is −3 dB, Hz; the two edges of a band. */
  readonly cutoff: Hertz | readonly [low: Hertz, high: Hertz];
  /** Where one pass of a Butterworth filter is −3 dB, Hz; of a critically damped one the corner of its poles. */
  readonly designCutoff: Hertz | readonly [low: Hertz, high: Hertz];
  readonly sampleRate: Hertz;
  /** In the order they run: the least damped poles last, the whole gain in the first. */
  readonly sections: readonly Section[];
}

/** Gives the sections of a design after checking that there are some, each of six finite numbers with a₀ = 1. */
export function sectionsOf(design: FilterDesign): readonly Section[] {
  const sections: unknown = design?.sections;
  if (!Array.isArray(sections) || sections.length === 0) {
    fail("wrong-type", "design has no sections; one from butterworth or criticallyDamped is needed", {
      argument: "design",
    });
  }
  sections.forEach((section, index) => {
    const good =
      Array.isArray(section) && section.length === 6 && section.every(Number.isFinite) && section[3] === 1;
    if (!good) {
      fail(
        "wrong-type",
        `section ${index} of design is ${JSON.stringify(section)}; [b0, b1, b2, 1, a1, a2] is needed`,
        {
          argument: "design",
          where: `section ${index}`,
        },
      );
    }
  });
  return sections;
}
