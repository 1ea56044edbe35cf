import type { GroundReaction } from "../../force/index.js";

/** The parts of a force or moment. */
type Components = Partial<Record<"forward" | "up" | "right", Float64Array>>;

/**
 * Cuts samples out of a ground reaction and of its plates; offset and drift stay as the whole recording gave them.
 *
 * @param ground - Of the whole recording.
 * @param first - First sample to keep.
 * @param last - Sample before which to end.
 */
export function cropGround(ground: GroundReaction, first: number, last: number): GroundReaction {
  const { force, moment, plates, recordedEvents, firstFoot, sampleRate, startTime, ...rest } = ground;
  const start = startTime + first / sampleRate;
  const end = startTime + last / sampleRate;
  return {
    ...rest,
    sampleRate,
    startTime: start,
    force: { ...part(force, first, last), up: force.up.slice(first, last) },
    ...(moment && { moment: part(moment, first, last) }),
    ...(plates && { plates: plates.map((plate) => cropGround(plate, first, last)) }),
    ...(recordedEvents && {
      recordedEvents: recordedEvents.filter(({ time }) => time >= start && time < end),
    }),
    ...(first === 0 && firstFoot !== undefined && { firstFoot }),
  };
}

function part({ forward, up, right }: Components, first: number, last: number): Components {
  return {
    ...(forward && { forward: forward.slice(first, last) }),
    ...(up && { up: up.slice(first, last) }),
    ...(right && { right: right.slice(first, last) }),
  };
}
