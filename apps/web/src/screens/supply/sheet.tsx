// The Supply screen of a game: whose list, the game, the pieces kind by kind, and what they are worth beside them.

import { HelpArea, HelpButton, HelpTexts } from '../../parts/asked-help.tsx';
import { Choice } from '../../parts/choice.tsx';
import { useSession } from '../../store/use-session.ts';
import { Counted } from './counted.tsx';
import { useGame } from './game.ts';
import { GameBar } from './game-bar.tsx';
import { GameRules } from './game-rules.tsx';
import { GlanceTable } from './glance-table.tsx';
import { Happened } from './happened.tsx';
import { Kinds } from './kinds.tsx';
import { StrokeList } from './stroke-list.tsx';
import { SupplyPoints } from './supply-points.tsx';

export function Sheet() {
  const { at, say } = useGame();
  const goTo = useSession((session) => session.goTo);
  const onlyEarned = at.challenge.requirements.some(({ kind }) => kind === 'only-earned');
  return (
    <HelpArea>
      <div className="page supply">
        <div className="supply-head">
          <div>
            <h1>{say('supply-game.of', { group: at.group.name })}</h1>
            <p className="mut">
              {say('supply-game.count')} {onlyEarned && say('supply-game.only-earned')}
            </p>
          </div>
          <HelpButton />
        </div>
        <Help />
        <div className="supply-groups">
          <Choice
            label={say('supply-game.group')}
            hideLabel
            options={at.record.groups.map(({ id, name }) => ({ id, text: name }))}
            chosen={at.group.id}
            choose={(group) => goTo({ group })}
          />
        </div>
        <GameBar />
        <div className="supply-two">
          <div className="supply-lists">
            <Kinds />
            <Happened />
            <Counted />
            <StrokeList key={at.group.id} />
            <GlanceTable />
          </div>
          <aside className="supply-aside" aria-label={say('supply-game.points')}>
            <SupplyPoints />
            <GameRules />
          </aside>
        </div>
      </div>
    </HelpArea>
  );
}

function Help() {
  const { at, say, rule } = useGame();
  return (
    <HelpTexts
      items={[
        [say('supply-game.help-group'), say('supply-game.group')],
        [say(`supply-game.help-${rule.ends.kind}`), say('supply-game.game')],
        [say('supply-game.help-round'), say('supply-game.round-now')],
        [say('supply-game.help-carrier'), say('supply-game.carrier')],
        [say('supply-game.help-kinds'), say('supply-game.kinds')],
        [say('supply-game.help-happened'), say('supply-game.happened')],
        [say('supply-game.help-counted'), say('supply-game.counted')],
        [say('supply-game.help-strokes'), say('supply-game.strokes', { group: at.group.name })],
        [say('supply-game.help-glance'), say('supply-game.glance')],
        [say('supply-game.help-points'), say('supply-game.points')],
        [say('supply-game.help-rules'), say('supply-game.rules')],
      ]}
    />
  );
}
