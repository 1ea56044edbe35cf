/** Options of functions that are flags under a name of the same letters. */
const FLAGS =
  /(?<![-"\w])(?:coverThickness|onlyPlates|originSign|lengthUnit|unitRow|firstFoot|forceOn)(?![\w"])/g;

/**
 * Says in options of the command line what a message of the library says in options of a function: `ignore: ["Time"]`
 * becomes `--ignore "Time"`, `units: { "Fx": "N" }` becomes `--units "Fx=N"`. What the command line has no option for is
 * left out, and numbers beyond what a person reads are rounded.
 */
export function optionWords(message: string): string {
  return roundedNumbers(withoutOptionless(message))
    .replace(
      /\b(axes|columns|units): \{((?:"(?:[^"\\]|\\.)*"|[^}"])*)\}/g,
      (_, name: string, object: string) => `--${name} ${pairsOf(object, message)}`,
    )
    .replace(
      /\bstated as \{([^}]*)\}/g,
      (_, object: string) => `stated as --axes ${pairsOf(object, message)}`,
    )
    .replace(/\bthe axes are \{([^}]*)\}/g, (_, object: string) => `state --axes ${pairsOf(object, message)}`)
    .replace(/\{( ?[xyz]: "[^}]*)\}/g, (_, object: string) => `--axes ${pairsOf(object, message)}`)
    .replace(/\bignore: \[((?:"(?:[^"\\]|\\.)*"|[^\]"])*)\]/g, (_, names: string) => namesOf(names, message))
    .replace(/\b(ignore|units|columns) (names|states)\b/g, "--$1 $2")
    .replace(/\bcentreOfMassMarkers names\b/g, "--centre-of-mass names")
    .replace(/\bfeet\.(left|right)\.(heel|toe) names ("(?:[^"\\]|\\.)*")/g, "--feet names $3 as $1 $2")
    .replace(/\bfill its gaps first\b/g, "fill its gaps first, or leave them out with --from and --to")
    .replace(
      /\bcut the force to the markers, or leave the markers out\b/g,
      "cut the force to the markers with --from and --to, or leave the markers out",
    )
    .replace(/\bthresholdShare is a share\b/g, '--threshold as "5 %" is a share')
    .replace(/\bnoiseFactor asks\b/g, '--threshold as "6 SD" asks')
    .replace(/\bstate it, or a threshold in newtons\b/g, "state --mass, or --threshold in newtons")
    .replace(/\bstate a threshold in newtons\b/g, 'state it in newtons, such as "20 N"')
    .replace(/\bair drag is to be estimated, and\b/g, "--air-drag is to be estimated, and")
    .replace(/\bso forward work is too low$/, "so forward work is too low; --air-drag takes it in")
    .replace(/(?<!-)\bcutoff is (?=[\d.]+ Hz; a finite number)/g, "--cutoff is ")
    .replace(/\bstate the gait\b/g, "state --gait")
    .replace(/\bsmallestDetectableChange\.(\w+)/g, "--smallest-change $1")
    .replace(/\bmargins\.(\w+)/g, "--margin $1")
    .replace(/\bmethod is "bootstrap"/g, "--method is bootstrap")
    .replace(/\bonly names\b/g, "--only-plates names")
    .replace(/\bsides names\b/g, "--sides names")
    .replace(/\bforceOn:? "platform" or "runner"/g, "--force-on ground or --force-on runner")
    .replace(/\bforceOn:? "platform"/g, "--force-on ground")
    .replace(/\bforceOn:? "(\w+)"/g, "--force-on $1")
    .replace(/\bunitRow: "(\w+)"/g, "--unit-row $1")
    .replace(/\blengthUnit: "(\w+)"/g, "--length-unit $1")
    .replace(/\bheader: (\d+)/g, "--header $1")
    .replace(
      /\buse "flights", or state a quiet stretch as zero\b/g,
      'use --offset flights, or --zero "0 s to 0.2 s"',
    )
    .replace(/\bthe stretch in which it is unloaded as zero\b/g, '--zero, such as "0 s to 0.2 s", unloaded')
    .replace(/\bzero is (\S+) s to\b/g, "--zero is $1 s to")
    .replace(/\bstate (mass|height|speed|surface) if\b/g, "state --$1 if")
    .replace(/\bstate whose force the channels hold\b/g, "state --force-on runner or --force-on ground")
    .replace(/\bstate the first foot\b/g, "state --first-foot")
    .replace(/\b(in|check) axes\b/g, "$1 --axes")
    .replace(
      /\bState its unit\b/g,
      "Correct the unit in its heading, or state it with --units where the heading has none",
    )
    .replace(/\bstate a lower cutoff, or no filter\b/g, "state a lower --cutoff, or --cutoff none")
    .replace(
      /\bthere are (\d+) samples; more than (\d+), the padLength, are needed/g,
      (_, length: string, pad: string) =>
        `the recording holds ${length} samples; at least ${Number(pad) + 1} are needed for the filter`,
    )
    .replace(/\bholds 1 samples\b/g, "holds 1 sample")
    .replace(/\bwith ignore\b/g, "with --ignore")
    .replace(/\bdecimal: ("[.,]"), delimiter: ("[^"]*")/g, "--decimal $1 --delimiter $2")
    .replace(/\bdecimal: "/g, '--decimal "')
    .replace(/\bdelimiter: "/g, '--delimiter "')
    .replace(/\(missing states other words\)/g, "(--missing states other words)")
    .replace(/\bis stated by missing\b/g, "is stated by --missing")
    .replace(
      /\btracksys and markersTracksys are both ("[^"]*"); each system needs its own/g,
      "tracksys is $1, the name of the markers' own system; give another",
    )
    .replace(FLAGS, (name) => `--${name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`)
    .replace(/\bor sampleRate\b/g, 'or --rate, such as "300 Hz"')
    .replace(/\bstate sampleRate(?:, in Hz)?/g, 'state --rate, such as "300 Hz"');
}

/** Advice that no option of the command line follows. */
function withoutOptionless(message: string): string {
  return message
    .replace(/, or verticalForce: "optional" for a table of other things/g, "")
    .replace(/, state it as processor: "\w+" if the mark is wrong/g, "");
}

/** Numbers that were computed, not quoted from the file, with seven digits. */
function roundedNumbers(message: string): string {
  return message.replace(/"(?:[^"\\]|\\.)*"|(?<![\w./\\-])-?\d+\.\d{8,}(?![\w/\\])/g, (text) =>
    text.startsWith('"') ? text : String(Number(Number(text).toPrecision(7))),
  );
}

function pairsOf(object: string, message: string): string {
  const pairs = [...object.matchAll(/(?:("(?:[^"\\]|\\.)*")|(\w+)): "([^"]*)"/g)];
  const text = pairs
    .map(([, quoted, plain, value]) => `${quoted === undefined ? plain : typed(quoted, message)}=${value}`)
    .join(",");
  return /[^\w=,]/.test(text) ? `"${text}"` : text;
}

function namesOf(list: string, message: string): string {
  const names = [...list.matchAll(/"(?:[^"\\]|\\.)*"/g)].map(([quoted]) => typed(quoted, message));
  return names.length === 0 ? `--ignore ${list}` : `--ignore "${names.join(",")}"`;
}

/** A column as it can be typed: by its number where its name is blank or would be torn. */
function typed(quoted: string, message: string): string {
  const name = quoted.slice(1, -1);
  if (name !== "" && !/[,"\\]/.test(name)) return name;
  return /\bcolumn (\d+) "/.exec(message)?.[1] ?? name;
}
