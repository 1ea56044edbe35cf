import type { MarkerSettings } from "../../force/index.js";
import type { LandingSettings, Trial, TrialSettings } from "../../trial/index.js";
import { counted } from "./counted.js";
import type { Fact } from "./fact.js";
import { filterSentence } from "./filterSentence.js";
import { formatNumber } from "./formatNumber.js";
import { centreMarkerWords, footMarkerWords } from "./markerWords.js";
import { plainNumber } from "./plainNumber.js";
import { sideWords } from "./sideWords.js";
import { strideNoun } from "./strideNoun.js";
import { thresholdWords } from "./thresholdWords.js";

/**
 * Says what was analysed and how, in the words of a person: contacts and strides, gait, speed, both masses, filter,
 * threshold, offset and drift, and how far off the placement of the feet may be.
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
    ...(partial === 0 ? [] : [{ label: "Left out", text: leftOutOf(trial) }]),
    { label: "Gait", text: gaitOf(settings) },
    { label: "Speed", text: speedOf(trial) },
    {
      label: "Mass",
      text: massOf(trial),
    },
    ...(trial.subject.height === undefined
      ? []
      : [{ label: "Height", text: `${plainNumber(trial.subject.height)} m` }]),
    ...(settings.footwear === null ? [] : [{ label: "Footwear", text: settings.footwear }]),
    { label: "Filter", text: filterSentence(settings.filter) },
    {
      label: "Contact threshold",
      text: `${thresholdWords(events)}, on the ${copyOf(settings)} force`,
    },
    { label: "Sides", text: sideWords(events.sides) },
    {
      label: "Offset taken off",
      text: `${offsetOf(force.offset)}${force.driftRemoved ? "; drift removed from flight to flight" : ""}; ${counted(force.flights, settings.gait === "running" ? "flight phase" : "unloaded phase")} seen`,
    },
    ...(settings.gait !== null && settings.gait !== "running"
      ? []
      : [{ label: "Impact peak", text: impactPeakOf(summary) }]),
    ...(settings.landing === null
      ? []
      : [{ label: "Touchdown", text: landingOf(settings.landing, force.markers) }]),
    ...(force.markers?.feet === undefined
      ? []
      : [{ label: "Foot markers", text: footMarkerWords(force.markers) }]),
    ...(settings.airDrag === null ? [] : [{ label: "Air drag", text: dragOf(settings.airDrag) }]),
    {
      label: "Intervals",
      text: `${plainNumber(100 * settings.level)} %, ${settings.interval}`,
    },
  ];
}

/** Contacts that are no whole ones, with why. */
function leftOutOf({ partialContacts, cautions }: Trial): string {
  const across = cautions.some(({ code }) => code === "contacts-on-two-plates");
  const told = cautions.find(({ code }) => code === "long-contact")?.values?.leftOut;
  const several = typeof told === "number" ? told : 0;
  const cut = partialContacts.length - several;
  return [
    ...(cut === 0
      ? []
      : [
          `${counted(cut, "contact")} cut by the ends of the recording${across ? " or across two plates" : ""}`,
        ]),
    ...(several === 0
      ? []
      : [`${counted(several, "contact")} that ${several === 1 ? "holds" : "hold"} several, read as one`]),
  ].join("; ");
}

function gaitOf({ gait, gaitStated }: TrialSettings): string {
  if (gait === null) return "not told";
  return gaitStated ? `${gait}, as stated` : `${gait}, told from the force`;
}

/** What the distances are to, and what no number of strides takes away. */
function landingOf(
  { method, footLevel, margin }: LandingSettings,
  markers: MarkerSettings | undefined,
): string {
  const off = `as a whole touchdown may be off by ${(1000 * margin.touchdown).toFixed(0)} mm, take-off by ${(1000 * margin.takeOff).toFixed(0)} mm, differences by less`;
  const how =
    method === "force"
      ? `from the force alone, foot level ${plainNumber(footLevel)} N`
      : markers?.centreOfMass === undefined
        ? "to the centre of mass that was measured"
        : `to the centre of mass by markers (${centreMarkerWords(markers)})`;
  return `${how}; ${off}`;
}

/** Forward is positive everywhere but here: drag holds the runner back. */
function dragOf(drag: number): string {
  if (drag === 0) return "0 N";
  return `${plainNumber(Math.abs(drag))} N ${drag > 0 ? "backward" : "forward"}, counted in the forward work`;
}

function impactPeakOf({ impactPeakShare }: Trial["summary"]): string {
  return impactPeakShare === null
    ? "not known without a body weight"
    : `in ${(100 * impactPeakShare).toFixed(0)} % of contacts`;
}

function speedOf({ settings: { speed, surface, grade }, cautions }: Trial): string {
  const inferred = cautions.some(({ code }) => code === "surface-inferred")
    ? " (as the recording shows)"
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
  const why = cautions.some(({ code }) => code === "one-foot") ? "one foot alone" : "no whole stride";
  const byForce =
    massByForce === null ? `not known by force (${why})` : `${plainNumber(massByForce)} kg by force`;
  return massStated && mass !== null
    ? `${plainNumber(mass)} kg ${source}, ${byForce}`
    : `not stated, ${byForce}`;
}

function offsetOf(offset: Readonly<Record<string, number>>): string {
  const parts = Object.entries(offset).map(([name, value]) => `${name} ${formatNumber(value, 1)} N`);
  return parts.length === 0 ? "none" : parts.join(", ");
}
