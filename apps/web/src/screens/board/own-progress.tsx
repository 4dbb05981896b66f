// Each group against its own earlier tries, in the order of the class: nobody is compared with anybody else.

import { useMemo, useState } from 'preact/hooks';
import { FreezeButton, FreezeNote } from './freeze.tsx';
import type { BoardLine } from './lines.ts';
import { Pager } from './pager.tsx';
import { pagesOf } from './pages.ts';
import { progressOf } from './progress.ts';
import { progressText } from './progress-text.ts';
import type { Scene } from './scene.ts';
import { groupName } from './scene.ts';
import { columnTitle } from './texts.ts';
import { Tries } from './tries.tsx';
import { useFit } from './use-fit.ts';
import type { Freezing } from './use-frozen.ts';

export function OwnProgress({
  scene,
  lines,
  freezing,
}: {
  readonly scene: Scene;
  readonly lines: readonly BoardLine[];
  readonly freezing: Freezing;
}) {
  const { record, challenge, screen } = scene;
  const { most } = useFit();
  const pages = useMemo(() => {
    const all = record.groups.flatMap(({ id }) => lines.filter(({ group }) => group === id));
    return pagesOf(
      all.map((line) => progressOf(line, challenge)),
      most,
    );
  }, [record, lines, challenge, most]);
  const [turned, turnTo] = useState(0);
  const page = Math.min(turned, pages.length - 1);
  return (
    <>
      <div className="board-tools">
        <div className="board-said">
          <p className="mut">
            {columnTitle(challenge.ranking.first.by, scene)}. {screen.say('board.own-lede')}
          </p>
          <FreezeNote frozen={freezing.frozen} />
        </div>
        <FreezeButton freezing={freezing} />
      </div>
      <table className="progress">
        <thead className="progress-head">
          <tr>
            <th scope="col" className="progress-name">
              {screen.say('board.group')}
            </th>
            <th scope="col">{screen.say('board.own')}</th>
            <th scope="col" className="progress-tries">
              {screen.say('board.tries')}
            </th>
          </tr>
        </thead>
        <tbody className="progress-body">
          {pages[page]?.map((progress) => (
            <tr key={progress.group} className="progress-row">
              <th scope="row" className="progress-name">
                {groupName(record, progress.group)}
              </th>
              <td className="progress-text">{progressText(progress, scene)}</td>
              <td className="progress-tries">
                <Tries progress={progress} scene={scene} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {pages.length > 1 && (
        <div className="board-foot">
          <Pager rows={{ pages, page, turnTo }} />
        </div>
      )}
    </>
  );
}
