// What the bars on the board are made of, in the order in which they are set end to end.

import { useCardWords } from '../../app/card-words.tsx';
import { Icon } from '../../parts/icon.tsx';
import type { Bar, Segment } from './bars.ts';
import { hasError } from './bars.ts';
import type { PartId } from './parts.ts';
import type { Scene } from './scene.ts';
import { columnTitle, partText } from './texts.ts';

/** Which of the fillings a part of a bar has. */
export type Fills = ReadonlyMap<Segment['part'], number>;

/** There are so many fillings, each told apart in grey too; further parts begin again. */
const FILLINGS = 6;

export function fillsOf(bars: readonly Bar[], { challenge }: Scene): Fills {
  const used = new Set(bars.flatMap(({ segments }) => segments.map(({ part }) => part)));
  const order: readonly Segment['part'][] = [
    'measure',
    ...challenge.points.map(({ id }): PartId => `row:${id}`),
    'rules',
    'own',
    'by-hand',
    'stated',
  ];
  return new Map(order.filter((part) => used.has(part)).map((part, k) => [part, k % FILLINGS]));
}

export function Legend({
  bars,
  fills,
  scene,
  withNear,
}: {
  readonly bars: readonly Bar[];
  readonly fills: Fills;
  readonly scene: Scene;
  /** The rows have the sign of near neighbours without its words. */
  readonly withNear: boolean;
}) {
  const words = useCardWords();
  const name = (part: Segment['part']): string =>
    part === 'measure' ? columnTitle(scene.challenge.ranking.first.by, scene) : partText(part, scene);
  const off = [...new Set(bars.flatMap(({ takenOff }) => takenOff?.parts ?? []))];
  return (
    <ul className="rank-legend" aria-label={words.say('board.legend')}>
      {[...fills].map(([part, fill]) => (
        <li key={part}>
          <i className={`rank-piece rank-legend-piece rank-fill-${fill}`} />
          {name(part)}
        </li>
      ))}
      {off.length > 0 && (
        <li>
          <i className="rank-piece rank-legend-piece rank-fill-off" />
          {words.say('board.taken-off', { parts: off.map(name).join('; ') })}
        </li>
      )}
      {bars.some(({ error }) => hasError(error)) && (
        <li>
          <b className="rank-whisker" />
          {words.say('board.measuring-error')}
        </li>
      )}
      {withNear && (
        <li className="rank-legend-near">
          <Icon name="near" />
          {words.say('board.near-sign')}
        </li>
      )}
    </ul>
  );
}
