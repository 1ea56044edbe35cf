import type { GroundReaction } from "../force/index.js";
import {
  type Metric,
  positiveExternalWork,
  positiveWorkForward,
  pushToBrakeTimeRatio,
} from "../metrics/index.js";
import { airDrag, airDragCaution } from "../models/index.js";
import { type Caution, fail, type Newtons, requireNumber } from "../units/index.js";

/** The air's drag on the runner: newtons backward, or estimated from speed, mass and height; `null` for none. */
export type TrialAirDrag = Newtons | "estimated" | null;

/** The metrics that a drag moves. */
const DRAGGED = [positiveExternalWork, positiveWorkForward, pushToBrakeTimeRatio] as const;

/** The drag of a trial, N; `null` where none was asked for. A belt in still air has none. */
export function airDragOf(ground: GroundReaction, asked: TrialAirDrag): Newtons | null {
  if (asked === null) return null;
  if (asked !== "estimated") {
    if (typeof asked === "string") {
      fail("out-of-range", `airDrag is "${String(asked)}"; newtons or "estimated" are allowed`, {
        argument: "airDrag",
      });
    }
    return requireNumber("airDrag", asked, { from: -100, to: 100, unit: "N" });
  }
  const { surface, speed, subject, massByForce } = ground;
  if (surface === "belt") return 0;
  const mass = subject.mass ?? massByForce;
  const missing = Object.entries({ surface, speed, mass, height: subject.height })
    .filter(([, value]) => value === undefined)
    .map(([name]) => name);
  if (missing.length > 0) {
    fail(
      "missing-value",
      `air drag is to be estimated, and ${missing.join(", ")} ${missing.length === 1 ? "is" : "are"} not known; state what is missing, or the drag in newtons`,
      { argument: "airDrag", values: { missing } },
    );
  }
  return airDrag(speed as number, { mass, height: subject.height });
}

/** The metrics with a drag in those that it moves; entries of the caller's own stay. */
export function againstAir(metrics: readonly Metric[], drag: Newtons | null): readonly Metric[] {
  if (drag === null || drag === 0) return metrics;
  return metrics.map((metric) => {
    const own = DRAGGED.find((compute) => compute === metric.compute);
    return own === undefined ? metric : { ...metric, compute: (ground, step) => own(ground, step, { drag }) };
  });
}

/** Says where drag was left out of a metric that it moves. */
export function airDragCautions(
  { speed, surface }: GroundReaction,
  drag: Newtons | null,
  computed: readonly Metric[],
): Caution[] {
  if (speed === undefined || surface === undefined) return [];
  if (!computed.some(({ compute }) => DRAGGED.some((own) => own === compute))) return [];
  const said = airDragCaution({ speed, surface, drag });
  return said === null ? [] : [said];
}
