// even: points with which all solids earn as much alike as can be.

import { mostEven, whoEarns } from '@cairnmark/scoring';
import type { TerminalWords } from '@cairnmark/words';
import type { Call } from '../call.ts';
import type { ExitCode } from '../exit.ts';
import { WELL } from '../exit.ts';
import { earnsText } from '../fair/earns-text.ts';
import { evenTask, evenText } from '../fair/even-text.ts';
import { fairJson } from '../fair/fair-json.ts';
import { WORK } from '../fair/favour-text.ts';
import { terminalLab } from '../fair/lab.ts';
import type { Io } from '../io.ts';
import { tell } from '../speak.ts';

export function even(call: Call, words: TerminalWords, io: Io): ExitCode {
  const lab = terminalLab(call, words, io);
  if (typeof lab === 'number') return lab;
  if (call.form === 'json') {
    const task = evenTask(lab);
    const found = {
      earnings: whoEarns(lab.kit.data, lab.today),
      even: { rows: task.data.rows, ...mostEven(task, WORK) },
    };
    tell(io, fairJson(lab, found));
    return WELL;
  }
  const head = lab.record.invented ? [words.say('score.invented')] : [];
  tell(io, [...head, ...earnsText(lab), ...evenText(lab)].join('\n'));
  return WELL;
}
