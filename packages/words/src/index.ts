// The only home of sentences: codes and numbers in, sentences out, in English and Spanish.

export type { TerminalWords } from './at-once.ts';
export {
  cardWords,
  planWords,
  printWords,
  screenWords,
  talkWords,
  terminalWords,
  traceWords,
  wordsFor,
} from './at-once.ts';
export type { BestVoice } from './best.ts';
export { bestSentences, bestValue } from './best.ts';
export type { CardKey, CardWords } from './cards.ts';
export type { Reading } from './class-reader.ts';
export { classReader } from './class-reader.ts';
export type { ClassWords } from './class-words.ts';
export type { ClassNames } from './day.ts';
export type { FairVoice } from './fair.ts';
export { labKindName, leadText, mixSides, pointsRuleText, timesText, whyNotSentences } from './fair.ts';
export type { CautionId, CountedThing, IssueCode, MeasureName, NameTables } from './keys.ts';
export type { Language } from './language.ts';
export { LANGUAGES } from './language.ts';
export {
  loadCardWords,
  loadPlanWords,
  loadPrintWords,
  loadScreenWords,
  loadTalkWords,
  loadTraceWords,
  loadWords,
} from './on-demand.ts';
export type { PlanKey, PlanWords } from './plan.ts';
export type { PrintIssueCode, PrintKey, PrintWords } from './print.ts';
export type { Reader } from './reader.ts';
export type { ScreenKey, ScreenWords } from './screens.ts';
export type { StabilityWords } from './stability.ts';
export type { StabilityBrief } from './stability-brief.ts';
export type { TalkKey, TalkWords } from './talk.ts';
export type { PhotoFault, TraceKey, TraceWords } from './trace.ts';
export { typedText } from './typed.ts';
export type { Side, Sides } from './why.ts';
export type { Words } from './words.ts';
export type { WorkingRow } from './working-rows.ts';
