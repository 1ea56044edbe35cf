import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkFootwear, LONGEST_FOOTWEAR } from "../../src/recording/index.js";
import { footwear } from "../io/footwear.js";

describe("what was on the feet", () => {
  it("takes one line in any script as it is", () =>
    fc.assert(
      fc.property(footwear, (text) => {
        expect(checkFootwear("footwear", text)).toBe(text);
      }),
    ));

  it("takes the longest line, and none that is a character longer", () => {
    const longest = "x".repeat(LONGEST_FOOTWEAR);
    expect(checkFootwear("footwear", longest)).toBe(longest);
    expect(() => checkFootwear("footwear", `${longest}x`)).toThrow(
      expect.objectContaining({ code: "out-of-range", message: expect.stringContaining("81 characters") }),
    );
  });

  it.each<[unknown, string, RegExp]>([
    [undefined, "wrong-type", /footwear is undefined; a text is needed/],
    [null, "wrong-type", /footwear is null/],
    [250, "wrong-type", /footwear is number/],
    ["", "out-of-range", /what was on the feet/],
    [" \t", "out-of-range", /what was on the feet/],
    ["road shoe ", "out-of-range", /no blanks at its ends/],
    ["road\nshoe", "out-of-range", /one line/],
    ["road\u001b[31m", "out-of-range", /one line/],
    ["road\u202eshoe", "out-of-range", /one line/],
    ["road\u2028shoe", "out-of-range", /one line/],
    ["road \ud83d shoe", "out-of-range", /one line/],
  ])("refuses %j", (given, code, words) => {
    expect(() => checkFootwear("footwear", given)).toThrow(
      expect.objectContaining({ code, argument: "footwear", message: expect.stringMatching(words) }),
    );
  });
});
