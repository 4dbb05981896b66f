// A value in a table of the board: the number large, its unit lighter beside it; a dash where there is none.

import { splitUnit } from './columns.ts';
import type { Scene } from './scene.ts';

export function ValueCell({
  className,
  text,
  scene,
}: {
  readonly className: string;
  readonly text: string | null;
  readonly scene: Pick<Scene, 'screen'>;
}) {
  if (text === null) {
    return (
      <td className={className}>
        <span aria-hidden="true">–</span>
        <span className="vh">{scene.screen.say('board.no-value')}</span>
      </td>
    );
  }
  const { number, unit } = splitUnit(text);
  return (
    <td className={className}>
      {number}
      {unit !== '' && <small> {unit}</small>}
    </td>
  );
}
