import { fail } from "../units/index.js";
import { wrongType } from "./wrongType.js";

/** Longest text that says what was on the feet, characters. Source: judgement of this library, for a line of a report. */
export const LONGEST_FOOTWEAR: number = 80;

/** What no line of text can hold, or shows as something else: controls, line ends, marks of direction, halves of a pair. */
const UNPRINTABLE = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/u;

/**
 * Checks that a text can say what was on the feet: one line of up to {@link LONGEST_FOOTWEAR} characters, without blanks at
 * its ends.
 *
 * Limits: what the words say is not checked; shoes are told apart by their words alone.
 * @param argument - Its name, for the message.
 * @param text - Such as `road shoe, 250 g`, or `barefoot`.
 * @returns The same text.
 * @throws GaitKineticsError `wrong-type`: no text; `out-of-range`: a blank one, one with blanks at its ends or characters
 * that cannot be printed on a line, one that is too long.
 * @example
 * checkFootwear("footwear", "road shoe, 250 g") // "road shoe, 250 g"
 */
export function checkFootwear(argument: string, text: unknown): string {
  if (typeof text !== "string") wrongType(argument, text, "a text");
  const given = JSON.stringify(text.slice(0, LONGEST_FOOTWEAR));
  const refuse = (what: string): never =>
    fail("out-of-range", `${argument} is ${given}; ${what}`, {
      argument,
      values: { given: text.slice(0, LONGEST_FOOTWEAR), longest: LONGEST_FOOTWEAR },
    });
  if (text.trim() === "")
    refuse('it must say what was on the feet, such as "road shoe, 250 g" or "barefoot"');
  if (UNPRINTABLE.test(text)) refuse("it must be one line of text, without control characters");
  if (text.trim() !== text) refuse("it must have no blanks at its ends");
  if (text.length > LONGEST_FOOTWEAR) {
    refuse(`it has ${text.length} characters; at most ${LONGEST_FOOTWEAR} are allowed`);
  }
  return text;
}
