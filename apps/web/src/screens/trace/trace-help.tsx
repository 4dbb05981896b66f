// One sentence for each control of the door, while somebody asks.

import { useScreenWords } from '../../app/use-words.ts';
import { HelpTexts } from '../../parts/asked-help.tsx';
import { useTraceWords } from './trace-words.ts';

export function TraceHelp({ on }: { readonly on: boolean }) {
  const { say } = useTraceWords();
  const screen = useScreenWords();
  const moves = (['left', 'right', 'back', 'front', 'turn-left', 'turn-right'] as const).map((id) =>
    screen.say(`tool.${id}`),
  );
  return (
    <HelpTexts
      on={on}
      items={[
        [say('trace.help-which'), say('trace.which')],
        [say('trace.help-photo'), say('trace.take'), say('trace.choose'), say('trace.again')],
        [say('trace.help-sheet'), say('trace.sheet')],
        [say('trace.help-detail'), say('trace.detail')],
        [say('trace.help-pick'), say('trace.pick')],
        [say('trace.help-shape'), say('trace.shape')],
        [say('trace.help-plane'), say('trace.shape-plane')],
        [say('trace.help-on-table'), say('trace.shape-on-table')],
        [say('trace.help-kind'), say('trace.shape-kind')],
        [say('trace.help-close'), say('trace.close')],
        [say('trace.help-rests'), say('trace.rests')],
        [say('trace.help-nudge'), ...moves, say('trace.up'), say('trace.down')],
        [say('trace.help-again'), say('trace.tap-again')],
        [say('trace.help-other'), say('trace.other-way')],
        [say('trace.help-fits'), say('trace.it-fits')],
        [say('trace.help-off'), say('trace.done')],
        [say('trace.help-highest'), say('trace.highest')],
        [say('trace.help-use'), say('trace.to-side'), say('trace.use-height'), say('trace.use-build')],
        [say('trace.help-delete'), say('trace.delete')],
      ]}
    />
  );
}
