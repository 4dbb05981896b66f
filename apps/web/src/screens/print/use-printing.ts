// What can be printed now: the settings, and the parts that follow from them.

import type { Ruler } from '@cairnmark/geometry';
import { useMemo, useState } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { useSession } from '../../store/use-session.ts';
import type { At } from '../../store/where-at.ts';
import type { NetsAsk, SheetsAsk } from '../../workers/print-questions.ts';
import type { Made } from '../../workers/use-print.ts';
import { usePrint } from '../../workers/use-print.ts';
import { recallSettings, rememberSettings } from './kept-settings.ts';
import type { PrintPart } from './parts.ts';
import { netPagesOf, printParts } from './parts.ts';
import type { PrintSettings } from './settings.ts';
import { arrangementOf, firstSettings } from './settings.ts';

export interface Printing {
  readonly settings: PrintSettings;
  readonly parts: readonly PrintPart[];
  /** Those that are ticked and can be printed. */
  readonly chosen: readonly PrintPart[];
  readonly nets: Omit<Made<unknown>, 'value'>;
  readonly sheets: Omit<Made<unknown>, 'value'>;
  set(change: Partial<PrintSettings>): void;
}

export function usePrinting({ record, challenge }: At, ruler: Ruler): Printing {
  const { say, language } = usePlanWords();
  const classId = useSession(({ place }) => place?.classId ?? '');
  const [settings, change] = useState(() => recallSettings(classId, firstSettings(record, challenge)));
  const { paper, print, pupils, pieces, sets, tabDepthMm, large } = settings;
  const arranged = arrangementOf(settings);
  const arrange = arranged === 'sets' ? 'mixed' : arranged;
  const count = arranged === 'sets' ? 1 : sets;
  const { kinds } = challenge.kit;
  const netsAsk = useMemo((): NetsAsk => {
    const ordered = kinds.flatMap(({ id, name, solid, stock, material }) =>
      material.kind === 'folded-paper'
        ? [{ id, name, spec: solid, count: pieces === 'stock' ? stock : count, base: material.base }]
        : [],
    );
    return { kinds: ordered, paper, arrange, tabDepthMm, large, invented: record.invented, ruler, language };
  }, [kinds, paper, pieces, count, arrange, tabDepthMm, large, record.invented, ruler, language]);
  const nets = usePrint('nets', netsAsk);
  const netPages = netPagesOf(nets, settings);
  const sheetsAsk = useMemo((): SheetsAsk => {
    const bare = { ...record, attempts: [] };
    return { record: bare, challenge: challenge.id, ruler, pupils, netPages, paper, print, language };
  }, [record, challenge.id, ruler, pupils, netPages, paper, print, language]);
  const sheets = usePrint('sheets', sheetsAsk);
  const parts = useMemo(
    () => printParts(sheets.value ?? [], nets.value, say('printing.nets-name'), record, settings),
    [sheets.value, nets.value, say, record, settings],
  );
  return {
    settings,
    parts,
    chosen: parts.filter(({ id, pages }) => settings.chosen.has(id) && pages.length > 0),
    nets,
    sheets,
    set: (some) => {
      const next = { ...settings, ...some };
      change(next);
      rememberSettings(classId, next);
    },
  };
}
