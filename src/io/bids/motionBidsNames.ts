import { type Complete, fail, requireNumber, withDefaults } from "../../units/index.js";
import { MOTION_BIDS_ENTITIES, type MotionBidsEntities } from "./options.js";

/** Names of the files of one tracking system, without their folder. */
export interface MotionBidsNames {
  /** Folder within the data set. */
  readonly folder: string;
  readonly motion: string;
  readonly channels: string;
  readonly sidecar: string;
  readonly channelsSidecar: string;
  /** Events belong to the recording, not to one of its tracking systems. */
  readonly events: string;
  readonly eventsSidecar: string;
}

/**
 * Composes the names of the files of a tracking system from their parts.
 *
 * Units: none.
 * Limits: labels are letters and digits.
 * Source: entities and their order of the BIDS specification 1.10 (sub, ses, task, tracksys, run; desc of derivatives).
 * @param entities - {@link MOTION_BIDS_ENTITIES} where left out.
 * @throws GaitKineticsError `out-of-range`: a label with other characters, a run that is no whole number from 0;
 * `wrong-type`; `not-finite`; `unknown-option`.
 * @example
 * motionBidsNames({ sub: "07", run: 2 }).motion // "sub-07_task-running_tracksys-force_run-2_motion.tsv"
 */
export function motionBidsNames(entities: MotionBidsEntities = {}): MotionBidsNames {
  const { sub, ses, task, tracksys, run, desc }: Complete<MotionBidsEntities> = withDefaults(
    MOTION_BIDS_ENTITIES,
    entities,
  );
  const person = [part("sub", sub), ...(ses === null ? [] : [part("ses", ses)])];
  const ending = [
    ...(run === null ? [] : [`run-${requireNumber("run", run, { from: 0, whole: true })}`]),
    ...(desc === null ? [] : [part("desc", desc)]),
  ];
  const system = [...person, part("task", task), part("tracksys", tracksys), ...ending].join("_");
  const recording = [...person, part("task", task), ...ending].join("_");
  return {
    folder: [...person, "motion"].join("/"),
    motion: `${system}_motion.tsv`,
    channels: `${system}_channels.tsv`,
    sidecar: `${system}_motion.json`,
    channelsSidecar: `${system}_channels.json`,
    events: `${recording}_events.tsv`,
    eventsSidecar: `${recording}_events.json`,
  };
}

function part(name: string, label: unknown): string {
  if (typeof label === "string" && /^[a-zA-Z0-9]+$/.test(label)) return `${name}-${label}`;
  fail(
    "out-of-range",
    `${name} is ${JSON.stringify(label) ?? String(label)}; a label of letters and digits is needed`,
    {
      argument: name,
      values: { given: label },
    },
  );
}
