/** Examples behind the help of the program. */
export const EXAMPLES = `
Examples:
  gait-kinetics demo
  gait-kinetics describe walk.c3d
  gait-kinetics analyse run.csv --mass "70 kg" --speed "12 km/h" --surface belt
  gait-kinetics analyse walk.c3d --axes x=right,y=forward,z=up
  gait-kinetics compare usual.csv changed.csv --report page.html
  gait-kinetics reliability day1.csv day2.csv day3.csv
  gait-kinetics convert walk.c3d walk.csv --axes x=right,y=forward,z=up
`;

/** What a file may be. */
export const FILES = `
A file is a table of text, a C3D file, or Motion-BIDS (a name that ends in
_motion.tsv, with its _channels.tsv and _motion.json beside it).

In the library's own table columns are named by direction and unit, any subset
with up:
  time [s],forward [N],up [N],right [N],cop_forward [m],cop_right [m],
  free_moment [N m]
and lines such as "# mass: 70 kg" before it say the rest. For other tables state
--axes and, where the heading has none, --units; a treadmill's export at 300 Hz:
  --axes x=forward,y=up,z=right --ignore Time,COPy --rate "300 Hz"
  --units "Fx=N,Fy=N,Fz=N,COPx=mm,COPz=mm,Ty=N mm"

A C3D file says most of itself, but not where its axes point: state --axes. What
is in a file, and what must be stated of it, says
  gait-kinetics describe FILE
`;

/** What a conversion writes. */
export const CONVERT = `
The ending of <out> says the format:
  name.csv    the library's own table
  name.c3d    C3D, whose numbers are of 32 bits: seven digits are kept; where
              the recording states no force platform, one is written, and said
  sub-01_task-running_tracksys-force_motion.tsv
              Motion-BIDS; its _channels.tsv, _motion.json and _channels.json
              are written beside it, events and markers of another rate in files
              of their own
Recordings are converted, not results: those are printed by analyse --json.

Force platforms stay as recorded in C3D and Motion-BIDS. In a table, and in
every format where an option of the force step is given (--plates to
--origin-sign), they become the force of the ground on the runner, forward, up,
right, just as analyse computes it before it filters: offset and drift are taken
off; with --offset none --drift never they are not. What is written so is
analysed with --offset none, or an offset is taken off twice. What was done, and
what the format does not hold, is said on standard error, one line each.

A file that is there is replaced only with --overwrite, and never one that is
read-only, nor the one that is read. Files are written whole or not at all.
`;

/** How two recordings take their options. */
export const BOTH = `
Options of a recording (--mass to --to) take one value for both, or two with a
comma between them, each with its unit; --footwear takes a semicolon, as commas
may stand in its words:
  --speed "12 km/h, 12.1 km/h" --footwear "road shoe, 250 g; trail shoe, 310 g"
Parts of one recording are compared by naming the file twice:
  gait-kinetics compare run.csv run.csv --from "0 s, 15 s" --to "15 s, 30 s"

Several trials of a condition are named one by one; the baseline recorded again
after the change (A-B-A) tells how much trials differ by themselves:
  gait-kinetics compare usual.csv changed.csv --baseline-also usual-again.csv

The answer is read from peakVerticalForce, brakingImpulse, mediolateralImpulse
and positiveExternalWork; with --metrics, name those that it is to speak of.
`;

/** What trials in a row are. */
export const REPEATS = `
Trials are recorded as those that will be compared, as usual each time, minutes
or days apart. What is printed goes into a comparison:
  gait-kinetics reliability day1.csv day2.csv day3.csv --json > runner.json
  gait-kinetics compare usual.csv changed.csv --reliability runner.json
Options of a recording hold for all files.
`;

/** That trials are taken as well. */
export const TRIALS = `
In place of recordings, all files may be trials that were analysed before:
  gait-kinetics analyse usual.csv --json > usual.json
They are taken as they are, so no option of reading or analysing goes with them,
but --metrics.
`;

/** What the table of a study is. */
export const STUDY = `
The table has a row for each recording, and its first row names the columns:
  runner,condition,file,mass,speed
  1,baseline,r1-usual.csv,70 kg,3.1 m/s
  1,changed,r1-changed.csv,70 kg,3.1 m/s
The condition is baseline or changed; files are named as seen from the table's
folder. Columns named as options of a recording, such as mass, height, speed,
surface, footwear, from and to, say of each what its file does not, with the
unit in the cell or in the heading, mass [kg]; a cell counts before the option.
Several rows of a runner and condition are several trials. Loads are compared in
body weights and per mass where all runners have a mass.
`;

/** What sessions are. */
export const SERIES = `
Each file is a session of one runner in one condition, in the order given. Each
is held against the mean of the sessions before it that make its baseline; the
first ones have none:
  gait-kinetics sessions may.csv june.csv july.csv --baseline-sessions 2
Options of a recording hold for all files.
`;
