import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Axes, type AxisDirection, type AxisMapping, axisMapping } from "../../src/recording/index.js";

type Vector = readonly [number, number, number];
const FRAME = ["forward", "up", "right"] as const;
const NAMES = ["x", "y", "z"] as const;
const OPPOSITE: Readonly<Record<string, AxisDirection>> = { forward: "backward", up: "down", right: "left" };

/** All 48 ways to lay three axes along three lines. */
const everyAxes: Required<Axes>[] = [
  [0, 1, 2],
  [1, 2, 0],
  [2, 0, 1],
  [0, 2, 1],
  [2, 1, 0],
  [1, 0, 2],
].flatMap((order) =>
  Array.from({ length: 8 }, (_, signs) => {
    const word = (k: number): AxisDirection => {
      const direction = FRAME[order[k] as number] as AxisDirection;
      return (signs >> k) % 2 === 0 ? direction : (OPPOSITE[direction] as AxisDirection);
    };
    return { x: word(0), y: word(1), z: word(2) };
  }),
);

const cross = ([a, b, c]: Vector, [d, e, f]: Vector): Vector => [b * f - c * e, c * d - a * f, a * e - b * d];
/** Components along forward, up, right of a vector given along the source's axes. */
const mapped = (mapping: AxisMapping, vector: Vector): Vector =>
  FRAME.map((direction) => {
    const k = NAMES.findIndex((name) => mapping[name]?.direction === direction);
    return (vector[k] as number) * (mapping[NAMES[k] as "x"]?.sign as number);
  }) as unknown as Vector;

const vector = fc.tuple(
  ...[0, 1, 2].map(() => fc.integer({ min: -1000, max: 1000 })),
) as unknown as fc.Arbitrary<Vector>;

it("there are 48 of them, half right-handed", () => {
  expect(new Set(everyAxes.map((axes) => JSON.stringify(axes))).size).toBe(48);
  expect(everyAxes.filter((axes) => axisMapping(axes).handedness === 1)).toHaveLength(24);
});

it("by definition: in each, the moment of a mapped force is the mapped moment times handedness", () =>
  fc.assert(
    fc.property(fc.constantFrom(...everyAxes), vector, vector, (axes, place, force) => {
      const mapping = axisMapping(axes);
      const moment = mapped(mapping, cross(place, force)).map(
        (part) => part * (mapping.handedness as number) + 0,
      );
      expect(cross(mapped(mapping, place), mapped(mapping, force)).map((part) => part + 0)).toEqual(moment);
    }),
    { numRuns: 500, seed: 20 },
  ));

it.each<[string, Axes, 1 | -1 | null]>([
  [
    "x forward, y up, z right (ISB, Wu & Cavanagh 1995) is right-handed",
    { x: "forward", y: "up", z: "right" },
    1,
  ],
  ["x right, y forward, z up is right-handed", { x: "right", y: "forward", z: "up" }, 1],
  ["x forward, y left, z up is right-handed", { x: "forward", y: "left", z: "up" }, 1],
  ["x forward, y right, z down is right-handed", { x: "forward", y: "right", z: "down" }, 1],
  ["x right, y backward, z up is left-handed", { x: "right", y: "backward", z: "up" }, -1],
  ["two axes have no hand", { x: "right", z: "up" }, null],
  ["none has neither", {}, null],
  ["an undefined axis is one left out", { x: undefined, z: "up" }, null],
])("%s", (_, axes, handedness) => {
  expect(axisMapping(axes).handedness).toBe(handedness);
});

it("gives line and sign", () => {
  expect(axisMapping({ z: "down" })).toEqual({ z: { direction: "up", sign: -1 }, handedness: null });
});

describe("refuses", () => {
  it.each<[string, unknown]>([
    ["two axes on one line", { x: "up", y: "down" }],
    ["a word that is no direction", { x: "north" }],
    ["a name every object has", { x: "constructor" }],
    ["a number", { x: 1 }],
    ["an axis that is none", { w: "up" }],
    ["no object", "x right"],
    ["null", null],
  ])("%s", (_, axes) => {
    expect(() => axisMapping(axes as Axes)).toThrow(
      expect.objectContaining({ code: "unknown-axes", message: expect.stringContaining('{ x: "right"') }),
    );
  });
});
