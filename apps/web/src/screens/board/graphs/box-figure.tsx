// "Where is the middle half?": the box plot, with the rule by which its quartiles are found.

import { POINTS_ID } from '@cairnmark/engine';
import { useMemo, useState } from 'preact/hooks';
import { useTalkWords } from '../../../app/talk-words.tsx';
import { Choice } from '../../../parts/choice.tsx';
import type { Scene } from '../scene.ts';
import { columnTitle } from '../texts.ts';
import { drawBox } from './draw-box.ts';
import type { Dot } from './graph-data.ts';
import { unitOfFirst } from './graph-data.ts';
import { GraphFigure } from './graph-figure.tsx';
import { amountText, axisNumber, scaleFor } from './graph-texts.ts';
import type { QuartileRule } from './quartiles.ts';
import { BOX_VALUES_LEAST, fiveNumbers } from './quartiles.ts';
import type { Sheet } from './sheet.ts';

export function BoxFigure({ dots, scene }: { readonly dots: readonly Dot[]; readonly scene: Scene }) {
  const { say } = useTalkWords();
  const [rule, setRule] = useState<QuartileRule>('without-median');
  const { challenge, words, inClass } = scene;
  const { by } = challenge.ranking.first;
  const values = useMemo(() => dots.map(({ value }) => value), [dots]);
  const five = useMemo(() => fiveNumbers(values, rule), [values, rule]);
  const unit = by === POINTS_ID ? inClass.label(by) : unitOfFirst(scene).name;
  const draw = useMemo(() => {
    if (five === null || values.length < BOX_VALUES_LEAST) return null;
    const scaleOf = scaleFor(by, scene);
    return (sheet: Sheet) => drawBox({ five, values, scaleOf, unit, number: axisNumber(words) }, sheet);
  }, [five, values, by, scene, unit, words]);
  if (five === null || draw === null) {
    return (
      <section className="graph graph-not-yet">
        <h2>{say('graphs.box')}</h2>
        <p className="mut">{say('graphs.box-few', { most: BOX_VALUES_LEAST, count: values.length })}</p>
      </section>
    );
  }
  const numbers = FIVE.map((id) => ({ id, name: say(`graphs.${id}`), text: amountText(five[id], scene) }));
  const [least, lower, median, upper, most] = numbers.map(({ text }) => text);
  const told = { least: least ?? '', lower: lower ?? '', median: median ?? '', upper: upper ?? '', most: most ?? '' };
  return (
    <GraphFigure
      title={say('graphs.box')}
      lede={[say('graphs.box-lede', { count: values.length }), say(`graphs.rule-${rule}`)]}
      alt={say('graphs.box-alt', told)}
      draw={draw}
      table={{
        titles: [say('graphs.box'), columnTitle(by, scene)],
        rows: numbers.map(({ name, text }) => [name, text]),
      }}
    >
      <dl className="graph-five">
        {numbers.map(({ id, name, text }) => (
          <div key={id}>
            <dt>{name}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      <Choice
        label={say('graphs.quartiles')}
        options={(['without-median', 'with-median'] as const).map((id) => ({ id, text: say(`graphs.${id}`) }))}
        chosen={rule}
        choose={setRule}
      />
    </GraphFigure>
  );
}

const FIVE = ['least', 'lower', 'median', 'upper', 'most'] as const;
