/** A straight way of the centre of pressure while one foot bears it: place and velocity along both axes at a time. */
export interface FootPath {
  readonly time: number;
  readonly right: number;
  readonly rightPerSecond: number;
  readonly forward: number;
  readonly forwardPerSecond: number;
}

/** Centre of pressure of one plate over a stretch, on the plate's own samples; `forward` is 0 where it was not recorded. */
export interface PressurePath {
  readonly sampleRate: number;
  /** Sample number of the first value. */
  readonly first: number;
  readonly right: Float64Array;
  readonly forward: Float64Array;
  /** Vertical force, N. */
  readonly load: Float64Array;
}

/** Fewest samples that a straight line is put through. */
const FEWEST = 3;

/**
 * Puts straight lines through the centre of pressure between two times (least squares), s from the plate's first sample;
 * `null` where they hold too few samples.
 */
export function fitFootPath(path: PressurePath, from: number, to: number): FootPath | null {
  const { sampleRate, first, right, forward } = path;
  const begin = Math.max(0, Math.ceil(from * sampleRate - 1e-6) - first);
  const end = Math.min(right.length - 1, Math.floor(to * sampleRate + 1e-6) - first);
  const n = end - begin + 1;
  if (n < FEWEST) return null;
  const middle = (begin + end) / 2;
  let sumRight = 0;
  let sumForward = 0;
  let slopeRight = 0;
  let slopeForward = 0;
  let spread = 0;
  for (let i = begin; i <= end; i++) {
    const away = i - middle;
    sumRight += right[i] as number;
    sumForward += forward[i] as number;
    slopeRight += away * (right[i] as number);
    slopeForward += away * (forward[i] as number);
    spread += away * away;
  }
  return {
    time: (first + middle) / sampleRate,
    right: sumRight / n,
    rightPerSecond: (slopeRight / spread) * sampleRate,
    forward: sumForward / n,
    forwardPerSecond: (slopeForward / spread) * sampleRate,
  };
}

/** Share of the load that lies on the second of two feet at a sample of the path, by where between both the centre of pressure is. */
export function shareOnSecond(path: PressurePath, i: number, one: FootPath, other: FootPath): number {
  const time = (path.first + i) / path.sampleRate;
  const oneRight = one.right + one.rightPerSecond * (time - one.time);
  const oneForward = one.forward + one.forwardPerSecond * (time - one.time);
  const right = other.right + other.rightPerSecond * (time - other.time) - oneRight;
  const forward = other.forward + other.forwardPerSecond * (time - other.time) - oneForward;
  const along =
    ((path.right[i] as number) - oneRight) * right + ((path.forward[i] as number) - oneForward) * forward;
  return along / (right * right + forward * forward);
}
