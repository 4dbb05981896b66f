// The head of the Kit screen: what the kit is called, for which challenges it is used, and the way back from the last change.

import type { Challenge } from '@cairnmark/engine';
import { useRef } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { HelpButton, HelpTexts } from '../../parts/asked-help.tsx';
import { Icon } from '../../parts/icon.tsx';
import { AddSolid } from './add-solid.tsx';
import { useKit } from './use-kit.ts';

export function KitHead({ added }: { readonly added: (kind: string) => void }) {
  const { at, say, use, words, done, undone, undo } = useKit();
  const dialog = useRef<HTMLDialogElement>(null);
  const named = (challenges: readonly Challenge[]) => ({
    challenges: words.listed(challenges.map(({ name }) => name)),
  });
  return (
    <>
      <div className="kit-head">
        <div>
          <h1>{at.challenge.kit.name}</h1>
          <p className="mut">{say('kit.lede')}</p>
        </div>
        <div className="kit-choices">
          <HelpButton />
          <button type="button" className="btn" aria-disabled={done === null} onClick={undo}>
            <Icon name="undo" />
            {say('kit.undo')}
          </button>
          <Link className="btn" href="/print">
            <Icon name="print" />
            {say('kit.to-print')}
          </Link>
          {!use.locked && (
            <button type="button" className="btn" onClick={() => dialog.current?.showModal()}>
              <Icon name="plus" />
              {say('kit.add')}
            </button>
          )}
        </div>
      </div>
      <Explained />
      <p className="kit-use">
        {say('kit.use', named(use.usedBy))} {use.keep.length > 0 && say('kit.keep', named(use.keep))}
      </p>
      {use.locked && (
        <div className="note kit-locked">
          <p>
            {say('kit.locked', { challenge: at.challenge.name })} {say('kit.locked-open')}
          </p>
          <Link className="btn" href="/challenge">
            {say('kit.to-challenge')}
          </Link>
        </div>
      )}
      <p role="status" className="kit-done">
        {done === null ? undone : done.gone === null && done.text}
      </p>
      <AddSolid dialog={dialog} added={added} />
    </>
  );
}

function Explained() {
  const { say, use } = useKit();
  return (
    <HelpTexts
      items={[
        [say('kit.help-name'), say('kit.kind-name')],
        [say('kit.help-sizes'), say('kit.solid')],
        [say('kit.help-stock'), say('kit.stock')],
        [say('kit.help-more'), say('kit.more')],
        [say('model.help'), say('model.save')],
        [say('kit.help-undo'), say('kit.undo')],
        [say('kit.help-to-print'), say('kit.to-print')],
        ...(use.locked
          ? []
          : [[say('kit.help-slope'), say('kit.slope')] as const, [say('kit.help-add'), say('kit.add')] as const]),
      ]}
    />
  );
}
