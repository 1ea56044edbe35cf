import type { Caution } from "../../units/index.js";
import { optionWords } from "./optionWords.js";

/** A result whose cautions speak of the command line's options, for a person to read; as data it keeps the library's words. */
export function withOptionWords<T extends { readonly cautions: readonly Caution[] }>(result: T): T {
  return {
    ...result,
    cautions: result.cautions.map((caution) => ({ ...caution, message: optionWords(caution.message) })),
  };
}
