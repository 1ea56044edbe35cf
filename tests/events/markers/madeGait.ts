import type { Marker, MarkerSet } from "../../../src/recording/index.js";
import { seededRandom } from "../../../src/statistics/index.js";

/** A leg whose events are known. The kinematics are invented: what is known is when the foot lands and leaves. */
export interface MadeGait {
  readonly markers: MarkerSet;
  readonly initialContacts: readonly number[];
  readonly toeOffs: readonly number[];
}

/** What a made gait is made from; s, m, m/s, Hz. */
export interface MadeGaitOptions {
  readonly strideTime: number;
  readonly contactTime: number;
  readonly speed: number;
  /** Foot's pitch at landing, rad, positive with the toes up. */
  readonly landingPitch: number;
  readonly belt: boolean;
  readonly sampleRate: number;
  /** Standard deviation of the noise on each co-ordinate, m. */
  readonly noise: number;
  readonly seed: number;
}

/** Walking at 1.4 m/s with a heel strike. */
export const MADE_WALK = {
  strideTime: 1.063,
  contactTime: 0.65,
  speed: 1.4,
  landingPitch: 0.35,
  belt: false,
  sampleRate: 150,
  noise: 0,
  seed: 1,
} as const satisfies MadeGaitOptions;

/** Running at 3.3 m/s on a belt with a nearly flat foot. */
export const MADE_RUN = {
  strideTime: 0.7237,
  contactTime: 0.25,
  speed: 3.3,
  landingPitch: 0.1,
  belt: true,
  sampleRate: 150,
  noise: 0,
  seed: 2,
} as const satisfies MadeGaitOptions;

const FOOT = 0.2;
const STRIDES = 40;
/** The foot stops within a few of these after it lands, s. */
const STOP = 0.004;
const LANDING_SPEED = { forward: 0.6, up: -0.5 };
const LAST_PITCH = 1.1;

/**
 * Makes the heel, the toe and the pelvis of one leg. The heel lands at a known time with 0.5 m/s downward and stops within
 * some 10 ms; the toes come down within 60 ms; the heel rises from half of the contact, about the toe; the toe leaves at
 * a known time. In swing heel and pitch follow cubics that join both without a jump of place or speed.
 */
export function madeGait(options: MadeGaitOptions): MadeGait {
  const { strideTime, contactTime, speed, belt, sampleRate, noise, seed } = options;
  const { normal } = seededRandom(seed);
  const frames = Math.round(STRIDES * strideTime * sampleRate);
  // The first contact comes after half a stride and a third of a frame, so that no contact is on a frame by design.
  const start = strideTime / 2 + 1 / (3 * sampleRate);
  const series = () => ({
    forward: new Float64Array(frames),
    up: new Float64Array(frames),
    right: new Float64Array(frames),
  });
  const [heel, toe, pelvis] = [series(), series(), series()];
  for (let i = 0; i < frames; i++) {
    const t = i / sampleRate;
    const k = Math.floor((t - start) / strideTime);
    const { x, y, pitch } = footAt(t - start - k * strideTime, options);
    const back = belt ? speed * t : 0;
    const place = k * speed * strideTime;
    const jitter = () => (noise === 0 ? 0 : noise * normal());
    heel.forward[i] = place + x - back + jitter();
    heel.up[i] = 0.04 + y + jitter();
    toe.forward[i] = place + x + FOOT * Math.cos(pitch) - back + jitter();
    toe.up[i] = 0.04 + y + FOOT * Math.sin(pitch) + jitter();
    pelvis.forward[i] = speed * (t - start) + 0.1 - back + jitter();
  }
  const times = (offset: number) =>
    Array.from({ length: STRIDES + 1 }, (_, k) => start + (k - 1) * strideTime + offset).filter(
      (time) => time > 0 && time < (frames - 1) / sampleRate,
    );
  const named = (name: string, marker: Omit<Marker, "name">): Marker => ({ name, ...marker });
  return {
    markers: {
      sampleRate,
      startTime: 0,
      markers: [named("heel", heel), named("toe", toe), named("pelvis", pelvis)],
    },
    initialContacts: times(0),
    toeOffs: times(contactTime),
  };
}

/** The heel's place and the foot's pitch (toes up positive), time after landing, heel 0 where it lands. */
function footAt(t: number, options: MadeGaitOptions): { x: number; y: number; pitch: number } {
  const { strideTime, contactTime, speed, landingPitch } = options;
  if (t < contactTime) {
    const stop = STOP * (1 - Math.exp(-t / STOP));
    const rise = Math.max(0, (t / contactTime - 0.5) * 2);
    const down = Math.max(0, 1 - t / 0.06);
    const lift = -LAST_PITCH * rise * rise;
    // About the toe once the heel rises.
    return {
      x: LANDING_SPEED.forward * stop + FOOT * (1 - Math.cos(lift)),
      y: LANDING_SPEED.up * stop - FOOT * Math.sin(lift),
      pitch: landingPitch * down * down + lift,
    };
  }
  const swing = strideTime - contactTime;
  const before = footAt(contactTime - 1e-9, options);
  const earlier = footAt(contactTime - 1e-4, options);
  const speedOf = (name: "x" | "y" | "pitch") => (before[name] - earlier[name]) / (1e-4 - 1e-9);
  const u = (t - contactTime) / swing;
  const join = (name: "x" | "y" | "pitch", end: number, endSpeed: number) =>
    cubic(u, before[name], speedOf(name) * swing, end, endSpeed * swing);
  return {
    x: join("x", speed * strideTime, LANDING_SPEED.forward),
    y: join("y", 0, LANDING_SPEED.up),
    pitch: join("pitch", landingPitch, (-2 * landingPitch) / 0.06),
  };
}

/** Cubic from a value and a slope at 0 to those at 1. */
function cubic(u: number, from: number, slope: number, to: number, endSlope: number): number {
  const v = 1 - u;
  return from * (1 + 2 * u) * v * v + slope * u * v * v + to * u * u * (3 - 2 * u) - endSlope * u * u * v;
}
