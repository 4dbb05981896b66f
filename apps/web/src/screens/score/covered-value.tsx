// In place of a value that is covered: why, and the way to see it all the same.

import { useCard } from './card.ts';

export function CoveredValue({ measure, looked }: { readonly measure: string; readonly looked: () => void }) {
  const { say, inClass, covering } = useCard();
  return (
    <span className="card-covered">
      <span className="mut">{say('ours-first.covered')}</span>
      <button
        type="button"
        className="btn bare"
        onClick={() => {
          // The button goes away with what it uncovers: the focus stays on the line.
          looked();
          covering.look(measure);
        }}
      >
        {say('ours-first.look')}
        <span className="vh">: {inClass.label(measure)}</span>
      </button>
    </span>
  );
}
