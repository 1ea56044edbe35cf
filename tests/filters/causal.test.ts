import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  butterworth,
  criticallyDamped,
  type FilterState,
  filterCausal,
  streamingFilter,
} from "../../src/filters/index.js";
import causal from "../fixtures/filters/causal.json" with { type: "json" };
import { worst } from "./comparison.js";

const refuse = (code: string, run: () => unknown, words?: RegExp) => {
  expect(run).toThrow(expect.objectContaining({ code }));
  if (words) expect(run).toThrow(words);
};
const design = butterworth({ type: "low-pass", order: 2, cutoff: 50, sampleRate: 1000 });
const contact = Float64Array.from(causal.input);

it("SciPy 1.17.1: blocks and the states between them", () => {
  const stream = streamingFilter(design);
  for (const { start, stop, output, stateAfter } of causal.blocks) {
    expect(worst(stream.push(contact.subarray(start, stop)), output)).toBeLessThan(1e-12);
    expect(worst(stream.state() as FilterState, stateAfter.flat())).toBeLessThan(1e-12);
  }
});

const anyDesign = fc.oneof(
  fc
    .record({ order: fc.integer({ min: 1, max: 8 }), cutoff: fc.double({ min: 1, max: 499, noNaN: true }) })
    .chain((one) =>
      fc.constantFrom(
        ...(["low-pass", "high-pass"] as const).map((type) =>
          butterworth({ ...one, type, sampleRate: 1000 }),
        ),
      ),
    ),
  fc.constant(butterworth({ type: "band-pass", order: 3, cutoff: [5, 60], sampleRate: 1000 })),
  fc.constant(criticallyDamped({ order: 4, cutoff: 30, sampleRate: 1000 })),
);
const signal = fc.array(fc.double({ min: -2000, max: 2000, noNaN: true }), { minLength: 1, maxLength: 300 });
const cuts = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 8 });

/** Cuts samples at parts of their length, some of the pieces empty. */
function pieces(values: Float64Array, at: readonly number[]): Float64Array[] {
  const places = [
    0,
    ...at.map((part) => Math.round(part * values.length)).sort((a, b) => a - b),
    values.length,
  ];
  return places.slice(1).map((to, i) => values.slice(places[i], to));
}
const joined = (blocks: readonly Float64Array[]) => Float64Array.from(blocks.flatMap((block) => [...block]));

describe("laws", () => {
  it("a stream of blocks of any size is bit for bit one block", () =>
    fc.assert(
      fc.property(
        anyDesign,
        signal,
        cuts,
        fc.constantFrom("steady", "rest" as const),
        (one, values, at, start) => {
          const whole = Float64Array.from(values);
          const stream = streamingFilter(one, { start });
          const blocks = pieces(whole, at).map((piece) => stream.push(piece));
          expect(joined(blocks)).toEqual(filterCausal(whole, one, { start }));
        },
      ),
      { numRuns: 300 },
    ));
  it("so it is over many thousands of samples and for several channels, alone or side by side", () => {
    const long = Float64Array.from({ length: 5001 }, (_, i) => 800 * Math.sin(i / 30) + ((i * 7919) % 101));
    const channels = [long, long.map((value) => -3 * value), long.map((value) => value + 1)];
    const one = butterworth({ type: "low-pass", order: 5, cutoff: 40, sampleRate: 1000 });
    const batch = filterCausal(channels, one);
    channels.forEach((channel, i) => {
      expect(filterCausal(channel, one)).toEqual(batch[i]);
    });
    const stream = streamingFilter(one);
    const blocks = [0, 1, 1023, 1025, 4000].map((from, i, all) =>
      stream.push(channels.map((channel) => channel.subarray(from, all[i + 1] ?? 5001))),
    );
    channels.forEach((_, i) => {
      expect(joined(blocks.map((block) => block[i] as Float64Array))).toEqual(batch[i]);
    });
  });
  it("goes on from a state another run left", () =>
    fc.assert(
      fc.property(anyDesign, signal, fc.double({ min: 0, max: 1, noNaN: true }), (one, values, part) => {
        const whole = Float64Array.from(values);
        const [before, after] = pieces(whole, [part]) as [Float64Array, Float64Array];
        const first = streamingFilter(one);
        const head = first.push(before);
        const state = first.state();
        const tail = filterCausal(after, one, state === null ? {} : { start: state });
        expect(joined([head, tail])).toEqual(filterCausal(whole, one));
      }),
    ));
  it("dies away to nothing over zeros instead of going on in subnormal numbers, blocks or not", () => {
    for (const one of [
      butterworth({ type: "low-pass", order: 4, cutoff: 20, sampleRate: 1000 }),
      butterworth({ type: "high-pass", order: 3, cutoff: 20, sampleRate: 1000 }),
      butterworth({ type: "band-pass", order: 3, cutoff: [15, 60], sampleRate: 1000 }),
      criticallyDamped({ order: 4, cutoff: 30, sampleRate: 1000 }),
    ]) {
      const impulse = new Float64Array(40_000);
      impulse[0] = 700;
      const batch = filterCausal(impulse, one, { start: "rest" });
      expect(batch.slice(30_000).every((value) => value === 0)).toBe(true);
      const stream = streamingFilter(one, { start: "rest" });
      const blocks: Float64Array[] = [];
      for (let from = 0; from < impulse.length; from += 37)
        blocks.push(stream.push(impulse.slice(from, from + 37)));
      expect(joined(blocks)).toEqual(batch);
      expect((stream.state() as FilterState).every((value) => value === 0)).toBe(true);
    }
  });
  it("from the steady state a constant passes unchanged; from rest it swings in from nothing", () => {
    const constant = new Float64Array(400).fill(700);
    for (const sample of filterCausal(constant, design)) expect(sample).toBeCloseTo(700, 9);
    const swung = filterCausal(constant, design, { start: "rest" });
    expect(swung[0]).toBeLessThan(20);
    expect(swung[399]).toBeCloseTo(700, 9);
  });
  it("causal: what comes later changes nothing before it", () =>
    fc.assert(
      fc.property(anyDesign, signal, fc.nat(299), (one, values, place) => {
        const changed = Float64Array.from(values);
        if (place + 1 >= changed.length) return;
        changed[place + 1] = 5000;
        const [a, b] = [filterCausal(Float64Array.from(values), one), filterCausal(changed, one)];
        expect(a.slice(0, place + 1)).toEqual(b.slice(0, place + 1));
      }),
    ));
});

describe("input and output", () => {
  it("keeps arguments, gives copies of its state, writes in place on request", () => {
    const given = contact.slice();
    const stream = streamingFilter(design);
    expect(stream.state()).toBeNull();
    const fresh = stream.push(given);
    expect(given).toEqual(contact);
    const state = stream.state() as FilterState;
    state.fill(0);
    expect((stream.state() as FilterState).every((value) => value === 0)).toBe(false);
    const same = filterCausal(given, design, { inPlace: true });
    expect(same).toBe(given);
    expect(same).toEqual(fresh);
  });
  it("takes 32-bit samples, empty blocks and no channels", () => {
    expect(filterCausal(Float32Array.from([1, 2, 3]), design)).toEqual(
      filterCausal(new Float64Array([1, 2, 3]), design),
    );
    expect(filterCausal(new Float64Array(0), design)).toHaveLength(0);
    expect(filterCausal([], design)).toEqual([]);
  });
  it("refuses NaN and stays as it was", () => {
    const stream = streamingFilter(design);
    stream.push(contact.subarray(0, 60));
    const before = stream.state();
    for (const inPlace of [false, true]) {
      const own = streamingFilter(design, { start: before as FilterState, inPlace });
      const spoilt = contact.slice(60);
      spoilt[7] = Number.NaN;
      refuse("not-finite", () => own.push(spoilt), /sample 7/);
      expect(spoilt[6]).toBe(contact[66]);
      expect(own.push(contact.slice(60))).toEqual(filterCausal(contact, design).slice(60));
    }
    refuse("not-finite", () => stream.push(new Float64Array([1, Number.POSITIVE_INFINITY])), /sample 1/);
    expect(stream.state()).toEqual(before);
  });
  it("refuses another number of channels, unequal lengths, a start that does not fit", () => {
    const stream = streamingFilter(design);
    stream.push([contact, contact]);
    refuse("unequal-lengths", () => stream.push(contact), /1 channels; 2 are needed/);
    refuse("unequal-lengths", () => stream.push([contact, contact.slice(1)]), /channel 1 has 119/);
    refuse("wrong-type", () => filterCausal(contact, design, { start: new Float64Array(3) }), /3 numbers; 2/);
    refuse(
      "wrong-type",
      () => filterCausal(contact, design, { start: new Float64Array([0, Number.NaN]) }),
      /finite/,
    );
    refuse(
      "out-of-range",
      () => filterCausal(contact, design, { start: "slow" as "rest" }),
      /"steady" or "rest"/,
    );
    refuse("unknown-option", () => filterCausal(contact, design, { ends: "odd" } as object), /ends/);
    refuse("wrong-type", () => filterCausal("x" as unknown as Float64Array, design));
    refuse("wrong-type", () => streamingFilter(undefined as unknown as typeof design));
  });
});
