import fc from "fast-check";
import { RESERVED_NAMES } from "../../src/exchange/findProblem.js";
import type { AnyShape } from "../../src/exchange/shape.js";

const LARGEST = Number.MAX_VALUE;
const name = fc.oneof(fc.string({ maxLength: 8 }), fc.constantFrom("contactTime", "1", "toString", "ä [m]"));

/** Values of a shape, odd ones too. */
export function arbitraryOf(shape: AnyShape): fc.Arbitrary<unknown> {
  switch (shape.kind) {
    case "number": {
      const { from = -LARGEST, to = LARGEST, whole } = shape;
      return whole
        ? fc.integer({ min: from, max: Math.min(to, Number.MAX_SAFE_INTEGER) })
        : fc.double({ min: from, max: to, noNaN: true });
    }
    case "text":
      return fc.oneof(
        fc.string({ unit: "binary", maxLength: 12 }),
        fc.constantFrom("NaN", "null", '"', "\n"),
      );
    case "truth":
      return fc.boolean();
    case "scalar":
      return fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.string());
    case "words":
      return fc.constantFrom(...Object.keys(shape.words));
    case "or null":
      return fc.option(arbitraryOf(shape.value), { nil: null });
    case "list": {
      const { length } = shape;
      return fc.array(arbitraryOf(shape.of), length === undefined ? { maxLength: 3 } : sized(length));
    }
    case "named":
      return fc.dictionary(
        name.filter((word) => !RESERVED_NAMES.includes(word)),
        arbitraryOf(shape.of),
        { maxKeys: 3, noNullPrototype: true },
      );
    case "fields": {
      const each = (shapes: Readonly<Record<string, AnyShape>>) =>
        Object.fromEntries(Object.entries(shapes).map(([field, part]) => [field, arbitraryOf(part)]));
      return fc.record(
        { ...each(shape.always), ...each(shape.maybe) },
        { requiredKeys: Object.keys(shape.always), noNullPrototype: true },
      );
    }
  }
}

const sized = (length: number) => ({ minLength: length, maxLength: length });
