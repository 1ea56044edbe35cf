// What the types must refuse, through the package as it is installed: each line marked is an error of the compiler.
import { type kilograms, lowPass, newtons, toGroundReaction } from "gait-kinetics";
import { readCsv } from "gait-kinetics/io";

const ground = toGroundReaction(readCsv(""));
// @ts-expect-error a force is no mass
const mass: ReturnType<typeof kilograms> = newtons(700);
// @ts-expect-error a force is no frequency
lowPass(ground.force.up, { cutoff: newtons(50), sampleRate: 1000 });
// @ts-expect-error results are read-only
ground.sampleRate = 500;

export { mass };
