// A try leaves this device: as a code for the camera of another one where it has room in a code, as a file, and its build as a
// 3D model.

import type { Attempt } from '@cairnmark/engine';
import { encode, encodeCode, printsOf } from '@cairnmark/formats';
import { useMemo } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { useWords } from '../../app/use-words.ts';
import { fileName } from '../../parts/file-name.ts';
import { Icon } from '../../parts/icon.tsx';
import { saveFile } from '../../parts/save-file.ts';
import { SaveModel } from '../../parts/save-model.tsx';
import type { At } from '../../store/where-at.ts';
import { CodePicture } from './code-picture.tsx';

export function WayOut({ at }: { readonly at: At & { readonly attempt: Attempt } }) {
  const { say } = usePlanWords();
  const words = useWords();
  const { attempt, challenge, group, tries } = at;
  const code = useMemo(() => encodeCode({ attempt, prints: printsOf(challenge, group) }), [attempt, challenge, group]);
  const which = { group: group.name, challenge: challenge.name, number: tries.indexOf(attempt) + 1 };
  const save = (): void => {
    saveFile(`${fileName(say('share.which', which))}.json`, 'application/json', encode('attempt', attempt));
  };
  return (
    <section className="share-out">
      <p>
        <b>{say('share.which', which)}</b>
      </p>
      {code.ok ? (
        <>
          <CodePicture text={code.value} label={say('share.code-label', which)} />
          <p>{say('share.what')}</p>
        </>
      ) : (
        <p className="note">{code.issues.map(words.issue).join(' ')}</p>
      )}
      <button type="button" className="btn" onClick={save}>
        <Icon name="file" />
        {say('share.save')}
      </button>
      {isLaidOut(attempt) && (
        <>
          <h3>{say('model.save')}</h3>
          <SaveModel name={say('share.which', which)} pieces={({ placedPieces }) => placedPieces(at)} />
        </>
      )}
    </section>
  );
}

/** Whether where its pieces lie is known, so that there is a model of it. */
export const isLaidOut = ({ layout }: Attempt): boolean => layout.kind === 'laid-out' && layout.pieces.length > 0;
