// The print bar: what the 100 mm of a printed page measure is what every printed size came out at.

import { rulerOf } from '@cairnmark/geometry';
import { useState } from 'preact/hooks';
import { LengthField } from '../../parts/length-field.tsx';
import { useHandFocus } from '../../parts/use-hand-focus.ts';
import { isPrinted, scaledSizes, scalePrinted } from '../../store/kit-changes.ts';
import { Fold } from './fold.tsx';
import { Refused } from './refused.tsx';
import { sizesInWords } from './texts.ts';
import { useKit } from './use-kit.ts';

/** mm, of every printed page. */
const BAR_MM = 100;
/** mm. A printer that fits a page to other paper changes it by a tenth at most; beyond twice of that it is another slip. */
const BAR_LEAST_MM = 80;
const BAR_MOST_MM = 120;

export function PrintFold() {
  const { say } = useKit();
  return (
    <Fold title={say('kit.print')} help={say('kit.help-print')}>
      {() => <PrintBar />}
    </Fold>
  );
}

function PrintBar() {
  const { at, say, make, use, ruler, words } = useKit();
  const [barMm, setBarMm] = useState<number | null>(null);
  const [refused, setRefused] = useState<readonly string[]>([]);
  const { area, hand } = useHandFocus<HTMLDivElement>();
  const printed = at.challenge.kit.kinds.filter(isPrinted);
  const apply = (): void => {
    if (barMm === null) return;
    const share = barMm / BAR_MM;
    const told = make(
      scalePrinted(at.challenge.id, share),
      say('kit.did-print', { percent: words.number(share * 100) }),
    );
    setRefused(told);
    if (told.length > 0) return;
    // A second tap would scale what is scaled already: the button goes.
    hand((fold) => fold.querySelector('input'));
    setBarMm(null);
  };
  return (
    <div ref={area}>
      <p className="mut">{say('kit.print-what')}</p>
      <LengthField
        label={say('kit.print-bar')}
        valueMm={barMm}
        ruler={ruler.unit === 'in' ? ruler : rulerOf('mm')}
        leastMm={BAR_LEAST_MM}
        mostMm={BAR_MOST_MM}
        disabled={use.locked || printed.length === 0}
        change={setBarMm}
        clear={() => setBarMm(null)}
      />
      <p className="mut">{say(printed.length === 0 ? 'kit.print-none' : 'kit.print-limits')}</p>
      <div role="status">{barMm === BAR_MM && <p>{say('kit.print-true')}</p>}</div>
      {barMm !== null && barMm !== BAR_MM && !use.locked && (
        <>
          <Becomes share={barMm / BAR_MM} />
          <p className="mut">{say('kit.print-again')}</p>
          <button type="button" className="btn main" onClick={apply}>
            {say('kit.print-apply')}
          </button>
        </>
      )}
      <Refused sentences={refused} />
    </div>
  );
}

function Becomes({ share }: { readonly share: number }) {
  const kit = useKit();
  const { at, say } = kit;
  return (
    <table className="kit-becomes">
      <caption className="vh">{say('kit.print-becomes')}</caption>
      <thead>
        <tr>
          <th scope="col">{say('kit.solid')}</th>
          <th scope="col">{say('kit.print-now')}</th>
          <th scope="col">{say('kit.print-then')}</th>
        </tr>
      </thead>
      <tbody>
        {at.challenge.kit.kinds.filter(isPrinted).map((kind) => (
          <tr key={kind.id}>
            <th scope="row">{kind.name}</th>
            <td>{sizesInWords(kind.solid, kit)}</td>
            <td>
              <b>{sizesInWords({ ...kind.solid, sizes: scaledSizes(kind, share) }, kit)}</b>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
