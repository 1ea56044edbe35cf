#!/usr/bin/env node
import { run } from "./run.js";

// A reader that has seen enough closes the pipe (`| head`); that is no problem to report.
process.stdout.on("error", (problem: NodeJS.ErrnoException) => {
  if (problem.code === "EPIPE") process.exit(0);
  throw problem;
});

process.exitCode = await run(process.argv.slice(2), {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  interactive: process.stderr.isTTY === true,
});
