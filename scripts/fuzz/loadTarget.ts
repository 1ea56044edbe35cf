import { toGroundReaction } from "../../src/force/index.js";
import type { Recording } from "../../src/recording/index.js";
import type { FuzzInput, FuzzTarget, TargetName } from "./target.js";

/** Loads a reader under test and what makes its inputs; what a file gives goes on to the force between foot and ground. */
export async function loadTarget(name: TargetName): Promise<FuzzTarget> {
  switch (name) {
    case "c3d": {
      const { c3dFuzzInput } = await import("../../tests/io/c3d/fuzz.js");
      const { readC3d } = await import("../../src/io/index.js");
      return target(c3dFuzzInput, ({ bytes, options }) => onward(readC3d(bytes, options)));
    }
    case "csv": {
      const { csvFuzzInput } = await import("../../tests/io/csv/fuzz.js");
      const { readCsv } = await import("../../src/io/index.js");
      return target(csvFuzzInput, ({ bytes, options }) => onward(readCsv(bytes, options)));
    }
    case "bids": {
      const { bidsFuzzInput } = await import("../../tests/io/bids/fuzz.js");
      const { readMotionBids } = await import("../../src/io/index.js");
      return target(bidsFuzzInput, ({ bytes, options }) => onward(readMotionBids(bytes, options)));
    }
    case "json": {
      const { jsonFuzzInput } = await import("./jsonFuzzInput.js");
      const { readJson } = await import("../../src/exchange/index.js");
      return target(jsonFuzzInput, ({ bytes }) => void readJson(new TextDecoder().decode(bytes)));
    }
  }
}

/** Ties a maker of inputs to the reader that takes just those. */
function target<I extends FuzzInput>(input: (seed: number) => I, read: (input: I) => void): FuzzTarget {
  return { input, read: (made) => read(made as I) };
}

function onward(recording: Recording): void {
  toGroundReaction(recording);
}
