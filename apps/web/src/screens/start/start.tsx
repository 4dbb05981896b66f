// The first screen: look round the demo class, open a class file, go on where you were.

import { Link } from 'wouter-preact';
import { useArrival } from '../../app/use-arrival.ts';
import { useScreenWords } from '../../app/use-words.ts';
import type { KeptClass } from '../../store/storage.ts';
import { DEMO_SIZE } from './demo-size.ts';
import { Erased } from './erased.tsx';
import { openDemo, openFile, openFirst } from './open-file.ts';
import type { Refusal } from './refusal.ts';
import './start.css';
import { useOpening } from './use-opening.ts';
import { Way } from './way.tsx';

export function Start() {
  const words = useScreenWords();
  const { kept, unkept, refusal, open, goOn, goBack } = useOpening();
  const { what: Tower } = useArrival(loadTower);
  const [last, ...others] = kept;
  return (
    <div className="page start">
      <div>
        <h1>{words.say('start.title')}</h1>
        <p className="lede">{words.say('start.lede')}</p>
        <Erased />
        {refusal !== null && <Refused refusal={refusal} />}
        <h2>{words.say('start.in-group')}</h2>
        <Way title={words.say('start.first')} what={words.say('start.first-what')}>
          <button
            type="button"
            className="btn main"
            onClick={() => open((device) => openFirst(words.say('start.our-group'), device), 'pupil')}
          >
            {words.say('start.first-go')}
          </button>
        </Way>
        <h2>{words.say('start.teaching')}</h2>
        <Way title={words.say('start.demo')} what={words.say('start.demo-what', DEMO_SIZE)}>
          <button type="button" className="btn" onClick={() => open(openDemo, 'teacher')}>
            {words.say('start.demo-open')}
          </button>
        </Way>
        <Way title={words.say('start.new')} what={words.say('start.new-what')}>
          <Link className="btn" href="/new">
            {words.say('start.new-go')}
          </Link>
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
                if (file !== undefined) open(() => openFile(file, words.language), 'teacher');
                currentTarget.value = '';
              }}
            />
          </label>
        </Way>
        {unkept !== null && (
          <Way title={words.say('start.open-now', { name: unkept.name })} what={words.say('start.open-now-what')}>
            <button type="button" className="btn" onClick={goBack}>
              {words.say('start.go-on')}
            </button>
          </Way>
        )}
        {last !== undefined && <KeptWay kept={last} first={true} open={() => goOn(last)} />}
        {others.length > 0 && <h2>{words.say('start.other-classes')}</h2>}
        {others.map((one) => (
          <KeptWay key={one.id} kept={one} first={false} open={() => goOn(one)} />
        ))}
        <p className="mut privacy">{words.say('start.privacy')}</p>
      </div>
      {Tower === null ? <div className="hero" /> : <Tower />}
    </div>
  );
}

function KeptWay({ kept, first, open }: { readonly kept: KeptClass; readonly first: boolean; open(): void }) {
  const words = useScreenWords();
  const when = new Date(kept.savedAt).toLocaleString(words.language, {
    weekday: 'long',
    day: 'numeric',
    month: 'long',
    hour: 'numeric',
    minute: '2-digit',
  });
  return (
    <Way
      title={first ? words.say('start.last', { name: kept.name }) : kept.name}
      what={
        kept.groups === 1
          ? words.say('start.last-what-one', { when })
          : words.say('start.last-what', { when, groups: kept.groups })
      }
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

const loadTower = async () => (await import('./tower.tsx')).default;
