// The state of Fair points for the challenge at work: how is counted, which points are tried, minutes that the teacher told.

import { labKit, todaysRates } from '@cairnmark/engine';
import type { CountingConvention } from '@cairnmark/geometry';
import { whoEarns } from '@cairnmark/scoring';
import { useMemo, useState } from 'preact/hooks';
import { useTalkWords } from '../../app/talk-words.tsx';
import { useBuildWords } from '../../app/use-build-words.ts';
import { keepValues, keptValues } from '../../store/kept-values.ts';
import { useSession } from '../../store/use-session.ts';
import type { At } from '../../store/where-at.ts';
import type { Cost, Lab } from './lab.ts';
import { named } from './lab.ts';

export function useLabAt(at: At): Lab {
  const { challenge, record } = at;
  const { say } = useTalkWords();
  const build = useBuildWords(challenge, record);
  const [counting, count] = useState<CountingConvention>(challenge.counting);
  const [cost, holdAgainst] = useState<Cost>('piece');
  const [tried, tryRates] = useState<Readonly<Record<string, number>> | null>(null);
  const [minutes, setMinutes] = useMinutes();
  const kit = useMemo(
    () => labKit(challenge, counting, build.ruler, minutes),
    [challenge, counting, build.ruler, minutes],
  );
  const { rates: today, others } = useMemo(() => todaysRates(challenge, kit.rows), [challenge, kit]);
  const rates = useMemo(() => {
    const shown = tried ?? named(kit.rows, today);
    return kit.rows.map(({ id }) => shown[id] ?? 0);
  }, [tried, kit, today]);
  const earnings = useMemo(() => whoEarns(kit.data, rates), [kit, rates]);
  return {
    ...build,
    at,
    say,
    kit,
    counting,
    count,
    rates,
    today,
    others,
    tryRates,
    earnings,
    cost,
    holdAgainst,
    minutes,
    setMinutes,
  };
}

type Minutes = Readonly<Record<string, number>>;

/** By kind id, kept on this device for the class. */
function useMinutes(): [Minutes, (kind: string, value: number | null) => void] {
  const classId = useSession((session) => session.place?.classId) ?? '';
  const [minutes, setMinutes] = useState(() => minutesOf(keptValues(MINUTES)[classId]));
  const change = (kind: string, value: number | null): void => {
    const { [kind]: _before, ...others } = minutes;
    const next = value === null ? others : { ...others, [kind]: value };
    setMinutes(next);
    keepValues(MINUTES, { ...keptValues(MINUTES), [classId]: next });
  };
  return [minutes, change];
}

const MINUTES = 'cairnmark.minutes';

/** Of what the device kept, whoever wrote it. */
function minutesOf(kept: unknown): Minutes {
  if (typeof kept !== 'object' || kept === null) return {};
  return Object.fromEntries(
    Object.entries(kept).filter(([, value]) => typeof value === 'number' && Number.isFinite(value) && value > 0),
  );
}
