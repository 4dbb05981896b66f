/** Written into every report, so that old results are known for what they are. The version of the package. */
export const ENGINE_VERSION = '0.1.0';
