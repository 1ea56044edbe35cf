import { fail, requireNumber } from "../../units/index.js";

/**
 * Refuses two values between which no index of symmetry has a meaning: of opposite sign, both 0, or with 0 as the side
 * that is divided by.
 */
export function requireSides(right: number, left: number, dividedBy?: string): void {
  requireNumber("right", right);
  requireNumber("left", left);
  const values = { right, left };
  if (right === 0 && left === 0) {
    fail("out-of-range", "right and left are both 0; one of them must differ from 0", {
      argument: "right",
      values,
    });
  }
  if (Math.sign(right) * Math.sign(left) < 0) {
    fail(
      "out-of-range",
      `right is ${right} and left is ${left}; both must have the same sign, for between values of opposite sign an index of symmetry has no meaning`,
      { argument: "right", values },
    );
  }
  if ((dividedBy === "right" && right === 0) || (dividedBy === "left" && left === 0)) {
    fail("out-of-range", `${dividedBy} is 0; the side to divide by must differ from 0`, {
      argument: dividedBy,
      values,
    });
  }
}
