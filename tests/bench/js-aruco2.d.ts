// The part of js-aruco2 that the bench uses; the package brings no types.

declare module 'js-aruco2' {
  interface Dictionary {
    readonly nBits: number;
    readonly tau: number | null;
    readonly codeList: readonly unknown[];
  }
  const library: {
    readonly AR: {
      readonly DICTIONARIES: Record<string, Dictionary>;
      readonly Detector: new (config: {
        readonly dictionaryName: string;
        readonly maxHammingDistance: number;
      }) => {
        detectImage(width: number, height: number, data: Uint8ClampedArray): readonly { readonly id: number }[];
      };
    };
  };
  export default library;
}

declare module 'js-aruco2/src/dictionaries/aruco_4x4_1000.js' {}
