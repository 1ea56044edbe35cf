import { mean } from "../../statistics/index.js";
import type { Trial } from "../../trial/index.js";
import type { Caution } from "../../units/index.js";

/** Between the end of one trial and the start of the next, s: longer than any stride, so that none spans it. */
const PAUSE = 1000;

/**
 * Sets the trials of one condition behind one another as one: contacts and rows with a pause between trials, strides
 * counted together, the mean of speeds and masses, settings of the first, what was recorded in all.
 *
 * @param trials - At least one.
 */
export function mergedTrial(trials: readonly Trial[]): Trial {
  const first = trials[0] as Trial;
  if (trials.length === 1) return first;
  const starts = trials.map((_, k) =>
    trials.slice(0, k).reduce((sum, { settings }) => sum + settings.duration + PAUSE, 0),
  );
  const moved = <T extends { readonly initialContact: number; readonly toeOff: number }>(
    of: (trial: Trial) => readonly T[],
  ): T[] =>
    trials.flatMap((trial, k) => {
      const start = starts[k] as number;
      return of(trial).map((contact) => ({
        ...contact,
        initialContact: contact.initialContact + start,
        toeOff: contact.toeOff + start,
      }));
    });
  const settings = trials.map((trial) => trial.settings);
  return {
    ...first,
    settings: {
      ...first.settings,
      duration: settings.reduce((sum, { duration }) => sum + duration, 0),
      speed: meanOf(settings.map(({ speed }) => speed)),
      mass: meanOf(settings.map(({ mass }) => mass)),
      massStated: settings.every(({ massStated }) => massStated),
      massByForce: meanOf(settings.map(({ massByForce }) => massByForce)),
    },
    contacts: moved((trial) => trial.contacts),
    partialContacts: moved((trial) => trial.partialContacts),
    steps: moved((trial) => trial.steps),
    summary: {
      strides: trials.reduce((sum, { summary }) => sum + summary.strides, 0),
      impactPeakShare: null,
      metrics: {},
    },
    curves: {
      percent: first.curves.percent,
      up: first.curves.up,
      ...(first.curves.forward !== undefined &&
        trials.every(({ curves }) => curves.forward !== undefined) && { forward: first.curves.forward }),
      ...(first.curves.right !== undefined &&
        trials.every(({ curves }) => curves.right !== undefined) && { right: first.curves.right }),
    },
    notComputed: trials.flatMap(({ notComputed }, k) =>
      notComputed.map((entry) => ({
        ...entry,
        message: `trial ${k + 1} of ${trials.length}: ${entry.message}`,
      })),
    ),
    cautions: cautionsOf(trials),
  };
}

/** Nothing where one of them is not known. */
function meanOf(values: readonly (number | null)[]): number | null {
  const known = values.filter((value) => value !== null);
  if (known.length < values.length) return null;
  // A mean of equal numbers may differ from them in its last digit.
  return known.every((value) => value === known[0]) ? (known[0] as number) : mean(known);
}

/** Those that all trials say alike once, the others with the trial they are of. */
function cautionsOf(trials: readonly Trial[]): Caution[] {
  const same = (one: Caution, other: Caution) =>
    one.code === other.code && one.message === other.message && one.where === other.where;
  const [first, ...rest] = trials as [Trial, ...Trial[]];
  const inAll = first.cautions.filter((one) =>
    rest.every(({ cautions }) => cautions.some((other) => same(one, other))),
  );
  const others = trials.flatMap(({ cautions }, k) =>
    cautions
      .filter((one) => !inAll.some((other) => same(one, other)))
      .map((one): Caution => {
        const trial = `trial ${k + 1} of ${trials.length}`;
        return { ...one, where: one.where === undefined ? trial : `${trial}, ${one.where}` };
      }),
  );
  return [...inAll, ...others];
}
