/** The stable codes of {@link GaitKineticsError}. Messages may change between versions, codes do not. */
export type ErrorCode =
  | "out-of-range"
  | "not-finite"
  | "wrong-type"
  | "unknown-option"
  | "unknown-unit"
  | "unknown-axes"
  | "unit-mismatch"
  | "unequal-lengths"
  | "too-short"
  | "missing-channel"
  | "missing-value"
  | "gap"
  | "uneven-time"
  | "unreadable-file"
  | "no-contact"
  | "not-comparable"
  | "conflict";

/** What a message says, once more as data, so that a program can translate it. */
export interface ErrorDetails {
  /** The argument or option at fault. */
  readonly argument?: string | undefined;
  /** Where: a row and column of a file, a channel, a time. */
  readonly where?: string | undefined;
  /** The values at play: what was given, what is allowed. */
  readonly values?: Readonly<Record<string, unknown>> | undefined;
}

/** The one error this library throws: the caller can put it right, and the message says how. */
export class GaitKineticsError extends Error {
  override readonly name = "GaitKineticsError";
  readonly code: ErrorCode;
  readonly argument: string | undefined;
  readonly where: string | undefined;
  readonly values: Readonly<Record<string, unknown>> | undefined;

  constructor(code: ErrorCode, message: string, details: ErrorDetails = {}) {
    // A name from a file may hold a line break; a message is one line.
    super(message.replace(/[\r\n]+/g, " "));
    this.code = code;
    this.argument = details.argument;
    this.where = details.where;
    this.values = details.values;
  }
}

/**
 * Tells whether something caught is a {@link GaitKineticsError}, also one thrown by the library's other module format,
 * where `instanceof` fails.
 * @example isGaitKineticsError(new Error("no")) // false
 */
export function isGaitKineticsError(caught: unknown): caught is GaitKineticsError {
  return (
    caught instanceof Error &&
    caught.name === "GaitKineticsError" &&
    typeof (caught as { code?: unknown }).code === "string"
  );
}

/**
 * Throws a {@link GaitKineticsError}.
 * @throws GaitKineticsError always, with the code given.
 * @example
 * fail("out-of-range", "mass is -70 kg; a number above 0 is needed", { argument: "mass" }) // throws out-of-range
 */
export function fail(code: ErrorCode, message: string, details: ErrorDetails = {}): never {
  throw new GaitKineticsError(code, message, details);
}
