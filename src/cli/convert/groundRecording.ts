import { CENTRE_OF_PRESSURE_FLOOR, type GroundReaction } from "../../force/index.js";
import type { Channel, ChannelQuantity, Direction, Recording } from "../../recording/index.js";

/** A quantity in a direction, with its samples where there are any. */
type Series = readonly [quantity: ChannelQuantity, direction: Direction, samples: Float64Array | undefined];

/**
 * Makes the force between foot and ground a recording again: force in all directions and, above the force floor, the
 * centre of pressure and the free moment, of each plate that was kept apart. Channels of other kinds stay.
 *
 * Formula: c_forward = M_right ÷ F_up, c_right = −M_forward ÷ F_up, T = M_up − c_right F_forward + c_forward F_right.
 * @param ground - As `toGroundReaction` gives it.
 * @param recording - What it was computed from: markers, events and origin are taken from it.
 */
export function groundRecording(ground: GroundReaction, recording: Recording): Recording {
  const { platforms: _, ...rest } = recording;
  const others = recording.channels.filter(({ quantity }) => quantity === "other");
  return {
    ...rest,
    channels: [...(ground.plates ?? [ground]).flatMap(channelsOf), ...others],
    cautions: ground.cautions,
  };
}

function channelsOf(ground: GroundReaction): Channel[] {
  const { force, moment, plate } = ground;
  const forward = moment?.right && perLoad(force.up, moment.right, 1);
  const right = moment?.forward && perLoad(force.up, moment.forward, -1);
  const series: readonly Series[] = [
    ["force", "forward", force.forward],
    ["force", "up", force.up],
    ["force", "right", force.right],
    ["centre-of-pressure", "forward", forward],
    ["centre-of-pressure", "right", right],
    ["free-moment", "up", freeMoment(ground, forward, right)],
  ];
  return series.flatMap(([quantity, direction, samples]) => {
    if (samples === undefined) return [];
    const unit = quantity === "force" ? "N" : quantity === "free-moment" ? "N m" : "m";
    const name = [quantity, direction, ...(plate === undefined ? [] : [plate])].join(" ");
    return [{ name, quantity, direction, unit, samples, ...(plate !== undefined && { plate }) }];
  });
}

/** A moment by the load, where there is enough of it; NaN elsewhere, where no centre of pressure exists. */
function perLoad(up: Float64Array, moment: Float64Array, sign: 1 | -1): Float64Array {
  return Float64Array.from(up, (load, i) =>
    load >= CENTRE_OF_PRESSURE_FLOOR ? (sign * (moment[i] as number)) / load : Number.NaN,
  );
}

function freeMoment(
  { force, moment }: GroundReaction,
  copForward: Float64Array | undefined,
  copRight: Float64Array | undefined,
): Float64Array | undefined {
  const { forward, right } = force;
  if (!copForward || !copRight || !moment?.up || !forward || !right) return undefined;
  return Float64Array.from(
    moment.up,
    (value, i) =>
      value -
      (copRight[i] as number) * (forward[i] as number) +
      (copForward[i] as number) * (right[i] as number),
  );
}
