import { mean } from "../mean.js";
import type { Values } from "../requireValues.js";
import { type AgreementTable, requireTable } from "./table.js";

/** The analysis of variance of a table of subjects by trials, without replication. */
export interface MeanSquares {
  /** Subjects, the rows. */
  readonly subjects: number;
  /** Trials, the columns. */
  readonly trials: number;
  /** Between subjects; n − 1 degrees of freedom. `null` with a single subject. */
  readonly betweenSubjects: number | null;
  /** Within subjects; n (k − 1). */
  readonly withinSubjects: number;
  /** Between trials; k − 1. */
  readonly betweenTrials: number;
  /** What subjects and trials leave; (n − 1)(k − 1). `null` with a single subject. */
  readonly error: number | null;
}

/**
 * Splits the variance of a table of subjects by trials into its mean squares.
 *
 * Formula: with n subjects, k trials, row means rᵢ, column means cⱼ, grand mean m: between subjects k Σ(rᵢ − m)²/(n − 1);
 * within subjects Σ(xᵢⱼ − rᵢ)²/[n (k − 1)]; between trials n Σ(cⱼ − m)²/(k − 1); error Σ(xᵢⱼ − rᵢ − cⱼ + m)²/[(n − 1)(k − 1)].
 * Units: those of the values, squared.
 * Limits: at least two trials; every cell filled.
 * Source: Shrout & Fleiss 1979, Psychol. Bull. 86:420, whose BMS, WMS, JMS and EMS they are.
 * @param table - Rows of subjects, columns of trials.
 * @throws GaitKineticsError `wrong-type`, `too-short`, `unequal-lengths`, `not-finite`: no full table of finite numbers with two
 *   columns or more.
 * @example
 * meanSquares([[1, 2], [3, 5]]).withinSubjects // 1.25
 */
export function meanSquares(table: AgreementTable): MeanSquares {
  requireTable(table, 1);
  const n = table.length;
  const k = (table[0] as Values).length;
  const rows = Array.from(table, (row) => mean(row));
  const columns = Array.from({ length: k }, (_, j) => mean(Array.from(table, (row) => row[j] as number)));
  const centre = mean(rows);
  let within = 0;
  let error = 0;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < k; j++) {
      const rest = ((table[i] as Values)[j] as number) - (rows[i] as number);
      within += rest ** 2;
      error += (rest - ((columns[j] as number) - centre)) ** 2;
    }
  }
  return {
    subjects: n,
    trials: k,
    betweenSubjects: n < 2 ? null : (k * squares(rows, centre)) / (n - 1),
    withinSubjects: within / (n * (k - 1)),
    betweenTrials: (n * squares(columns, centre)) / (k - 1),
    error: n < 2 ? null : error / ((n - 1) * (k - 1)),
  };
}

function squares(values: readonly number[], centre: number): number {
  return values.reduce((sum, value) => sum + (value - centre) ** 2, 0);
}
