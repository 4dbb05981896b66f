// A value in a table of the board: the number large, its unit lighter beside it; a dash where there is none.

import { NumberText } from '../../parts/number-text.tsx';
import type { Scene } from './scene.ts';

export function ValueCell({
  className,
  title,
  text,
  scene,
}: {
  readonly className: string;
  /** Of its column, for the stacked form of small screens. */
  readonly title: string;
  readonly text: string | null;
  readonly scene: Pick<Scene, 'screen'>;
}) {
  if (text === null) {
    return (
      <td className={`${className} rank-none`}>
        <span aria-hidden="true">–</span>
        <span className="vh">{scene.screen.say('board.no-value')}</span>
      </td>
    );
  }
  return (
    <td className={className} data-title={title}>
      <NumberText text={text} />
    </td>
  );
}
