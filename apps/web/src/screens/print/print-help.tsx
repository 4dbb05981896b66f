// A sentence for every control of the Print screen, where somebody asks.

import { usePlanWords } from '../../app/plan-words.ts';
import { HelpTexts } from '../../parts/asked-help.tsx';

export function PrintHelp() {
  const { say } = usePlanWords();
  return (
    <HelpTexts
      items={[
        [say('printing.help-open'), say('printing.open')],
        [say('printing.help-paper'), say('printing.paper')],
        [say('printing.help-letters'), say('printing.letters')],
        [say('printing.help-copies'), say('printing.copies'), say('printing.pupils')],
        [say('printing.help-pieces'), say('printing.pieces'), say('printing.sets')],
        [say('printing.help-arrange'), say('printing.arrange')],
        [say('printing.help-tabs'), say('printing.tabs')],
        [say('printing.help-large'), say('printing.large')],
        [say('printing.help-turn'), say('printing.before'), say('printing.next')],
      ]}
    />
  );
}
