#!/usr/bin/env node
import { openFailure } from "./input/openFailure.js";
import { run } from "./run.js";

process.stdout.on("error", (problem: NodeJS.ErrnoException) => {
  // A reader that has seen enough closes the pipe (`| head`); that is no problem to report.
  if (problem.code === "EPIPE") process.exit(0);
  process.stderr.write(`gait-kinetics: standard output: cannot be written: ${openFailure(problem)}\n`);
  process.exit(1);
});
// Nowhere is left to say so; the exit code still tells.
process.stderr.on("error", () => {});

process.exitCode = await run(process.argv.slice(2), {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  watched: process.stderr.isTTY === true ? process.stderr : null,
});
