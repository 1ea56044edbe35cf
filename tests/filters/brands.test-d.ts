import { expectTypeOf, it } from "vitest";
import {
  bandPass,
  bandStop,
  butterworth,
  derivative,
  detrend,
  fillGaps,
  filterCausal,
  filterZeroPhase,
  gustafsson,
  highPass,
  lowPass,
  removeOffset,
  resample,
  streamingFilter,
  timeNormalise,
} from "../../src/filters/index.js";
import { hertz, newtons, type Samples, samplesOf } from "../../src/units/index.js";

const force = samplesOf("N", new Float64Array(40));
const moment = samplesOf("N m", new Float64Array(40));
const options = { cutoff: hertz(50), sampleRate: hertz(1000) };

it("the unit of the samples survives the filter", () => {
  expectTypeOf(lowPass(force, options)).toEqualTypeOf<Samples<"N">>();
  expectTypeOf(lowPass(new Float64Array(40), options)).toEqualTypeOf<Float64Array<ArrayBuffer>>();
  expectTypeOf(lowPass(new Float32Array(40), options)).toEqualTypeOf<Float64Array>();
  expectTypeOf(timeNormalise(force, 1000, 0, 0.03)).toEqualTypeOf<Samples<"N">>();
});

it("so it does in every filter and in whatever gives samples of the same quantity", () => {
  const design = butterworth({ type: "low-pass", order: 2, cutoff: 50, sampleRate: 1000 });
  const band = { cutoff: [hertz(5), hertz(50)], sampleRate: hertz(1000), ends: gustafsson } as const;
  expectTypeOf(highPass(force, options)).toEqualTypeOf<Samples<"N">>();
  expectTypeOf(bandPass(force, band)).toEqualTypeOf<Samples<"N">>();
  expectTypeOf(bandStop(force, band)).toEqualTypeOf<Samples<"N">>();
  expectTypeOf(filterZeroPhase(force, design)).toEqualTypeOf<Samples<"N">>();
  expectTypeOf(filterCausal(force, design)).toEqualTypeOf<Samples<"N">>();
  expectTypeOf(streamingFilter(design).push(force)).toEqualTypeOf<Samples<"N">>();
  expectTypeOf(resample(force, { from: 1000, to: 240 })).toEqualTypeOf<Samples<"N">>();
  expectTypeOf(detrend(force)).toEqualTypeOf<Samples<"N">>();
  expectTypeOf(fillGaps(force, 1000).samples).toEqualTypeOf<Samples<"N">>();
  expectTypeOf(removeOffset(force, 1000, 0, 0.01).samples).toEqualTypeOf<Samples<"N">>();
  // A derivative is another quantity: it has no unit until it is given one.
  expectTypeOf(derivative(force, 1000)).toEqualTypeOf<Float64Array>();
});

it("each of several channels keeps its own", () => {
  const [filteredForce, filteredMoment, widened] = lowPass([force, moment, new Float32Array(40)], options);
  expectTypeOf(filteredForce).toEqualTypeOf<Samples<"N">>();
  expectTypeOf(filteredMoment).toEqualTypeOf<Samples<"N m">>();
  expectTypeOf(widened).toEqualTypeOf<Float64Array>();
  const many: Samples<"N">[] = [force, force];
  expectTypeOf(lowPass(many, options)).toEqualTypeOf<Samples<"N">[]>();
});

it("another unit, numbers in a plain array and a force as cutoff are refused", () => {
  // @ts-expect-error newtons do not pass as newton metres
  const wrong: Samples<"N m"> = lowPass(force, options);
  expectTypeOf(wrong).toEqualTypeOf<Samples<"N m">>();
  // @ts-expect-error a plain array of numbers is no array of samples
  lowPass([1, 2, 3], options);
  // @ts-expect-error the cutoff is a frequency
  lowPass(force, { cutoff: newtons(50), sampleRate: 1000 });
  // @ts-expect-error the sampling rate is needed
  lowPass(force, { cutoff: 50 });
});
