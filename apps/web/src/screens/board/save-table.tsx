// Hands a table to the browser as a file for a spreadsheet.

import type { Cell } from '@cairnmark/formats';
import { useCardWords } from '../../app/card-words.tsx';
import { fileName } from '../../parts/file-name.ts';
import { Icon } from '../../parts/icon.tsx';
import { saveFile } from '../../parts/save-file.ts';

export function SaveTable({
  name,
  rows,
}: {
  readonly name: string;
  readonly rows: () => readonly (readonly Cell[])[];
}) {
  const words = useCardWords();
  const save = async (): Promise<void> => {
    const { csvText } = await import('@cairnmark/formats');
    saveFile(`${fileName(name)}.csv`, 'text/csv', csvText(rows()));
  };
  return (
    <button type="button" className="btn" onClick={() => void save()}>
      <Icon name="file" />
      {words.say('board.csv')}
    </button>
  );
}
