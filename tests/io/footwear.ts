import fc from "fast-check";
import { LONGEST_FOOTWEAR } from "../../src/recording/index.js";

/** Whatever may be said of footwear: one line of text in any script. */
export const footwear: fc.Arbitrary<string> = fc.oneof(
  fc.constantFrom("road shoe, 250 g", "barefoot", 'spikes "M"; 7 mm', "# 3: Straßenschuh 靴 👟", "=x<b>"),
  fc
    .string({ unit: "grapheme", minLength: 1, maxLength: 30 })
    .map((text) => text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/gu, "").trim())
    .filter((text) => text !== "" && text.length <= LONGEST_FOOTWEAR),
);
