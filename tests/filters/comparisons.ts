import {
  criticallyDamped,
  cumulativeIntegral,
  derivative,
  detrend,
  type Ends,
  type FilterDesign,
  fillGaps,
  filterCausal,
  filterZeroPhase,
  frequencyResponse,
  gustafsson,
  highPass,
  type InterpolationMethod,
  integral,
  interpolate,
  lowPass,
  type PowerSpectralDensityOptions,
  passCorrection,
  powerFrequency,
  powerSpectralDensity,
  resample,
  residualAnalysis,
  savitzkyGolay,
  savitzkyGolayWeights,
  secondDerivative,
  streamingFilter,
  timeNormalise,
  whitenessAnalysis,
} from "../../src/filters/index.js";
import calculus from "../fixtures/filters/calculus.json" with { type: "json" };
import causal from "../fixtures/filters/causal.json" with { type: "json" };
import cutoffs from "../fixtures/filters/cutoffs.json" with { type: "json" };
import designs from "../fixtures/filters/designs.json" with { type: "json" };
import exactGustafsson from "../fixtures/filters/gustafsson.json" with { type: "json" };
import resampling from "../fixtures/filters/resampling.json" with { type: "json" };
import spectrum from "../fixtures/filters/spectrum.json" with { type: "json" };
import wideBands from "../fixtures/filters/wideBands.json" with { type: "json" };
import zeroPhase from "../fixtures/filters/zeroPhase.json" with { type: "json" };
import { type Case, type Comparison, describe, designOf, roundingAt, worst } from "./comparison.js";

const SCIPY = `SciPy ${designs.made.scipy}`;
const NUMPY = `NumPy ${designs.made.numpy}`;

function responses(real: "exactReal" | "scipyReal", imaginary: "exactImaginary" | "scipyImaginary"): Case[] {
  return designs.designs.map((item) => {
    const got = frequencyResponse(designOf(item), item.frequency);
    const errors = item.frequency.map((_, i) =>
      Math.hypot(
        (got.real[i] as number) - (item[real][i] as number),
        (got.imaginary[i] as number) - (item[imaginary][i] as number),
      ),
    );
    return { name: describe(item), error: Math.max(...errors), allowed: 1e-12 + 2 * roundingAt(item) };
  });
}

function sections(field: "sos" | "zi"): Case[] {
  return designs.designs.flatMap((item) => {
    const wanted = item[field];
    if (wanted === undefined) return [];
    const design = designOf(item);
    const got = field === "sos" ? design.sections.flat() : steadyStateOf(design);
    return { name: describe(item), error: worst(got, wanted.flat()), allowed: 1e-13 + 4 * roundingAt(item) };
  });
}

/** The state a stream of ones settles in at once. */
const steadyStateOf = (design: FilterDesign): Float64Array => {
  const stream = streamingFilter(design);
  stream.push(new Float64Array([1]));
  return stream.state() as Float64Array;
};

function filtered(gust: boolean): Case[] {
  return zeroPhase.cases
    .filter(({ ends }) => (ends === "gustafsson") === gust)
    .map((item) => {
      const ends = gust ? gustafsson : (item.ends as Ends);
      const design = designOf({ ...item, order: item.orderOfOnePass });
      const input = Float64Array.from(zeroPhase.inputs[item.input as keyof typeof zeroPhase.inputs]);
      const got = filterZeroPhase(input, design, { ends, padLength: item.padLength });
      const name = `${describe({ ...item, order: item.orderOfOnePass })}, ${item.input}, ends ${item.ends} ${item.padLength ?? ""}`;
      return { name, error: worst(got, item.output), allowed: gust ? 1e-10 : 1e-12 };
    });
}

const contact = Float64Array.from(zeroPhase.inputs.contact);
const forty = Float64Array.from(calculus.input.slice(0, 40));
const fortyOne = Float64Array.from(calculus.input);
const single = (name: string, error: number, allowed: number): Case[] => [{ name, error, allowed }];
const relative = (got: number, wanted: number): number => Math.abs(got / wanted - 1);

/** Every comparison with another library or with exact arithmetic. */
export function comparisons(): Comparison[] {
  return [
    {
      what: "`butterworth`, complex response",
      against: "50-digit arithmetic (mpmath 1.3.0)",
      because:
        "10⁻¹² and the rounding of the coefficients, 2⁻⁵²/tan²(π f/fs) at the lowest edge per pair of poles",
      cases: responses("exactReal", "exactImaginary"),
    },
    {
      what: "`butterworth`, complex response",
      against: `${SCIPY} \`butter\`, \`freqz_sos\``,
      because: "as above; SciPy's own rounding is as large",
      cases: responses("scipyReal", "scipyImaginary"),
    },
    {
      what: "`butterworth`, coefficients of even order",
      against: `${SCIPY} \`butter(output="sos")\``,
      because: "as above",
      cases: sections("sos"),
    },
    {
      what: "`streamingFilter`, steady state",
      against: `${SCIPY} \`sosfilt_zi\``,
      because: "as above",
      cases: sections("zi"),
    },
    {
      what: "`passCorrection`",
      against: NUMPY,
      because: "10⁻¹⁴",
      cases: designs.correctionFactors.map(({ passes, order, factor }) => ({
        name: `${passes} passes of order ${order}`,
        error: relative(passCorrection(passes, order), factor),
        allowed: 1e-14,
      })),
    },
    {
      what: "`filterZeroPhase`, ends odd, even, constant, none",
      against: `${SCIPY} \`sosfiltfilt\``,
      because: "10⁻¹²",
      cases: filtered(false),
    },
    {
      what: "`filterZeroPhase`, ends `gustafsson`",
      against: "50-digit arithmetic (mpmath 1.3.0)",
      because: "10⁻¹²",
      cases: exactGustafsson.cases.map(({ output, orderOfOnePass, ...item }) => {
        const design = designOf({ ...item, order: orderOfOnePass });
        const error = worst(filterZeroPhase(contact, design, { ends: gustafsson }), output);
        return { name: describe({ ...item, order: orderOfOnePass }), error, allowed: 1e-12 };
      }),
    },
    {
      what: "`filterZeroPhase`, ends `gustafsson`",
      against: `${SCIPY} \`filtfilt(method="gust")\``,
      because:
        "10⁻¹⁰: SciPy works on one polynomial, not on sections, and loses digits as the order grows, see above",
      cases: filtered(true),
    },
    {
      what: "`lowPass`, `highPass`, net cutoff",
      against: `${SCIPY} \`sosfiltfilt\` at the corrected frequency`,
      because: "10⁻¹²",
      cases: zeroPhase.net.map(({ kind, orderOfOnePass, cutoff, sampleRate, output }) => {
        const run = kind === "lowpass" ? lowPass : highPass;
        const error = worst(run(contact, { cutoff, sampleRate, order: 2 * orderOfOnePass }), output);
        return {
          name: describe({ kind, order: 2 * orderOfOnePass, cutoff, sampleRate }),
          error,
          allowed: 1e-12,
        };
      }),
    },
    {
      what: "`criticallyDamped` run by `filterZeroPhase`",
      against: `${SCIPY} \`bilinear_zpk\`, \`sosfiltfilt\``,
      because: "10⁻¹²",
      cases: zeroPhase.damped.map(({ order, cutoff, sampleRate, output }) => {
        const design = criticallyDamped({ order, cutoff, sampleRate, passes: 2 });
        const error = worst(filterZeroPhase(contact, design), output);
        return {
          name: describe({ kind: "critically damped", order, cutoff, sampleRate }),
          error,
          allowed: 1e-12,
        };
      }),
    },
    {
      what: "`filterCausal`, output and last state",
      against: `${SCIPY} \`sosfilt\``,
      because: "10⁻¹²",
      cases: causal.cases.flatMap((item) => {
        const design = designOf(item);
        const stream = streamingFilter(design);
        const steady = stream.push(contact);
        return [
          {
            name: `${describe(item)}, at rest`,
            error: worst(filterCausal(contact, design, { start: "rest" }), item.rest),
            allowed: 1e-12,
          },
          { name: `${describe(item)}, steady`, error: worst(steady, item.steady), allowed: 1e-12 },
          {
            name: `${describe(item)}, last state`,
            error: worst(stream.state() as Float64Array, item.last.flat()),
            allowed: 1e-12,
          },
        ];
      }),
    },
    {
      what: "`filterCausal`, bands up to order 12 and from 1 to 493 Hz of 1000 Hz",
      against: "100-digit arithmetic (mpmath 1.3.0)",
      because:
        "10⁻¹² and the rounding of the coefficients, 2⁻⁵²/tan²(π f/fs) at the lowest edge per pair of poles",
      cases: wideBands.cases.map(({ output, ...item }) => ({
        name: describe(item),
        error: worst(filterCausal(contact, designOf(item), { start: "rest" }), output),
        allowed: 1e-12 + 2 * roundingAt(item),
      })),
    },
    {
      what: "`derivative`, `secondDerivative`",
      against: `${NUMPY} \`gradient\`, differences`,
      because: "10⁻¹³",
      cases: [
        {
          name: "end order 2",
          error: worst(derivative(forty, 1000), calculus.gradientEdge2),
          allowed: 1e-13,
        },
        {
          name: "end order 1",
          error: worst(derivative(forty, 1000, { endOrder: 1 }), calculus.gradientEdge1),
          allowed: 1e-13,
        },
        {
          name: "second",
          error: worst(secondDerivative(forty, 1000).slice(1, -1), calculus.secondDifference),
          allowed: 1e-13,
        },
      ],
    },
    {
      what: "`cumulativeIntegral`, `integral`",
      against: `${SCIPY} \`cumulative_trapezoid\`, \`cumulative_simpson\`, \`trapezoid\`, \`simpson\``,
      because: "10⁻¹³",
      cases: [
        ["cumulative trapezoid", worst(cumulativeIntegral(forty, 1000), calculus.cumulativeTrapezoid)],
        [
          "cumulative Simpson, even number",
          worst(cumulativeIntegral(forty, 1000, { rule: "simpson" }), calculus.cumulativeSimpson40),
        ],
        [
          "cumulative Simpson, odd number",
          worst(cumulativeIntegral(fortyOne, 1000, { rule: "simpson" }), calculus.cumulativeSimpson41),
        ],
        ["trapezoid", relative(integral(forty, 1000), calculus.trapezoid)],
        ["Simpson, even number", relative(integral(forty, 1000, { rule: "simpson" }), calculus.simpson40)],
        ["Simpson, odd number", relative(integral(fortyOne, 1000, { rule: "simpson" }), calculus.simpson41)],
      ].map(([name, error]) => ({ name: name as string, error: error as number, allowed: 1e-13 })),
    },
    {
      what: "`savitzkyGolayWeights`",
      against: "rational arithmetic (Python fractions)",
      because: "10⁻¹³",
      cases: calculus.weights.map(({ weights: _, exact, ...item }) => ({
        name: Object.values(item).join(", "),
        error: worst(savitzkyGolayWeights(item), exact),
        allowed: 1e-13,
      })),
    },
    {
      what: "`savitzkyGolayWeights`",
      against: `${SCIPY} \`savgol_coeffs\``,
      because: "10⁻¹³ and SciPy's own distance from the exact weights, which reaches 2 · 10⁻⁶ at degree 8",
      cases: calculus.weights.map(({ weights, exact, ...item }) => ({
        name: Object.values(item).join(", "),
        error: worst(savitzkyGolayWeights(item), weights),
        allowed: 1e-13 + 1.01 * worst(exact, weights),
      })),
    },
    {
      what: "`savitzkyGolay`",
      against: `${SCIPY} \`savgol_filter\``,
      because: "10⁻¹⁰: the weights of SciPy, as above",
      cases: calculus.smooth.map(({ output, ...item }) => ({
        name: Object.values(item).join(", "),
        error: worst(savitzkyGolay(forty, { ...item, sampleRate: 1000 }), output),
        allowed: 1e-10,
      })),
    },
    {
      what: "`resample`",
      against: `${SCIPY} \`resample_poly\``,
      because: "10⁻¹³",
      cases: resampling.cases.map(({ up, down, input, ends, output }) => {
        const samples = Float64Array.from(resampling.inputs[input as "contact" | "running"]);
        const got = resample(samples, { from: down * 40, to: up * 40, ends: ends as "odd" });
        return { name: `${up}/${down}, ends ${ends}`, error: worst(got, output), allowed: 1e-13 };
      }),
    },
    {
      what: "`interpolate`, `timeNormalise`, `fillGaps`",
      against: `${SCIPY} \`CubicSpline\`, \`PchipInterpolator\`, ${NUMPY} \`interp\``,
      because: "10⁻¹²",
      cases: [
        ...resampling.curves.flatMap(({ times, values, at, ...wanted }) =>
          (["linear", "cubic", "pchip"] as const).map((method) => ({
            name: `${method}, ${times.length} points`,
            error: worst(
              interpolate(Float64Array.from(times), Float64Array.from(values), at, { method }),
              wanted[method],
            ),
            allowed: 1e-12,
          })),
        ),
        ...single(
          "101 points",
          worst(
            timeNormalise(Float64Array.from(resampling.timeNormalised.input), 1000, 0, 0.08),
            resampling.timeNormalised.output,
          ),
          1e-12,
        ),
        ...(["linear", "cubic", "pchip"] as const).map((method) => gapCase(method)),
      ],
    },
    {
      what: "`detrend`",
      against: `${SCIPY} \`detrend\``,
      because: "10⁻¹³",
      cases: [
        { name: "linear", error: worst(detrend(contact), resampling.detrendLinear), allowed: 1e-13 },
        {
          name: "constant",
          error: worst(detrend(contact, { type: "constant" }), resampling.detrendConstant),
          allowed: 1e-13,
        },
      ],
    },
    {
      what: "`powerSpectralDensity`, `powerFrequency`",
      against: `${SCIPY} \`welch\``,
      because: "10⁻¹²",
      cases: spectrum.cases.flatMap(({ frequency, density, below99, ...item }) => {
        const options = item as PowerSpectralDensityOptions;
        const got = powerSpectralDensity(Float64Array.from(spectrum.input), spectrum.sampleRate, options);
        const name = Object.values(item).join(", ");
        return [
          { name: `density ${name}`, error: worst(got.density, density), allowed: 1e-12 },
          { name: `frequency ${name}`, error: worst(got.frequency, frequency), allowed: 1e-15 },
          ...(below99 === null
            ? []
            : single(`99 % below, ${name}`, relative(powerFrequency(got, 0.99), below99), 1e-12)),
        ];
      }),
    },
    {
      what: "`residualAnalysis`, `whitenessAnalysis`",
      against: `${SCIPY} \`sosfiltfilt\`, ${NUMPY} \`polyfit\`, \`correlate\``,
      because: "10⁻¹⁰",
      cases: cutoffs.cases.flatMap((item) => {
        const samples = Float64Array.from(item.input);
        const fitRange = item.fitRange as [number, number];
        const found = residualAnalysis(samples, item.sampleRate, { cutoffs: item.cutoffs, fitRange });
        const white = whitenessAnalysis(samples, item.sampleRate, { cutoffs: item.tried });
        return [
          ["residuals", worst(found.residuals, item.residuals)],
          ["intercept", relative(found.noise, item.intercept)],
          ["slope", relative(found.slope, item.slope)],
          ["R²", relative(found.rSquared, item.rSquared)],
          ["cutoff", relative(found.cutoff as number, item.chosen)],
          ["whiteness", worst(white.deviations, item.deviations)],
          ["whitest", relative(white.cutoff, item.whitest)],
        ].map(([name, error]) => ({ name: `${name}, ${item.name}`, error: error as number, allowed: 1e-10 }));
      }),
    },
  ];
}

function gapCase(method: InterpolationMethod): Case {
  const holed = contact.slice();
  for (const place of resampling.gap.missing) holed[place] = Number.NaN;
  const { samples } = fillGaps(holed, 1000, { method });
  const got = resampling.gap.missing.map((place) => samples[place] as number);
  return { name: `gaps, ${method}`, error: worst(got, resampling.gap[method]), allowed: 1e-12 };
}
