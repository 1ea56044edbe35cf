import type { Caution, Newtons, Seconds } from "../../units/index.js";
import { combinePlates } from "../combinePlates.js";
import type { GroundReaction } from "../groundReaction.js";

/**
 * Load above which a plate counts as stood on here, N: above offsets and crosstalk, below any step. A
 * judgement.
 */
const STOOD_ON: Newtons = 50;
/** What is shorter is no step, s. */
const SHORTEST: Seconds = 0.05;
/**
 * Two plates loaded together for more than this share of the shorter time carry one foot. In walking two feet
 * share about a fifth of a contact (double support 24 % of the stride in two parts, contact 62 %; common
 * practice).
 */
const ONE_FOOT = 0.5;
/** Shorter overlaps are no double support, s. */
const LEAST_OVERLAP: Seconds = 0.02;
/** Times that a caution names. */
const NAMED_TIMES = 5;

interface Load {
  readonly from: number;
  readonly to: number;
  readonly cut: boolean;
}

/** Two plates that were loaded at the same time. */
interface Overlap {
  readonly plates: readonly [number, number];
  readonly time: Seconds;
  readonly oneFoot: boolean;
}

/**
 * Takes plates together that one foot stood on at once, where no two feet stood on them at once elsewhere;
 * says so, with the times, either way.
 * @param join - Whether a sum makes sense, as for plates at one height.
 */
export function joinSharedPlates(
  plates: readonly GroundReaction[],
  join: boolean,
): { plates: GroundReaction[]; cautions: Caution[] } {
  const overlaps = overlapsOf(plates);
  const groups = groupsOf(plates.length, overlaps);
  const cautions: Caution[] = [];
  const joined = groups.flatMap((members) => {
    const own = members.map((k) => plates[k] as GroundReaction);
    if (members.length === 1) return own;
    const inside = overlaps.filter(({ plates: pair }) => pair.every((k) => members.includes(k)));
    const shared = inside.filter(({ oneFoot }) => oneFoot);
    const together = join && inside.every(({ oneFoot }) => oneFoot);
    const names = own.map(({ plate }) => `"${plate ?? ""}"`).join(" and ");
    const times = shared.slice(0, NAMED_TIMES).map(({ time }) => `${time.toFixed(2)} s`);
    const more = shared.length > NAMED_TIMES ? ` and ${shared.length - NAMED_TIMES} times more` : "";
    cautions.push({
      code: "foot-on-two-plates",
      message: `one foot stood on ${names} at once, ${times.join(", ")}${more} after the first sample; ${together ? "they were taken together as one plate" : `they were kept apart, since ${join ? "each foot has its own plate elsewhere" : "they lie at different heights"}: leave these contacts out, or state how plates are to be taken`}`,
      where: own.map(({ plate }) => plate ?? "").join(", "),
      values: { times: shared.length, first: shared[0]?.time ?? null },
    });
    return together ? [joinedPlate(own)] : own;
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

function overlapsOf(plates: readonly GroundReaction[]): Overlap[] {
  const loads = plates.map((plate) => loadsOf(plate));
  const overlaps: Overlap[] = [];
  const rate = (plates[0] as GroundReaction).sampleRate;
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

function loadsOf({ force: { up }, sampleRate }: GroundReaction): Load[] {
  const loads: Load[] = [];
  let from = -1;
  for (let i = 0; i <= up.length; i++) {
    const loaded = i < up.length && (up[i] as number) > STOOD_ON;
    if (loaded && from < 0) from = i;
    if (loaded || from < 0) continue;
    if (i - from >= SHORTEST * sampleRate) {
      loads.push({ from, to: i, cut: from === 0 || i === up.length });
    }
    from = -1;
  }
  return loads;
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
