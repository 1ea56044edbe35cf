import type { GroundReaction } from "../../force/index.js";
import type { Caution } from "../../units/index.js";
import type { Travel } from "../travelOf.js";

/** Says where the body travels backward or sideways over ground: as a rule the axes of the file were stated otherwise than they are. */
export function travelCautions({ surface }: GroundReaction, travel: Travel | null): Caution[] {
  if (travel === null || surface === "belt") return [];
  const { by, forward, right } = travel;
  const sideways = Math.abs(right) > Math.abs(forward);
  if (!sideways && forward > 0) return [];
  const way = sideways ? (right > 0 ? "to the right" : "to the left") : "backward";
  const metres = Math.abs(sideways ? right : forward).toFixed(2);
  const what =
    by === "markers"
      ? `the markers go ${metres} m ${way} over the recording`
      : `the centre of pressure goes ${metres} m ${way} from one contact to the next, on average`;
  return [
    {
      code: "travel-disagrees",
      message: `${what}: unless the person moved so, the file's axes point elsewhere than was stated, and ${sideways ? "anteroposterior and mediolateral force are exchanged" : "braking and propulsion, left and right are exchanged"}; check axes`,
      where: by === "markers" ? "markers" : "centre of pressure",
      values: { forward, right },
    },
  ];
}
