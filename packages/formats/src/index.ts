// Versioned files: kit, challenge, attempt, class, report. Text in, record or issues out; record in, text out. And tables
// for spreadsheets, out only.

export type { CodedTry, CodeIssue, CodeIssueCode } from './code/code.ts';
export { decodeCode, encodeCode } from './code/code.ts';
export type { Prints } from './code/prints.ts';
export { printsOf } from './code/prints.ts';
export type { Cell } from './csv.ts';
export { csvText } from './csv.ts';
export type { FileIssue, FileIssueCode } from './decode.ts';
export { decode } from './decode.ts';
export { encode, faultsOf } from './encode.ts';
export type { EnvelopeIssueCode } from './envelope.ts';
export type { Decoded, Format, Records } from './formats.ts';
export { FORMATS } from './formats.ts';
export type { JsonIssueCode } from './json.ts';
export { jsonSchemaOf, jsonSchemaText } from './json-schema.ts';
export * from './limits.ts';
export type { ShapeIssueCode } from './shape.ts';
