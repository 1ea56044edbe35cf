import type { TrialSettings } from "../../trial/index.js";
import { counted } from "./counted.js";
import { centreMarkerWords, footMarkerWords } from "./markerWords.js";
import { plainNumber } from "./plainNumber.js";
import { sideWords } from "./sideWords.js";
import { thresholdWords } from "./thresholdWords.js";

/**
 * Says in prose how the numbers of a trial were computed.
 *
 * @param settings - Of the trial.
 */
export function methodsParagraph(settings: TrialSettings): string {
  return methodsSentences(settings).join(" ");
}

/**
 * Says in prose how a second trial was computed, as far as that differs from the first.
 *
 * @param settings - Of the second trial.
 * @param first - Of the first.
 */
export function methodsBesides(settings: TrialSettings, first: TrialSettings): string {
  const said = methodsSentences(first);
  const other = methodsSentences(settings).filter((sentence) => !said.includes(sentence));
  return other.length === 0 ? "The same." : `The same, but: ${other.join(" ")}`;
}

function methodsSentences(settings: TrialSettings): readonly string[] {
  const { airDrag, force, level, interval, version } = settings;
  return [
    filterOf(settings),
    eventsOf(settings),
    `Offset ${force.driftRemoved ? "and drift were" : "was"} taken from ${counted(force.flights, settings.gait === "running" ? "flight phase" : "unloaded phase")}.`,
    massOf(settings),
    ...markersOf(settings),
    ...(airDrag === null ? [] : [`The work was done against ${plainNumber(airDrag)} N of air drag.`]),
    `Means, standard deviations and intervals are of strides (two successive contacts); left and right are of contacts. Intervals: ${plainNumber(100 * level)} %, ${interval}.`,
    `Computed with gait-kinetics ${version}.`,
  ];
}

function filterOf({ filter, sampleRate }: TrialSettings): string {
  const sampled = `The force, sampled at ${plainNumber(sampleRate)} Hz,`;
  if (filter === null) return `${sampled} was not filtered.`;
  return `${sampled} was low-pass filtered at ${plainNumber(filter.cutoff)} Hz (-3 dB of the net response) with a zero-phase Butterworth filter of net order ${filter.order}.`;
}

function eventsOf({ events }: TrialSettings): string {
  const copy = events.cutoff === null ? "" : `, on force low-passed at ${plainNumber(events.cutoff)} Hz`;
  return `Contacts were read where the vertical force crosses ${thresholdWords(events)}, between samples${copy}; a contact ends once the force is below ${plainNumber(events.fallLevel)} N, gaps shorter than ${plainNumber(1000 * events.shortestFlight)} ms are bridged and contacts shorter than ${plainNumber(1000 * events.shortestContact)} ms dropped; left and right were ${sideWords(events.sides)}.`;
}

function markersOf({ force: { markers } }: TrialSettings): string[] {
  if (markers === undefined) return [];
  return [
    ...(markers.centreOfMass === undefined
      ? []
      : [`The centre of mass was placed by markers (${centreMarkerWords(markers)}).`]),
    ...(markers.feet === undefined ? [] : [`The feet were placed by markers (${footMarkerWords(markers)}).`]),
  ];
}

function massOf({ mass, massStated, massByForce, gravity }: TrialSettings): string {
  const gravityText = `gravity ${plainNumber(gravity)} m/s²`;
  if (massByForce === null) {
    return `${mass === null ? "No mass is known" : `Values are normalised by the stated mass of ${plainNumber(mass)} kg`}; ${gravityText}.`;
  }
  const byForce = `the mass by force (mean vertical force over whole strides ÷ gravity), ${plainNumber(massByForce)} kg`;
  return massStated && mass !== null
    ? `Values are normalised by the stated mass of ${plainNumber(mass)} kg; the motion of the centre of mass is integrated with ${byForce}; ${gravityText}.`
    : `No mass was stated; values are normalised, and the motion of the centre of mass is integrated, with ${byForce}; ${gravityText}.`;
}
