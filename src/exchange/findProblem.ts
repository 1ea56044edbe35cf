import type { ErrorCode } from "../units/index.js";
import type { AnyShape } from "./shape.js";

/** What is wrong with a value, and where. */
export interface Problem {
  readonly code: ErrorCode;
  /** Path of the value, such as `trial.steps[3].values.contactTime`. */
  readonly where: string;
  /** What stands there and what is allowed, as a clause. */
  readonly message: string;
  readonly values: Readonly<Record<string, unknown>>;
}

/** Names that in some programs reach an object's prototype; no field of a result has one. */
export const RESERVED_NAMES: readonly string[] = ["__proto__", "constructor", "prototype"];

/** Finds the first place where a value differs from a shape; `null` where it is of the shape. */
export function findProblem(value: unknown, shape: AnyShape, where: string): Problem | null {
  switch (shape.kind) {
    case "or null":
      if (value === null) return null;
      return orNull(findProblem(value, shape.value, where), where);
    case "number":
      return problemOfNumber(value, shape, where);
    case "text":
      return typeof value === "string" ? null : wrong(value, "a text", where);
    case "truth":
      return typeof value === "boolean" ? null : wrong(value, "true or false", where);
    case "scalar":
      if (typeof value === "string") return null;
      return typeof value === "number"
        ? problemOfNumber(value, { from: undefined, to: undefined, whole: undefined }, where)
        : wrong(value, "a number or a text", where);
    case "words":
      return typeof value === "string" && Object.hasOwn(shape.words, value)
        ? null
        : wrong(value, Object.keys(shape.words).map(quoted).join(" or "), where, "out-of-range");
    case "list":
      return problemOfList(value, shape, where);
    case "named":
    case "fields":
      return isObject(value) ? problemOfObject(value, shape, where) : wrong(value, "an object", where);
  }
}

function problemOfNumber(
  value: unknown,
  {
    from,
    to,
    whole,
  }: {
    readonly from?: number | undefined;
    readonly to?: number | undefined;
    readonly whole?: true | undefined;
  },
  where: string,
): Problem | null {
  const bounds = from === undefined ? "" : to === undefined ? ` from ${from}` : ` from ${from} to ${to}`;
  const needed = `a ${whole ? "whole" : "finite"} number${bounds}`;
  if (typeof value !== "number") return wrong(value, needed, where);
  if (!Number.isFinite(value)) return wrong(value, needed, where, "not-finite");
  const inside =
    (from === undefined || value >= from) &&
    (to === undefined || value <= to) &&
    (!whole || Number.isInteger(value));
  return inside ? null : wrong(value, needed, where, "out-of-range");
}

function problemOfList(
  value: unknown,
  shape: Extract<AnyShape, { readonly kind: "list" }>,
  where: string,
): Problem | null {
  if (!Array.isArray(value)) return wrong(value, "a list", where);
  if (shape.length !== undefined && value.length !== shape.length) {
    return {
      code: "out-of-range",
      where,
      message: `${where} has ${value.length} entries; ${shape.length} are needed`,
      values: { given: value.length, allowed: shape.length },
    };
  }
  for (let k = 0; k < value.length; k++) {
    const problem = findProblem(value[k], shape.of, `${where}[${k}]`);
    if (problem !== null) return problem;
  }
  return null;
}

function problemOfObject(
  value: Readonly<Record<string, unknown>>,
  shape: Extract<AnyShape, { readonly kind: "named" | "fields" }>,
  where: string,
): Problem | null {
  if (shape.kind === "fields") {
    for (const name of Object.keys(shape.always)) {
      if (Object.hasOwn(value, name) && value[name] !== undefined) continue;
      return {
        code: "missing-value",
        where: `${where}.${name}`,
        message: `${where} has no ${quoted(name)}, which it needs`,
        values: { allowed: Object.keys(shape.always) },
      };
    }
  }
  for (const [name, entry] of Object.entries(value)) {
    // JSON has no undefined: it leaves the name out.
    if (entry === undefined) continue;
    const problem = findEntryProblem(name, entry, shape, where);
    if (problem !== null) return problem;
  }
  return null;
}

function findEntryProblem(
  name: string,
  entry: unknown,
  shape: Extract<AnyShape, { readonly kind: "named" | "fields" }>,
  where: string,
): Problem | null {
  const place = /^[A-Za-z_]\w{0,60}$/.test(name) ? `${where}.${name}` : `${where}[${quoted(name)}]`;
  if (RESERVED_NAMES.includes(name)) {
    return {
      code: "unreadable-file",
      where: place,
      message: `${where} holds ${quoted(name)}, a name that is never taken`,
      values: { given: name },
    };
  }
  if (shape.kind === "named") return findProblem(entry, shape.of, place);
  const known = Object.hasOwn(shape.always, name)
    ? shape.always[name]
    : Object.hasOwn(shape.maybe, name)
      ? shape.maybe[name]
      : undefined;
  if (known !== undefined) return findProblem(entry, known, place);
  const allowed = [...Object.keys(shape.always), ...Object.keys(shape.maybe)];
  return {
    code: "unreadable-file",
    where: place,
    message: `${where} holds ${quoted(name)}, which it does not know; it knows ${allowed.join(", ")}`,
    values: { given: name, allowed },
  };
}

/** Adds to what is needed that `null` will do. */
function orNull(problem: Problem | null, where: string): Problem | null {
  if (problem === null || problem.where !== where) return problem;
  return { ...problem, message: problem.message.replace(/ is needed$/, ", or null, is needed") };
}

function wrong(value: unknown, needed: string, where: string, code: ErrorCode = "wrong-type"): Problem {
  return {
    code,
    where,
    message: `${where} is ${described(value)}; ${needed} is needed`,
    values: { given: described(value), allowed: needed },
  };
}

function described(value: unknown): string {
  if (typeof value === "string") return quoted(value);
  if (Array.isArray(value)) return "a list";
  if (typeof value === "object" && value !== null) return "an object";
  return typeof value === "function" || typeof value === "symbol" ? `a ${typeof value}` : String(value);
}

function quoted(text: string): string {
  return JSON.stringify(text.length > 40 ? `${text.slice(0, 39)}…` : text);
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
