// favour: what the points of a challenge favour, and points that favour a solid.

import type { Offers } from '@cairnmark/scoring';
import { favour as favouring, offers, whoEarns } from '@cairnmark/scoring';
import type { TerminalWords } from '@cairnmark/words';
import type { Call } from '../call.ts';
import type { ExitCode } from '../exit.ts';
import { WELL } from '../exit.ts';
import { earnsText } from '../fair/earns-text.ts';
import { fairJson } from '../fair/fair-json.ts';
import { everySolidText, favourTask, favourText, WORK } from '../fair/favour-text.ts';
import type { TerminalLab } from '../fair/lab.ts';
import { notUnderstood, terminalLab } from '../fair/lab.ts';
import type { Io } from '../io.ts';
import { knownNames, namedAs } from '../named.ts';
import { tell } from '../speak.ts';

export function favour(call: Call, words: TerminalWords, io: Io): ExitCode {
  const lab = terminalLab(call, words, io);
  if (typeof lab === 'number') return lab;
  const { kit, options, record } = lab;
  const solid = options.solid === null ? null : namedAs(kit.kinds, options.solid);
  if (solid === undefined) {
    const asked = { name: options.solid ?? '', known: knownNames(kit.kinds) };
    return notUnderstood([words.say('usage.solid-unknown', asked)], io);
  }
  if (call.form === 'json') {
    tell(io, fairJson(lab, answers(solid === null ? kit.kinds.map(({ id }) => id) : [solid.id], lab)));
    return WELL;
  }
  const lines = [
    ...(record.invented ? [words.say('score.invented')] : []),
    ...earnsText(lab),
    ...(solid === null ? everySolidText(lab) : favourText(solid.id, lab)),
  ];
  tell(io, lines.join('\n'));
  return WELL;
}

function answers(kinds: readonly string[], lab: TerminalLab): Readonly<Record<string, unknown>> {
  const { further, kit, options, today } = lab;
  return {
    earnings: whoEarns(kit.data, today),
    favour: kinds.map((kind) => {
      const task = favourTask(kind, lab);
      const answer = favouring(task, { order: 'fewest-rows', rules: options.rules }, WORK);
      return {
        solid: kind,
        rows: task.data.rows,
        ...answer,
        ...(answer.status === 'impossible' ? { instead: instead(offers(task, further, WORK)) } : {}),
      };
    }),
  };
}

/** Without the counts of the kit, which are told once. */
const instead = (tried: Offers): unknown =>
  tried.status === 'tried'
    ? { ...tried, offers: tried.offers.map(({ task, ...offer }) => ({ ...offer, of: task.data.rows })) }
    : tried;
