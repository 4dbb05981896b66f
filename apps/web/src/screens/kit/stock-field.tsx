// How many pieces of a kind were made.

import type { KindOfPiece } from '@cairnmark/engine';
import { PIECES_MOST } from '@cairnmark/formats';
import { useState } from 'preact/hooks';
import { NumberField } from '../../parts/number-field.tsx';
import { buildAgainst, stockKind } from '../../store/kit-changes.ts';
import { Refused } from './refused.tsx';
import { useKit } from './use-kit.ts';

export function StockField({ kind }: { readonly kind: KindOfPiece }) {
  const { at, say, make, ruler, words } = useKit();
  const [told, setTold] = useState<readonly string[]>([]);
  const change = (stock: number): void => {
    const used = buildAgainst(at.record, at.challenge.id, kind.id, stock);
    if (used !== null) {
      setTold([say('kit.stock-built', { used: words.counted('pieces', used), stock })]);
      return;
    }
    const refused = make(stockKind(at.challenge.id, kind.id, stock), say('kit.did-stock', { kind: kind.name, stock }));
    // Whatever else a smaller number spoils, it is the strokes on the supply lists.
    setTold(refused.length === 0 ? [] : [say('kit.stock-handed', { stock })]);
  };
  return (
    <>
      <NumberField
        label={say('kit.pieces-of', { kind: kind.name })}
        hideLabel
        value={kind.stock}
        unit="count"
        ruler={ruler}
        least={kind.crushed ?? 0}
        most={PIECES_MOST}
        whole
        change={change}
      />
      <Refused sentences={told} />
    </>
  );
}
