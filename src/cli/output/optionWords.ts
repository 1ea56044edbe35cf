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
    .replace(/\b(ignore|units|columns) (names|states)\b/g, "--$1 $2")
    .replace(/\bforceOn: "(\w+)"/g, "--force-on $1")
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
