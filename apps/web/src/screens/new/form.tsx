// What a new class needs from its teacher, from top to bottom, with one button at the end.

import type { GradePreset } from '@cairnmark/engine';
import { NAME_CHARACTERS_MOST } from '@cairnmark/formats';
import type { Words } from '@cairnmark/words';
import { Link } from 'wouter-preact';
import { usePlanWords } from '../../app/plan-words.ts';
import { useScreenWords } from '../../app/use-words.ts';
import { Choice } from '../../parts/choice.tsx';
import { LineField } from '../../parts/line-field.tsx';
import { FirstChallenges } from './first-challenges.tsx';
import { GroupsField } from './groups-field.tsx';
import { useNewClass } from './use-new-class.ts';

const GRADES: readonly GradePreset[] = ['grades-2-3', 'grades-4-5', 'grades-6-8'];

export function Form({ words }: { readonly words: Words }) {
  const { say } = usePlanWords();
  const screen = useScreenWords();
  const form = useNewClass(words);
  const { filled, fill } = form;
  return (
    <form
      className="page new-class"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        form.make();
      }}
    >
      <h1>{say('class.new')}</h1>
      <p className="lede">{say('class.new-what')}</p>
      <LineField
        label={say('class.name')}
        value={filled.name}
        most={NAME_CHARACTERS_MOST}
        placeholder={say('class.unnamed')}
        change={(name) => fill({ name })}
      />
      <GroupsField
        text={filled.groups}
        read={form.read}
        missing={form.missing.groups}
        change={(groups) => fill({ groups })}
      />
      <div className="new-two">
        <Choice
          label={say('class.grade')}
          options={GRADES.map((id) => ({ id, text: words.capital(words.names.grades[id]) }))}
          chosen={filled.grade}
          choose={(grade) => fill({ grade })}
        />
        <Choice
          label={screen.say('frame.units')}
          options={(['cm', 'in'] as const).map((id) => ({ id, text: screen.say(`units.${id}`) }))}
          chosen={filled.units}
          choose={(units) => fill({ units })}
        />
        <Choice
          label={say('class.kit')}
          options={(['ready', 'own'] as const).map((id) => ({ id, text: say(`class.kit-${id}`) }))}
          chosen={filled.kit}
          choose={(kit) => fill({ kit })}
        />
      </div>
      <FirstChallenges
        words={words}
        chosen={filled.challenges}
        missing={form.missing.challenges}
        toggle={form.toggle}
      />
      <div className="new-end">
        <button type="submit" className="btn main">
          {say('class.make')}
        </button>
        <Link className="btn" href="/">
          {say('class.not-now')}
        </Link>
      </div>
      <p className="mut">{say('class.new-privacy')}</p>
    </form>
  );
}
