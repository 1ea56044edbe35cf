/** The space between a number and a short unit. */
const NUMBER_AND_UNIT = /(\d) (?=(?:%|BW|Hz|kg|km|m|m\/s|ms|N|s|J)(?![\w/]))/g;

/** The space within a unit of two: N s, N m, BW s. */
const WITHIN_UNIT = /\b(N|BW) (?=[sm](?![\w]))/g;

/** Puts a no-break space between a number and its unit, and within a unit of two, so that no line ends there. */
export function keepTogether(text: string): string {
  return text.replace(NUMBER_AND_UNIT, "$1\u00a0").replace(WITHIN_UNIT, "$1\u00a0");
}
