export type {
  Channel,
  ChannelQuantity,
  Direction,
  Recording,
  RecordingOrigin,
  Side,
  Subject,
  Surface,
} from "./recording.js";
