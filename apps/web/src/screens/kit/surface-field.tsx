// What the faces of pieces are of, in a word: frictions are about such words.

import type { KindOfPiece } from '@cairnmark/engine';
import { TABLE } from '@cairnmark/engine';
import { TextField } from '../../parts/text-field.tsx';
import { nameSurface } from '../../store/kit-materials.ts';
import { common } from './common.ts';
import { useKit } from './use-kit.ts';

export function SurfaceField({ kinds }: { readonly kinds: readonly KindOfPiece[] }) {
  const { at, say, make, use, words } = useKit();
  const ids = kinds.map(({ id }) => id);
  const [first] = kinds;
  const kept = common(kinds.map(({ surface }) => surface));
  const told = words.listed([...new Set(kinds.map(({ surface }) => surface))]);
  const rename = (surface: string): readonly string[] => {
    if (surface === TABLE) return [say('kit.surface-table', { kept: told })];
    const whose = kinds.length === 1 && first !== undefined ? first.name : say('kit.all-kinds');
    return make(nameSurface(at.challenge.id, ids, surface), say('kit.did-material', { kind: whose }));
  };
  return (
    <div>
      <TextField
        label={say('kit.surface')}
        value={kept}
        empty={say('kit.surface-empty', { kept: told })}
        disabled={use.locked}
        change={rename}
      />
      <p className="mut">{say('kit.surface-what')}</p>
    </div>
  );
}
