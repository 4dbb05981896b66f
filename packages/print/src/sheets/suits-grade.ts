// Which sheets a class of a grade has use for: of the two measuring tables one is for young pupils, one for older ones.

import type { GradePreset } from '@cairnmark/engine';
import type { SheetId } from './sheet-kind.ts';

export const suitsGrade = (id: SheetId, grade: GradePreset): boolean =>
  id !== (grade === 'grades-2-3' ? 'measure-older' : 'measure-young');
