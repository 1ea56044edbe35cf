export type { Flight } from "./baseline.js";
export { meanCentreOfPressure } from "./centreOfPressure.js";
export { combinePlates } from "./combinePlates.js";
export {
  FLIGHT_BASELINE_LIMIT,
  FLIGHT_BASELINE_REACH,
  FLIGHT_CUTOFF,
  FLIGHT_LEAST_RANGE,
  FLIGHT_LEVEL,
  findFlights,
  SHORTEST_FLIGHT_GAP,
} from "./findFlights.js";
export { type FlightNoise, flightNoise } from "./flightNoise.js";
export type {
  FootTrack,
  ForceComponents,
  GroundReaction,
  GroundReactionSettings,
  GroundTrack,
  MarkerSettings,
  MarkerTravel,
  MomentComponents,
  PlateSettings,
} from "./groundReaction.js";
export { type LowPassGroundReactionOptions, lowPassGroundReaction } from "./lowPassGroundReaction.js";
export {
  CENTRE_OF_PRESSURE_FARTHEST,
  CENTRE_OF_PRESSURE_FLOOR,
  CENTRE_OF_PRESSURE_LARGEST_FLOOR,
  FREE_MOMENT_LARGEST,
} from "./moments.js";
export {
  type FootMarkers,
  type MarkerNames,
  TO_GROUND_REACTION_DEFAULTS,
  type ToGroundReactionOptions,
} from "./options.js";
export { type PlatformFrame, platformFrame } from "./platform/platformFrame.js";
export type { PlatformOptions } from "./platform/platformOptions.js";
export {
  PLATFORM_REACTION_DEFAULTS,
  type PlatformReaction,
  type PlatformReactionOptions,
  platformReaction,
} from "./platform/platformReaction.js";
export {
  SURFACE_CENTRE_OF_PRESSURE_DEFAULTS,
  type SurfaceCentreOfPressure,
  type SurfaceCentreOfPressureOptions,
  surfaceCentreOfPressure,
} from "./platform/surfaceCentreOfPressure.js";
export { toGroundReaction } from "./toGroundReaction.js";
