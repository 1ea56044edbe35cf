import type { Channel, ChannelQuantity, Direction, Recording } from "./recording.js";

/**
 * Finds the channel that holds a quantity in a direction.
 *
 * @param recording - Where to look.
 * @param quantity - What the channel measures.
 * @param direction - Along which axis; for the free moment `up`, the axis it turns about.
 * @returns The channel, or `undefined` where the recording has none: a missing component is normal.
 * @example
 * channelOf(recording, "force", "up")?.unit // "N"
 */
export function channelOf(
  recording: Recording,
  quantity: Exclude<ChannelQuantity, "other">,
  direction: Direction,
): Channel | undefined {
  return recording.channels.find(
    (channel) => channel.quantity === quantity && channel.direction === direction,
  );
}
