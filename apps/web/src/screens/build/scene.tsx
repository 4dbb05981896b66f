// The build drawn in space, with undo, views and keys about it. In "Lay it out" pieces are dragged in it.

import { useState } from 'preact/hooks';
import { useScreenWords } from '../../app/use-words.ts';
import type { ViewName } from '../../drawing/view.ts';
import { Choice } from '../../parts/choice.tsx';
import { Icon } from '../../parts/icon.tsx';
import { KeysDialog } from './keys-dialog.tsx';
import { SceneCanvas } from './scene-canvas.tsx';
import type { Shown } from './shown.ts';
import { isForBuild, useBuildKeys } from './use-build-keys.ts';

const VIEWS: readonly ViewName[] = ['corner', 'front', 'side', 'above'];
export type LineUp = 'piece-below' | 'grid' | 'free';
const LINE_UPS: readonly LineUp[] = ['piece-below', 'grid', 'free'];

export function Scene(props: Shown) {
  const { editor, door, words } = props;
  const screen = useScreenWords();
  const [view, setView] = useState<ViewName>('corner');
  const [lineUp, setLineUp] = useState<LineUp>('piece-below');
  const keys = useBuildKeys(props);
  const empty = editor.pieces.length === 0;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys act for the drawing and the buttons on it
    <div
      className="scene"
      onKeyDown={(event) => {
        const isView = isForBuild(event) && !event.ctrlKey && !event.metaKey;
        const chosen = isView ? VIEW_KEYS[event.key.toLowerCase()] : undefined;
        if (chosen !== undefined) setView(chosen);
        keys(event);
      }}
    >
      <SceneCanvas {...props} view={view} lineUp={lineUp} />
      <p className="scale">{screen.say(words.ruler.unit === 'in' ? 'build.scale-in' : 'build.scale')}</p>
      {empty && !props.dragging && (
        <div className="empty">
          <p>{screen.say('verdict.empty-title')}</p>
          <p>{screen.say('verdict.empty-what')}</p>
          <ol aria-label={screen.say('first.title')}>
            <li>{screen.say('first.one')}</li>
            <li>{screen.say('first.two')}</li>
            <li>{screen.say('first.three')}</li>
          </ol>
        </div>
      )}
      {door === 'lay' && (
        <label className="line-up">
          {screen.say('line-up')}
          <select
            className="in"
            value={lineUp}
            onChange={({ currentTarget }) => setLineUp(LINE_UPS.find((id) => id === currentTarget.value) ?? 'free')}
          >
            {LINE_UPS.map((id) => (
              <option key={id} value={id}>
                {screen.say(`line-up.${id}`)}
              </option>
            ))}
          </select>
        </label>
      )}
      <div className="scene-left">
        <button type="button" className="btn" aria-disabled={!editor.canUndo} onClick={editor.undo}>
          <Icon name="undo" />
          <span>{screen.say('build.undo')}</span>
        </button>
        <button type="button" className="btn sq" aria-disabled={!editor.canRedo} onClick={editor.redo}>
          <Icon name="redo" />
          <span className="vh">{screen.say('build.redo')}</span>
        </button>
        {!empty && (
          <button type="button" className="btn sq" onClick={() => editor.edit({ do: 'clear' })}>
            <Icon name="take-off" />
            <span className="vh">{screen.say('build.clear')}</span>
          </button>
        )}
      </div>
      <div className="scene-right">
        <Choice
          label={screen.say('build.view')}
          options={VIEWS.map((id) => ({ id, text: screen.say(`view.${id}`) }))}
          chosen={view}
          choose={setView}
        />
        <KeysDialog {...props} />
      </div>
    </div>
  );
}

const VIEW_KEYS: Readonly<Record<string, ViewName>> = { c: 'corner', f: 'front', s: 'side', a: 'above' };
