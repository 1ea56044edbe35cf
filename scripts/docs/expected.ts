/** A value as an example's comment writes it. */
export type Expected =
  | { readonly kind: "number"; readonly value: number; readonly tolerance: number }
  | { readonly kind: "exact"; readonly value: string | boolean | null | undefined }
  | { readonly kind: "list"; readonly items: readonly Expected[]; readonly open: boolean }
  | { readonly kind: "record"; readonly entries: ReadonlyMap<string, Expected>; readonly open: boolean }
  | { readonly kind: "throws"; readonly code: string };

/** Reads the value that a comment begins with; words may follow it. `null` where it begins with none. */
export function readExpected(comment: string): Expected | null {
  const thrown = /^throws (?:GaitKineticsError )?`?([a-z-]+)`?/.exec(comment);
  if (thrown?.[1] !== undefined) return { kind: "throws", code: thrown[1] };
  return new Reader(comment).value();
}

class Reader {
  private at = 0;
  private readonly text: string;

  constructor(text: string) {
    this.text = text;
  }

  value(): Expected | null {
    this.take(/^\s*(?:≈\s*)?(?:(?:Float64Array|Int32Array|Uint8Array)(?:\(\d+\))?\s*(?=\[))?/);
    if (this.take(/^\[/)) return this.list();
    if (this.take(/^\{/)) return this.record();
    const word = this.take(/^(true|false|null|undefined)\b/);
    if (word) return { kind: "exact", value: WORDS[word[0] as keyof typeof WORDS] };
    const quoted = this.take(/^"(?:[^"\\]|\\.)*"/);
    if (quoted) return { kind: "exact", value: JSON.parse(quoted[0]) as string };
    return this.number();
  }

  private number(): Expected | null {
    const found = this.take(/^([-−]?)(\d+)(?:\.(\d+))?(?:e([-+]?\d+))?(?![\w.]*\d)/);
    if (!found) return this.take(/^NaN\b/) ? { kind: "number", value: Number.NaN, tolerance: 0 } : null;
    const [, sign, whole, decimals = "", exponent = "0"] = found;
    const value = Number(`${sign === "" ? "" : "-"}${whole}.${decimals || "0"}e${exponent}`);
    // Half of the last digit shown, and what binary numbers add to a decimal half.
    const tolerance = 0.5 * 10 ** (Number(exponent) - decimals.length) * (1 + 1e-9);
    return { kind: "number", value, tolerance };
  }

  private list(): Expected | null {
    const items: Expected[] = [];
    let open = false;
    while (!this.take(/^\s*\]/)) {
      if (this.take(/^\s*(…|\.\.\.)/)) open = true;
      else {
        const item = this.value();
        if (item === null) return null;
        items.push(item);
      }
      this.take(/^\s*,/);
    }
    return { kind: "list", items, open };
  }

  private record(): Expected | null {
    const entries = new Map<string, Expected>();
    let open = false;
    while (!this.take(/^\s*\}/)) {
      if (this.take(/^\s*(…|\.\.\.)/)) open = true;
      else {
        const key = this.take(/^\s*"?([\w-]+)"?\s*:/)?.[1];
        const value = key === undefined ? null : this.value();
        if (key === undefined || value === null) return null;
        entries.set(key, value);
      }
      this.take(/^\s*,/);
    }
    return { kind: "record", entries, open };
  }

  private take(pattern: RegExp): RegExpExecArray | null {
    const found = pattern.exec(this.text.slice(this.at));
    if (found) this.at += found[0].length;
    return found;
  }
}

const WORDS = { true: true, false: false, null: null, undefined } as const;

/** Whether a value is the one expected, to the digits shown. */
export function isExpected(actual: unknown, expected: Expected): boolean {
  switch (expected.kind) {
    case "throws":
      return false;
    case "exact":
      return actual === expected.value;
    case "number":
      return (
        typeof actual === "number" &&
        (Object.is(actual, expected.value) || Math.abs(actual - expected.value) <= expected.tolerance)
      );
    case "list": {
      if (!Array.isArray(actual) && !ArrayBuffer.isView(actual)) return false;
      const items = Array.from(actual as unknown as ArrayLike<unknown>);
      if (expected.open ? items.length < expected.items.length : items.length !== expected.items.length)
        return false;
      return expected.items.every((item, i) => isExpected(items[i], item));
    }
    case "record": {
      if (typeof actual !== "object" || actual === null) return false;
      const fields = actual as Readonly<Record<string, unknown>>;
      if (!expected.open && Object.keys(fields).length !== expected.entries.size) return false;
      return [...expected.entries].every(([key, value]) => key in fields && isExpected(fields[key], value));
    }
  }
}
