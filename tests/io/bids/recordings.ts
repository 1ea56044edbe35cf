import fc from "fast-check";
import type { Channel, MarkerSet, Platform, RecordedEvent, Recording } from "../../../src/recording/index.js";
import { footwear } from "../footwear.js";

const KINDS = {
  forward: ["force", "forward", "N"],
  up: ["force", "up", "N"],
  right: ["force", "right", "N"],
  cop_forward: ["centre-of-pressure", "forward", "m"],
  cop_right: ["centre-of-pressure", "right", "m"],
  free_moment: ["free-moment", "up", "N m"],
} as const;
const OWN = Object.keys(KINDS) as (keyof typeof KINDS)[];

/** Samples up to a size: what is no force is refused, what is kept as it is may be anything. */
const sampleUpTo = (max: number) =>
  fc.oneof(
    { weight: 8, arbitrary: fc.double({ min: -max, max, noNaN: true }) },
    { weight: 1, arbitrary: fc.constant(Number.NaN) },
    { weight: 1, arbitrary: fc.constantFrom(0, -0, max, 5e-324, -max) },
  );
const series = (length: number, max = 100_000) =>
  fc
    .array(sampleUpTo(max), { minLength: length, maxLength: length })
    .map((values) => new Float64Array(values));
const label = fc
  .oneof(
    fc.string({ minLength: 1, maxLength: 10 }),
    fc.constantFrom("Fx", "a\tb", '"', '"x', "Fx_2", "grf, z"),
  )
  .filter((text) => text === text.trim() && text !== "" && text !== "n/a" && !/[\r\n]/.test(text));
/** A number about the trial: −0 is written as 0 there, and means the same. */
const about = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((value) => value + 0);
const optional = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });
const side = fc.constantFrom("left" as const, "right" as const);

const channelsOf = (length: number): fc.Arbitrary<Channel[]> =>
  fc
    .record({
      plates: fc.uniqueArray(fc.option(label, { nil: undefined }), { minLength: 1, maxLength: 3 }),
      kinds: fc.subarray(OWN),
      others: fc.uniqueArray(
        fc.tuple(label, fc.oneof(label, fc.constant("")), fc.option(label, { nil: undefined })),
        {
          selector: ([name]) => name,
          maxLength: 2,
        },
      ),
    })
    .chain(({ plates, kinds, others }) => {
      const shapes = [
        ...plates
          .flatMap((plate) => kinds.map((kind) => ({ kind, plate })))
          .map(({ kind, plate }) => {
            const [quantity, direction, unit] = KINDS[kind];
            return { quantity, direction, unit, plate };
          }),
        ...others.map(([name, unit, plate]) => ({
          quantity: "other" as const,
          direction: null,
          unit,
          plate,
          name,
        })),
      ];
      const most = (quantity: string) => (quantity === "other" ? Number.MAX_VALUE : undefined);
      const filled = shapes.map(({ quantity }) => fc.tuple(label, series(length, most(quantity))));
      return fc.tuple(...filled).map((parts) =>
        shapes.map(({ plate, ...shape }, k): Channel => {
          const [name, samples] = parts[k] as [string, Float64Array];
          return { name, ...shape, samples, ...(plate !== undefined && { plate }) };
        }),
      );
    });

const position = fc.record({ forward: about(-5, 5), up: about(-5, 5), right: about(-5, 5) });
const unitsOf = (type: 1 | 2 | 3 | 4): readonly string[] =>
  ({
    1: ["N", "N", "N", "m", "m", "N m"],
    2: ["N", "N", "N", "N m", "N m", "N m"],
    3: Array<string>(8).fill("N"),
    4: Array<string>(6).fill("V"),
  })[type];

const platformOf = (name: string, length: number): fc.Arbitrary<Platform> =>
  fc.constantFrom(1 as const, 2 as const, 3 as const, 4 as const).chain((type) =>
    fc
      .record({
        samples: fc.tuple(...unitsOf(type).map(() => fc.tuple(label, series(length)))),
        corner: position,
        origin: fc.tuple(about(-1, 1), about(-1, 1), about(-1, 1)),
        calibration: fc.array(fc.array(about(-1e4, 1e4), { minLength: 6, maxLength: 6 }), {
          minLength: 6,
          maxLength: 6,
        }),
        zero: optional(fc.constant({ from: 0, to: length })),
        side: optional(side),
      })
      .map(
        ({ samples, corner: { forward, up, right }, origin, calibration, zero, side }): Platform => ({
          name,
          type,
          channels: samples.map(([own, values], k) => ({
            name: own,
            unit: unitsOf(type)[k] as string,
            samples: values,
          })),
          corners: [
            { forward: forward + 0.6, up, right: right + 0.4 },
            { forward: forward - 0.6, up, right: right + 0.4 },
            { forward: forward - 0.6, up, right: right - 0.4 },
            { forward: forward + 0.6, up, right: right - 0.4 },
          ],
          origin,
          ...(type === 4 && { calibration }),
          ...(zero !== undefined && { zero }),
          ...(side !== undefined && { side }),
        }),
      ),
  );

const markersOf = (clock: {
  sampleRate: number;
  startTime: number;
  length: number;
}): fc.Arbitrary<MarkerSet> =>
  fc
    .record({
      names: fc.uniqueArray(label, { minLength: 1, maxLength: 3 }),
      own: optional(
        fc.record({
          sampleRate: about(0.5, 20_000),
          startTime: about(-10, 1000),
          length: fc.integer({ min: 1, max: 9 }),
        }),
      ),
    })
    .chain(({ names, own }) => {
      const { sampleRate, startTime, length } = own ?? clock;
      return fc
        .tuple(...names.map(() => fc.tuple(series(length), series(length), series(length))))
        .map((samples) => ({
          sampleRate,
          startTime,
          markers: names.map((name, k) => {
            const [forward, up, right] = samples[k] as [Float64Array, Float64Array, Float64Array];
            return { name, forward, up, right };
          }),
        }));
    });

const events: fc.Arbitrary<RecordedEvent[]> = fc.array(
  fc
    .record({ label, time: about(-100, 1000), side: optional(side) })
    .map(({ side: foot, ...event }) => ({ ...event, ...(foot !== undefined && { side: foot }) })),
  { minLength: 1, maxLength: 3 },
);

/** Recordings of every kind that the type allows: plates, platforms, markers at any rate, events, gaps. */
export const recordings: fc.Arbitrary<Recording> = fc
  .record({
    length: fc.integer({ min: 1, max: 12 }),
    sampleRate: about(0.5, 20_000),
    startTime: about(-10, 1000),
    platformNames: fc.uniqueArray(label, { maxLength: 2 }),
    withMarkers: fc.boolean(),
  })
  .chain(({ length, sampleRate, startTime, platformNames, withMarkers }) =>
    fc
      .record({
        channels: channelsOf(length),
        platforms: fc.tuple(...platformNames.map((name) => platformOf(name, length))),
        markers: withMarkers ? markersOf({ sampleRate, startTime, length }) : fc.constant(undefined),
        events: optional(events),
        mass: optional(about(1, 499)),
        height: optional(about(0.5, 2.9)),
        speed: optional(about(0, 12.9)),
        grade: optional(about(-1, 1)),
        surface: optional(fc.constantFrom("ground" as const, "belt" as const)),
        firstFoot: optional(side),
        footwear: optional(footwear),
      })
      .map(({ channels, platforms, mass, height, ...trial }): Recording => {
        const rows =
          channels.length + platforms.length > 0 ? length : (trial.markers?.markers[0]?.forward.length ?? 0);
        return {
          sampleRate,
          startTime,
          channels,
          ...(platforms.length > 0 && { platforms }),
          subject: { ...(mass !== undefined && { mass }), ...(height !== undefined && { height }) },
          ...Object.fromEntries(Object.entries(trial).filter(([, value]) => value !== undefined)),
          origin: { format: "motion-bids", rows },
          cautions: [],
        };
      }),
  )
  .filter(
    ({ channels, platforms, markers }) =>
      channels.length > 0 || platforms !== undefined || markers !== undefined,
  );
