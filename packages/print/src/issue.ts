// What can be wrong with a sheet. Sentences stand in `words`, under the same codes.

import type { Issue } from '@cairnmark/geometry';
import type { PrintIssueCode } from '@cairnmark/words';

export type PrintIssue = Issue<PrintIssueCode>;
