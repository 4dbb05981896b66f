// Turns the pages of a long board.

import { useCardWords } from '../../app/card-words.tsx';
import { Icon } from '../../parts/icon.tsx';
import type { Rows } from './use-rows.ts';

export function Pager<T>({
  rows: { pages, page, turnTo },
}: {
  readonly rows: Pick<Rows<T>, 'pages' | 'page' | 'turnTo'>;
}) {
  const words = useCardWords();
  if (pages.length < 2) return null;
  const turn = (to: number): void => {
    if (to >= 0 && to < pages.length) turnTo(to);
  };
  return (
    <div className="board-pager">
      <button type="button" className="btn sq" aria-disabled={page === 0} onClick={() => turn(page - 1)}>
        <Icon name="left" />
        <span className="vh">{words.say('board.page-before')}</span>
      </button>
      <span role="status">{words.say('board.page', { page: page + 1, pages: pages.length })}</span>
      <button type="button" className="btn sq" aria-disabled={page === pages.length - 1} onClick={() => turn(page + 1)}>
        <Icon name="right" />
        <span className="vh">{words.say('board.page-after')}</span>
      </button>
    </div>
  );
}
