// A solid or a build as a file for other programs: two buttons, one a format. What writes them comes when one is pressed.

import { useId, useState } from 'preact/hooks';
import { usePlanWords } from '../app/plan-words.ts';
import { useScreenWords } from '../app/use-words.ts';
import type { NamedPiece } from '../models/placed-pieces.ts';
import type { ModelFormat } from '../models/write-model.ts';
import { fileName } from './file-name.ts';
import { Icon } from './icon.tsx';
import { saveFile } from './save-file.ts';
import './save-model.css';

type Saving = typeof import('../models/saving.ts');

export function SaveModel({
  name,
  pieces,
}: {
  /** Of all pieces together, and of the file. */
  readonly name: string;
  /** Asked when a button is pressed, and handed what came for it; null: they cannot be laid as they are. */
  readonly pieces: (saving: Saving) => readonly NamedPiece[] | null;
}) {
  const { say } = usePlanWords();
  const screen = useScreenWords();
  const about = useId();
  const [state, setState] = useState<'idle' | 'busy' | 'refused' | 'lost'>('idle');
  const save = async (format: ModelFormat): Promise<void> => {
    if (state === 'busy') return;
    setState('busy');
    const saving = await import('../models/saving.ts').catch(() => null);
    const placed = saving === null ? null : pieces(saving);
    if (saving === null || placed === null) {
      setState(saving === null ? 'lost' : 'refused');
      return;
    }
    const content = await saving.writeModel(format, name, saving.coloured(placed));
    saveFile(`${fileName(name)}.${format}`, TYPES[format], content);
    setState('idle');
  };
  return (
    <fieldset className="save-model" aria-label={say('model.save')} aria-busy={state === 'busy'}>
      <div className="save-model-formats">
        {FORMATS.map((format) => (
          <button key={format} type="button" className="btn" aria-describedby={about} onClick={() => void save(format)}>
            <Icon name="file" />
            {say(`model.${format}`)}
          </button>
        ))}
      </div>
      <p id={about} className="mut">
        {say('model.true-size')}
      </p>
      <p role="status">
        {state === 'refused' && say('model.refused')}
        {state === 'lost' && screen.say('frame.not-here-what')}
      </p>
    </fieldset>
  );
}

const FORMATS: readonly ModelFormat[] = ['stl', 'glb'];

/** As they are registered with IANA. */
const TYPES: Readonly<Record<ModelFormat, string>> = { stl: 'model/stl', glb: 'model/gltf-binary' };
