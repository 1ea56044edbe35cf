import { type Complete, type Fraction, requireNumber, withDefaults } from "../../units/index.js";
import { fProbability } from "../distributions/fProbability.js";
import { fQuantile } from "../distributions/fQuantile.js";
import type { Interval } from "../meanInterval.js";
import { type CorrelationForm, type FormParts, formParts } from "./correlationForm.js";
import { type MeanSquares, meanSquares } from "./meanSquares.js";
import { type AgreementTable, requireTable } from "./table.js";

/** Which form, and how sure. */
export interface IntraclassCorrelationOptions {
  /** Shrout & Fleiss's name or McGraw & Wong's. */
  readonly form?: CorrelationForm | undefined;
  /** Share of repeats the interval is meant to cover. */
  readonly level?: Fraction | undefined;
}

/**
 * Two-way random, single trial, absolute agreement: whether another day's single trial gives the same number. Source: Weir
 * 2005, J. Strength Cond. Res. 19:231 (abstract), asks for the form to be named, since each answers another question.
 */
export const INTRACLASS_CORRELATION_DEFAULTS: Complete<IntraclassCorrelationOptions> = {
  form: "ICC(2,1)",
  level: 0.95,
};

/** An intraclass correlation with what it rests on. */
export interface IntraclassCorrelation {
  /** Shrout & Fleiss's name. */
  readonly form: CorrelationForm;
  /** McGraw & Wong's. */
  readonly alsoCalled: CorrelationForm;
  /** `null` where no value of the table differs from another, or the parts of the variance cancel. */
  readonly value: number | null;
  /** `null` where the value is, or the interval of a single trial leaves none for the mean of all. */
  readonly interval: Interval | null;
  /** Against a correlation of zero; `null` where the lower mean square is zero. */
  readonly test: {
    readonly F: number;
    readonly df1: number;
    readonly df2: number;
    readonly p: number;
  } | null;
  readonly meanSquares: MeanSquares;
}

/**
 * Gives an intraclass correlation: the share of the variance that is between subjects, with its interval.
 *
 * Formula: with the {@link meanSquares} B between n subjects, W within, J between k trials, E error: ICC(1,1) =
 * (B − W)/[B + (k − 1) W]; ICC(2,1) = (B − E)/[B + (k − 1) E + k (J − E)/n]; ICC(3,1) = (B − E)/[B + (k − 1) E]; of means
 * of k trials (B − W)/B, (B − E)/[B + (J − E)/n], (B − E)/B. Test: F = B/W, for the last two models B/E. Intervals by F
 * quantiles; that of agreement with Satterthwaite's degrees of freedom ν = (k − 1)(n − 1)(k r j + d)²/[(n − 1)(k r j)² + d²],
 * r = ICC(2,1), j = J/E, d = n [1 + (k − 1) r] − k r; that of a mean of k from that of one by k r/[1 + (k − 1) r].
 * Units: none.
 * Limits: at least two subjects and two trials, every cell filled. It may be negative. It grows with how much the subjects
 * differ: the same error gives a low one in a uniform group, so that the {@link standardErrorOfMeasurement} goes beside it.
 * Bounds such as 0.75 are judged on the interval, not on the value (Koo & Li 2016, J. Chiropr. Med. 15:155).
 * Source: Shrout & Fleiss 1979, Psychol. Bull. 86:420; McGraw & Wong 1996, Psychol. Methods 1:30, whose names are the
 * second ones.
 * @param table - Rows of subjects, columns of trials.
 * @param options - {@link INTRACLASS_CORRELATION_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`, `too-short`, `unequal-lengths`, `not-finite`: no full table of finite numbers with two
 *   rows and columns or more; `out-of-range`: form or level; `unknown-option`.
 * @example
 * const judges = [[9, 2, 5, 8], [6, 1, 3, 2], [8, 4, 6, 8], [7, 1, 2, 6], [10, 5, 6, 9], [6, 2, 4, 7]];
 * intraclassCorrelation(judges, { form: "ICC(3,1)" }).value.toFixed(2) // "0.71"
 */
export function intraclassCorrelation(
  table: AgreementTable,
  options: IntraclassCorrelationOptions = {},
): IntraclassCorrelation {
  const { form, level } = withDefaults<IntraclassCorrelationOptions>(
    INTRACLASS_CORRELATION_DEFAULTS,
    options,
  );
  const parts = formParts(form);
  requireNumber("level", level, { above: 0, below: 1 });
  requireTable(table, 2);
  const squares = meanSquares(table);
  const { subjects: n, trials: k, withinSubjects, error } = squares;
  const oneWay = parts.model === "one-way";
  const noise = oneWay ? withinSubjects : (error as number);
  const df1 = n - 1;
  const df2 = oneWay ? n * (k - 1) : df1 * (k - 1);
  const F = (squares.betweenSubjects as number) / noise;
  const value = shareBetween(parts, squares);
  return {
    form: parts.form,
    alsoCalled: parts.alsoCalled,
    value,
    interval: value === null ? null : intervalOf(parts, squares, level),
    test: Number.isFinite(F) ? { F, df1, df2, p: fProbability(F, df1, df2, "above") } : null,
    meanSquares: squares,
  };
}

/** Nothing to share out: equal values, or differences so small between subjects that the parts cancel. */
function shareBetween({ model, of }: FormParts, squares: MeanSquares): number | null {
  const { subjects: n, trials: k, withinSubjects, betweenTrials } = squares;
  const between = squares.betweenSubjects as number;
  const error = squares.error as number;
  const noise = model === "one-way" ? withinSubjects : error;
  const shared = model === "agreement" ? (betweenTrials - error) / n : 0;
  const all = of === "single" ? between + (k - 1) * noise + k * shared : between + shared;
  return all > 0 ? (between - noise) / all : null;
}

/** `null` where the single trial's lower end is beyond what a mean of k can have, −1/(k − 1). */
function intervalOf(parts: FormParts, squares: MeanSquares, level: number): Interval | null {
  const single =
    parts.model === "agreement" ? agreementEnds(squares, level) : ratioEnds(parts, squares, level);
  if (parts.of === "single") return { ...single, level };
  const { trials: k } = squares;
  if (1 + (k - 1) * single.low <= 0) return null;
  const stepUp = (r: number) => (k * r) / (1 + (k - 1) * r);
  return { low: stepUp(single.low), high: stepUp(single.high), level };
}

/** (F − 1)/(F + k − 1) at both ends of the ratio of the two mean squares; 1 where there is no noise. */
function ratioEnds({ model }: FormParts, squares: MeanSquares, level: number): { low: number; high: number } {
  const { subjects: n, trials: k } = squares;
  const between = squares.betweenSubjects as number;
  const noise = model === "one-way" ? squares.withinSubjects : (squares.error as number);
  const df1 = n - 1;
  const df2 = model === "one-way" ? n * (k - 1) : df1 * (k - 1);
  const p = (1 + level) / 2;
  const end = (F: number) => (between * F - noise) / (between * F + (k - 1) * noise);
  return { low: end(1 / fQuantile(p, df1, df2)), high: end(fQuantile(p, df2, df1)) };
}

function agreementEnds(squares: MeanSquares, level: number): { low: number; high: number } {
  const { subjects: n, trials: k, betweenTrials: J } = squares;
  const B = squares.betweenSubjects as number;
  const E = squares.error as number;
  const r = (B - E) / (B + (k - 1) * E + (k * (J - E)) / n);
  const trialPart = k * r * J;
  const rest = (n * (1 + (k - 1) * r) - k * r) * E;
  const freedom = ((k - 1) * (n - 1) * (trialPart + rest) ** 2) / ((n - 1) * trialPart ** 2 + rest ** 2);
  const noise = k * J + (k * n - k - n) * E;
  if (E === 0 && J === 0) return { low: 1, high: 1 };
  const p = (1 + level) / 2;
  // Of a negative correlation the parts may cancel and leave fewer degrees of freedom than the trials alone have.
  const df = Math.max(k - 1, freedom);
  const low = fQuantile(p, n - 1, df);
  const high = fQuantile(p, df, n - 1);
  return {
    low: (n * (B - low * E)) / (low * noise + n * B),
    high: (n * (high * B - E)) / (noise + n * high * B),
  };
}
