import type { Caution, Hertz, Seconds } from "../../units/index.js";
import { combinePlates } from "../combinePlates.js";
import type { GroundReaction } from "../groundReaction.js";
import { type Load, loadsOf } from "./loads.js";

/**
 * Two plates loaded together for more than this share of the shorter time carry one foot. In walking two feet
 * share about a fifth of a contact (double support 24 % of the stride in two parts, contact 62 %; common
 * practice).
 */
const ONE_FOOT = 0.5;
/**
 * Plates are taken together from this share of shared contacts on: a single crossed step does not make one belt
 * of two. A judgement.
 */
const LEAST_SHARED = 0.5;
/** Shorter overlaps are no double support, s. */
const LEAST_OVERLAP: Seconds = 0.02;
/** Times that a caution names. */
const NAMED_TIMES = 5;

/** Two plates that were loaded at the same time. */
interface Overlap {
  readonly plates: readonly [number, number];
  readonly time: Seconds;
  readonly oneFoot: boolean;
}

/**
 * Takes plates together that one foot stood on at once, where at least every second of their contacts did, no
 * two feet stood on them at once elsewhere, and they are not named for different feet; says so, with the times,
 * either way.
 * @param join - Whether a sum makes sense, as for plates at one height.
 */
export function joinSharedPlates(
  plates: readonly GroundReaction[],
  join: boolean,
): { plates: GroundReaction[]; cautions: Caution[] } {
  const loads = plates.map(loadsOf);
  const overlaps = overlapsOf(loads, (plates[0] as GroundReaction).sampleRate);
  const groups = groupsOf(plates.length, overlaps);
  const cautions: Caution[] = [];
  const joined = groups.flatMap((members) => {
    const own = members.map((k) => plates[k] as GroundReaction);
    if (members.length === 1) return own;
    const inside = overlaps.filter(({ plates: pair }) => pair.every((k) => members.includes(k)));
    const shared = inside.filter(({ oneFoot }) => oneFoot);
    const total = members.reduce((sum, k) => sum + (loads[k] as Load[]).length, 0);
    const apart = !join
      ? "they lie at different heights"
      : new Set(own.flatMap(({ side }) => side ?? [])).size > 1
        ? "they belong to different feet"
        : shared.length < inside.length
          ? "each foot has its own plate elsewhere"
          : shared.length < LEAST_SHARED * (total - shared.length)
            ? "most contacts are on one of them alone"
            : null;
    const names = own.map(({ plate }) => `"${plate ?? ""}"`).join(" and ");
    const times = shared.slice(0, NAMED_TIMES).map(({ time }) => `${time.toFixed(2)} s`);
    const more = shared.length > NAMED_TIMES ? ` and ${shared.length - NAMED_TIMES} times more` : "";
    cautions.push({
      code: "foot-on-two-plates",
      message: `${names} were loaded at once, as by one foot across them, ${times.join(", ")}${more} after the first sample; they were ${apart === null ? "taken together as one plate" : `kept apart, since ${apart}: these contacts are not counted as complete ones; take the plates together to count them`}`,
      where: own.map(({ plate }) => plate ?? "").join(", "),
      values: { times: shared.length, first: shared[0]?.time ?? null },
    });
    return apart === null ? [joinedPlate(own)] : own;
  });
  return { plates: joined, cautions };
}

function joinedPlate(own: readonly GroundReaction[]): GroundReaction {
  const { plates: _plates, ...sum } = combinePlates(own);
  const [first] = own as [GroundReaction];
  const { side } = first;
  return {
    ...sum,
    plate: own.map(({ plate }) => plate ?? "").join(" + "),
    ...(side !== undefined && own.every((plate) => plate.side === side) && { side }),
  };
}

function overlapsOf(loads: readonly (readonly Load[])[], rate: Hertz): Overlap[] {
  const overlaps: Overlap[] = [];
  loads.forEach((one, i) => {
    loads.slice(i + 1).forEach((other, k) => {
      let next = 0;
      for (const a of one) {
        while (next < other.length && (other[next] as Load).to <= a.from) next++;
        for (let at = next; at < other.length && (other[at] as Load).from < a.to; at++) {
          const b = other[at] as Load;
          const from = Math.max(a.from, b.from);
          const shared = Math.min(a.to, b.to) - from;
          const shorter = a.to - a.from < b.to - b.from ? a : b;
          // How long a load lasts that an end of the recording cuts is not known.
          if (shared < LEAST_OVERLAP * rate || shorter.cut) continue;
          const oneFoot = shared > ONE_FOOT * (shorter.to - shorter.from);
          overlaps.push({ plates: [i, i + 1 + k], time: from / rate, oneFoot });
        }
      }
    });
  });
  return overlaps.sort((a, b) => a.time - b.time);
}

/** Plates that are linked by a foot on both, in order. */
function groupsOf(count: number, overlaps: readonly Overlap[]): number[][] {
  const group = Array.from({ length: count }, (_, k) => k);
  for (const { plates, oneFoot } of overlaps) {
    if (!oneFoot) continue;
    const [a, b] = plates.map((k) => group[k] as number) as [number, number];
    for (let k = 0; k < count; k++) if (group[k] === Math.max(a, b)) group[k] = Math.min(a, b);
  }
  return [...new Set(group)].map((own) => group.flatMap((other, k) => (other === own ? [k] : [])));
}
