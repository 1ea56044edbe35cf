import type { Trial, TrialSettings } from "../../trial/index.js";
import { counted } from "./counted.js";
import type { Fact } from "./fact.js";
import { filterSentence } from "./filterSentence.js";
import { formatNumber } from "./formatNumber.js";
import { plainNumber } from "./plainNumber.js";
import { strideNoun } from "./strideNoun.js";

/**
 * Says what was analysed and how, in the words of a person: contacts and strides, speed, both masses, filter,
 * threshold, offset and drift.
 *
 * @param trial - As `analyseTrial` gives it.
 */
export function trialFacts(trial: Trial): readonly Fact[] {
  const { settings, summary } = trial;
  const { events, force } = settings;
  const partial = trial.partialContacts.length;
  return [
    {
      label: "Analysed",
      text: `${counted(trial.contacts.length, "contact")}, ${counted(summary.strides, summary.strides === 0 ? "stride" : strideNoun(trial))} in ${plainNumber(settings.duration)} s at ${plainNumber(settings.sampleRate)} Hz`,
    },
    ...(partial === 0
      ? []
      : [{ label: "Left out", text: `${counted(partial, "contact")} cut by the ends of the recording` }]),
    { label: "Speed", text: speedOf(trial) },
    {
      label: "Mass",
      text: massOf(trial),
    },
    ...(trial.subject.height === undefined
      ? []
      : [{ label: "Height", text: `${plainNumber(trial.subject.height)} m` }]),
    { label: "Filter", text: filterSentence(settings.filter) },
    {
      label: "Contact threshold",
      text: `${plainNumber(events.threshold)} N, on the ${copyOf(settings)} force; sides by ${events.sides}`,
    },
    {
      label: "Offset taken off",
      text: `${offsetOf(force.offset)}${force.driftRemoved ? "; drift removed from flight to flight" : ""}; ${counted(force.flights, "flight phase")} seen`,
    },
    { label: "Impact peak", text: impactPeakOf(summary) },
    {
      label: "Intervals",
      text: `${plainNumber(100 * settings.level)} %, ${settings.interval}`,
    },
  ];
}

function impactPeakOf({ impactPeakShare }: Trial["summary"]): string {
  return impactPeakShare === null
    ? "not known without a body weight"
    : `in ${(100 * impactPeakShare).toFixed(0)} % of contacts`;
}

function speedOf({ settings: { speed, surface, grade }, cautions }: Trial): string {
  const inferred = cautions.some(({ code }) => code === "surface-inferred")
    ? " by the centre of pressure"
    : "";
  const where =
    surface === null
      ? "surface not stated"
      : `${surface === "belt" ? "on a belt" : "over ground"}${inferred}`;
  // A recording that states no slope is taken as one that states none.
  const slope = grade === 0 ? "taken as level" : `grade ${plainNumber(100 * grade)} %`;
  return `${speed === null ? "not stated" : `${plainNumber(speed)} m/s`}, ${where}, ${slope}`;
}

/** The copy of the force that contacts were found on. */
function copyOf({ events, filter }: TrialSettings): string {
  if (events.cutoff !== null) return `${plainNumber(events.cutoff)} Hz low-passed`;
  return filter === null ? "unfiltered" : "filtered";
}

function massOf({ settings: { mass, massStated, massByForce }, cautions }: Trial): string {
  const source = cautions.some(({ code }) => code === "mass-from-file") ? "from the file" : "stated";
  const byForce = massByForce === null ? "not known by force" : `${plainNumber(massByForce)} kg by force`;
  return massStated && mass !== null
    ? `${plainNumber(mass)} kg ${source}, ${byForce}`
    : `not stated, ${byForce}`;
}

function offsetOf(offset: Readonly<Record<string, number>>): string {
  const parts = Object.entries(offset).map(([name, value]) => `${name} ${formatNumber(value, 1)} N`);
  return parts.length === 0 ? "none" : parts.join(", ");
}
