import type { MetricInfluence } from "./explanation.js";

/**
 * What is known to raise or lower metrics, by id: laws, what was found in people (as a source says it), what the way of
 * recording does. A metric that is not here has no influence with a source that was read. What holds for a group of
 * runners need not hold for one.
 */
export const METRIC_INFLUENCES: Readonly<Record<string, readonly MetricInfluence[] | undefined>> = {
  contactTime: [
    {
      effect: "lowers",
      what: "a higher speed: from 0.280 s at 2.2 m/s to 0.190 s at 5.0 m/s",
      source: "Kipp, Grabowski & Kram 2018, J. Exp. Biol. 221:jeb184218 (abstract)",
    },
    {
      effect: "lowers",
      what: "a higher threshold: 0.2339 s at 20 N and 0.2275 s at 50 N of a contact that lasts 0.2450 s",
      source: "computed from a contact given by formulas",
    },
  ],
  aerialTime: [
    {
      effect: "raises",
      what: "a higher threshold, by what it takes from contact time",
      source: "law (contact and aerial time add up to step time)",
    },
  ],
  peakVerticalForce: [
    {
      effect: "raises",
      what: "a higher speed: from 1.2 BW to about 2.5 BW between 1.5 and 6 m/s",
      source: "Keller et al. 1996, Clin. Biomech. 11:253 (abstract)",
    },
    {
      effect: "raises",
      what: "a stride 10 % longer, whatever the foot strike",
      source: "Thompson et al. 2022, Front. Sports Act. Living 4:768801 (abstract)",
    },
  ],
  impactPeak: [
    {
      effect: "raises",
      what: "landing farther ahead of the knee, with which it went together",
      source: "Lieberman et al. 2015, J. Exp. Biol. 218:3406 (abstract)",
    },
    {
      effect: "lowers",
      what: "a low sampling rate: by up to 3.9 % at 100 Hz",
      source: "computed from a contact given by formulas",
    },
  ],
  averageLoadingRate: [
    {
      effect: "raises",
      what: "a higher speed: from 8 to 30 BW/s between 1.5 and 6 m/s, by that study's definition",
      source: "Keller et al. 1996, Clin. Biomech. 11:253 (abstract)",
    },
    {
      effect: "lowers",
      what: "a low cutoff: 21 % at 20 Hz",
      source: "computed from a contact given by formulas",
    },
  ],
  verticalImpulse: [
    {
      effect: "raises",
      what: "a longer step time: in steady running it is body weight × step time",
      source: "law (impulse = change of momentum)",
    },
  ],
  meanVerticalForce: [
    {
      effect: "raises",
      what: "a shorter contact at the same step time: in steady running it is body weight × step time ÷ contact time",
      source: "law (impulse = mean force × time)",
    },
    {
      effect: "raises",
      what: "a higher speed: 1.27 + 0.105 v body weights in men and 1.24 + 0.106 v in women, v in m/s",
      source: "Weyand & Davis 2005, J. Exp. Biol. 208:2625 (legend of a figure)",
    },
  ],
  verticalOscillation: [
    {
      effect: "lowers",
      what: "a step rate 5 and 10 % above the preferred one",
      source: "Heiderscheit et al. 2011, Med. Sci. Sports Exerc. 43:296 (abstract)",
    },
    {
      effect: "lowers",
      what: "a higher step rate at the same duty factor: about as its square, 17 % for a rate 10 % higher",
      source: "law (Newton's second)",
    },
  ],
  brakingImpulse: [
    {
      effect: "lowers",
      what: "a step rate 5 and 10 % above the preferred one",
      source: "Heiderscheit et al. 2011, Med. Sci. Sports Exerc. 43:296 (abstract)",
    },
  ],
  propulsiveImpulse: [
    {
      effect: "raises",
      what: "a larger braking impulse: in steady level running both are equal, but for air drag",
      source: "law (impulse = change of momentum)",
    },
  ],
  netForwardImpulse: [
    {
      effect: "raises",
      what: "gaining speed",
      source: "law (impulse = change of momentum)",
    },
    {
      effect: "raises",
      what: "an offset that was not taken off: 5 N make 1.2 N s of it in a contact of 0.245 s",
      source: "law (impulse = force × time)",
    },
  ],
  peakBrakingForce: [
    {
      effect: "raises",
      what: "landing farther ahead of the hip, with which it went together; with the distance ahead of the knee it did not",
      source: "Lieberman et al. 2015, J. Exp. Biol. 218:3406 (abstract)",
    },
    {
      effect: "raises",
      what: "a stride 10 % longer (of the peak horizontal force, as the source says it)",
      source: "Thompson et al. 2022, Front. Sports Act. Living 4:768801 (abstract)",
    },
  ],
  brakingLoadingRate: [
    {
      effect: "raises",
      what: "landing on the fore- or midfoot rather than on the heel, by that study's definition",
      source: "Nordin et al. 2017, J. Sport Health Sci. (abstract)",
    },
  ],
  mediolateralImpulse: [
    {
      effect: "raises",
      what: "noise: it adds to the integral of a magnitude and never cancels",
      source: "law (a magnitude is never below 0)",
    },
  ],
  peakFreeMoment: [
    {
      effect: "raises",
      what: "toes turned out: walking 0.0067 for 0.0028 body weights × height",
      source: "Almosnino et al. 2009, doi:10.1186/1758-2555-1-19 (tables)",
    },
  ],
  touchdownDistance: [
    {
      effect: "lowers",
      what: "5 strides per minute more: by 5.9 % of the distance to the hip",
      source: "Lieberman et al. 2015, J. Exp. Biol. 218:3406 (abstract)",
    },
    {
      effect: "raises",
      what: "by force alone, a forward force that is neglected: 4.6 mm for 3 N of air drag, 18 mm for a grade of 2 %",
      source: "computed from a contact given by formulas, 70 kg",
    },
  ],
  stepLength: [
    {
      effect: "lowers",
      what: "a higher step rate at the same speed",
      source: "law (speed = step length × step rate)",
    },
  ],
  strideLength: [
    {
      effect: "lowers",
      what: "a higher step rate at the same speed",
      source: "law (speed = step length × step rate)",
    },
  ],
  legStiffness: [
    {
      effect: "raises",
      what: "a higher stride frequency at the same speed: from 7.0 to 16.3 kN/m between 26 % below and 36 % above the preferred one at 2.5 m/s",
      source: "Farley & González 1996, J. Biomech. 29:181 (abstract)",
    },
    {
      effect: "lowers",
      what: "taking the mean speed for the speed in contact, which is lower, so that the leg seems to shorten more",
      source: "Burns et al. 2021, J. Exp. Biol. 224:jeb242787 (abstract)",
    },
    {
      effect: "raises",
      what: "by the sine wave, a higher threshold: 11.3, 12.4 and 13.2 kN/m with the true contact time and those of 20 and 50 N",
      source: "computed from a contact given by formulas",
    },
  ],
  pushToBrakeTimeRatio: [
    {
      effect: "lowers",
      what: "a higher speed: the push lasts longer than the brake up to 14 km/h, above both last alike",
      source: "Cavagna 2006, J. Exp. Biol. 209:4051 (abstract)",
    },
  ],
  forceGenerationCost: [
    {
      effect: "lowers",
      what: "a longer contact, whatever the force",
      source: "law (the coefficient is divided by contact time)",
    },
  ],
  energyRecovery: [
    {
      effect: "lowers",
      what: "walking faster or slower than about 4 km/h, where it is about 65 % at most",
      source: "Cavagna, Thys & Zamboni 1976, J. Physiol. 262:639 (abstract)",
    },
  ],
};
