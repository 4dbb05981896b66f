// What is on the record sheet, a sentence each.

import { usePlanWords } from '../../app/plan-words.ts';
import { useScreenWords } from '../../app/use-words.ts';
import { HelpTexts } from '../../parts/asked-help.tsx';
import type { SheetView } from './record-sheet.tsx';

export function SheetHelp({ view }: { readonly view: SheetView }) {
  const { say } = usePlanWords();
  const screen = useScreenWords();
  const numbers = [
    [say('record-sheet.help-state'), say('record-sheet.state')],
    [say('record-sheet.help-reading'), say('record-sheet.readings')],
    [say('record-sheet.help-seconds'), say('record-sheet.seconds')],
    [say('record-sheet.help-pieces'), say('record-sheet.pieces')],
    [say('record-sheet.help-seen'), say('record-sheet.seen'), say('record-sheet.seen-all')],
    [say('record-sheet.help-new'), screen.say('frame.new-try')],
  ] as const;
  return (
    <HelpTexts
      items={[
        [say('record-sheet.help-challenge'), screen.say('frame.challenge')],
        [say('record-sheet.help-what'), say('record-sheet.what')],
        [say('record-sheet.help-who'), say(view === 'marks' ? 'record-sheet.judge' : 'record-sheet.who')],
        ...(view === 'numbers' ? numbers : [[say('record-sheet.help-marks'), say('record-sheet.marks')] as const]),
      ]}
    />
  );
}
