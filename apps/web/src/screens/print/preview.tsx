// The pages as they will be printed, one at a time; each sheet once, however many copies there are.

import { writeSvg } from '@cairnmark/print';
import { useMemo } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { Icon } from '../../parts/icon.tsx';
import type { Printing } from './use-printing.ts';

export function Preview({
  printing,
  page,
  turnTo,
}: {
  readonly printing: Printing;
  readonly page: number;
  readonly turnTo: (page: number) => void;
}) {
  const { say, language } = usePlanWords();
  const shown = printing.chosen.flatMap(({ name, pages }) => pages.map((one) => ({ name, page: one })));
  const last = Math.max(0, shown.length - 1);
  const at = Math.min(page, last);
  const one = shown[at];
  const drawn = one?.page;
  const sheet = one?.name ?? '';
  const address = useMemo(() => {
    const svg = drawn === undefined ? null : writeSvg(drawn, sheet, language);
    return svg?.ok ? `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg.value)}` : null;
  }, [drawn, sheet, language]);
  const told = one === undefined ? '' : say('printing.page-of', { page: at + 1, pages: shown.length, sheet });
  const turn = (by: number): void => turnTo(Math.min(last, Math.max(0, at + by)));
  return (
    <aside className="print-preview" aria-label={say('printing.preview')}>
      {address === null ? (
        <p className="print-sheet print-empty mut">{say('printing.nothing')}</p>
      ) : (
        <img className="print-sheet" src={address} alt={told} />
      )}
      <div className="print-turn">
        <button
          type="button"
          className="btn sq"
          aria-label={say('printing.before')}
          aria-disabled={at === 0}
          onClick={() => turn(-1)}
        >
          <Icon name="left" />
        </button>
        <p role="status">{told}</p>
        <button
          type="button"
          className="btn sq"
          aria-label={say('printing.next')}
          aria-disabled={at >= last}
          onClick={() => turn(1)}
        >
          <Icon name="right" />
        </button>
      </div>
    </aside>
  );
}
