import { expectTypeOf, it } from "vitest";
import { lowPass } from "../../src/filters/index.js";
import {
  bodyWeight,
  type Fraction,
  type Hertz,
  hertz,
  type Kilograms,
  kilograms,
  type MetresPerSecond,
  metres,
  type NewtonMetres,
  type Newtons,
  newtons,
  type Samples,
  samplesOf,
  seconds,
} from "../../src/units/index.js";
import { parseQuantity } from "../../src/units/parse/index.js";

const weigh = (mass: Kilograms): Newtons => bodyWeight(mass);
const sum = (samples: Samples<"N">): Newtons => samples.reduce((total, value) => total + value, 0);

it("plain numbers and Float64Arrays pass", () => {
  expectTypeOf(weigh).toBeCallableWith(70);
  expectTypeOf(sum).toBeCallableWith(new Float64Array(3));
  const rate: Hertz = 1000;
  const share: Fraction = 0.2;
  const plain: number = newtons(20) + share * rate;
  expectTypeOf(plain).toEqualTypeOf<number>();
});

it("the right unit passes", () => {
  expectTypeOf(weigh).toBeCallableWith(kilograms(70));
  expectTypeOf(sum).toBeCallableWith(samplesOf("N", new Float64Array(3)));
  expectTypeOf(newtons(5)).toExtend<number>();
});

it("newtons are refused where kilograms belong, and so is every other unit", () => {
  // @ts-expect-error a force is no mass
  weigh(newtons(686));
  // @ts-expect-error a weight is no mass
  weigh(bodyWeight(70));
  // @ts-expect-error a length is no mass
  weigh(metres(1.78));
  // @ts-expect-error a mass is no weight
  const weight: Newtons = kilograms(70);
  // @ts-expect-error a time is no rate
  const rate: Hertz = seconds(0.001);
  // @ts-expect-error a frequency is no speed
  const speed: MetresPerSecond = hertz(3);
  expectTypeOf([weight, rate, speed]).toExtend<readonly number[]>();
});

it("samples of another unit are refused", () => {
  // @ts-expect-error moments are no forces
  sum(samplesOf("N m", new Float64Array(3)));
  // @ts-expect-error an array of numbers holds no samples
  sum([1, 2, 3]);
});

it("arithmetic drops the unit, and an annotation states it again", () => {
  const product = newtons(700) * metres(0.1);
  expectTypeOf(product).toEqualTypeOf<number>();
  const moment: NewtonMetres = product;
  expectTypeOf(moment).toExtend<NewtonMetres>();
});

it("brands survive the filter, and none is made up", () => {
  const options = { cutoff: hertz(50), sampleRate: hertz(1000) };
  expectTypeOf(lowPass(samplesOf("N", new Float64Array(100)), options)).toEqualTypeOf<Samples<"N">>();
  expectTypeOf(lowPass(new Float64Array(100), options)).toExtend<Float64Array>();
  // @ts-expect-error filtered moments are no forces
  sum(lowPass(samplesOf("N m", new Float64Array(100)), options));
  // @ts-expect-error a time is no cutoff
  lowPass(new Float64Array(100), { ...options, cutoff: seconds(0.02) });
});

it("a parsed quantity has the unit of its dimension", () => {
  expectTypeOf(parseQuantity("154 lb", "mass")).toEqualTypeOf<Kilograms>();
  expectTypeOf(parseQuantity("12 km/h", "speed")).toEqualTypeOf<MetresPerSecond>();
  weigh(parseQuantity("154 lb", "mass"));
  // @ts-expect-error a parsed force is no mass
  weigh(parseQuantity("700 N", "force"));
  // @ts-expect-error no such dimension
  parseQuantity("5 V", "voltage");
});
