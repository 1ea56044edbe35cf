import type { Contact } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import type { Caution, Fraction, Newtons, Seconds } from "../../units/index.js";

/** A level in flight above this is said, N: over a contact it adds a few per cent to the braking impulse. A judgement. */
const LARGEST_LEVEL: Newtons = 5;
/** And only above this many standard errors of it. */
const LEVEL_ERRORS = 4;
/** Two standard deviations in flight above this share of a component's mean peak are said. A judgement. */
const NOISE_SHARE: Fraction = 0.05;
/** Shortest time between contacts whose middle third counts, s, and how many periods of the filter it must hold. */
const SHORTEST_GAP: Seconds = 0.06;
const PERIODS = 3;

/** Level and scatter of one component while nobody is on the platform. */
interface Quiet {
  readonly level: number;
  readonly levelError: number;
  readonly sd: number;
}

/**
 * Cautions on what each component reads between contacts, on the copy that metrics are read from: offset left, noise.
 * @param leftOut - Partial contacts, in which somebody is on the platform too.
 */
export function flightCautions(
  ground: GroundReaction,
  contacts: readonly Contact[],
  leftOut: readonly Contact[],
): Caution[] {
  const loaded = [...contacts, ...leftOut].sort((a, b) => a.initialContact - b.initialContact);
  const plates = ground.plates ?? [ground];
  return plates.flatMap((plate, index) => {
    const onPlate = (contact: Contact) => ground.plates === undefined || contact.plate === index;
    const own = contacts.filter(onPlate);
    const gaps = middleThirds(plate, loaded.filter(onPlate));
    if (gaps.length === 0 || own.length === 0) return [];
    const name = ground.plates === undefined ? "" : `"${plate.plate ?? `plate ${index + 1}`}", `;
    return (["up", "forward", "right"] as const).flatMap((direction) => {
      const samples = plate.force[direction];
      if (samples === undefined) return [];
      return cautionsOf(quietOf(samples, gaps), meanPeak(samples, plate.sampleRate, own), direction, name);
    });
  });
}

function cautionsOf(
  { level, levelError, sd }: Quiet,
  peak: number,
  direction: string,
  plate: string,
): Caution[] {
  const cautions: Caution[] = [];
  const where = `${plate}${direction}`;
  if (Math.abs(level) > Math.max(LARGEST_LEVEL, LEVEL_ERRORS * levelError)) {
    cautions.push({
      code: "flight-offset",
      message: `between contacts, where nobody is on the platform, ${plate}"${direction}" reads ${level.toFixed(1)} N on average: an offset was left in, which adds ${level.toFixed(1)} N s to an impulse for each second of contact`,
      where,
      values: { level },
    });
  }
  if (2 * sd > NOISE_SHARE * peak) {
    cautions.push({
      code: "flight-noise",
      message: `between contacts ${plate}"${direction}" scatters with an SD of ${sd.toFixed(1)} N, ${((100 * sd) / peak).toFixed(1)} % of its mean peak of ${peak.toFixed(0)} N, behind the filter: its peaks and what counts its size read too high`,
      where,
      values: { sd, peak },
    });
  }
  return cautions;
}

/** Sample ranges of the middle third of each time between contacts that is long enough for the filter to settle. */
function middleThirds(
  { sampleRate, settings }: GroundReaction,
  contacts: readonly Contact[],
): [number, number][] {
  const shortest = Math.max(SHORTEST_GAP, settings.filter === null ? 0 : PERIODS / settings.filter.cutoff);
  return contacts.slice(1).flatMap(({ initialContact }, k): [number, number][] => {
    const { toeOff } = contacts[k] as Contact;
    const third = (initialContact - toeOff) / 3;
    if (3 * third < shortest) return [];
    const from = Math.ceil((toeOff + third) * sampleRate);
    const to = Math.floor((toeOff + 2 * third) * sampleRate) + 1;
    return to - from < 2 ? [] : [[from, to]];
  });
}

function quietOf(samples: Float64Array, gaps: readonly (readonly [number, number])[]): Quiet {
  let [levels, levelSquares, squares, freedom] = [0, 0, 0, 0];
  for (const [from, to] of gaps) {
    let sum = 0;
    for (let i = from; i < to; i++) sum += samples[i] as number;
    const mean = sum / (to - from);
    for (let i = from; i < to; i++) squares += ((samples[i] as number) - mean) ** 2;
    levels += mean;
    levelSquares += mean * mean;
    freedom += to - from - 1;
  }
  const n = gaps.length;
  const level = levels / n;
  const spread = Math.max(0, levelSquares / n - level * level);
  return { level, levelError: Math.sqrt(spread / Math.max(1, n - 1)), sd: Math.sqrt(squares / freedom) };
}

/** Mean over contacts of the largest size of a component. */
function meanPeak(samples: Float64Array, sampleRate: number, contacts: readonly Contact[]): number {
  let sum = 0;
  for (const { initialContact, toeOff } of contacts) {
    let most = 0;
    for (let i = Math.ceil(initialContact * sampleRate); i <= toeOff * sampleRate; i++) {
      const size = Math.abs(samples[i] as number);
      if (size > most) most = size;
    }
    sum += most;
  }
  return sum / contacts.length;
}
