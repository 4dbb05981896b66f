// The build in sentences, from the bottom up: "3 of 5, box, on its side, on the cube (2), 0.8 cm over its edge".

import type { Reading } from '@cairnmark/editing';
import { readBack } from '@cairnmark/editing';
import type { ScreenWords } from '@cairnmark/words';
import { useMemo } from 'preact/hooks';
import { useScreenWords } from '../../app/use-words.ts';
import type { Shown } from './shown.ts';

export function useReadBack({ at, editor, words }: Shown): readonly string[] {
  const screen = useScreenWords();
  const { pieces, bench } = editor;
  return useMemo(() => {
    const names = new Map(at.challenge.kit.kinds.map(({ id, name }) => [id, name]));
    const read = readBack(pieces, bench);
    return (read.ok ? read.value : []).map((back, k) => {
      const kind = names.get(pieces[k]?.kind ?? '') ?? '';
      return sentence(back, k, { pieces, names, kind, words, screen });
    });
  }, [pieces, bench, at.challenge.kit, words, screen]);
}

interface Context {
  readonly pieces: Shown['editor']['pieces'];
  readonly names: ReadonlyMap<string, string>;
  readonly kind: string;
  readonly words: Shown['words'];
  readonly screen: ScreenWords;
}

function sentence(back: Reading, piece: number, context: Context): string {
  const { pieces, kind, words, screen } = context;
  const faces: Readonly<Record<string, string>> = words.words.names.restings;
  const whole = screen.say('back.piece', {
    number: piece + 1,
    count: pieces.length,
    kind,
    face: faces[back.resting] ?? back.resting,
    where: whereText(back, context),
  });
  const turned = back.degrees === 0 ? whole : screen.say('back.turned', { piece: whole, degrees: `${back.degrees}°` });
  const held = pieces[piece]?.held;
  return held === undefined ? turned : screen.say('back.held', { piece: turned, held: screen.say(`held.${held}`) });
}

/** "on the cube (1), 0.8 cm over its edge"; "on the table". */
function whereText(back: Reading, { pieces, names, words, screen }: Context): string {
  const things = back.restsOn.map((one) =>
    one === 'table'
      ? screen.say('back.on-table')
      : screen.say('back.on-piece', { kind: names.get(pieces[one]?.kind ?? '') ?? '', number: one + 1 }),
  );
  const where = screen.say('back.on', { things: words.words.listed(things) });
  if (back.overEdge === null) return where;
  return screen.say('back.over-edge', { where, length: words.inClass.amount('height', back.overEdge.mm, 0) });
}
