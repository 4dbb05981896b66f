// What people decided at a challenge, each with its reason: values set or taken back, points given or taken by hand.

import { decisionsMade } from '@cairnmark/engine';
import type { Scene } from './scene.ts';
import { groupName } from './scene.ts';

/** `groups`: those whose rows are shown. */
export function Decisions({ scene, groups }: { readonly scene: Scene; readonly groups: readonly string[] }) {
  const lines = decisionLines(scene, groups);
  if (lines.length === 0) return null;
  return (
    <div className="board-part">
      <h2>{scene.screen.say('board.decisions')}</h2>
      <ul>
        {lines.map(({ key, group, sentence }) => (
          <li key={key}>
            <b>{group}</b>: {sentence}
          </li>
        ))}
      </ul>
    </div>
  );
}

interface DecisionLine {
  readonly key: string;
  readonly group: string;
  readonly sentence: string;
}

function decisionLines({ record, score, challenge, inClass }: Scene, groups: readonly string[]): DecisionLine[] {
  const reports = score.reports.get(challenge.id) ?? [];
  return record.attempts
    .filter((attempt) => attempt.challenge === challenge.id && groups.includes(attempt.group))
    .flatMap(({ id, group, decisions, adjustments }) => {
      const facts = reports.find(({ attempt }) => attempt === id)?.facts ?? [];
      const sentences = [
        ...decisionsMade(decisions).map((made) =>
          inClass.decision(made, facts.find((fact) => fact.id === made.decision.measure) ?? null),
        ),
        ...adjustments.map((one) => inClass.adjustment(one)),
      ];
      return sentences.map((sentence, k) => ({ key: `${id} ${k}`, group: groupName(record, group), sentence }));
    });
}
