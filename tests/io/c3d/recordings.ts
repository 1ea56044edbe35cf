import fc from "fast-check";
import type { Channel, Platform, Recording } from "../../../src/recording/index.js";
import { footwear } from "../footwear.js";

/** The quantities of a plate, with direction and unit. */
export const KINDS = [
  ["force", "forward", "N"],
  ["force", "up", "N"],
  ["force", "right", "N"],
  ["centre-of-pressure", "forward", "m"],
  ["centre-of-pressure", "right", "m"],
  ["free-moment", "up", "N m"],
] as const;
const PLATFORM_UNITS = {
  1: ["N", "N", "N", "m", "m", "N m"],
  2: ["N", "N", "N", "N m", "N m", "N m"],
  3: ["N", "N", "N", "N", "N", "N", "N", "N"],
  4: ["V", "V", "V", "V", "V", "V"],
} as const;

/** Numbers that 32 bits hold in every form, so that what comes back can be compared exactly. */
const exact = fc.integer({ min: -30_000, max: 30_000 }).map((value) => value / 16 + 0);
const sample = fc.oneof({ weight: 9, arbitrary: exact }, { weight: 1, arbitrary: fc.constant(Number.NaN) });
const series = (length: number) =>
  fc.array(sample, { minLength: length, maxLength: length }).map((values) => new Float64Array(values));
const name = fc
  .string({ unit: "grapheme", minLength: 1, maxLength: 12 })
  .filter((text) => text === text.replace(/[ \0]+$/, "") && !/\p{Surrogate}/u.test(text));
const optional = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });
const defined = <T extends object>(value: T) =>
  Object.fromEntries(Object.entries(value).filter(([, one]) => one !== undefined));

const platforms = (length: number): fc.Arbitrary<Platform> =>
  fc
    .record({
      type: fc.constantFrom(1 as const, 2 as const, 3 as const, 4 as const),
      name,
      names: fc.array(name, { minLength: 8, maxLength: 8 }),
      values: fc.array(series(length), { minLength: 8, maxLength: 8 }),
      place: fc.tuple(exact, exact, exact),
      origin: fc.tuple(
        fc.constantFrom(0, -0.25, 0.125),
        fc.constantFrom(0, 0.5),
        fc.constantFrom(-0.0625, 0.03125),
      ),
      matrix: fc.array(fc.array(exact, { minLength: 6, maxLength: 6 }), { minLength: 6, maxLength: 6 }),
      from: fc.integer({ min: 0, max: length - 1 }),
      zeroed: fc.boolean(),
      side: optional(fc.constantFrom("left" as const, "right" as const)),
    })
    .map(
      ({
        type,
        name: own,
        names,
        values,
        place: [forward, up, right],
        origin,
        matrix,
        from,
        zeroed,
        side,
      }) => {
        const corner = (x: number, y: number) => ({ forward: forward + x, up, right: right + y });
        return {
          name: own,
          type,
          channels: PLATFORM_UNITS[type].map((unit, k) => ({
            name: names[k] as string,
            unit,
            samples: values[k] as Float64Array,
          })),
          corners: [corner(0.25, 0.25), corner(-0.25, 0.25), corner(-0.25, -0.25), corner(0.25, -0.25)],
          origin,
          ...(type === 4 && { calibration: matrix }),
          ...(zeroed && { zero: { from, to: length } }),
          ...(side !== undefined && { side }),
        } as Platform;
      },
    );

/** Recordings with whatever a file of this library can hold. */
export const recordings: fc.Arbitrary<Recording> = fc
  .record({
    length: fc.integer({ min: 1, max: 20 }),
    perFrame: fc.integer({ min: 1, max: 4 }),
    rate: fc.constantFrom(1000, 300, 1000 / 3, 59.94),
  })
  .chain(({ length, perFrame, rate }) =>
    fc
      .record({
        kinds: fc.subarray<(typeof KINDS)[number]>([...KINDS], {
          minLength: perFrame % 2 === 0 ? KINDS.length : 0,
        }),
        values: fc.array(series(length), { minLength: 8, maxLength: 8 }),
        plate: optional(fc.constantFrom("left", "right")),
        others: fc.uniqueArray(name, { maxLength: 2 }),
        platforms: fc.uniqueArray(platforms(length), { maxLength: 2, selector: (one) => one.name }),
        markers: fc.array(fc.record({ name, forward: series(4), up: series(4), right: series(4) }), {
          maxLength: 2,
        }),
        events: fc.array(
          fc.record({
            label: name,
            time: fc.double({ min: 0, max: 500, noNaN: true }),
            side: optional(fc.constantFrom("left" as const, "right" as const)),
          }),
          { maxLength: 3 },
        ),
        startTime: fc.oneof(
          fc.constantFrom(0, -3.25, 12.3456, 2, 1e5),
          fc.double({ min: -100, max: 1e4, noNaN: true }),
        ),
        mass: optional(fc.double({ min: 1, max: 499, noNaN: true })),
        height: optional(fc.double({ min: 0.5, max: 2.9, noNaN: true })),
        speed: optional(fc.double({ min: 0, max: 12.9, noNaN: true }).map((value) => value + 0)),
        grade: optional(fc.double({ min: -1, max: 1, noNaN: true }).map((value) => value + 0)),
        surface: optional(fc.constantFrom("ground" as const, "belt" as const)),
        firstFoot: optional(fc.constantFrom("left" as const, "right" as const)),
        footwear: optional(footwear),
      })
      .map(
        ({
          kinds,
          values,
          plate,
          others,
          platforms: plates,
          markers,
          events,
          startTime,
          mass,
          height,
          ...trial
        }): Recording => {
          const seen = markers.map((marker) => {
            // A marker is seen whole or not at all.
            const gap = (i: number) =>
              [marker.forward, marker.up, marker.right].some((axis) => Number.isNaN(axis[i]));
            const whole = (axis: Float64Array) => axis.map((value, i) => (gap(i) ? Number.NaN : value));
            return {
              name: marker.name,
              forward: whole(marker.forward),
              up: whole(marker.up),
              right: whole(marker.right),
            };
          });
          return {
            sampleRate: rate,
            startTime,
            channels: [
              ...kinds.map(
                ([quantity, direction, unit], k): Channel => ({
                  name: `${quantity} ${k}`,
                  quantity,
                  direction,
                  unit,
                  samples: values[k] as Float64Array,
                  ...(plate && { plate }),
                }),
              ),
              ...others.map(
                (own, k): Channel => ({
                  name: own,
                  quantity: "other",
                  direction: null,
                  unit: "mV",
                  samples: values[6 + k] as Float64Array,
                }),
              ),
            ],
            ...(plates.length > 0 && { platforms: plates }),
            ...(seen.length > 0 && { markers: { sampleRate: rate / perFrame, startTime, markers: seen } }),
            ...(events.length > 0 && {
              events: events.map((event) => defined(event) as (typeof events)[0] as never),
            }),
            subject: defined({ mass, height }),
            ...defined(trial),
            origin: { format: "c3d" },
            cautions: [],
          };
        },
      ),
  )
  .filter(
    ({ channels, platforms: plates, markers }) =>
      channels.length > 0 || plates !== undefined || markers !== undefined,
  );
