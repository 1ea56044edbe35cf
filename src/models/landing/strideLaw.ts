/** One foot's stride in samples. */
export interface StrideWindows {
  /** First sample of the stride, in flight. */
  readonly start: number;
  /** Last touch of the first contact, between samples. */
  readonly lastTouch: number;
  /** First sample of the same foot's next contact. */
  readonly next: number;
  /** Last sample of that contact. */
  readonly end: number;
  /** From first touch to first touch, s. */
  readonly duration: number;
}

/** The centre of mass along `forward` over a stride. */
export interface StrideMotion {
  /** Its place at the first sample, m. */
  readonly place: number;
  /** Its velocity there, m/s. */
  readonly velocity: number;
  /** Its place at last touch, m. */
  readonly atLastTouch: number;
  /** Mean velocity over the stride, m/s. */
  readonly meanVelocity: number;
}

/** Mean of the stride's forces, N. */
export interface StrideMeans {
  readonly up: number;
  readonly forward: number;
}

/** Gives the mean vertical and forward force of a stride, whose ends lie in flight. */
export function strideMeans(
  up: Float64Array,
  forward: Float64Array,
  sampleRate: number,
  { start, next, duration }: StrideWindows,
): StrideMeans {
  let sumUp = 0;
  let sumForward = 0;
  for (let i = start; i < next; i++) {
    sumUp += up[i] as number;
    sumForward += forward[i] as number;
  }
  const share = 1 / (sampleRate * duration);
  return { up: sumUp * share, forward: sumForward * share };
}

/** What the law is told beside the samples. */
export interface StrideSettings {
  /** Mean forward force that gravity takes, N: the grade's. */
  readonly along: number;
  /** Share of the vertical force to take off the forward force. */
  readonly balance: number;
  readonly mass: number;
  /** Mean height of the centre of mass, m. */
  readonly height: number;
}

/**
 * Places the centre of mass along `forward` over a stride by two laws of angular momentum about the right axis: it returns
 * after the stride, and the same foot's two contacts change it alike.
 *
 * Formula: x = x₀ + v₀ t + p, p = ∬ (F_f − tan θ F̄_u)/m; with q = M − p F_u + (h₀ + y) F_f over the first contact, the next
 * one and the stride: v₀ = (q̄₂ − q̄₁)/(t̄₂ − t̄₁), x₀ = q̄ − v₀ t̄, each mean weighted by F_u.
 *
 * @param up - N.
 * @param forward - N.
 * @param moment - About the right axis, N·m.
 * @param sampleRate - Hz.
 * @param windows - In samples.
 * @param means - Of the stride's forces.
 * @param settings - Grade, balance, mass, height.
 */
export function strideLaw(
  up: Float64Array,
  forward: Float64Array,
  moment: Float64Array,
  sampleRate: number,
  { start, lastTouch, next, end }: StrideWindows,
  means: StrideMeans,
  { along, balance, mass, height }: StrideSettings,
): StrideMotion {
  const h = 1 / sampleRate;
  const samples = { up, forward, moment, start, balance, along, mean: means.up };
  const way: Way = { forwardPlace: 0, forwardSpeed: 0, upPlace: 0, upSpeed: 0 };
  // Makes metres of a place in the way's own units.
  const metres = (h * h) / (6 * mass);
  const touched = Math.floor(lastTouch);
  const touching = sumsAlong(samples, way, start, touched);
  const before = way.forwardPlace;
  const contact = together(touching, sumsAlong(samples, way, touched, Math.ceil(lastTouch)));
  const later = before + (lastTouch - touched) * (way.forwardPlace - before);
  const stride = together(contact, sumsAlong(samples, way, Math.ceil(lastTouch), next));
  const gained = way.forwardPlace * metres;
  const rise = way.upPlace * metres;
  const nextContact = sumsAlong(samples, way, next, end + 1);

  const total = (next - start) * h;
  // The height returns after the stride and has the mean given: what it drifts by and its mean are taken off afterwards.
  const drift = rise / total;
  const above = height - (metres * stride.upPlace) / (next - start) + (drift * (total - h)) / 2;
  const law = (of: Sums) => {
    const turning = of.moment + metres * (of.heightByForward - of.placeByUp);
    const height = above * of.forward - drift * h * of.forwardByTime;
    return { place: (turning + height) / of.up, time: (h * of.upByTime) / of.up };
  };
  const whole = law(stride);
  const one = law(contact);
  const two = law(nextContact);
  const velocity = (two.place - one.place) / (two.time - one.time);
  const place = whole.place - velocity * whole.time;
  return {
    place,
    velocity,
    atLastTouch: place + velocity * (lastTouch - start) * h + metres * later,
    meanVelocity: velocity + gained / total,
  };
}

/** What is summed up, and from which sample time counts. */
interface Summed {
  readonly up: Float64Array;
  readonly forward: Float64Array;
  readonly moment: Float64Array;
  readonly start: number;
  readonly balance: number;
  readonly along: number;
  readonly mean: number;
}

/**
 * Where both axes have got to, in newtons and samples: six times the place and twice the speed that a mass of 1 would have,
 * so that nothing is divided on the way. Changed in place.
 */
interface Way {
  forwardPlace: number;
  forwardSpeed: number;
  upPlace: number;
  upSpeed: number;
}

/** Sums over samples, times in samples and places in units of the way. */
interface Sums {
  readonly up: number;
  readonly upByTime: number;
  readonly upPlace: number;
  readonly moment: number;
  readonly placeByUp: number;
  readonly heightByForward: number;
  readonly forwardByTime: number;
  readonly forward: number;
}

/** Sums up from one sample to before another, to which it leads the way. */
function sumsAlong(summed: Summed, way: Way, from: number, to: number): Sums {
  const { up, forward, moment, start, balance, along, mean } = summed;
  const last = up.length - 1;
  let { forwardPlace: x, forwardSpeed: vx, upPlace: y, upSpeed: vy } = way;
  let [sumUp, upByTime, upPlace, sumMoment] = [0, 0, 0, 0];
  let [placeByUp, heightByForward, forwardByTime, sumForward] = [0, 0, 0, 0];
  let load = up[from] as number;
  let push = (forward[from] as number) - balance * load;
  for (let i = from; i < to; i++) {
    sumUp += load;
    upByTime += load * (i - start);
    upPlace += y;
    sumMoment += moment[i] as number;
    placeByUp += x * load;
    heightByForward += y * push;
    forwardByTime += push * (i - start);
    sumForward += push;
    const ahead = i < last ? i + 1 : last;
    const nextLoad = up[ahead] as number;
    const nextPush = (forward[ahead] as number) - balance * nextLoad;
    x += 3 * vx + (2 * push + nextPush - 3 * along);
    y += 3 * vy + (2 * load + nextLoad - 3 * mean);
    vx += push + nextPush - 2 * along;
    vy += load + nextLoad - 2 * mean;
    load = nextLoad;
    push = nextPush;
  }
  way.forwardPlace = x;
  way.forwardSpeed = vx;
  way.upPlace = y;
  way.upSpeed = vy;
  return {
    up: sumUp,
    upByTime,
    upPlace,
    moment: sumMoment,
    placeByUp,
    heightByForward,
    forwardByTime,
    forward: sumForward,
  };
}

function together(a: Sums, b: Sums): Sums {
  return {
    up: a.up + b.up,
    upByTime: a.upByTime + b.upByTime,
    upPlace: a.upPlace + b.upPlace,
    moment: a.moment + b.moment,
    placeByUp: a.placeByUp + b.placeByUp,
    heightByForward: a.heightByForward + b.heightByForward,
    forwardByTime: a.forwardByTime + b.forwardByTime,
    forward: a.forward + b.forward,
  };
}
