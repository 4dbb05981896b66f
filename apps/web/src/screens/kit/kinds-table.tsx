// The table of kinds. Where one was taken away, a line offers to put it back.

import { schoolCounts } from '@cairnmark/geometry';
import { Fragment } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { useHandFocus } from '../../parts/use-hand-focus.ts';
import { KindRow } from './kind-row.tsx';
import { useKit } from './use-kit.ts';
import './kit-table.css';

/** `fresh`: the kind that was just added; its name has the focus. */
export function KindsTable({ fresh }: { readonly fresh: string | null }) {
  const { at, say, words, inClass, solids, done, undo } = useKit();
  const { kinds } = at.challenge.kit;
  const { counting } = at.challenge;
  const { area, hand } = useHandFocus<HTMLElement>();
  const putBack = (): void => {
    // The row that comes back takes the place of the button.
    hand((table) => table.querySelectorAll('tbody')[done?.gone ?? 0]?.querySelector('input'));
    undo();
  };
  const unit = (measure: string) => ({ unit: inClass.unit(measure).name });
  return (
    <section ref={area} aria-label={say('kit.table')}>
      <table className="kit-table">
        <thead>
          <tr>
            <th scope="col">{say('kit.solid')}</th>
            <th scope="col">{say('kit.height', unit('height'))}</th>
            <th scope="col">{say('kit.sizes', unit('height'))}</th>
            <th scope="col">{say('kit.stock')}</th>
            <th scope="col" className="r">
              {say('kit.volume', unit('volume'))}
            </th>
            <th scope="col" className="r opt">
              {say('kit.paper', unit('paper'))}
            </th>
            <th scope="col" className="r opt">
              {say('kit.faces')}
            </th>
            <th scope="col" className="r opt">
              {say('kit.edges')}
            </th>
            <th scope="col" className="r opt">
              {say('kit.vertices')}
            </th>
            <th scope="col">
              <span className="vh">{say('kit.more')}</span>
            </th>
          </tr>
        </thead>
        {kinds.map((kind, k) => {
          const solid = solids.get(kind.id);
          return (
            <Fragment key={kind.id}>
              {done?.gone === k && <PutBack putBack={putBack} />}
              {solid !== undefined && (
                <KindRow
                  kind={kind}
                  solid={solid}
                  counts={schoolCounts(solid.counts, counting)}
                  fresh={kind.id === fresh}
                />
              )}
            </Fragment>
          );
        })}
        {done?.gone === kinds.length && <PutBack putBack={putBack} />}
      </table>
      <p className="mut kit-counted">{say('kit.counted', { convention: words.names.counting[counting] })}</p>
    </section>
  );
}

/** The button that took the kind away is gone: its focus comes here. */
function PutBack({ putBack }: { readonly putBack: () => void }) {
  const { say, done } = useKit();
  const button = useRef<HTMLButtonElement>(null);
  useLayoutEffect(() => button.current?.focus(), []);
  return (
    <tbody>
      <tr className="kit-gone">
        <td colSpan={10}>
          <span role="status">{done?.text}</span>
          <button ref={button} type="button" className="btn" onClick={putBack}>
            {say('kit.put-back')}
          </button>
        </td>
      </tr>
    </tbody>
  );
}
