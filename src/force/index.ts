export type { Flight } from "./baseline.js";
export { meanCentreOfPressure } from "./centreOfPressure.js";
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
  ForceComponents,
  GroundReaction,
  GroundReactionSettings,
  MomentComponents,
} from "./groundReaction.js";
export { type LowPassGroundReactionOptions, lowPassGroundReaction } from "./lowPassGroundReaction.js";
export { CENTRE_OF_PRESSURE_FLOOR, CENTRE_OF_PRESSURE_LARGEST_FLOOR } from "./moments.js";
export { TO_GROUND_REACTION_DEFAULTS, type ToGroundReactionOptions } from "./options.js";
export { toGroundReaction } from "./toGroundReaction.js";
