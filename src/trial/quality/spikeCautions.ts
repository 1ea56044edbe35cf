import { type Contact, LEAST_THRESHOLD } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import { quantile } from "../../statistics/index.js";
import type { Caution, Newtons, Seconds } from "../../units/index.js";

/** A sample that stands out by less than this moves no event, N: it is the least threshold. */
const LEAST: Newtons = LEAST_THRESHOLD;
/** Times that a spike stands out more than what does in an ordinary contact. Chosen on synthetic and open recordings. */
const FACTOR = 5;
/** The share of contacts that are taken to be without a spike. */
const ORDINARY = 0.25;
/** Contacts from which on they tell what is ordinary; with fewer, a share of the largest force does. */
const FEW_CONTACTS = 4;
const SHARE_OF_LARGEST = 0.02;
/** A contact's neighbourhood, s. */
const NEAR: Seconds = 0.03;
/** The samples beside a single one lie on the line through the next ones but for this share of its height; ringing does not. */
const IN_LINE = 0.25;

/**
 * Says where a single sample stands out from its neighbours. It is measured by how far it lies from the cubic through the
 * two samples on either side, 1/6 (−1, 4, 0, 4, −1), and held against the same of ordinary contacts, whose impacts bend too;
 * where the neighbours are not loaded, against what is ordinary there.
 */
export function spikeCautions(ground: GroundReaction, contacts: readonly Contact[]): Caution[] {
  const [first] = contacts;
  if (first === undefined || (ground.settings.filter !== null && ground.unfiltered === undefined)) return [];
  const { force } = ground.unfiltered ?? ground;
  return (["up", "forward", "right"] as const).flatMap((direction): Caution[] => {
    const samples = force[direction];
    if (samples === undefined) return [];
    const series: Series = { samples, up: force.up, threshold: first.threshold };
    return spikesIn(series, direction, ground.sampleRate, contacts);
  });
}

/** A component with what tells where it is loaded. */
interface Series {
  readonly samples: Float64Array;
  readonly up: Float64Array;
  readonly threshold: Newtons;
}

function spikesIn(
  series: Series,
  direction: string,
  sampleRate: number,
  contacts: readonly Contact[],
): Caution[] {
  const { samples } = series;
  const limits = limitsOf(series, sampleRate, contacts);
  const lower = Math.min(limits.loaded, limits.unloaded);
  const times: number[] = [];
  let largest = 0;
  for (let i = 2; i < samples.length - 2; i++) {
    const height = residual(samples, i);
    if (Math.abs(height) <= lower) continue;
    if (Math.abs(height) <= (isLoaded(series, i) ? limits.loaded : limits.unloaded)) continue;
    if (!isSingle(samples, i, height)) continue;
    times.push(i / sampleRate);
    largest = Math.max(largest, Math.abs(height));
  }
  const [first] = times;
  if (first === undefined) return [];
  const atEvents = times.filter((time) =>
    contacts.some(
      ({ initialContact, toeOff }) =>
        Math.abs(time - initialContact) < NEAR || Math.abs(time - toeOff) < NEAR,
    ),
  ).length;
  const listed = times.slice(0, 3).map((time) => time.toFixed(3));
  const rest = times.length > 3 ? ", …" : "";
  return [
    {
      code: "spikes",
      message: `${times.length === 1 ? "1 sample" : `${times.length} samples`} of "${direction}" ${times.length === 1 ? "stands" : "stand"} out from the samples on either side by up to ${largest.toFixed(0)} N, at ${listed.join(", ")}${rest} s: nothing was removed${atEvents > 0 ? `, and initial contact or toe-off within ${1000 * NEAR} ms of ${atEvents === 1 ? "1 of them" : `${atEvents} of them`} may have moved` : ""}`,
      where: `${direction}, ${listed.join(", ")}${rest} s`,
      values: { samples: times.length, largest, first, nearEvents: atEvents, ...limits },
    },
  ];
}

/** How far a sample lies from the cubic through two on either side. */
function residual(samples: Float64Array, i: number): number {
  const near = (samples[i - 1] as number) + (samples[i + 1] as number);
  const far = (samples[i - 2] as number) + (samples[i + 2] as number);
  return (samples[i] as number) - (4 * near - far) / 6;
}

/** Whether any of the two samples on either side is under load. */
function isLoaded({ up, threshold }: Series, i: number): boolean {
  return (
    (up[i - 1] as number) >= threshold ||
    (up[i + 1] as number) >= threshold ||
    (up[i - 2] as number) >= threshold ||
    (up[i + 2] as number) >= threshold
  );
}

/** Whether the samples on either side lie in line with one another, so that the one between them is odd and no other. */
function isSingle(samples: Float64Array, i: number, height: number): boolean {
  const start = samples[i - 2] as number;
  const quarter = ((samples[i + 2] as number) - start) / 4;
  const before = Math.abs((samples[i - 1] as number) - start - quarter);
  const after = Math.abs((samples[i + 1] as number) - start - 3 * quarter);
  return Math.max(before, after) < IN_LINE * Math.abs(height);
}

/** What a sample must stand out by, N, by what does in ordinary contacts and right before and after them. */
function limitsOf(
  series: Series,
  sampleRate: number,
  contacts: readonly Contact[],
): { loaded: number; unloaded: number } {
  const { samples } = series;
  let largest = 0;
  const each = contacts.map(({ initialContact, toeOff }) => {
    const from = Math.max(2, Math.floor((initialContact - NEAR) * sampleRate));
    const to = Math.min(samples.length - 3, Math.ceil((toeOff + NEAR) * sampleRate));
    const most = { loaded: 0, unloaded: 0 };
    for (let i = from; i <= to; i++) {
      const height = Math.abs(residual(samples, i));
      if (height > most.loaded || height > most.unloaded) {
        const where = isLoaded(series, i) ? "loaded" : "unloaded";
        if (height > most[where]) most[where] = height;
      }
      const force = Math.abs(samples[i] as number);
      if (force > largest) largest = force;
    }
    return most;
  });
  const limit = (where: "loaded" | "unloaded") => {
    const few = contacts.length < FEW_CONTACTS;
    const ordinary = few
      ? SHARE_OF_LARGEST * largest
      : quantile(
          each.map((most) => most[where]),
          ORDINARY,
        );
    return Math.max(LEAST, FACTOR * ordinary);
  };
  return { loaded: limit("loaded"), unloaded: limit("unloaded") };
}
