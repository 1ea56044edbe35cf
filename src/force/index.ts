export type {
  ForceComponents,
  GroundReaction,
  GroundReactionSettings,
  MomentComponents,
} from "./groundReaction.js";
