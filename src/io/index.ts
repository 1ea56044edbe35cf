export { type MotionBidsNames, motionBidsNames } from "./bids/motionBidsNames.js";
export {
  MOTION_BIDS_ENTITIES,
  type MotionBidsColumn,
  type MotionBidsEntities,
  type MotionBidsFiles,
  type MotionBidsRecording,
  type MotionBidsText,
  READ_MOTION_BIDS_DEFAULTS,
  type ReadMotionBidsOptions,
  WRITE_MOTION_BIDS_DEFAULTS,
  type WriteMotionBidsOptions,
} from "./bids/options.js";
export { readMotionBids } from "./bids/readMotionBids.js";
export { type WrittenMotionBids, writeMotionBids } from "./bids/writeMotionBids.js";
export type { MotionBidsTexts } from "./bids/writtenSystem.js";
export type {
  C3dAnalogue,
  C3dChannel,
  C3dEncoding,
  C3dFile,
  C3dGroup,
  C3dHeader,
  C3dHeaderEvent,
  C3dNumberParameter,
  C3dParameter,
  C3dPoint,
  C3dProcessor,
  C3dStorage,
  C3dTextParameter,
} from "./c3d/c3dFile.js";
export { c3dToRecording } from "./c3d/c3dToRecording.js";
export { READ_C3D_DEFAULTS, type ReadC3dOptions } from "./c3d/options.js";
export { PARSE_C3D_DEFAULTS, type ParseC3dOptions, parseC3d } from "./c3d/parseC3d.js";
export { readC3d } from "./c3d/readC3d.js";
export { recordingToC3d } from "./c3d/recordingToC3d.js";
export { WRITE_C3D_DEFAULTS, type WriteC3dOptions, writeC3d } from "./c3d/writeC3d.js";
export { type Delimiter, READ_CSV_DEFAULTS, type ReadCsvOptions } from "./csv/options.js";
export { LARGEST_TEXT, readCsv } from "./csv/readCsv.js";
export { readCsvStream } from "./csv/readCsvStream.js";
export { ZERO_TOLERANCE } from "./csv/recordingOf.js";
export { TIME_TOLERANCE } from "./csv/timeGrid.js";
export { type LeftOut, WRITE_CSV_DEFAULTS, type WriteCsvOptions, writeCsv } from "./csv/writeCsv.js";
export { type ReadRecordingOptions, readRecording } from "./readRecording.js";
