// The whole class as a file: a backup, and the way to another computer.

import { fileName } from '../parts/file-name.ts';
import { Icon } from '../parts/icon.tsx';
import { saveFile } from '../parts/save-file.ts';
import { useSession } from '../store/use-session.ts';
import { useScreenWords } from './use-words.ts';

export function SaveClass() {
  const words = useScreenWords();
  const record = useSession((session) => session.record);
  if (record === null) return null;
  const save = async (): Promise<void> => {
    const { writeClass } = await import('../store/class-file.ts');
    saveFile(`${fileName(record.name)}.json`, 'application/json', writeClass(record));
  };
  return (
    <button type="button" className="btn" onClick={() => void save()}>
      <Icon name="file" />
      {words.say('frame.class-file')}
    </button>
  );
}
