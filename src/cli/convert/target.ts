import { basename } from "node:path";
import { InvalidArgumentError } from "commander";
import { type MotionBidsEntities, motionBidsNames } from "../../io/index.js";
import { isGaitKineticsError } from "../../units/index.js";

/** A file to be written, with the format that its ending says; of Motion-BIDS the parts of its name. */
export type Target =
  | { readonly path: string; readonly format: "table" | "c3d" }
  | { readonly path: string; readonly format: "motion-bids"; readonly entities: MotionBidsEntities };

const EXAMPLE = "sub-01_task-running_tracksys-force_motion.tsv";

/** Reads the name of a file to be written: its ending says the format. */
export function target(path: string): Target {
  if (/[^/\\]\.csv$/i.test(path)) return { path, format: "table" };
  if (/[^/\\]\.c3d$/i.test(path)) return { path, format: "c3d" };
  if (/_motion\.tsv$/i.test(path))
    return { path, format: "motion-bids", entities: entitiesOf(basename(path)) };
  const hint = /\.json$/i.test(path)
    ? " convert writes recordings; the results of an analysis are printed by analyse --json."
    : "";
  throw new InvalidArgumentError(
    `Its ending must say the format: .csv (a table), .c3d or _motion.tsv (Motion-BIDS).${hint}`,
  );
}

/** The parts of a name as the standard orders them. */
function entitiesOf(name: string): MotionBidsEntities {
  const parts = Object.fromEntries(
    name
      .split("_")
      .slice(0, -1)
      .map((part) => {
        const [key = "", ...label] = part.split("-");
        return [key, label.join("-")] as const;
      }),
  );
  const { sub, ses = null, task, tracksys, run, desc = null } = parts;
  const entities = { sub, ses, task, tracksys, run: run === undefined ? null : Number(run), desc };
  if (nameOf(entities) !== name) {
    throw new InvalidArgumentError(
      `A Motion-BIDS name is made of sub, ses (optional), task, tracksys, run and desc (optional) in this order, such as ${EXAMPLE}.`,
    );
  }
  return entities;
}

function nameOf(entities: MotionBidsEntities): string | null {
  try {
    return motionBidsNames(entities).motion;
  } catch (caught) {
    if (isGaitKineticsError(caught)) return null;
    throw caught;
  }
}
