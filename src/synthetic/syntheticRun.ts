import type { Channel, Direction, Recording } from "../recording/index.js";
import { seededRandom } from "../statistics/index.js";
import { completeOptions, type RunSettings } from "./completeOptions.js";
import { drawQuantities } from "./drawQuantities.js";
import { type LaidStep, layOutSteps } from "./layOutSteps.js";
import { measure } from "./measure.js";
import type { SyntheticRunOptions } from "./options.js";
import { type SampledChannels, sampleSteps } from "./sampleSteps.js";
import { trueValues } from "./trueValues.js";
import type { SyntheticTruth, TrueContact } from "./truth.js";

/** A recording and what it was made from. */
export interface SyntheticRun {
  readonly recording: Recording;
  readonly truth: SyntheticTruth;
}

/**
 * Makes a recording of a run whose truth is known: force in three directions, centre of pressure and free moment of a
 * runner who obeys the laws of motion.
 *
 * Formula: vertical, two raised cosines A/2 [1 + cos(π (t − B) / C)], the first of half width t₁ about t₁, the second over
 * the whole contact, with A₁ t₁ + A₂ t_c / 2 = m g × step time; forward, a braking and a propulsive half sine of equal
 * impulse; right, a lateral and a medial half sine; the centre of pressure rolls along the foot by half a cosine, and the
 * foot lands where the moment of the force about the centre of mass integrates to zero over the contact, so that the
 * landing distance follows from the force, the speed and the roll. Variability: each foot's quantities are first-order
 * autoregressive series; a step that leaves the runner ahead, high or aside is answered by the next ones, so that the laws
 * then hold in the mean and the runner does not drift away (with the variability of one runner, the vertical impulse of a
 * step is within 1 % of m g × its step time, and the medial force varies by a tenth more than asked for).
 * Units: SI; amplitudes in body weights; see {@link SyntheticRunOptions}.
 * Limits: level running with flight phases, one foot at a time; a smooth impact (real ones are sharper), stated by its
 * amplitude and not by the speed of a lower limb; unequal medial amplitudes of the feet are taken literally and leave a mean
 * force to one side, which a runner on a line does not have; offset and drift of force do not reach the centre of pressure.
 * Source: form of the vertical force, Clark, Ryan & Weyand 2017, J. Exp. Biol. 220:247; half sines, the roll and typical
 * amplitudes, common practice; free moment, Milner et al. 2006 as tabled in doi:10.1186/1758-2555-1-19, its direction a
 * choice; placement of the foot, conservation of angular momentum.
 * @param options - {@link SYNTHETIC_RUN_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`, `not-finite`, `wrong-type`, `unknown-option`: an option outside what is
 * allowed, or variability so large that a contact becomes impossible.
 * @example
 * syntheticRun({ contacts: 10, seed: 7 }).truth.contacts.length // 10
 */
export function syntheticRun(options: SyntheticRunOptions = {}): SyntheticRun {
  const settings = completeOptions(options);
  const { mass, height, gravity, speed, sampleRate, firstFoot, firstContact, duration, contacts } = settings;
  const random = seededRandom(settings.seed);
  const steps = layOutSteps({
    runner: { mass, height, gravity },
    speed,
    means: settings.means,
    draw: drawQuantities(settings.means, settings.variability, settings.correlation, random),
    firstFoot,
    firstContact,
    wanted: (index, time) => (contacts === null ? time < (duration ?? 0) : index < contacts),
  });
  const last = steps[steps.length - 1];
  const end = last === undefined ? 0 : last.initialContact + last.stance.stepTime + settings.tail;
  const samples = Math.round((duration ?? end) * sampleRate);
  const beltSpeed = settings.surface === "belt" ? speed : 0;
  const sampled = sampleSteps(steps, { samples, sampleRate, beltSpeed, place: settings.place });
  const { noise, offset, drift, decimals } = settings;
  const measured = measure(sampled, { noise, offset, drift, decimals, weight: mass * gravity, random });
  const truth = truthOf(steps, settings, (samples - 1) / sampleRate);
  return { recording: recordingOf(measured, settings, truth), truth };
}

function truthOf(steps: readonly LaidStep[], settings: RunSettings, end: number): SyntheticTruth {
  const { mass, gravity, speed, place } = settings;
  const all = steps.map((step): TrueContact => {
    const { stance, initialContact, motion, foot } = step;
    const forward = motion.position.forward + place.forward;
    const right = motion.position.right + place.right;
    return {
      side: stance.side,
      initialContact,
      toeOff: initialContact + stance.contactTime,
      values: trueValues(step, gravity, speed),
      stance,
      motion: { ...motion, position: { ...motion.position, forward, right } },
      foot: { forward: foot.forward + place.forward, right: foot.right + place.right },
    };
  });
  const whole = (contact: TrueContact) => contact.initialContact >= 0 && contact.toeOff <= end;
  return {
    mass,
    gravity,
    speed,
    contacts: all.filter(whole),
    partialContacts: all.filter((contact) => !whole(contact) && contact.initialContact < end),
  };
}

function recordingOf(channels: SampledChannels, settings: RunSettings, truth: SyntheticTruth): Recording {
  const { sampleRate, mass, height, speed, surface } = settings;
  const force = (direction: Direction): Channel => ({
    name: direction,
    quantity: "force",
    direction,
    unit: "N",
    samples: channels[direction],
  });
  const cop = (direction: "forward" | "right"): Channel => ({
    name: `cop_${direction}`,
    quantity: "centre-of-pressure",
    direction,
    unit: "m",
    samples: channels[`cop_${direction}`],
  });
  const firstFoot = truth.contacts[0]?.side;
  return {
    sampleRate,
    startTime: 0,
    channels: [
      force("forward"),
      force("up"),
      force("right"),
      cop("forward"),
      cop("right"),
      {
        name: "free_moment",
        quantity: "free-moment",
        direction: "up",
        unit: "N m",
        samples: channels.free_moment,
      },
    ],
    subject: { mass, height },
    speed,
    surface,
    grade: 0,
    ...(firstFoot !== undefined && { firstFoot }),
    origin: { format: "synthetic" },
    cautions: [],
  };
}
