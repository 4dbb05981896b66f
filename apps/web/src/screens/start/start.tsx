// The first screen: look round the demo class, open a class file, go on where you were.

import type { ClassRecord } from '@cairnmark/engine';
import { useEffect, useState } from 'preact/hooks';
import { useLocation } from 'wouter-preact';
import { useArrival } from '../../app/use-arrival.ts';
import { useScreenWords } from '../../app/use-words.ts';
import type { KeptClass } from '../../store/storage.ts';
import { useSession } from '../../store/use-session.ts';
import { useStorage } from '../../store/use-storage.ts';
import { DEMO_SIZE } from './demo-size.ts';
import { openDemo, openFile, openFirst, openKept } from './open-file.ts';
import type { Refusal } from './refusal.ts';
import './start.css';
import { Way } from './way.tsx';

export function Start() {
  const words = useScreenWords();
  const { kept, refusal, open } = useOpening();
  const storage = useStorage();
  const { what: Tower } = useArrival(loadTower);
  const [last, ...others] = kept;
  return (
    <div className="page start">
      <div>
        <h1>{words.say('start.title')}</h1>
        <p className="lede">{words.say('start.lede')}</p>
        {refusal !== null && <Refused refusal={refusal} />}
        <h2>{words.say('start.in-group')}</h2>
        <Way title={words.say('start.first')} what={words.say('start.first-what')}>
          <button type="button" className="btn main" onClick={() => open(openFirst(words.say('start.our-group')))}>
            {words.say('start.first-go')}
          </button>
        </Way>
        <h2>{words.say('start.teaching')}</h2>
        <Way title={words.say('start.demo')} what={words.say('start.demo-what', DEMO_SIZE)}>
          <button type="button" className="btn" onClick={() => open(openDemo())}>
            {words.say('start.demo-open')}
          </button>
        </Way>
        <Way title={words.say('start.file')} what={words.say('start.file-what')}>
          <label className="btn">
            {words.say('start.file-choose')}
            <input
              className="vh"
              type="file"
              accept=".json,application/json"
              onChange={({ currentTarget }) => {
                const [file] = currentTarget.files ?? [];
                if (file !== undefined) open(openFile(file, words.language));
                currentTarget.value = '';
              }}
            />
          </label>
        </Way>
        {last !== undefined && (
          <KeptWay kept={last} first={true} open={() => open(openKept(last, storage, words.language))} />
        )}
        {others.length > 0 && <h2>{words.say('start.other-classes')}</h2>}
        {others.map((one) => (
          <KeptWay key={one.id} kept={one} first={false} open={() => open(openKept(one, storage, words.language))} />
        ))}
        <p className="mut privacy">{words.say('start.privacy')}</p>
      </div>
      {Tower === null ? <div className="hero" /> : <Tower />}
    </div>
  );
}

function KeptWay({ kept, first, open }: { readonly kept: KeptClass; readonly first: boolean; open(): void }) {
  const words = useScreenWords();
  const when = new Date(kept.savedAt).toLocaleDateString(words.language, {
    weekday: 'long',
    day: 'numeric',
    month: 'long',
  });
  return (
    <Way
      title={first ? words.say('start.last', { name: kept.name }) : kept.name}
      what={words.say('start.last-what', { when, groups: kept.groups })}
    >
      <button type="button" className="btn" onClick={open}>
        {words.say('start.go-on')}
      </button>
    </Way>
  );
}

function Refused({ refusal }: { readonly refusal: Refusal }) {
  return (
    <div className="badbox" role="alert">
      <p>
        <b>{refusal.title}</b>
      </p>
      <ul>
        {refusal.sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </div>
  );
}

/** A class that was opened, or why it was not. */
export type Opened =
  | { readonly ok: true; readonly classId: string; readonly record: ClassRecord; readonly isKept: boolean }
  | { readonly ok: false; readonly refusal: Refusal };

function useOpening() {
  const storage = useStorage();
  const begin = useSession((session) => session.begin);
  const resume = useSession((session) => session.resume);
  const saved = useSession((session) => session.saved);
  const [, navigate] = useLocation();
  const [kept, setKept] = useState<readonly KeptClass[]>([]);
  const [refusal, setRefusal] = useState<Refusal | null>(null);
  useEffect(() => {
    // Asked again when more has been kept: somebody may be back here before that.
    if (saved === 'saving') return;
    let here = true;
    void storage.list().then((list) => here && setKept(list));
    return () => {
      here = false;
    };
  }, [storage, saved]);
  const open = (opening: Promise<Opened>): void => {
    void opening.then((opened) => {
      if (!opened.ok) return setRefusal(opened.refusal);
      (opened.isKept ? resume : begin)(opened.classId, opened.record);
      navigate('/build');
    });
  };
  return { kept, refusal, open };
}

const loadTower = async () => (await import('./tower.tsx')).default;
