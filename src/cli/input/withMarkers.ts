import { type GroundReaction, toGroundReaction } from "../../force/index.js";
import type { Recording } from "../../recording/index.js";
import type { MarkerOptions } from "../options/inputOptions.js";

/**
 * Adds to a ground reaction the places of the markers that are named, over the window that it was made of: markers may be
 * hidden outside of it, whatever the offset needed of the recording there.
 *
 * @param ground - Of the window.
 * @param part - The window of the recording.
 * @param options - Names of markers.
 * @throws GaitKineticsError `missing-channel`, `gap`: a marker that there is not, or that was not seen all the time.
 */
export function withMarkers(
  ground: GroundReaction,
  part: Recording,
  { centreOfMass: centreOfMassMarkers, feet: feetMarkers }: MarkerOptions,
): GroundReaction {
  if (centreOfMassMarkers === undefined && feetMarkers === undefined) return ground;
  const { platforms: _platforms, ...rest } = part;
  const up = {
    name: "up",
    quantity: "force",
    direction: "up",
    unit: "N",
    samples: ground.force.up,
  } as const;
  const { centreOfMass, feet, settings } = toGroundReaction(
    { ...rest, channels: [up] },
    { centreOfMassMarkers, feet: feetMarkers, offset: "none", drift: "never" },
  );
  return {
    ...ground,
    ...(centreOfMass && { centreOfMass }),
    ...(feet && { feet }),
    settings: { ...ground.settings, ...(settings.markers && { markers: settings.markers }) },
  };
}
