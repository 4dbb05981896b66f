// The small build of exifr has no types of its own; this is the part of it that is used.

declare module 'exifr/dist/mini.esm.mjs' {
  export function parse(
    file: Uint8Array,
    options: {
      readonly exif: { readonly pick: readonly number[] };
      readonly gps: false;
      readonly ifd1: false;
      readonly interop: false;
      readonly translateKeys: false;
    },
  ): Promise<Readonly<Record<number, unknown>> | undefined>;
}
