import type { Metric } from "../../metrics/index.js";
import { capital, digits, lessIsMore, listed } from "../wording.js";
import { LEAST_SESSIONS_FOR_SPREAD, type SessionsSettings } from "./options.js";
import type { SessionValue } from "./sessionSeries.js";

/** Says of a metric which sessions lie outside, by how much, and how many would by chance. */
export function sessionSentence(
  { name, unit, moreLoad }: Metric,
  values: readonly SessionValue[],
  { level, baseline, baselineSessions }: SessionsSettings,
): string {
  const held = values.filter(({ against }) => against !== null);
  if (held.length === 0)
    return `${capital(name)}: ${values.length} of the ${baselineSessions} sessions that make the baseline, and none to hold against it.`;
  const outside = (place: "above" | "below") => held.filter(({ against }) => against?.place === place);
  const said = (["above", "below"] as const).flatMap((place) => {
    const those = outside(place);
    if (those.length === 0) return [];
    return [`${listed(those.map((value) => `${value.name} (${changeOf(value, unit)})`))} ${place}`];
  });
  const whose =
    baseline === "first"
      ? `the baseline of the first ${count(baselineSessions)}`
      : `the baseline of the ${count(baselineSessions)} before`;
  const one = Math.round(1 / (1 - level));
  const chance =
    baselineSessions < LEAST_SESSIONS_FOR_SPREAD
      ? "what varies from session to session is not known, and without any change many would lie outside"
      : `without any change up to one in ${one} would lie outside by chance`;
  const clear = ({ low, high }: { readonly low: number; readonly high: number }) => low > 0 || high < 0;
  const unclear = held.filter(
    ({ against }) =>
      against !== null &&
      Math.abs(against.difference) > against.smallestDetectableChange.value &&
      !clear(against.interval),
  );
  const within =
    unclear.length === 0
      ? ""
      : ` ${capital(listed(unclear.map((value) => `${value.name} (${changeOf(value, unit)})`)))} ${unclear.length === 1 ? "differs" : "differ"} by more than the smallest detectable change, but with an interval that holds zero, and ${unclear.length === 1 ? "counts" : "count"} as within.`;
  const outcome =
    said.length === 0
      ? `${capital(name)}: ${held.length === 1 ? "the session held" : `the ${held.length} sessions held`} against ${whose} ${held.length === 1 ? "lies" : "lie"} within what varies.`
      : `${capital(name)}: of ${held.length} held against ${whose}, ${listed(said)}${lessIsMore(moreLoad)}, beyond the smallest detectable change with an interval clear of zero; ${chance}.`;
  return `${outcome}${within}`;
}

function count(sessions: number): string {
  return sessions === 1 ? "session" : `${sessions} sessions`;
}

/** "+4.2 %", or in the unit where the baseline is zero. */
function changeOf({ against }: SessionValue, unit: string): string {
  if (against === null) return "";
  const { difference, baseline } = against;
  const plus = difference > 0 ? "+" : "";
  return baseline === 0
    ? `${plus}${digits(difference)} ${unit}`
    : `${plus}${((100 * difference) / Math.abs(baseline)).toFixed(1)} %`;
}
