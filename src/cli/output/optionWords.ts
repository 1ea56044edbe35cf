/**
 * Says in options of the command line what a message of the library says in options of a function: `ignore: ["Time"]`
 * becomes `--ignore "Time"`, `units: { "Fx": "N" }` becomes `--units "Fx=N"`.
 */
export function optionWords(message: string): string {
  return message
    .replace(
      /\b(axes|columns|units): \{([^}]*)\}/g,
      (_, name: string, object: string) => `--${name} ${pairsOf(object)}`,
    )
    .replace(/\bstated as \{([^}]*)\}/g, (_, object: string) => `stated as --axes ${pairsOf(object)}`)
    .replace(/\bthe axes are \{([^}]*)\}/g, (_, object: string) => `state --axes ${pairsOf(object)}`)
    .replace(/\{( ?[xyz]: "[^}]*)\}/g, (_, object: string) => `--axes ${pairsOf(object)}`)
    .replace(/\b(ignore|units|columns) (names|states)\b/g, "--$1 $2")
    .replace(/\bonly names\b/g, "--only-plates names")
    .replace(/\bforceOn: "platform"/g, "--force-on ground")
    .replace(/\bforceOn: "(\w+)"/g, "--force-on $1")
    .replace(/\bunitRow: "(\w+)"/g, "--unit-row $1")
    .replace(/\blengthUnit: "(\w+)"/g, "--length-unit $1")
    .replace(/\bheader: (\d+)/g, "--header $1")
    .replace(
      /\buse "flights", or state a quiet stretch as zero\b/g,
      'use --offset flights, or --zero "0 s to 0.2 s"',
    )
    .replace(/\bzero is (\S+) s to\b/g, "--zero is $1 s to")
    .replace(/\bstate (mass|height|speed|surface) if\b/g, "state --$1 if")
    .replace(/\bstate whose force the channels hold\b/g, "state --force-on runner or --force-on ground")
    .replace(/\bin axes\b/g, "in --axes")
    .replace(/\bstate a lower cutoff, or no filter\b/g, "state a lower --cutoff, or --cutoff none")
    .replace(
      /\bthere are (\d+) samples; more than (\d+), the padLength, are needed/g,
      (_, length: string, pad: string) =>
        `the recording holds ${length} samples; at least ${Number(pad) + 1} are needed for the filter`,
    )
    .replace(/\bholds 1 samples\b/g, "holds 1 sample")
    .replace(/\bignore: \[([^\]]*)\]/g, "--ignore $1")
    .replace(/\bwith ignore\b/g, "with --ignore")
    .replace(/\bdecimal: "/g, '--decimal "')
    .replace(/\bor sampleRate\b/g, 'or --rate, such as "300 Hz"')
    .replace(/\bstate sampleRate(?:, in Hz)?/g, 'state --rate, such as "300 Hz"');
}

function pairsOf(object: string): string {
  const pairs = [...object.matchAll(/(?:"([^"]*)"|(\w+)): "([^"]*)"/g)];
  const text = pairs.map(([, quoted, plain, value]) => `${quoted ?? plain}=${value}`).join(",");
  return /[^\w=,]/.test(text) ? `"${text}"` : text;
}
