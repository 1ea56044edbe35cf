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
    .replace(/\bignore: \[([^\]]*)\]/g, "--ignore $1")
    .replace(/\bwith ignore\b/g, "with --ignore")
    .replace(/\bdecimal: "/g, '--decimal "')
    .replace(/\bstate sampleRate(?:, in Hz)?/g, 'state --rate, such as "300 Hz"');
}

function pairsOf(object: string): string {
  const pairs = [...object.matchAll(/(?:"([^"]*)"|(\w+)): "([^"]*)"/g)];
  const text = pairs.map(([, quoted, plain, value]) => `${quoted ?? plain}=${value}`).join(",");
  return /[^\w=,]/.test(text) ? `"${text}"` : text;
}
