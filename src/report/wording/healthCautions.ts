/** What every report says of health, a sentence an entry. Source of the second: Matijevich et al. 2019, PLoS ONE 14:e0210000. */
export const HEALTH_CAUTIONS: readonly string[] = [
  "These numbers describe the load between foot and ground. They are no diagnosis and no promise that an injury is avoided.",
  "The load on a joint, bone or tendon can move the other way than the force under the foot (Matijevich et al. 2019, PLoS ONE 14:e0210000).",
  "Whoever has pain, or doubts about running at all, should see a licensed clinician; change a technique gradually.",
  "Where local rules on health advice, devices or personal data say otherwise, they come first.",
];
