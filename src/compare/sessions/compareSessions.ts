import type { Metric } from "../../metrics/index.js";
import type { NotComputed } from "../../trial/index.js";
import { type Caution, requireNumber, requireOneOf, VERSION, withDefaults } from "../../units/index.js";
import type { Settings } from "../options.js";
import { sameData } from "../sameData.js";
import { settingsOf } from "../settingsOf.js";
import { namedDifferences } from "../severalTrials/namedDifferences.js";
import { NOT_ANALYSED } from "../whyAbsent.js";
import { listed, sentence } from "../wording.js";
import {
  COMPARE_SESSIONS_DEFAULTS,
  type CompareSessionsOptions,
  LEAST_SESSIONS_FOR_SPREAD,
  type Session,
  type SessionsSettings,
} from "./options.js";
import { type KnownSession, requireSessions } from "./requireSessions.js";
import { sessionSentence } from "./sessionSentence.js";
import type { SessionSeries, SessionValue } from "./sessionSeries.js";
import { sessionValues } from "./sessionValues.js";

/**
 * Holds each session of a runner against that runner's own baseline: the last sessions before it, or the first ones for good.
 *
 * Formula: a session's value is the mean of its trial means; difference = session − mean of the n baseline sessions. The interval
 * is the one within which a further session's difference lies where nothing changed, d ± t s √(1 + 1/n), s the standard
 * deviation between the baseline's sessions, t Student's quantile with n − 1 degrees of freedom; nowhere narrower than the strides make
 * it, and by these alone with fewer than {@link LEAST_SESSIONS_FOR_SPREAD} sessions. The smallest detectable change is the one given, or
 * 1.96 √2 s, or with fewer sessions 0.8 standard deviations of strides. `above` and `below`: the interval
 * leaves zero and the difference exceeds the smallest detectable change.
 * Units: each metric's own.
 * Limits: sessions stand in the order given; a name is not read as a date. Without any change, of 100 sessions that vary by
 * 0.5 to 2 standard deviations of strides 4 to 6 lie outside in one metric at 95 % with 3 or 5 baseline sessions, 2 to 3 with 10,
 * 1 or fewer at 99 %; where sessions do not vary, fewer than 1 (2400 each, 40 strides a session). With one baseline session it is 29 of 100 where they vary by 0.5, 60 where by 1. A moving
 * baseline follows a slow change and calls none of its sessions outside; the first ones do not follow it. A session
 * outside is in the moving baseline of those after it, which a caution says. Outside says nothing of harm.
 * Source: prediction interval of one further value, textbook, from memory; smallest detectable change: Weir 2005, J. Strength
 * Cond. Res. 19:231 (abstract).
 * @param sessions - In the order of time, of one runner in one condition, all analysed with one filter.
 * @param options - {@link COMPARE_SESSIONS_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`: no sessions, or no trial; `too-short`: a session without a trial; `conflict`: a name or a trial
 *   that is there twice; `not-comparable`: different filters or gaits; `out-of-range`, `not-finite`, `unit-mismatch`,
 *   `missing-value`, `unknown-option`: an option outside what it allows.
 * @example
 * compareSessions([{ name: "May", trials: baseline }, { name: "June", trials: changed }], { baselineSessions: 1 }).metrics.length > 0 // true
 */
export function compareSessions(
  sessions: readonly Session[],
  options: CompareSessionsOptions = {},
): SessionSeries {
  const settings = withDefaults<CompareSessionsOptions>(COMPARE_SESSIONS_DEFAULTS, options);
  const { baseline, baselineSessions, level, ...shared } = settings;
  requireOneOf("baseline", baseline, ["moving", "first"]);
  requireNumber("baselineSessions", baselineSessions, { from: 1, whole: true });
  requireNumber("level", level, { above: 0, below: 1 });
  const ofTrials = settingsOf(shared);
  const known = requireSessions(sessions);
  const found = settings.metrics.map((metric) => ({ metric, ...sessionValues(metric, known, settings) }));
  const having = found.filter(({ values }) => values.length > 0);
  const speaking = having.filter(({ metric }) => metric.primary === true);
  const compared = [...speaking, ...having.filter(({ metric }) => metric.primary !== true)];
  const withOutside = speaking.filter(({ values }) => values.some(isOutside));
  const told = [...withOutside, ...speaking.filter((one) => !withOutside.includes(one))];
  const same = sameData(
    known.flatMap(({ name, trials }) =>
      trials.map(({ trial }, k) => ({ name: trials.length === 1 ? name : `${name}, trial ${k + 1}`, trial })),
    ),
    settings.metrics,
  );
  const differing = sessionCautions(known, ofTrials);
  return {
    schema: "gait-kinetics/sessions/1",
    settings: {
      version: VERSION,
      level,
      baseline,
      baselineSessions,
      speedTolerance: settings.speedTolerance,
      filter: known[0]?.trials[0]?.trial.settings.filter ?? null,
      interval: `${
        baselineSessions < LEAST_SESSIONS_FOR_SPREAD
          ? "Student's t with the effective number of strides; what varies from session to session is not in it"
          : "prediction interval of one further session, Student's t with the standard deviation between the baseline's sessions; nowhere narrower than the strides make it"
      }; a session lies above or below where its difference has this interval clear of zero and exceeds the smallest detectable change, both, else within`,
    },
    metrics: compared.map(({ metric: { id, unit, moreLoad }, values }) => ({
      id,
      unit,
      moreLoad,
      sessions: values,
    })),
    notCompared: found
      .filter(({ values }) => values.length === 0)
      .map(({ metric }) => absent(metric.id, known)),
    sentences: [
      ...told.map(({ metric, values }) => sessionSentence(metric, values, settings)),
      ...same.map(({ message }) => sentence(message)),
      ...differing.filter(({ code }) => ASIDES.includes(code)).map(({ message }) => sentence(message)),
    ],
    cautions: [
      ...same,
      ...baselineCautions(known, settings),
      ...outsideInBaseline(speaking, settings),
      ...differing,
      ...compared.flatMap(({ metric, leftOut }): Caution[] =>
        metric.primary !== true || leftOut.length === 0
          ? []
          : [
              {
                code: "sessions-left-out",
                message: `${metric.name} is not known in all trials of ${listed(leftOut)}, left out of it and of its baselines`,
                where: metric.id,
                values: { sessions: leftOut.length },
              },
            ],
      ),
      ...ownCautions(known),
    ],
  };
}

/** What the sentences must say, too, of what sessions differ in. */
const ASIDES: readonly string[] = [
  "speeds-differ",
  "surfaces-differ",
  "grades-differ",
  "masses-differ",
  "footwear-differs",
];

function absent(id: string, sessions: readonly KnownSession[]): NotComputed {
  const whys = new Set(
    sessions.flatMap(({ trials }) =>
      trials.map(({ trial }) => trial.notComputed.find((entry) => entry.id === id)?.message ?? NOT_ANALYSED),
    ),
  );
  return {
    id,
    code: "in-no-session",
    message: `no session has it in all its trials (${[...whys].join("; ")})`,
  };
}

function isOutside({ against }: SessionValue): boolean {
  return against !== null && against.place !== "within";
}

/** A session that lies outside widens the moving baseline of those after it, and moves its mean. */
function outsideInBaseline(
  speaking: readonly { readonly metric: Metric; readonly values: readonly SessionValue[] }[],
  { baseline }: SessionsSettings,
): Caution[] {
  if (baseline !== "moving") return [];
  const found = speaking.flatMap(({ metric, values }) => {
    // The last one is in no baseline yet.
    const names = values
      .slice(0, -1)
      .filter(isOutside)
      .map(({ name }) => name);
    return names.length === 0 ? [] : [{ metric, names }];
  });
  if (found.length === 0) return [];
  const words = found.map(({ metric, names }) => `${listed(names)} (${metric.name})`);
  return [
    {
      code: "outside-in-baseline",
      message: `sessions that lie outside are in the moving baseline of those after them, whose mean they move and whose interval they widen, so that a later session lies outside less easily: ${words.join("; ")}; the first sessions as baseline do not move`,
      where: found.map(({ metric }) => metric.id).join(", "),
      values: { sessions: new Set(found.flatMap(({ names }) => names)).size },
    },
  ];
}

function baselineCautions(
  sessions: readonly KnownSession[],
  { baselineSessions }: SessionsSettings,
): Caution[] {
  const found: Caution[] = [];
  if (sessions.length <= baselineSessions) {
    found.push({
      code: "baseline-not-complete",
      message: `${sessions.length} session${sessions.length === 1 ? "" : "s"} where ${baselineSessions} make the baseline: nothing is held against it yet`,
      values: { sessions: sessions.length, baselineSessions },
    });
  }
  if (baselineSessions < LEAST_SESSIONS_FOR_SPREAD) {
    found.push({
      code: "between-sessions-unknown",
      message: `with ${baselineSessions} baseline session${baselineSessions === 1 ? "" : "s"} what varies from session to session is not known: strides alone make the intervals, and sessions lie outside far more often than the level says`,
      values: { baselineSessions },
    });
  }
  return found;
}

/** What may have moved a load beside the runner: each kind once, with the sessions that differ from the first. */
function sessionCautions(sessions: readonly KnownSession[], settings: Settings): Caution[] {
  const first = sessions[0]?.trials[0]?.trial;
  if (first === undefined) return [];
  const pairs = sessions.flatMap(({ name, trials }) =>
    trials.map(({ trial }) => ({ name, one: first, other: trial })),
  );
  return namedDifferences(pairs, settings).map(({ code, what, names }) => ({
    code,
    message:
      code === "speed-not-stated"
        ? "the speed of some session is not known: that speeds agree cannot be checked"
        : `session${names.length === 1 ? "" : "s"} ${listed(names)} ${names.length === 1 ? "differs" : "differ"} from the first in ${what}, which may have moved the load by itself`,
    where: names.join(", "),
    values: { sessions: names.length },
  }));
}

/** The trials' own cautions: each kind once, with the sessions it is of. */
function ownCautions(sessions: readonly KnownSession[]): Caution[] {
  const all = sessions.flatMap(({ name, trials }) =>
    trials.flatMap(({ trial }) => trial.cautions.map((caution) => ({ name, caution }))),
  );
  return [...new Set(all.map(({ caution }) => caution.code))].flatMap((code) => {
    const those = all.filter(({ caution }) => caution.code === code);
    const [first] = those;
    if (first === undefined) return [];
    const names = [...new Set(those.map(({ name }) => name))];
    const more = names.length === 1 ? "" : ` (and ${names.length - 1} more such)`;
    return [{ code, message: `${first.caution.message}${more}`, where: names.join(", ") }];
  });
}
