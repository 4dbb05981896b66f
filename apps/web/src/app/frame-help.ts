// What the controls round every screen do, for the list of the screen that is open.

import type { ScreenWords } from '@cairnmark/words';

export const frameHelp = ({ say }: Pick<ScreenWords, 'say'>) =>
  [
    ['help.frame', say('tab.build'), say('tab.score'), say('tab.board')],
    ['help.who', say('frame.change-group')],
    ['help.settings', say('frame.settings')],
  ] as const;
