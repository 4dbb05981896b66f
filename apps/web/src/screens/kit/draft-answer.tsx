// What stands below typed sizes that were not taken: why, or the question which of two sizes was meant.

import type { Sizes, SolidSpec } from '@cairnmark/geometry';
import { definitionOf } from '@cairnmark/geometry';
import type { Doubt } from './doubts.ts';
import type { Draft } from './sizes-fields.tsx';
import { sizesInWords, tenths } from './texts.ts';
import { useKit } from './use-kit.ts';
import { writtenName } from './ways.ts';

/** `settle`: null goes back to the kept sizes; `name`: the size whose field goes on. */
export function DraftAnswer({
  draft,
  spec,
  settle,
}: {
  readonly draft: Draft | null;
  readonly spec: SolidSpec;
  readonly settle: (sizes: Sizes | null, name: string) => void;
}) {
  const kit = useKit();
  const { say } = kit;
  const [first] = definitionOf(spec.solid).fields;
  const name = first === undefined ? '' : writtenName(first, spec.sizes);
  const kept = sizesInWords(spec, kit);
  return (
    <div role="status" className="kit-answer">
      {draft !== null && draft.doubt !== null && <DoubtQuestion doubt={draft.doubt} spec={spec} settle={settle} />}
      {draft !== null && draft.told.length > 0 && (
        <>
          {draft.told.map((sentence) => (
            <p key={sentence} className="oops">
              {sentence}
            </p>
          ))}
          <p>{say('kit.not-yet', { kept })}</p>
          <button type="button" className="btn" onClick={() => settle(null, name)}>
            {say('kit.back-to-kept', { kept })}
          </button>
        </>
      )}
    </div>
  );
}

function DoubtQuestion({
  doubt,
  spec,
  settle,
}: {
  readonly doubt: Doubt;
  readonly spec: SolidSpec;
  readonly settle: (sizes: Sizes | null, name: string) => void;
}) {
  const { say, words, inClass, ruler } = useKit();
  const { code, name, typedMm, meantMm, way } = doubt;
  const length = (valueMm: number): string => inClass.exact(tenths(valueMm, ruler.unit), 'mm');
  const names: Readonly<Record<string, string>> = words.names.sizes;
  const size = names[name] ?? name;
  const before = length(spec.sizes[name] ?? Number.NaN);
  const typed = length(typedMm);
  const question =
    code === 'slope'
      ? say('kit.doubt-slope', {
          way: words.names.sizes[way?.name === 'slantEdge' ? way.name : 'slant'],
          typed,
        })
      : say(`kit.doubt-${code}`, { typed, before });
  const choose = (valueMm: number): void => settle({ ...spec.sizes, [name]: valueMm }, name);
  return (
    <>
      <p>{question}</p>
      <div className="kit-choices">
        <button type="button" className="btn" onClick={() => choose(meantMm)}>
          {say('kit.doubt-yes', { size, length: length(meantMm) })}
        </button>
        <button type="button" className="btn" onClick={() => choose(typedMm)}>
          {say('kit.doubt-no', { size, length: typed })}
        </button>
        <button type="button" className="btn bare" onClick={() => settle(null, name)}>
          {say('kit.doubt-keep', { length: before })}
        </button>
      </div>
    </>
  );
}
