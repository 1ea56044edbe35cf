/** A number, with the bounds that every result keeps to. */
export interface NumberShape {
  readonly kind: "number";
  readonly from?: number;
  readonly to?: number;
  readonly whole?: true;
}

/** Any text. */
export interface TextShape {
  readonly kind: "text";
}

/** One of a list of words. */
export interface WordsShape<W extends string> {
  readonly kind: "words";
  readonly words: Readonly<Record<W, true>>;
}

/** Yes or no. */
export interface TruthShape {
  readonly kind: "truth";
}

/** A number or a text, as the values behind a caution are. */
export interface ScalarShape {
  readonly kind: "scalar";
}

/** A value, or `null` where there is none. */
export interface OrNullShape<T> {
  readonly kind: "or null";
  readonly value: Shape<T>;
}

/** A list of values of one shape, of a fixed length where one is named. */
export interface ListShape<T> {
  readonly kind: "list";
  readonly of: Shape<T>;
  readonly length?: number;
}

/** Values of one shape by names that are not known beforehand. */
export interface NamedShape<T> {
  readonly kind: "named";
  readonly of: Shape<T>;
}

/** Names of the fields that may be absent. */
type OptionalField<T> = { [K in keyof T]-?: object extends Pick<T, K> ? K : never }[keyof T];

/** An object with just these fields: one that the type has and the shape lacks does not compile, nor the reverse. */
export interface FieldsShape<T> {
  readonly kind: "fields";
  readonly always: { readonly [K in Exclude<keyof T, OptionalField<T>>]: Shape<T[K]> };
  readonly maybe: { readonly [K in OptionalField<T>]-?: Shape<Exclude<T[K], undefined>> };
}

/** What JSON of a type looks like, worked out from the type itself. */
export type Shape<T> = null extends T ? OrNullShape<Exclude<T, null>> : ValueShape<T>;

type ValueShape<T> = [T] extends [boolean]
  ? TruthShape
  : [T] extends [number]
    ? NumberShape
    : [T] extends [string]
      ? string extends T
        ? TextShape
        : WordsShape<T & string>
      : [T] extends [number | string]
        ? ScalarShape
        : T extends readonly (infer E)[]
          ? ListShape<E>
          : string extends keyof T
            ? NamedShape<Exclude<T[keyof T], undefined>>
            : FieldsShape<T>;

/** A shape of whatever type, as the check walks them. */
export type AnyShape =
  | NumberShape
  | TextShape
  | WordsShape<string>
  | TruthShape
  | ScalarShape
  | { readonly kind: "or null"; readonly value: AnyShape }
  | { readonly kind: "list"; readonly of: AnyShape; readonly length?: number }
  | { readonly kind: "named"; readonly of: AnyShape }
  | {
      readonly kind: "fields";
      readonly always: Readonly<Record<string, AnyShape>>;
      readonly maybe: Readonly<Record<string, AnyShape>>;
    };
