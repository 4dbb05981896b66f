// One kind of piece in the table: its name, its drawing, its sizes, how many there are, and what follows from its sizes.

import type { KindOfPiece } from '@cairnmark/engine';
import { wholePieces } from '@cairnmark/engine';
import type { SchoolCounts, Sizes, Solid } from '@cairnmark/geometry';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { TextField } from '../../parts/text-field.tsx';
import { nameKind, sidesStay, sizeKind } from '../../store/kit-changes.ts';
import { KindDetails } from './kind-details.tsx';
import { KindPicture } from './kind-picture.tsx';
import { SizesFields } from './sizes-fields.tsx';
import { StockField } from './stock-field.tsx';
import { columnsOf } from './texts.ts';
import { useKit } from './use-kit.ts';
import { waysOf } from './ways.ts';

export function KindRow({
  kind,
  solid,
  counts,
  fresh,
}: {
  readonly kind: KindOfPiece;
  readonly solid: Solid;
  readonly counts: SchoolCounts;
  readonly fresh: boolean;
}) {
  const kit = useKit();
  const { at, say, use, make, scale } = kit;
  const [open, setOpen] = useState<'shut' | 'open' | 'slope'>('shut');
  const body = useRef<HTMLTableSectionElement>(null);
  useLayoutEffect(() => {
    // Selected, so that typing takes the place of the name to begin with. Selecting brings the focus along.
    if (fresh) body.current?.querySelector('input')?.select();
  }, [fresh]);
  const columns = columnsOf(solid, kit);
  const slopes = waysOf(kind.solid).some((way) => way.kind === 'slope');
  const rename = (name: string): readonly string[] => {
    const taken = at.challenge.kit.kinds.some((other) => other.id !== kind.id && other.name === name);
    if (taken) return [say('kit.name-taken', { name, kept: kind.name })];
    return make(nameKind(at.challenge.id, kind.id, name), say('kit.did-name', { name }));
  };
  const resize = (sizes: Sizes): readonly string[] => {
    const otherSides = sizes['sides'] !== kind.solid.sizes['sides'];
    if (otherSides && sidesStay(at.record, kind.id)) return [say('kit.sides-stay')];
    return make(sizeKind(at.challenge.id, kind.id, sizes), say('kit.did-sizes', { kind: kind.name }));
  };
  return (
    <tbody ref={body} data-kind={kind.id}>
      <tr className="kit-row">
        <th scope="row">
          <span className="vh">{kind.name}</span>
          <TextField
            label={say('kit.kind-name')}
            hideLabel
            value={kind.name}
            empty={say('kit.name-empty', { kept: kind.name })}
            change={rename}
          />
        </th>
        <td className="kit-drawn">
          <KindPicture solid={solid} scale={scale} height={columns.height} />
          <span className="vh">{columns.height}</span>
        </td>
        <td>
          <SizesFields label={kind.name} spec={kind.solid} disabled={use.locked} put={resize}>
            {slopes && !use.locked && (
              <button
                type="button"
                className="btn bare kit-slope"
                aria-expanded={open !== 'shut'}
                onClick={() => setOpen(open === 'shut' ? 'slope' : 'shut')}
              >
                {say('kit.slope')}
              </button>
            )}
          </SizesFields>
        </td>
        <td className="kit-stock">
          <StockField kind={kind} />
          {(kind.crushed ?? 0) > 0 && <small className="mut">{say('kit.whole', { whole: wholePieces(kind) })}</small>}
        </td>
        <td className="r b" data-head={say('kit.volume', { unit: kit.inClass.unit('volume').name })}>
          {columns.volume}
        </td>
        <td className="r opt">{columns.paper}</td>
        <td className="r opt">{counts.faces}</td>
        <td className="r opt">{counts.edges}</td>
        <td className="r opt">{counts.corners}</td>
        <td className="kit-more">
          <button
            type="button"
            className="btn bare sq"
            aria-expanded={open !== 'shut'}
            onClick={() => setOpen(open === 'shut' ? 'open' : 'shut')}
          >
            <span className="kit-chevron" aria-hidden="true" />
            <span className="vh">{say('kit.more-about', { kind: kind.name })}</span>
          </button>
        </td>
      </tr>
      {open !== 'shut' && (
        <tr className="kit-open">
          <td colSpan={10}>
            <KindDetails kind={kind} solid={solid} counts={counts} put={resize} atSlope={open === 'slope'} />
          </td>
        </tr>
      )}
    </tbody>
  );
}
