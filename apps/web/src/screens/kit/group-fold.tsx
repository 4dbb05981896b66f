// What one group measured on its own pieces, beside the sizes of the kit.

import type { Group, KindOfPiece } from '@cairnmark/engine';
import type { Sizes } from '@cairnmark/geometry';
import { makeSolid } from '@cairnmark/geometry';
import { useId, useState } from 'preact/hooks';
import { Icon } from '../../parts/icon.tsx';
import { useHandFocus } from '../../parts/use-hand-focus.ts';
import { measureKind } from '../../store/kit-changes.ts';
import { Fold } from './fold.tsx';
import { SizesFields } from './sizes-fields.tsx';
import { differences, sizesInWords, tenths } from './texts.ts';
import { useKit } from './use-kit.ts';

export function GroupFold() {
  const { say } = useKit();
  return (
    <Fold title={say('kit.own')} help={say('kit.help-own')}>
      {() => <OwnOfGroup />}
    </Fold>
  );
}

function OwnOfGroup() {
  const { at, say } = useKit();
  const id = useId();
  const [chosen, setChosen] = useState(at.group.id);
  const group = at.record.groups.find((one) => one.id === chosen) ?? at.group;
  return (
    <>
      <p className="mut">{say('kit.own-what')}</p>
      <div className="field kit-group">
        <label htmlFor={id}>{say('kit.own-group')}</label>
        <select
          id={id}
          className="in"
          value={group.id}
          onChange={({ currentTarget }) => setChosen(currentTarget.value)}
        >
          {at.record.groups.map((one) => (
            <option key={one.id} value={one.id}>
              {one.name}
            </option>
          ))}
        </select>
      </div>
      <ul className="kit-own">
        {at.challenge.kit.kinds.map((kind) => (
          <OwnSizes key={`${group.id} ${kind.id}`} group={group} kind={kind} />
        ))}
      </ul>
    </>
  );
}

function OwnSizes({ group, kind }: { readonly group: Group; readonly kind: KindOfPiece }) {
  const kit = useKit();
  const { say, make } = kit;
  const { area, hand } = useHandFocus<HTMLLIElement>();
  const own = Object.hasOwn(group.measured, kind.id) ? group.measured[kind.id] : undefined;
  const put = (sizes: Sizes): readonly string[] =>
    make(measureKind(group.id, kind.id, sizes), say('kit.did-measure', { group: group.name, kind: kind.name }));
  const forget = (): void => {
    // The button goes with the sizes.
    hand((row) => row.querySelector('input'));
    make(measureKind(group.id, kind.id, null), say('kit.did-forget', { group: group.name, kind: kind.name }));
  };
  return (
    <li ref={area} className={own === undefined ? undefined : 'kit-own-differs'}>
      <div>
        <h3>{kind.name}</h3>
        <p className="mut">{say('kit.own-kit', { sizes: sizesInWords(kind.solid, kit) })}</p>
      </div>
      <SizesFields
        label={`${group.name}, ${kind.name}`}
        spec={{ ...kind.solid, sizes: own ?? kind.solid.sizes }}
        put={put}
        fixedSides
      />
      <div>
        <Differences kind={kind} own={own} />
        {own !== undefined && (
          <button type="button" className="btn" onClick={forget}>
            <Icon name="undo" />
            {say('kit.own-back')}
          </button>
        )}
      </div>
    </li>
  );
}

function Differences({ kind, own }: { readonly kind: KindOfPiece; readonly own: Sizes | undefined }) {
  const { say, words, inClass, ruler } = useKit();
  const [ofGroup, ofKit] = [own ?? kind.solid.sizes, kind.solid.sizes].map((sizes) => {
    const made = makeSolid({ ...kind.solid, sizes });
    return made.ok ? made.value.sizes : {};
  });
  const names: Readonly<Record<string, string>> = words.names.sizes;
  const differing = differences(ofGroup ?? {}, ofKit ?? {});
  if (differing.length === 0) return <p className="mut">{say('kit.own-same')}</p>;
  return (
    <ul>
      {differing.map(([name, byMm]) => (
        <li key={name}>
          {say(byMm > 0 ? 'kit.own-more' : 'kit.own-less', {
            size: words.capital(names[name] ?? name),
            length: inClass.exact(tenths(Math.abs(byMm), ruler.unit), 'mm'),
          })}
        </li>
      ))}
    </ul>
  );
}
