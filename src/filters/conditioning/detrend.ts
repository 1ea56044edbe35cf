import { type Complete, requireFiniteSamples, requireOneOf, withDefaults } from "../../units/index.js";
import { finiteResult } from "../finiteResult.js";

/** What {@link detrend} may be told. */
export interface DetrendOptions {
  /** `linear` takes out the least-squares line, `constant` the mean. */
  readonly type?: "linear" | "constant" | undefined;
}

/** The line. */
export const DETREND_DEFAULTS: Complete<DetrendOptions> = { type: "linear" };

/**
 * Takes out the mean or the straight line that fits samples best.
 *
 * Formula: x − mean x, or x − a − b (i − ī) with b = Σ (i − ī) x / Σ (i − ī)².
 * Units: those of the samples, which keep their unit in their type.
 * Limits: takes out real slow change with the drift. For force plates measure the offset where nothing stands on them,
 * see {@link removeOffset}.
 * Source: least squares; agrees with SciPy's `detrend`.
 * @param samples - One channel; none gives none.
 * @param options - {@link DETREND_DEFAULTS} where left out.
 * @throws GaitKineticsError `not-finite`: NaN or infinity among samples or result; `wrong-type`; `out-of-range`: unknown type;
 * `unknown-option`.
 * @example
 * detrend(new Float64Array([1, 3, 5]))[2] // 0
 */
export function detrend<S extends Float64Array>(samples: S, options: DetrendOptions = {}): S {
  const { type } = withDefaults(DETREND_DEFAULTS, options);
  requireOneOf("type", type, ["linear", "constant"]);
  requireFiniteSamples("samples", samples);
  const count = samples.length;
  const middle = (count - 1) / 2;
  let sum = 0;
  let moment = 0;
  for (let i = 0; i < count; i++) sum += samples[i] as number;
  const mean = sum / count;
  for (let i = 0; i < count; i++) moment += (i - middle) * ((samples[i] as number) - mean);
  const slope = type === "constant" || count < 2 ? 0 : moment / ((count * (count * count - 1)) / 12);
  return finiteResult(samples.map((value, i) => value - mean - slope * (i - middle)) as S);
}
