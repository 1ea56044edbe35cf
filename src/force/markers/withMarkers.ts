import type { Recording, Side } from "../../recording/index.js";
import { type Complete, fail } from "../../units/index.js";
import type { FootTrack, GroundReaction, MarkerSettings } from "../groundReaction.js";
import type { FootMarkers, ToGroundReactionOptions } from "../options.js";
import { markerReader, namesOf } from "./markerReader.js";
import { markerTravel } from "./markerTravel.js";

const SIDES = ["left", "right"] as const;

/** The ground reaction with how far the markers went, and with the places of those that the options name. */
export function withMarkers(
  force: GroundReaction,
  recording: Recording,
  { centreOfMassMarkers, feet }: Pick<Complete<ToGroundReactionOptions>, "centreOfMassMarkers" | "feet">,
): GroundReaction {
  const travel = recording.markers === undefined ? null : markerTravel(recording.markers);
  const ground = travel === null ? force : { ...force, markerTravel: travel };
  const sides = sidesOf(feet);
  if (centreOfMassMarkers === null && sides.length === 0) return ground;
  const { read, sampleRate } = markerReader(recording, ground.force.up.length);
  const centre = centreOfMassMarkers === null ? null : namesOf("centreOfMassMarkers", centreOfMassMarkers);
  const named: { [S in Side]?: { heel: readonly string[]; toe: readonly string[] } } = {};
  const tracks: { [S in Side]?: FootTrack } = {};
  for (const [side, { heel, toe }] of sides) {
    const names = {
      heel: namesOf(`feet.${side}.heel`, heel),
      toe: namesOf(`feet.${side}.toe`, toe),
    };
    const track = (end: "heel" | "toe") => {
      const along = (direction: "forward" | "right" | "up") =>
        read(`feet.${side}.${end}`, names[end], direction);
      return { forward: along("forward"), right: along("right"), up: along("up") };
    };
    named[side] = names;
    tracks[side] = { heel: track("heel"), toe: track("toe") };
  }
  const markers: MarkerSettings = {
    sampleRate,
    ...(centre && { centreOfMass: centre }),
    ...(sides.length > 0 && { feet: named }),
  };
  return {
    ...ground,
    ...(centre && { centreOfMass: { forward: read("centreOfMassMarkers", centre, "forward") } }),
    ...(sides.length > 0 && { feet: tracks }),
    settings: { ...ground.settings, markers },
  };
}

function sidesOf(feet: Complete<ToGroundReactionOptions>["feet"]): [Side, FootMarkers][] {
  if (feet === null) return [];
  const odd =
    typeof feet === "object" ? Object.keys(feet).find((name) => !SIDES.includes(name as Side)) : feet;
  if (odd !== undefined) {
    fail("wrong-type", `feet holds "${String(odd)}"; { left, right } with { heel, toe } each is needed`, {
      argument: "feet",
    });
  }
  return SIDES.flatMap((side): [Side, FootMarkers][] => {
    const foot = feet[side];
    if (foot === undefined) return [];
    if (typeof foot !== "object" || foot === null) {
      fail("wrong-type", `feet.${side} is ${String(foot)}; { heel, toe } is needed`, {
        argument: `feet.${side}`,
      });
    }
    return [[side, foot]];
  });
}
