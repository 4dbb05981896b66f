// Tries come in from files and from photos of codes: each is shown first, and taken in when somebody says so. It may stand
// on any screen that has the words of the planning screens.

import type { Attempt, ClassRecord } from '@cairnmark/engine';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { NotRead } from './not-read.tsx';
import { OfferedTry } from './offered-try.tsx';
import type { Read } from './read-offered.ts';
import { readOffered } from './read-offered.ts';
import './share.css';

export function BringIn({
  record,
  show,
}: {
  readonly record: ClassRecord;
  /** Shows a try of the class, which was here or was just taken in. */
  readonly show: (attempt: Attempt) => void;
}) {
  const { say } = usePlanWords();
  const { brought, reading, read } = useBrought();
  const list = useRef<HTMLUListElement>(null);
  // What was read may stand below the edge of the window.
  useLayoutEffect(() => {
    if (reading === null) list.current?.scrollIntoView({ block: 'nearest' });
  }, [reading]);
  return (
    <div className="share-in" aria-busy={reading !== null}>
      <p>{say('share.bring-what')}</p>
      <label className="btn share-choose">
        {say('share.choose')}
        <input
          className="vh"
          type="file"
          multiple
          accept="image/*,.json,application/json"
          onChange={({ currentTarget }) => {
            const files = [...(currentTarget.files ?? [])];
            currentTarget.value = '';
            void read(files);
          }}
        />
      </label>
      <p role="status" className="mut">
        {reading !== null
          ? say('share.reading', { file: reading })
          : brought.length > 0
            ? say('share.read-all', { count: brought.length })
            : ''}
      </p>
      {brought.length > 0 && (
        <ul ref={list} className="share-brought">
          {brought.map((one) => (
            <li key={one.key}>
              {one.read.kind === 'offered' ? (
                <OfferedTry record={record} offered={one.read.offered} show={show} />
              ) : (
                <NotRead file={one.file} read={one.read} />
              )}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

interface Brought {
  readonly key: string;
  /** Its name. */
  readonly file: string;
  readonly read: Read;
}

/** What was chosen last, one file after another; a photo of a large camera takes a moment. */
function useBrought() {
  const [brought, setBrought] = useState<readonly Brought[]>([]);
  const [reading, setReading] = useState<string | null>(null);
  const [turn, setTurn] = useState(0);
  const read = async (files: readonly File[]): Promise<void> => {
    if (files.length === 0 || reading !== null) return;
    setBrought([]);
    setTurn(turn + 1);
    for (const [k, file] of files.entries()) {
      setReading(file.name);
      const one = { key: `${turn}-${k}`, file: file.name, read: await readOffered(file) };
      setBrought((before) => [...before, one]);
    }
    setReading(null);
  };
  return { brought, reading, read };
}
