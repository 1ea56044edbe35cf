declare const unit: unique symbol;

/**
 * A number that may carry its unit in its type. A plain number passes and is taken as that unit; a number branded
 * with another unit is refused by the compiler. Arithmetic drops the brand. Nothing exists at run time.
 */
export type Quantity<U extends string> = number & { readonly [unit]?: U };

/** A `Float64Array` that may carry the unit of its samples in its type; a plain `Float64Array` passes. */
export type Samples<U extends string = string> = Float64Array & { readonly [unit]?: U };

/** Force, N. */
export type Newtons = Quantity<"N">;
/** Mass, kg. Mass is not weight: a body of 70 kg weighs 686.5 N under standard gravity. */
export type Kilograms = Quantity<"kg">;
/** Length, m. */
export type Metres = Quantity<"m">;
/** Time, s. */
export type Seconds = Quantity<"s">;
/** Frequency or sampling rate, Hz. */
export type Hertz = Quantity<"Hz">;
/** Speed, m/s. */
export type MetresPerSecond = Quantity<"m/s">;
/** Acceleration, m/s². */
export type MetresPerSecondSquared = Quantity<"m/s^2">;
/** Impulse, N·s. */
export type NewtonSeconds = Quantity<"N s">;
/** Rate of loading, N/s. */
export type NewtonsPerSecond = Quantity<"N/s">;
/** Moment of force, N·m. */
export type NewtonMetres = Quantity<"N m">;
/** Energy or work, J. */
export type Joules = Quantity<"J">;
/** Step rate, steps/min. */
export type StepsPerMinute = Quantity<"steps/min">;
/** A share of one, without a unit. */
export type Fraction = Quantity<"1">;
