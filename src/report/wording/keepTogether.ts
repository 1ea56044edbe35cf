/** The space between a number and a short unit. */
const NUMBER_AND_UNIT = /(\d) (?=(?:%|BW|Hz|kg|km|m|m\/s|ms|N|s|J)(?![\w/]))/g;

/** Puts a no-break space between a number and its unit, so that no line ends there. */
export function keepTogether(text: string): string {
  return text.replace(NUMBER_AND_UNIT, "$1\u00a0");
}
