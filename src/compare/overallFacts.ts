import type { ComponentName } from "./comparison.js";
import type { Absence, ComponentState, PrimaryReading } from "./readComponent.js";

/** A component with a reading, which may be that it is not settled. */
export interface ReadComponent {
  readonly component: ComponentName;
  readonly primary: PrimaryReading;
}

/** A component without one. */
export interface AbsentComponent {
  readonly component: ComponentName;
  readonly absence: Absence;
}

/** Components by what is said of them. */
export interface Readings {
  readonly lower: readonly ReadComponent[];
  readonly higher: readonly ReadComponent[];
  readonly similar: readonly ReadComponent[];
  readonly unsettled: readonly ReadComponent[];
}

/** The three components, sorted for the load as a whole. */
export interface Facts extends Readings {
  readonly read: readonly ReadComponent[];
  readonly absent: readonly AbsentComponent[];
  /**
   * Per kilometre: components that could be read and whose metric has a meaning there. Of `unknown` ones no value is known.
   */
  readonly kilometre: Readings & { readonly unknown: readonly ReadComponent[] };
}

/** Sorts the components. */
export function overallFacts(states: readonly ComponentState[]): Facts {
  const read: ReadComponent[] = [];
  const absent: AbsentComponent[] = [];
  for (const { component, primary, absence } of states) {
    if (primary === null) absent.push({ component, absence });
    else read.push({ component, primary });
  }
  const counted = read.filter(
    ({ primary: { obstacle, pair } }) => obstacle === null && pair.metric.perKilometre === true,
  );
  return {
    read,
    absent,
    ...byReading(read, ({ reading }) => reading),
    kilometre: {
      ...byReading(counted, ({ perKilometre }) => perKilometre),
      unknown: counted.filter(({ primary }) => primary.perKilometre === null),
    },
  };
}

function byReading(
  components: readonly ReadComponent[],
  readingOf: (primary: PrimaryReading) => string | null,
): Readings {
  const those = (reading: keyof Readings) =>
    components.filter(({ primary }) => readingOf(primary) === reading);
  return {
    lower: those("lower"),
    higher: those("higher"),
    similar: those("similar"),
    unsettled: those("unsettled"),
  };
}

/** The components' names. */
export function names(components: readonly { readonly component: ComponentName }[]): ComponentName[] {
  return components.map(({ component }) => component);
}
