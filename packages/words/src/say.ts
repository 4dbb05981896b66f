// A message is a sentence with named places to fill: "{group} is absent." The names are read out of the English text by
// the type system, so that a call that forgets one does not compile; both languages use the same names.

export type Filling = string | number;

/** The names between braces in a message. */
export type Slots<Text extends string> = Text extends `${string}{${infer Name}}${infer Rest}`
  ? Name | Slots<Rest>
  : never;

/** Arguments after the key: nothing for a plain sentence, else one value for every name. */
export type Values<Text extends string> = [Slots<Text>] extends [never]
  ? []
  : [values: Readonly<Record<Slots<Text>, Filling>>];

/** Stands where a message names something that it was not told. A test over all known messages finds none. */
const NOT_TOLD = '?';

/** `text` with every {name} replaced. Only for texts of the catalogue: braces inside the values are left alone. */
export function fill(text: string, values: Readonly<Record<string, Filling>>): string {
  return text.replace(/\{(\w+)\}/g, (_, name: string) => String(values[name] ?? NOT_TOLD));
}

/** The names that a message asks for, in the order of the text. */
export function slotsOf(text: string): readonly string[] {
  return [...text.matchAll(/\{(\w+)\}/g)].map(([, name = '']) => name);
}
