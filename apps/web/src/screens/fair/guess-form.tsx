// A guess at the secret rule: points for each row, held against every piece of the kit.

import { isCountedRow, withRows } from '@cairnmark/engine';
import type { Riddle } from '@cairnmark/scoring';
import { riddlePoints } from '@cairnmark/scoring';
import { labKindName } from '@cairnmark/words';
import { useState } from 'preact/hooks';
import { NumberField } from '../../parts/number-field.tsx';
import { rowText, useLab } from './lab.ts';

export function GuessForm({ riddle }: { readonly riddle: Riddle }) {
  const lab = useLab();
  const { say, kit, words, ruler } = lab;
  const rows = kit.rows.filter(isCountedRow);
  const [rates, setRates] = useState<readonly number[]>(rows.map(() => 0));
  const [each, setEach] = useState(0);
  const [told, tell] = useState('');
  const field = (label: string, value: number, change: (value: number) => void) => (
    <NumberField
      key={label}
      label={label}
      value={value}
      unit="count"
      least={-GUESS_MOST}
      most={GUESS_MOST}
      whole
      ruler={ruler}
      change={(next) => {
        change(next);
        tell('');
      }}
    />
  );
  const check = (): void => {
    const data = withRows(kit.data, (id) => rows.some((row) => row.id === id));
    const points = riddlePoints(data, { rates, each });
    const wrong = riddle.all.findIndex((piece, k) => piece.points !== points[k]);
    const piece = riddle.all[wrong];
    if (piece === undefined) {
      tell(say('lab.guess-right'));
      return;
    }
    tell(
      say('lab.guess-wrong', {
        solid: labKindName(piece.kind, lab),
        guess: words.counted('points', points[wrong] ?? 0),
        points: words.counted('points', piece.points),
      }),
    );
  };
  return (
    <fieldset className="fair-guess">
      <legend>{say('lab.guess')}</legend>
      <div className="fair-minutes">
        {rows.map((row, j) =>
          field(rowText(row, lab), rates[j] ?? 0, (next) => setRates(rates.map((one, k) => (k === j ? next : one)))),
        )}
        {riddle.family === 'one+c' && field(say('lab.for-itself'), each, setEach)}
      </div>
      <button type="button" className="btn" onClick={check}>
        {say('lab.check-guess')}
      </button>
      <p role="status">{told}</p>
    </fieldset>
  );
}

const GUESS_MOST = 9;
