/**
 * Ground reaction force in, per-step numbers for every component out, with their uncertainty, and the comparison of
 * two trials. Reading and writing files, exchange formats, synthetic recordings and reports are entries of their own:
 * `gait-kinetics/io`, `/exchange`, `/synthetic`, `/report`, `/units/parse`.
 *
 * @packageDocumentation
 */
export * from "./compare/index.js";
export * from "./events/index.js";
export * from "./filters/index.js";
export * from "./force/index.js";
export * from "./metrics/index.js";
export * from "./models/index.js";
export * from "./recording/index.js";
export * from "./statistics/index.js";
export * from "./trial/index.js";
export * from "./units/index.js";
