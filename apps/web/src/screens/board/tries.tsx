// The tries of one group, the earliest first. Their bars share a scale; those of another group have another one, so that no
// two groups can be held against each other.

import type { Progress, Try } from './progress.ts';
import { tryText } from './progress-text.ts';
import type { Scene } from './scene.ts';

export function Tries({ progress: { tries, best }, scene }: { readonly progress: Progress; readonly scene: Scene }) {
  const shown = tries.filter(hasBar);
  // Of a single try all is said beside.
  if (tries.length === 1 && shown.length === 1) return null;
  const longest = Math.max(...shown.map(({ value }) => value));
  return (
    <ol className="progress-list">
      {tries.map((one, k) => (
        <li key={one.report.attempt}>
          {tryText(one, k + 1, scene)}
          {shown.length > 1 && hasBar(one) && (
            <i
              className={one === best ? 'progress-bar progress-best' : 'progress-bar'}
              aria-hidden="true"
              style={{ width: `${(100 * Math.max(0, one.value)) / (longest > 0 ? longest : 1)}%` }}
            />
          )}
        </li>
      ))}
    </ol>
  );
}

const hasBar = (one: Try): one is Try & { readonly value: number } => one.value !== null && one.out.length === 0;
