// How a command ends.

export const WELL = 0;
/** A file has a fault, or files do not go together. */
export const FAULTY = 1;
/** The call was not understood. */
export const NOT_UNDERSTOOD = 2;

export type ExitCode = typeof WELL | typeof FAULTY | typeof NOT_UNDERSTOOD;
