export {
  type Axes,
  type AxisDirection,
  type AxisMapping,
  axisMapping,
  type MappedAxis,
} from "./axisMapping.js";
export { channelOf } from "./channelOf.js";
export { checkFootwear, LONGEST_FOOTWEAR } from "./checkFootwear.js";
export { checkRecording } from "./checkRecording.js";
export { PLAUSIBLE_BOUNDS } from "./plausibleBounds.js";
export type {
  Channel,
  ChannelQuantity,
  Direction,
  Marker,
  MarkerSet,
  Platform,
  PlatformChannel,
  PlatformType,
  Position,
  RecordedEvent,
  Recording,
  RecordingOrigin,
  Side,
  Subject,
  Surface,
} from "./recording.js";
